// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/text/measure_list.h"

#include "cli/text/words.h"
#include "sheet/common.h"
#include "toml/problem.h"
#include "units/shell.h"

#include <fmt/format.h>

#include <algorithm>
#include <limits>

namespace legwork {

namespace {

std::size_t paper_width(Streams const& streams) { return std::min<std::size_t>(80, streams.width); }

std::vector<Spot> filed_spots(Session const& s, ToMeasure const& m) {
    Placement const* at = m.thing == Subject::circuit ? placement_of(s.plan, m.id) : nullptr;
    return at ? at->from : std::vector<Spot>{};
}

std::string in_units(std::string_view blank, UnitSystem units) {
    std::string text(blank);
    if (auto const at = text.find("{m}"); at != std::string::npos)
        text.replace(at, 3, units == UnitSystem::metric ? "m" : "ft");
    return text;
}

std::string or_else(std::string_view text, std::string_view otherwise) {
    return std::string(text.empty() ? otherwise : text);
}

MeasureItem item(Session const& s, ToMeasure const& m) {
    MeasureItem made{m, {}, "", "", "", "", "", "", ""};
    for (Spot const spot : filed_spots(s, m)) made.spaces.push_back(text(spot));
    if (auto const* c = m.thing == Subject::circuit ? circuit_named(s.building, m.id) : nullptr) {
        made.name = c->name;
        made.room = c->room;
    }
    if (auto const* cable = m.thing == Subject::cable ? cable_named(s.building, m.id) : nullptr)
        made.name = cable->name;
    made.what = or_else(m.how.what, m.key);
    made.how = or_else(m.how.how, "look it up on the spot");
    made.with = or_else(m.how.with, "your eyes");
    made.blank = in_units(or_else(m.how.blank, "____________"), s.building.units);
    made.decides = m.how.decides;
    return made;
}

std::ptrdiff_t panel_number(Building const& building, std::string const& panel) {
    return std::ranges::find(building.panels, panel, &Panel::name) - building.panels.begin();
}

std::string_view heading(Station at) {
    switch (at) {
    case Station::desk: return "At the desk: to be chosen, not measured";
    case Station::panel: return "At the panel";
    case Station::run: return "Along the cable";
    case Station::outlet: return "At the boxes and receptacles";
    case Station::appliance: return "At the appliance or source";
    case Station::building: break;
    }
    return "In the building";
}

std::string_view cover_words(PanelCover cover) {
    switch (cover) {
    case PanelCover::closed: return "cover on";
    case PanelCover::off_dead: return "cover off: main off, locked out, proved dead";
    case PanelCover::off_live: break;
    }
    return "COVER OFF AND LIVE: only who is permitted to";
}

std::string capital(std::string words) {
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z') words[0] = static_cast<char>(words[0] - 'a' + 'A');
    return words;
}

// "K1, space 7: Counter, left of sink (Kitchen)"
std::string subject(MeasureItem const& i) {
    if (i.of.thing == Subject::panel) return fmt::format("panel \"{}\"", i.of.id);
    if (i.of.thing == Subject::supply) return fmt::format("source \"{}\"", i.of.id);
    if (i.of.thing == Subject::dwelling) return "the dwelling";
    if (i.of.thing == Subject::job) return "the job";
    auto words = (i.of.thing == Subject::cable ? "cable " : "") + i.of.id;
    if (i.of.thing == Subject::circuit)
        words += i.spaces.empty()
                     ? ", space ____"
                     : fmt::format(", space{} {}", i.spaces.size() == 1 ? "" : "s", joined(i.spaces, " and "));
    if (!i.name.empty()) words += ": " + i.name;
    if (!i.room.empty()) words += fmt::format(" ({})", i.room);
    return words;
}

void line(Streams& streams, std::string const& text) {
    streams.out << "    " << in_lines(fit_to_print(text), paper_width(streams), 6, 4) << '\n';
}

void list_item(MeasureItem const& i, Streams& streams) {
    streams.out << "[ ] " << in_lines(fit_to_print(subject(i)), paper_width(streams), 4, 4) << '\n';
    line(streams, fmt::format("{}: {}.", capital(i.what), i.how));
    auto const cover = i.of.chosen ? "" : fmt::format("; {}", cover_words(i.of.how.cover));
    line(streams, fmt::format("With {}{}.", i.with, cover));
    if (!i.decides.empty()) line(streams, fmt::format("Decides {}.", i.decides));
    line(streams, fmt::format("{} = {}", i.of.key, i.blank));
    streams.out << '\n';
}

void under(std::string const& words, char with, Streams& streams) {
    auto const shown = fitted_line(fit_to_print(words), paper_width(streams));
    streams.out << shown << '\n' << std::string(character_count(shown), with) << "\n\n";
}

void list_head(Session const& s, Streams& streams) {
    auto title = "Go and measure: " + or_else(s.building.name, shown_file(s.file));
    if (!s.building.revision.empty()) title += ", revision " + s.building.revision;
    title += ", " + s.building.code;
    streams.out << in_lines(fit_to_print(title), paper_width(streams), 4) << "\n\n"
                << in_lines(english().words(caution()), paper_width(streams), 0) << "\n\n"
                << in_lines("Handles, labels, nameplates, receptacles and lengths are read with every cover on: do "
                            "those first. Open a panel or a box only for what is then still blank.",
                            paper_width(streams), 0)
                << "\n\nBy ______________________________   Date ______________\n\n";
}

} // namespace

std::vector<MeasureItem> measure_items(Session const& s) {
    std::vector<MeasureItem> items;
    for (ToMeasure const& m : to_measure({s.building, s.plan, *s.book})) items.push_back(item(s, m));
    auto const walk = [&](MeasureItem const& i) {
        auto const spots = filed_spots(s, i.of);
        bool const by_space = i.of.how.at == Station::panel && i.of.thing == Subject::circuit;
        int const first = by_space ? (spots.empty() ? std::numeric_limits<int>::max() : spots.front().space) : 0;
        return std::tuple(panel_number(s.building, i.of.panel), i.of.how.at, first);
    };
    std::ranges::stable_sort(items, {}, walk);
    return items;
}

void list_to_measure(Session const& s, Streams& streams) {
    auto const items = measure_items(s);
    if (items.empty()) {
        streams.out << "Nothing to measure: every figure is there.\n";
        return;
    }
    list_head(s, streams);
    MeasureItem const* last = nullptr;
    for (MeasureItem const& i : items) {
        bool const other_panel = !last || last->of.panel != i.of.panel;
        if (other_panel)
            under(i.of.panel.empty() ? "The building" : fmt::format("Panel \"{}\"", i.of.panel), '=', streams);
        if (other_panel || last->of.how.at != i.of.how.at) under(std::string(heading(i.of.how.at)), '-', streams);
        list_item(i, streams);
        last = &i;
    }
    auto const last_words = in_lines(fmt::format("{} to find. Write each into {} in its place, then:",
                                                 counted(static_cast<int>(items.size()), "figure"), shown_file(s.file)),
                                     paper_width(streams), 0);
    // A command is not broken: it may be pasted.
    auto const command = "legwork check " + shell_file(s.file);
    auto const used = character_count(std::string_view(last_words).substr(last_words.rfind('\n') + 1));
    streams.out << last_words << (used + 1 + character_count(command) > paper_width(streams) ? '\n' : ' ') << command
                << '\n';
}

} // namespace legwork
