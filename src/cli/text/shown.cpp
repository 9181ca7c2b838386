// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/text/shown.h"

#include "cli/text/words.h"
#include "reckon/say.h"
#include "rules/check.h"
#include "toml/problem.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace legwork {

namespace {

// "K1+K2" where all circuits of a finding are on one cable, empty where they are not.
std::string one_cable(Building const& building, Finding const& f) {
    std::string one;
    for (std::string const& mark : f.where.circuits) {
        Circuit const* c = circuit_named(building, mark);
        auto const cable = c ? c->cable_mark() : mark;
        if (!one.empty() && one != cable) return {};
        one = cable;
    }
    return one;
}

std::string panel_heading(std::string const& name) { return fmt::format("Panel \"{}\"", name); }

// "K1+K2 in panel \"Main\", spaces 8 and 10: Counter, left; Counter, right"
std::string circuit_heading(Session const& s, Circuit const& c) {
    std::vector<std::string> names, spaces;
    for (Circuit const& each : s.building.circuits) {
        if (each.cable_mark() != c.cable_mark()) continue;
        if (!each.name.empty()) names.push_back(each.name);
        if (Placement const* at = placement_of(s.plan, each.mark))
            for (Spot const spot : at->slots) spaces.push_back(text(spot));
    }
    auto heading = c.cable_mark();
    if (s.building.panels.size() > 1) heading += fmt::format(" in panel \"{}\"", c.panel->name);
    if (!spaces.empty()) heading += fmt::format(", space{} {}", spaces.size() == 1 ? "" : "s", listed(spaces));
    if (!names.empty()) heading += ": " + joined(names, "; ");
    return heading;
}

struct Key {
    int kind = 0; // job, several cables, panels and circuits, other cables
    std::ptrdiff_t panel = 0, circuit = -1;
    friend auto operator<=>(Key const&, Key const&) = default;
};

Key key_of(Building const& building, Finding const& f) {
    auto const number_of = [&](std::string const& panel) {
        return std::ranges::find(building.panels, panel, &Panel::name) - building.panels.begin();
    };
    if (f.where.circuits.empty()) return f.where.panel.empty() ? Key{} : Key{2, number_of(f.where.panel)};
    auto const cable = one_cable(building, f);
    if (cable.empty()) return {1};
    auto const first =
        std::ranges::find_if(building.circuits, [&](Circuit const& c) { return c.cable_mark() == cable; });
    if (first != building.circuits.end())
        return {2, static_cast<std::ptrdiff_t>(first->panel->number), first - building.circuits.begin()};
    return {3, std::ranges::find(building.runs, cable, &Run::mark) - building.runs.begin()};
}

std::string heading_of(Session const& s, Finding const& f, Key const& key) {
    if (key.kind == 0) return "The job as a whole";
    if (key.kind == 1) return "Several circuits";
    if (key.kind == 3) return "Cable " + f.where.circuits.front();
    return key.circuit < 0 ? panel_heading(f.where.panel)
                           : circuit_heading(s, s.building.circuits[static_cast<std::size_t>(key.circuit)]);
}

std::vector<FindingGroup> by_circuit(Session const& s, std::vector<Finding const*> findings) {
    std::ranges::stable_sort(findings, {}, [&](Finding const* f) { return key_of(s.building, *f); });
    std::vector<FindingGroup> made;
    std::optional<Key> last;
    for (Finding const* f : findings) {
        auto const key = key_of(s.building, *f);
        if (last != key) made.push_back({heading_of(s, *f, key), {}});
        last = key;
        made.back().findings.push_back(f);
    }
    return made;
}

std::vector<FindingGroup> by_theme(std::vector<Finding const*> const& findings) {
    std::vector<FindingGroup> made;
    for (Theme const& theme : themes()) {
        FindingGroup group{std::string(theme.words), {}};
        for (Rule const* rule : theme.rules)
            std::ranges::copy_if(findings, std::back_inserter(group.findings),
                                 [&](Finding const* f) { return f->rule == rule->id; });
        std::ranges::stable_sort(group.findings, {}, &Finding::severity);
        if (!group.findings.empty()) made.push_back(std::move(group));
    }
    return made;
}

enum class About { new_circuits, whole, untouched };

About about(Building const& building, Finding const& f) {
    if (is_untouched(building, f)) return About::untouched;
    return f.where.circuits.empty() ? About::whole : About::new_circuits;
}

// Some circuits are new, others were there before.
bool adds_to_old_work(Building const& building) {
    auto const old = std::ranges::count_if(building.circuits, &Circuit::existing);
    return old > 0 && old < std::ssize(building.circuits);
}

std::vector<FindingGroup> by_gravity(Session const& s, FindingFilter const& shown,
                                     std::vector<Finding const*> const& findings) {
    bool const mixed = adds_to_old_work(s.building) && shown.rules.empty();
    FindingGroup full{"", {}, mixed ? FindingGroup::Told::closely : FindingGroup::Told::in_full};
    FindingGroup short_{"Was there before, and this job leaves it alone", {}, FindingGroup::Told::in_short};
    for (Finding const* f : findings) {
        bool const brief = mixed && f->severity != Severity::error && is_untouched(s.building, *f);
        (brief ? short_ : full).findings.push_back(f);
    }
    if (mixed)
        std::ranges::stable_sort(full.findings, {}, [&](Finding const* f) {
            return std::pair(f->severity != Severity::error, about(s.building, *f));
        });
    std::vector<FindingGroup> made;
    if (!full.findings.empty()) made.push_back(std::move(full));
    if (!short_.findings.empty()) made.push_back(std::move(short_));
    return made;
}

bool is_part_of_word(char c) {
    return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '-' || c == '_';
}

// The text with a blank sign for each time that it names this mark.
std::string without_mark(std::string_view text, std::string const& mark) {
    std::string left;
    while (!text.empty()) {
        auto const at = mark.empty() ? std::string_view::npos : text.find(mark);
        if (at == std::string_view::npos) return left.append(text);
        auto const end = at + mark.size();
        bool const whole =
            (at == 0 || !is_part_of_word(text[at - 1])) && (end == text.size() || !is_part_of_word(text[end]));
        left.append(text.substr(0, at));
        left.append(whole ? std::string_view("\0", 1) : text.substr(at, mark.size()));
        text.remove_prefix(end);
    }
    return left;
}

bool is_alike(Finding const& a, Finding const& b) {
    if (a.rule != b.rule || a.severity != b.severity || a.where.panel != b.where.panel ||
        a.where.circuits.size() != 1 || b.where.circuits.size() != 1 || text(a.reference) != text(b.reference))
        return false;
    auto const &of_a = a.where.circuits.front(), &of_b = b.where.circuits.front();
    return without_mark(a.message, of_a) == without_mark(b.message, of_b) &&
           without_mark(a.fix, of_a) == without_mark(b.fix, of_b);
}

template <class Same>
std::vector<Alike> told_together(std::vector<Finding const*> const& findings, Same same) {
    std::vector<Alike> made;
    for (Finding const* f : findings) {
        auto const at = std::ranges::find_if(made, [&](Alike const& g) { return same(*g.front(), *f); });
        if (at == made.end())
            made.push_back({f});
        else
            at->push_back(f);
    }
    return made;
}

} // namespace

bool is_untouched(Building const& building, Finding const& f) {
    return !f.where.circuits.empty() && std::ranges::all_of(f.where.circuits, [&](std::string const& mark) {
        Circuit const* c = circuit_named(building, mark);
        return c && c->existing;
    });
}

bool is_shown(Session const& s, FindingFilter const& shown, Finding const& f) {
    return f.severity <= shown.least && (shown.rules.empty() || std::ranges::count(shown.rules, f.rule) > 0) &&
           !(shown.only_new && is_untouched(s.building, f));
}

bool is_shown(FindingFilter const& shown, Rule const& rule) {
    return shown.rules.empty() || std::ranges::count(shown.rules, rule.id) > 0;
}

std::vector<FindingGroup> finding_groups(Session const& s, FindingFilter const& shown) {
    std::vector<Finding const*> standing;
    FindingGroup accepted{"Accepted", {}};
    for (Finding const& f : s.findings)
        if (is_shown(s, shown, f)) (f.accepted ? accepted.findings : standing).push_back(&f);
    std::vector<FindingGroup> made;
    if (shown.by == FindingFilter::By::circuit) made = by_circuit(s, standing);
    if (shown.by == FindingFilter::By::theme) made = by_theme(standing);
    if (shown.by == FindingFilter::By::gravity) made = by_gravity(s, shown, standing);
    if (!accepted.findings.empty()) made.push_back(std::move(accepted));
    return made;
}

std::vector<Alike> by_panel_and_kind(std::vector<Finding const*> const& findings) {
    return told_together(findings, [](Finding const& a, Finding const& b) {
        return a.rule == b.rule && a.where.panel == b.where.panel;
    });
}

std::vector<Alike> alike_but_for_the_circuit(std::vector<Finding const*> const& findings) {
    return told_together(findings, is_alike);
}

} // namespace legwork
