// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// [[panel]] and [[supply]].
#include "job/reading.h"
#include "job/supply_words.h"

#include <algorithm>
#include <fmt/format.h>

namespace legwork {

namespace {

// "Main/SP": the mark stands behind the last slash.
std::optional<typed::FeederName> read_feeder(TableReader& t) {
    auto const said = t.text("feeder", TableReader::kMostLetters + 1 + kMostOfMark);
    if (said.empty()) return std::nullopt;
    auto const slash = said.rfind('/');
    if (slash != std::string::npos && slash > 0 && slash + 1 < said.size())
        return typed::FeederName{said.substr(0, slash), said.substr(slash + 1)};
    t.complain("feeder", fmt::format("{} does not name a panel and a circuit", quoted(said)),
               "write the panel, a slash, and the mark of the circuit that feeds this one: \"Main/SP\"");
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
    p.feeder = read_feeder(t);
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
        p.bus_legs = t.choice<BusLegs>("legs", {{"by row", BusLegs::by_row}, {"by column", BusLegs::by_column}})
                         .value_or(BusLegs::by_row);
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
    p.spaces = t.required_number("spaces", 1, kMostSpaces, "24").value_or(0);
    int const last = p.spaces > 0 ? p.spaces : kMostSpaces;
    p.tandem = t.numbers("tandem", 1, last);
    p.blocked = t.numbers("blocked", 1, last);
    p.dead = t.numbers("dead", 1, last);
    p.numbering = t.choice<Numbering>("numbering", {{"across", Numbering::across}, {"down", Numbering::down}})
                      .value_or(Numbering::across);
    p.first = t.choice<Corner>("first", {{"top left", Corner::top_left},
                                         {"top right", Corner::top_right},
                                         {"bottom left", Corner::bottom_left},
                                         {"bottom right", Corner::bottom_right}})
                  .value_or(Corner::top_left);
    p.hang = t.choice<Hang>("hang", {{"upright", Hang::upright},
                                     {"upside down", Hang::upside_down},
                                     {"turned left", Hang::turned_left},
                                     {"turned right", Hang::turned_right}})
                 .value_or(Hang::upright);
    p.main_at = t.choice<PanelEnd>("main_at", {{"top", PanelEnd::top}, {"bottom", PanelEnd::bottom}});
    read_bus(t, p);
}

void read_panel(Reading& r, TableReader& t, typed::Panel& p) {
    t.allow_questions(p.asked);
    read_geometry(t, p);
    read_source(r, t, p);
    p.main = t.amps("main");
    p.bus = t.amps("bus");
    p.output = t.amps("output");
    p.fed_from = t.text("fed_from");
    p.circuits_max = t.count("circuits_max", 1, 4 * kMostSpaces);
    p.neutral_terminals = t.count("neutral_terminals", 1, 4 * kMostSpaces);
    p.building = t.text("building");
    p.existing = t.flag("existing").value_or(false);
    t.finish();
    record(r, Subject::panel, p.name, t);
}

void read_supply(Reading& r, TableReader& t, typed::Supply& s) {
    t.allow_questions(s.asked);
    auto const kind = read_supply_kind(t, "kind");
    if (!t.has("kind")) t.complain("kind", "\"kind\" is missing", "add  kind = \"120/240\"");
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
    for (std::size_t i = 0; i < r.panels.size(); ++i) read_panel(r, r.panels[i], r.job.panels[i]);
    for (std::size_t i = 0; i < r.supplies.size(); ++i)
        if (auto const& name = r.job.supplies[i].name; !name.empty() && !is_listed(r, name))
            r.supplies[i].complain("", "no panel is fed by it",
                                   fmt::format("add it to a panel:  supplies = [\"{}\"],  or take it away", name));
}

} // namespace legwork
