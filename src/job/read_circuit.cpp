// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// [[circuit]], but its home run.
#include "job/keys/circuit.h"
#include "job/reading.h"

#include "units/decimal.h"

#include <algorithm>
#include <charconv>
#include <fmt/format.h>

namespace legwork {

namespace {

// 7, "7", "7b", "7B"
std::optional<Spot> spot(TomlValue const& v) {
    if (auto const* number = std::get_if<std::int64_t>(&v.is))
        return *number > 0 && *number <= kMostSpaces ? std::optional(Spot{static_cast<int>(*number), 0}) : std::nullopt;
    auto const* text = std::get_if<std::string>(&v.is);
    if (!text || text->empty()) return std::nullopt;
    Spot s;
    auto const* const end = text->data() + text->size();
    auto const [rest, wrong] = std::from_chars(text->data(), end, s.space);
    if (wrong != std::errc{} || s.space < 1 || s.space > kMostSpaces || text->front() == '0') return std::nullopt;
    if (rest == end) return s;
    auto const half = small_letters(std::string_view(rest, 1));
    if (rest + 1 != end || (half != "a" && half != "b")) return std::nullopt;
    s.half = half[0];
    return s;
}

void read_space(TableReader& t, typed::Circuit& c) {
    if (auto const* said = t.entry("space")) {
        c.space = spot(said->value);
        if (!c.space)
            t.complain("space", "this is no space of a panel",
                       "write  space = 7,  or \"7a\" or \"7b\" for a half; a two-pole breaker by its lower number");
    }
    c.fixed = t.flag("fixed").value_or(false);
    if (c.fixed && !t.has("space")) t.complain("fixed", "\"fixed\" needs a space to stay on", "add  space = 7");
}

Protection read_protection(TableReader& t, std::string_view key) {
    auto const* said = t.entry(key);
    if (!said) return Protection::unsaid;
    if (auto const* yes = std::get_if<bool>(&said->value.is)) return *yes ? Protection::breaker : Protection::no;
    auto const* word = std::get_if<std::string>(&said->value.is);
    if (word && *word == "breaker") return Protection::breaker;
    if (word && *word == "outlet") return Protection::outlet;
    t.complain(key, fmt::format("\"{}\" says where the protection sits, and this does not", key),
               fmt::format("write {}", kind_in_words(*find(kCircuitTable, key))));
    return Protection::unsaid;
}

void read_breaker(TableReader& t, typed::Circuit& c) {
    c.breaker = t.amps("breaker");
    auto const fuse = t.amps("fuse");
    if (t.has("fuse") && t.has("breaker"))
        t.complain("fuse", "\"fuse\" and \"breaker\" both say what protects this circuit", "keep one of the two");
    if (fuse) c.breaker = fuse;
    c.poles = t.number("poles").value_or(1);
    c.mca = t.amps("mca");
    c.mop = t.amps("mop");
}

void read_load(TableReader& t, typed::Circuit& c) {
    if (auto const said = t.load("load")) {
        if (auto const* va = std::get_if<VoltAmperes>(&*said)) c.load = *va;
        if (auto const* amps = std::get_if<Amps>(&*said)) c.load_amps = *amps;
    }
    c.measured = t.amps("measured");
}

void read_tie(TableReader& t, typed::Circuit& c) {
    auto const tie = t.choice("tie", {Tie::none, Tie::handle_tie, Tie::two_pole_breaker});
    c.tie_said = tie.has_value();
    c.tie = tie.value_or(c.poles == 2 ? Tie::two_pole_breaker : Tie::none);
    c.multiwire = t.text("multiwire");
    if (tie && *tie != Tie::none && c.poles == 1 && !t.has("multiwire"))
        t.complain("tie", "a tie joins two poles, and this circuit has one",
                   "add  poles = 2  or  multiwire = \"K\",  or take  tie  away");
}

void read_outlets(Reading& r, TableReader& t, typed::Circuit& c) {
    for (auto const& [type, at] : t.texts("outlets")) {
        if (!r.words.receptacles.empty() && !contains(r.words.receptacles, type))
            r.out.add(at, fmt::format("{}: there is no receptacle type {}", t.what(), quoted(type)),
                      did_you_mean(type, r.words.receptacles,
                                   "write its NEMA name: \"5-20R\";  legwork explain --table receptacles  lists them"));
        c.outlets.push_back(type);
    }
    c.outlet_count = t.count("outlet_count");
}

void read_reach(TableReader& t, typed::Circuit& c) {
    auto const* said = t.entry("reach");
    if (said && std::holds_alternative<TomlArray>(said->value.is)) {
        c.reach_spaces = t.numbers("reach");
    } else if (said) {
        c.reach_side = t.word("reach");
    }
}

void read_wires(TableReader& t, typed::Circuit& c) {
    c.colors = read_colors(t, "colors");
    c.hot = read_color(t, "hot");
    if (!c.hot.empty() && !c.colors.empty() && !contains(c.colors, c.hot))
        t.complain("hot", fmt::format("the cable has no {} conductor", quoted(c.hot)), "name one of its  colors");
    c.third = t.word("third");
    c.metal = t.choice("metal", {Metal::copper, Metal::aluminium, Metal::aluminium}).value_or(Metal::copper);
    c.terminals = t.choice("terminals", {60, 75, 60, 75, 60, 75}).value_or(60);
    c.wiring = t.choice("wiring", {Wiring::cable, Wiring::conduit}).value_or(Wiring::cable);
    c.where = read_where(t);
}

void read_words(Reading& r, TableReader& t, typed::Circuit& c) {
    c.name = t.text("name");
    c.name_fr = t.text("name_fr");
    c.name_es = t.text("name_es");
    c.room = t.text("room");
    c.note = t.text("note");
    c.box = t.text("box");
    c.building = t.text("building");
    for (auto const& [mark, at] : t.texts("runs_with"))
        if (r.is_circuit(t, mark, at)) c.runs_with.push_back(mark);
}

void read_flags(TableReader& t, typed::Circuit& c) {
    c.existing = t.flag("existing").value_or(false);
    c.continuous = t.flag("continuous");
    c.motor = t.flag("motor");
    c.fastened = t.flag("fastened");
    c.split = t.flag("split").value_or(false);
    c.switch_loop = t.flag("switch_loop").value_or(false);
    c.off = t.flag("off").value_or(false);
    c.single = t.flag("single").value_or(false);
    c.interlocked = t.flag("interlocked").value_or(false);
    c.gfci = read_protection(t, "gfci");
    c.afci = read_protection(t, "afci");
}

// After all else: the guess looks at poles and outlets too.
void read_use(Reading& r, TableReader& t, typed::Circuit& c) {
    c.use = t.text("use");
    if (!c.use.empty() && !contains(r.words.uses, c.use)) t.unknown_word(t.value_at("use"), "use", c.use, r.words.uses);
    if (t.has("use") || !r.words.guess_use) return;
    c.use = r.words.guess_use(c);
    c.use_guessed = !c.use.empty();
}

void read_circuit(Reading& r, TableReader& t, typed::Circuit& c) {
    t.allow_questions(c.asked);
    read_words(r, t, c);
    c.panel = t.text("panel");
    read_breaker(t, c);
    read_tie(t, c);
    read_load(t, c);
    read_home_run(r, t, c);
    read_space(t, c);
    read_flags(t, c);
    read_outlets(r, t, c);
    read_wires(t, c);
    read_reach(t, c);
    read_use(r, t, c);
    t.finish();
    record(r, Subject::circuit, c.mark, t);
    // Rules ask for these under one key.
    auto const same = [&](std::string_view key, std::string_view as) {
        if (t.has(key))
            r.places.set(Subject::circuit, c.mark, std::string(as),
                         r.places.find(Subject::circuit, c.mark, std::string(key)));
    };
    same("fuse", "breaker");
    same("segments", "cable");
    same("segments", "length");
}

} // namespace

void read_circuits(Reading& r) {
    for (std::size_t i = 0; i < r.circuits.size(); ++i) read_circuit(r, r.circuits[i], r.job.circuits[i]);
}

} // namespace legwork
