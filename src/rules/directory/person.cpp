// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/demands.h"
#include "rules/directory/lines.h"
#include "rules/directory/list.h"
#include "rules/directory/naming.h"

#include <fmt/format.h>

namespace legwork {

namespace {
constexpr auto guessed = Gravity::second;

struct NamedPerson {
    PersonInName person;
    std::string_view key; // where it stands
};
std::optional<NamedPerson> person_of(Circuit const& circuit) {
    auto const in_name = person_in(circuit.name);
    if (in_name && in_name->sure) return NamedPerson{*in_name, "name"};
    auto const in_room = person_in(circuit.room);
    if (in_room && (!in_name || in_room->sure)) return NamedPerson{*in_room, in_name ? "name" : "room"};
    return in_name ? std::optional(NamedPerson{*in_name, "name"}) : std::nullopt;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Circuit const& circuit : c.building.circuits) {
        if (!circuit.listed) continue; // named after its panel, in no directory
        if (circuit.is_spare() || (!has_name(circuit) && circuit.room.empty())) continue;
        seen.looked();
        auto const named = person_of(circuit);
        if (!named) continue;
        auto const& person = named->person;
        auto f =
            finding(c, dir_person, person.sure ? Gravity::usual : guessed, about(circuit, std::string(named->key)));
        f.message = person.sure
                        ? fmt::format("{} is named after somebody (\"{}\"): it is true only while they live there",
                                      circuit.mark, person.words)
                        : fmt::format("{} seems to be named after somebody (\"{}\"): will the next people know?",
                                      circuit.mark, person.words);
        f.fix = "Name the room by its place or its lasting use (\"Bedroom, north-east corner\", \"Guest room\")";
        seen.found(std::move(f));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const dir_person{
    .id = "dir-person",
    .asks = "No name depends on who lives there.",
    .why = "\"Rosa's room\" is a riddle once Rosa has moved out. The NEC forbids descriptions that depend on who "
           "occupies the place; under the CE Code it is good practice.",
    .remedy = "Name the room by where it is or by what it is for as long as it stands: \"Bedroom, north-east corner\", "
              "\"Men's washroom\".",
    .gravity = {.nec = {Grade::error_on_new_work, Grade::warning}, .ce = {Grade::warning}},
    .stops_cables = false,
    .judge = judge,
};

} // namespace legwork
