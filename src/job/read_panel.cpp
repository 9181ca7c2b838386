// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// [[panel]] and [[supply]].
#include "job/keys/panel.h"
#include "job/reading.h"
#include "job/supply_words.h"

#include <algorithm>
#include <fmt/format.h>

namespace legwork {

namespace {

bool is_unlisted(Reading const& r, std::string_view name) {
    auto const* p = panel_of(r.job, name);
    return p && !p->listed;
}

// A feeder that stands in no [[circuit]] has a mark all the same, for its labels: the first that is free.
std::string free_mark(Reading const& r) {
    auto const taken = [&](std::string const& mark) {
        return contains(r.marks, mark) || contains(r.cable_marks, mark) ||
               std::ranges::any_of(r.job.panels,
                                   [&](typed::Panel const& p) { return p.feeder && p.feeder->mark == mark; });
    };
    std::string mark = "FD";
    for (int n = 2; taken(mark); ++n) mark = fmt::format("FD{}", n);
    return mark;
}

// "Main/SP": the mark stands behind the last slash. "House" alone is a panel that is not listed.
std::optional<typed::FeederName> read_feeder(Reading const& r, TableReader& t) {
    auto const said = t.text("feeder");
    if (said.empty()) return std::nullopt;
    if (is_unlisted(r, said)) return typed::FeederName{said, free_mark(r)};
    auto const slash = said.rfind('/');
    if (slash != std::string::npos && slash > 0 && slash + 1 < said.size()) {
        typed::FeederName const named{said.substr(0, slash), said.substr(slash + 1)};
        if (!is_unlisted(r, named.panel)) return named;
        t.complain("feeder", fmt::format("the panel {} is not listed, so no circuit of it is", quoted(named.panel)),
                   fmt::format("write  feeder = \"{}\",  and what is known of the feeder as  feeder_breaker,  "
                               "feeder_cable  and  feeder_length",
                               named.panel));
        return std::nullopt;
    }
    t.complain("feeder", fmt::format("{} does not name a panel and a circuit", quoted(said)),
               contains(r.panel_names, said)
                   ? fmt::format("write the mark of its circuit that feeds this panel too: \"{}/MARK\"", said)
                   : "write the panel, a slash, and the mark of the circuit that feeds this one: \"Main/SP\"");
    return std::nullopt;
}

// The feeder from a panel that is not listed is described where it arrives.
void read_feeder_cable(Reading& r, TableReader& t, typed::Panel& p) {
    p.feeder_breaker = t.amps("feeder_breaker");
    p.feeder_cable = read_cable_kind(r, t, "feeder_cable");
    p.feeder_length = t.length("feeder_length");
    if (p.feeder && is_unlisted(r, p.feeder->panel)) return;
    for (auto const* key : {"feeder_breaker", "feeder_cable", "feeder_length"})
        if (t.has(key) && (!t.has("feeder") || p.feeder)) // else told already
            t.complain(key, fmt::format("\"{}\" is of a feeder from a panel that is not listed", key),
                       p.feeder ? fmt::format("say it under  [[circuit]]  {}, the feeder", p.feeder->mark)
                                : fmt::format("take  {}  away, or name the panel:  feeder = \"House\"", key));
}

// Below a tenth it would be a heater, and is a slip of the pen for 0.9.
std::optional<std::int64_t> read_efficiency(TableReader& t) {
    auto const share = t.millionths("efficiency");
    if (!share || *share >= 100'000) return share;
    t.complain("efficiency", "a power supply gives more than a tenth of what it takes", "write 0.9 for 90 %");
    return std::nullopt;
}

std::vector<std::string> read_supply_names(Reading& r, TableReader& t) {
    std::vector<std::string> names;
    for (auto const& [name, at] : t.texts("supplies")) {
        if (!contains(r.supply_names, name))
            r.out.add(at, fmt::format("{}: there is no supply {}", t.what(), quoted(name)),
                      did_you_mean(name, r.supply_names, "describe it under  [[supply]]"));
        else if (contains(names, name))
            r.out.add(at, fmt::format("{}: the supply {} is named twice", t.what(), quoted(name)), "name it once");
        names.push_back(name);
    }
    if (t.has("supplies") && names.empty())
        t.complain("supplies", "the list of supplies is empty", "name at least one");
    return names;
}

// What feeds it: one of three keys; a sub-panel may narrow its feeder by `supply`.
void read_source(Reading& r, TableReader& t, typed::Panel& p) {
    auto const kind = read_supply_kind(t, "supply");
    auto const leg = read_leg(t, kind);
    if (kind) p.supply = typed::Supply{"", *kind, std::nullopt, leg, {}, {}};
    if (t.has("leg") && !t.has("supply"))
        t.complain("leg", "\"leg\" belongs to a supply", "add  supply = \"120 on one leg\"");
    p.supplies = read_supply_names(r, t);
    p.feeder = read_feeder(r, t);
    read_feeder_cable(r, t, p);
    p.efficiency = read_efficiency(t);
    if (!t.has("supply") && !t.has("supplies") && !t.has("feeder"))
        t.complain(
            "", "nothing says what feeds this panel",
            "add  supply = \"120/240\", or  supplies = [...]  for several, or  feeder = \"Main/SP\"  for a sub-panel");
    if (t.has("supplies") && t.has("supply"))
        t.complain("supply", "\"supply\" and \"supplies\" both say what feeds this panel", "keep one of the two");
    if (t.has("supplies") && t.has("feeder"))
        t.complain("supplies", "a sub-panel is fed by the sources of the panel above",
                   "keep  feeder,  take  supplies  away");
}

void read_bus(TableReader& t, typed::Panel& p) {
    auto const* said = t.entry("legs");
    if (!said) return;
    if (!std::holds_alternative<TomlArray>(said->value.is)) {
        p.bus_legs = t.choice("legs", {BusLegs::by_row, BusLegs::by_column}).value_or(BusLegs::by_row);
        return;
    }
    p.bus_legs = BusLegs::listed;
    for (auto const& [letter, at] : t.texts("legs")) {
        if (letter != "A" && letter != "B")
            t.complaints().add(at, fmt::format("{}: {} is no leg", t.what(), quoted(letter)), "write \"A\" or \"B\"");
        p.row_legs.push_back(letter == "B" ? Leg::b : Leg::a);
    }
    auto const rows = static_cast<std::size_t>((p.spaces + 1) / 2);
    if (p.spaces > 0 && p.row_legs.size() != rows)
        t.complain("legs",
                   fmt::format("{} spaces are {} rows, and {} letters are given", p.spaces, rows, p.row_legs.size()),
                   "give one letter a row, from row 1 on");
}

void read_geometry(TableReader& t, typed::Panel& p) {
    p.spaces = t.required_number("spaces").value_or(0);
    auto const last = p.spaces > 0 ? std::optional(p.spaces) : std::nullopt;
    p.tandem = t.numbers("tandem", last);
    p.blocked = t.numbers("blocked", last);
    p.dead = t.numbers("dead", last);
    p.numbering = t.choice("numbering", {Numbering::across, Numbering::down}).value_or(Numbering::across);
    p.first = t.choice("first", {Corner::top_left, Corner::top_right, Corner::bottom_left, Corner::bottom_right})
                  .value_or(Corner::top_left);
    p.hang = t.choice("hang", {Hang::upright, Hang::upside_down, Hang::turned_left, Hang::turned_right})
                 .value_or(Hang::upright);
    p.main_at = t.choice("main_at", {PanelEnd::top, PanelEnd::bottom});
    read_bus(t, p);
}

// What is known of a panel only as the one that feeds another.
void read_unlisted(Reading& r, TableReader& t, typed::Panel& p) {
    for (auto const* key : {"spaces", "tandem", "blocked", "dead", "numbering", "first", "hang", "main_at", "legs",
                            "circuits_max", "neutral_terminals", "output", "feeder"})
        if (t.has(key))
            t.complain(key, fmt::format("\"{}\" is of a listed panel, and this one is not", key),
                       fmt::format("take  {}  away, or  listed = false", key));
    read_source(r, t, p);
    p.feeder.reset();
    p.main = t.amps("main");
    p.bus = t.amps("bus");
    p.fed_from = t.text("fed_from");
    p.building = t.text("building");
    p.existing = t.flag("existing").value_or(false);
    t.finish();
    record(r, Subject::panel, p.name, t);
}

// Findings about a feeder that stands in no [[circuit]] point at the panel that it feeds.
void record_feeder(Reading& r, typed::Panel const& p) {
    if (!p.feeder || !is_unlisted(r, p.feeder->panel)) return;
    auto const at = [&](std::string_view key) { return r.places.find(Subject::panel, p.name, std::string(key)); };
    r.places.set(Subject::circuit, p.feeder->mark, "", at("feeder"));
    r.places.set(Subject::circuit, p.feeder->mark, "breaker", at("feeder_breaker"));
    r.places.set(Subject::circuit, p.feeder->mark, "cable", at("feeder_cable"));
    r.places.set(Subject::circuit, p.feeder->mark, "length", at("feeder_length"));
}

void read_panel(Reading& r, TableReader& t, typed::Panel& p) {
    t.allow_questions(p.asked);
    if (!p.listed) return read_unlisted(r, t, p);
    read_geometry(t, p);
    read_source(r, t, p);
    p.main = t.amps("main");
    p.bus = t.amps("bus");
    p.output = t.amps("output");
    p.fed_from = t.text("fed_from");
    p.circuits_max = t.count("circuits_max");
    p.neutral_terminals = t.count("neutral_terminals");
    p.building = t.text("building");
    p.existing = t.flag("existing").value_or(false);
    t.finish();
    record(r, Subject::panel, p.name, t);
    record_feeder(r, p);
}

// It is there for what it feeds; without a listed panel there is nothing to do.
void check_unlisted(Reading& r) {
    auto const feeds_one = [&](std::string const& name) {
        return std::ranges::any_of(r.panels, [&](TableReader& t) {
            auto const* said = t.entry("feeder");
            auto const* words = said ? std::get_if<std::string>(&said->value.is) : nullptr;
            return words && (*words == name || words->starts_with(name + "/"));
        });
    };
    for (std::size_t i = 0; i < r.panels.size(); ++i)
        if (typed::Panel const& p = r.job.panels[i]; !p.listed && !p.name.empty() && !feeds_one(p.name))
            r.panels[i].complain("listed", "it is not listed, and feeds no panel that is",
                                 fmt::format("write  feeder = \"{}\"  in the panel that it feeds", p.name));
}

void read_supply(Reading& r, TableReader& t, typed::Supply& s) {
    t.allow_questions(s.asked);
    t.required_text("kind");
    auto const kind = read_supply_kind(t, "kind");
    s.kind = kind.value_or(SupplyKind::split_120_240);
    s.leg = read_leg(t, kind);
    s.amps = t.amps("amps");
    for (auto const& [mark, at] : t.texts("off"))
        if (r.is_circuit(t, mark, at)) s.off.push_back(mark);
    t.finish();
    record(r, Subject::supply, s.name, t);
}

// A misspelt name in a list is told there, and not once more here.
bool is_listed(Reading const& r, std::string const& supply) {
    auto const means_it = [&](std::string const& name) {
        return name == supply || nearest(name, r.supply_names) == supply;
    };
    return std::ranges::any_of(r.job.panels,
                               [&](typed::Panel const& p) { return std::ranges::any_of(p.supplies, means_it); });
}

} // namespace

void read_supplies(Reading& r) {
    for (std::size_t i = 0; i < r.supplies.size(); ++i) {
        read_supply(r, r.supplies[i], r.job.supplies[i]);
    }
}

void read_panels(Reading& r) {
    for (std::size_t i = 0; i < r.panels.size(); ++i)
        r.job.panels[i].listed = r.panels[i].flag("listed").value_or(true);
    for (std::size_t i = 0; i < r.panels.size(); ++i) read_panel(r, r.panels[i], r.job.panels[i]);
    for (std::size_t i = 0; i < r.supplies.size(); ++i)
        if (auto const& name = r.job.supplies[i].name; !name.empty() && !is_listed(r, name))
            r.supplies[i].complain("", "no panel is fed by it",
                                   fmt::format("add it to a panel:  supplies = [\"{}\"],  or take it away", name));
    check_unlisted(r);
}

} // namespace legwork
