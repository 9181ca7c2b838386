// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/text/text.h"

#include "cli/text/words.h"
#include "codebook/reference_phrase.h"
#include "sheet/common.h"
#include "toml/problem.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
constexpr std::size_t kFigure = 12;

std::size_t item_width(Streams const& streams) { return streams.width - 2 * kFigure; }

std::string_view what_it_is(Panel const& panel) { return panel.feeder ? "feeder" : "service"; }

std::string shown(Phrase const& phrase) { return fit_to_print(english().words(phrase)); }

// The edition stands in the head.
std::string section(Reference const& r) {
    if (r.source == Source::unread) return "not read yet";
    if (r.section.empty()) return {};
    return r.source == Source::memory ? r.section + ", " + memory_words(r) : section_words(r);
}

std::string right(std::int64_t va) { return fmt::format("{:>{}}", va, kFigure); }

void tell_line(std::string const& item, std::string const& figures, Streams& streams) {
    streams.out << fitted(item, item_width(streams)) << figures << '\n';
}

// What has no room beside its figure begins on lines of its own.
void tell_item(std::string const& item, std::string const& figures, Streams& streams) {
    auto lines = in_lines(item, item_width(streams) - 1, 2);
    for (auto end = lines.find('\n'); end != std::string::npos; end = lines.find('\n')) {
        streams.out << lines.substr(0, end) << '\n';
        lines.erase(0, end + 1);
    }
    tell_line(lines, figures, streams);
}

void tell_step(LoadStep const& s, Streams& streams) {
    bool const counted = s.kind == LoadStep::Kind::counted;
    auto const figures = counted ? std::string(kFigure, ' ') + right(s.va) : right(s.va);
    auto const item = shown(s.item), arithmetic = shown(s.arithmetic), rule = section(s.reference);
    auto const after = [](std::string const& words, std::string const& more) {
        return words.empty() || more.empty() ? words + more : words + "; " + more;
    };
    if (arithmetic.empty()) return tell_item(after(item, rule), figures, streams);
    tell_item(item, figures, streams);
    streams.out << "    " << in_lines(after(arithmetic, rule), streams.width, 6, 4) << '\n';
}

void tell_steps(LoadSteps const& steps, std::string const& title, std::string const& total, std::int64_t total_va,
                Streams& streams) {
    tell_line(title, fmt::format("{:>{}}{:>{}}", "VA", kFigure, "counts, VA", kFigure), streams);
    streams.out << std::string(streams.width, '-') << '\n';
    for (LoadStep const& s : steps) tell_step(s, streams);
    streams.out << std::string(item_width(streams), ' ') << std::string(kFigure, ' ') << std::string(kFigure, '-')
                << '\n';
    tell_item(total, std::string(kFigure, ' ') + right(total_va), streams);
    streams.out << '\n';
}

void tell_results(LoadResults const& results, Streams& streams) {
    constexpr std::size_t item = 33, value = 17;
    bool const narrow = streams.width < 80; // the words then stand below
    std::size_t const before = narrow ? 4 : item + value;
    for (LoadResult const& r : results) {
        std::vector<std::string> said;
        for (auto const& part : {r.arithmetic, r.reference ? reference_phrase(*r.reference) : Phrase()})
            if (!part.empty()) said.push_back(shown(part));
        auto const words = joined(said, "; ");
        auto const answer = english().words(r.value);
        bool const wide = narrow || character_count(answer) >= value;
        streams.out << fitted(english().words(r.item), item)
                    << (wide || words.empty() ? in_lines(answer, streams.width, item, item) : fitted(answer, value));
        if (wide && !words.empty()) streams.out << '\n' << std::string(before, ' ');
        streams.out << in_lines(words, streams.width, before, before) << '\n';
    }
    streams.out << '\n';
}

void tell_list(std::string const& title, Phrases const& all, Streams& streams) {
    if (all.empty()) return;
    streams.out << title << '\n';
    for (auto const& one : all) streams.out << "  - " << in_lines(shown(one), streams.width, 4, 4) << '\n';
    streams.out << '\n';
}

void tell_calculation(PanelLoad const& p, Streams& streams) {
    auto const& load = *p.load;
    streams.out << in_lines(fmt::format("Panel \"{}\", the {}. {}.", fit_to_print(p.panel->name), what_it_is(*p.panel),
                                        english().words(load.title)),
                            streams.width, 0)
                << '\n'
                << in_lines("Why so: " + shown(load.why), streams.width, 4) << "\n\n";
    auto const least = load.unknown.empty() ? "" : ", at least: something is missing";
    tell_steps(load.steps, "Load", fmt::format("Total{}", least), load.total_va, streams);
    if (load.neutral_va && !load.neutral.empty())
        tell_steps(load.neutral, "Neutral", fmt::format("Neutral{}", least), *load.neutral_va, streams);
    tell_results(p.results, streams);
    if (!p.verdict.empty()) streams.out << in_lines(shown(p.verdict), streams.width, 0) << "\n\n";
    tell_list("Missing, so this is not complete:", load.unknown, streams);
    tell_list("Good to know:", load.notes, streams);
}

void tell_head(Session const& s, Streams& streams) {
    streams.out << fmt::format(
        "{} ({})\n", s.building.name.empty() ? shown_file(s.file) : fit_to_print(s.building.name), s.building.code);
}

std::string_view name_of(PanelLoad const& p) { return name(p.load->method); }

std::string answer(std::optional<bool> fits, bool all_at_once) {
    if (!fits) return "CANNOT BE SAID YET";
    return *fits ? "YES" : all_at_once ? "NOT WITH ALL OF IT AT ONCE" : "NO";
}

// Not fitting before not known, else the last: the service.
PanelWithMore const& deciding(WithMore const& more) {
    for (auto const wanted : {std::optional<bool>(false), std::optional<bool>()}) {
        auto const at = std::ranges::find(more.panels, wanted, &PanelWithMore::fits);
        if (at != more.panels.end()) return *at;
    }
    return more.panels.back();
}

void tell_panel(PanelWithMore const& p, Streams& streams) {
    auto const& name = p.after.panel->name;
    if (!p.after.load || !p.before.load) {
        streams.out << in_lines(fmt::format("{}: {}", fit_to_print(name), fit_to_print(p.after.why)), streams.width, 4)
                    << '\n';
        return;
    }
    auto words = fmt::format("{}, {}: {} VA before, {} VA with it, {} VA more. {}", fit_to_print(name),
                             what_it_is(*p.after.panel), p.before.load->total_va, p.after.load->total_va, p.more_va,
                             shown(p.after.verdict));
    if (p.before.load->method != p.after.load->method)
        words +=
            fmt::format(" (Before by the {} method, with it by the {} method.)", name_of(p.before), name_of(p.after));
    streams.out << in_lines(words, streams.width, 4) << '\n';
}
} // namespace

void tell_load(Session const& session, PanelLoad const& load, Streams& streams) {
    tell_head(session, streams);
    tell_calculation(load, streams);
    streams.out << in_lines(english().words(caution()), streams.width, 0) << '\n';
}

void tell_more(Session const& session, AddedCircuit const& told, WithMore const& more, Streams& streams) {
    auto const& c = *told.circuit;
    auto const& p = deciding(more);
    tell_head(session, streams);
    streams.out << in_lines(fmt::format("Can this be added to panel \"{}\": {}? {}.", fit_to_print(c.panel->name),
                                        fit_to_print(c.name),
                                        answer(more.fits, p.after.load && p.after.load->all_at_once)),
                            streams.width, 4)
                << "\n\n";
    for (auto const& one : more.panels) tell_panel(one, streams);
    if (more.unlisted)
        streams.out << in_lines(fmt::format("Panel \"{}\" feeds it and is not listed: whether that carries it too has "
                                            "to be reckoned there.",
                                            fit_to_print(more.unlisted->name)),
                                streams.width, 4)
                    << '\n';
    if (p.grew)
        streams.out << in_lines(fmt::format("The step that decides: {}: {}{}", shown(p.grew->item),
                                            p.grew->arithmetic.empty() ? fmt::format("{} VA", p.grew->va)
                                                                       : shown(p.grew->arithmetic),
                                            section(p.grew->reference).empty()
                                                ? ""
                                                : fmt::format(" ({})", section(p.grew->reference))),
                                streams.width, 4)
                    << '\n';
    else if (p.after.load)
        streams.out << "It adds nothing: it is within what is counted already.\n";
    if (!more.no_space.empty())
        streams.out << in_lines("But there is no space for it: " + fit_to_print(more.no_space), streams.width, 4)
                    << '\n';
    streams.out << '\n';
    tell_list("Taken for granted:", {told.taken.begin(), told.taken.end()}, streams);
    if (p.after.load) tell_calculation(p.after, streams);
    streams.out << "The job file is unchanged.\n" << in_lines(english().words(caution()), streams.width, 0) << '\n';
}

} // namespace legwork
