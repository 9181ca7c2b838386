// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// [dwelling].
#include "job/reading.h"
#include "units/text.h"

#include <fmt/format.h>

namespace legwork {

namespace {
void read_areas(TableReader& t, typed::Dwelling& d) {
    for (auto const* key : {"basement", "area"})
        if (auto const* said = t.entry(key))
            if (auto const* typed = std::get_if<std::string>(&said->value.is)) d.area_units = units_of_area(*typed);
    d.area = t.area("area");
    d.basement = t.area("basement");
}

bool is_load(Reading const& r, std::string const& word) {
    return r.words.uses.empty() || contains(r.words.uses, word) || contains(r.marks, word);
}

std::vector<std::string> read_group(Reading& r, TableReader& t, TomlValue const& v) {
    std::vector<std::string> group;
    auto const* words = std::get_if<TomlArray>(&v.is);
    for (TomlValue const& one : words ? *words : TomlArray{}) {
        auto const* word = std::get_if<std::string>(&one.is);
        if (word && is_load(r, *word)) {
            if (contains(group, *word))
                r.out.add(one.begin, fmt::format("{}: {} is named twice in one group", t.what(), quoted(*word)),
                          "name each load of a group once");
            group.push_back(*word);
            continue;
        }
        auto known = r.words.uses;
        known.insert(known.end(), r.marks.begin(), r.marks.end());
        auto const message = word ? fmt::format("{} is neither a use nor the mark of a circuit", quoted(*word))
                                  : std::string("a group holds uses and marks in quotes");
        r.out.add(one.begin, fmt::format("{}: {}", t.what(), message),
                  word && !r.out.full() ? did_you_mean(*word, known, "name a use or a mark")
                                        : "write  together = [[\"heating\", \"air conditioner\"]]");
    }
    if (!words || words->size() < 2)
        r.out.add(v.begin, fmt::format("{}: a group of \"together\" is a list of two loads or more", t.what()),
                  "write  together = [[\"heating\", \"air conditioner\"]]  with double brackets");
    return group;
}

void read_together(Reading& r, TableReader& t, typed::Dwelling& d) {
    auto const* said = t.entry("together");
    if (!said) return;
    auto const* groups = std::get_if<TomlArray>(&said->value.is);
    if (groups && groups->empty())
        t.complain("together", "\"together\" names no loads",
                   "write  together = [[\"heating\", \"air conditioner\"]]  or take the line away");
    if (groups)
        for (TomlValue const& group : *groups) {
            d.together.push_back(read_group(r, t, group));
            if (!std::holds_alternative<TomlArray>(group.is)) break; // the brackets of all are missing
        }
    else
        t.complain("together", "\"together\" is a list of groups of loads that run at the same time",
                   "write  together = [[\"heating\", \"air conditioner\"]]");
}

void read_peak(TableReader& t, typed::Dwelling& d) {
    auto inner = t.table("peak");
    if (!inner) return;
    std::vector<std::string> asked;
    inner->allow_questions(asked);
    auto const amps = inner->amps("amps");
    auto const days = inner->count("days");
    if (!inner->has("amps"))
        inner->complain("", "it has no current", "add  amps = \"62 A\",  the largest that was read");
    if (!inner->has("days"))
        inner->complain("", "it does not say over how many days it was read",
                        "add  days = 365:  of a year's metering, or of a recorder that hung there 30 days");
    inner->finish();
    if (!asked.empty()) d.asked.emplace_back("peak");
    if (amps && days) d.peak = typed::PeakDraw{*amps, *days};
}

void read_energy_management(Reading& r, TableReader& t, typed::Dwelling& d) {
    auto inner = t.table("energy_management");
    if (!inner) return;
    std::vector<std::string> asked;
    inner->allow_questions(asked);
    auto const limit = inner->amps("limit");
    std::vector<std::string> circuits;
    for (auto const& [mark, at] : inner->texts("circuits")) {
        if (!contains(r.marks, mark) && contains(r.words.uses, mark)) {
            r.out.add(at, fmt::format("{}: {} is a use, not the mark of a circuit", inner->what(), quoted(mark)),
                      "name what the device holds back by its marks");
            continue;
        }
        if (!r.is_circuit(*inner, mark, at)) continue;
        if (contains(circuits, mark))
            r.out.add(at, fmt::format("{}: {} is named twice", inner->what(), mark), "name each circuit once");
        else
            circuits.push_back(mark);
    }
    if (!inner->has("limit"))
        inner->complain("", "it has no limit", "add  limit = \"40 A\",  what the device is set to");
    auto const* named = inner->entry("circuits");
    auto const* list = named ? std::get_if<TomlArray>(&named->value.is) : nullptr;
    if (list && list->empty()) inner->complain("circuits", "it names no circuit", "add  circuits = [\"EV\"]");
    if (!inner->has("circuits")) inner->complain("", "it names no circuit", "add  circuits = [\"EV\"]");
    inner->finish();
    if (!asked.empty()) d.asked.emplace_back("energy_management");
    if (limit && !circuits.empty()) d.energy_management = typed::EnergyManagement{*limit, std::move(circuits)};
}
} // namespace

void read_dwelling(Reading& r, TableReader t) {
    typed::Dwelling& d = r.job.dwelling.emplace();
    t.allow_questions(d.asked);
    read_areas(t, d);
    d.small_appliance_circuits = t.count("small_appliance_circuits");
    d.laundry_circuits = t.count("laundry_circuits");
    d.thermostats = t.count("thermostats");
    read_together(r, t, d);
    read_peak(t, d);
    read_energy_management(r, t, d);
    t.finish();
    record(r, Subject::dwelling, "", t);
}

} // namespace legwork
