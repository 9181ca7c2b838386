// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Multiwire pairs: two members, one cable. What is said of it on one member is copied onto the other.
#include "job/reading.h"

#include <fmt/format.h>
#include <map>

namespace legwork {

namespace {

struct Member {
    typed::Circuit& circuit;
    TableReader& table;
};

// Gives both the value that one of them has; complains at the later one when they differ.
template <class T>
void share(Member a, Member b, std::string_view key, T& of_a, T& of_b, bool a_says, bool b_says) {
    if (a_says && b_says && of_a != of_b) {
        b.table.complain(key,
                         fmt::format("\"{}\" differs from that of {}, in line {}, and they share one cable", key,
                                     a.circuit.mark, a.table.complaints().source().place(a.table.value_at(key)).line),
                         "say it once, or the same for both");
        return;
    }
    if (a_says)
        of_b = of_a;
    else if (b_says)
        of_a = of_b;
}

void share_run(Member a, Member b) {
    if (a.circuit.run.empty() && b.circuit.run.empty()) return;
    for (auto* c : {&a.circuit, &b.circuit})
        if (c->run.empty()) c->run.emplace_back();
    typed::Segment &of_a = a.circuit.run.front(), &of_b = b.circuit.run.front();
    auto const key = [](Member m, std::string_view plain_key) {
        return m.table.has("segments") ? std::string_view("segments") : plain_key;
    };
    share(a, b, key(b, "cable"), of_a.kind, of_b.kind, !of_a.kind.empty(), !of_b.kind.empty());
    share(a, b, key(b, "length"), of_a.length, of_b.length, of_a.length.has_value(), of_b.length.has_value());
    if (of_a.to.empty()) of_a.to = of_b.to;
    if (of_b.to.empty()) of_b.to = of_a.to;
}

void share_tie(Member a, Member b) {
    share(a, b, "tie", a.circuit.tie, b.circuit.tie, a.circuit.tie_said, b.circuit.tie_said);
    a.circuit.tie_said = b.circuit.tie_said = a.circuit.tie_said || b.circuit.tie_said;
    if (a.circuit.tie != Tie::two_pole_breaker || b.circuit.tie != Tie::two_pole_breaker) return;
    auto &of_a = a.circuit.breaker, &of_b = b.circuit.breaker;
    if (of_a && of_b && *of_a != *of_b)
        b.table.complain("breaker",
                         fmt::format("a two-pole breaker has one rating, and {} has another", a.circuit.mark),
                         "give both the same breaker, or  tie = \"handle tie\"  for two single breakers");
    else if (of_a)
        of_b = of_a;
    else
        of_a = of_b;
}

void match(Reading& r, Member a, Member b) {
    for (auto const& m : {a, b})
        if (m.circuit.poles == 2)
            m.table.complain("poles", "a member of a multiwire pair has one pole",
                             "take  poles  away; for one 240 V circuit take  multiwire  away");
    share_run(a, b);
    share_tie(a, b);
    auto const said = [](Member m, std::string_view key) { return m.table.has(key); };
    share(a, b, "colors", a.circuit.colors, b.circuit.colors, said(a, "colors"), said(b, "colors"));
    share(a, b, "wiring", a.circuit.wiring, b.circuit.wiring, said(a, "wiring"), said(b, "wiring"));
    share(a, b, "metal", a.circuit.metal, b.circuit.metal, said(a, "metal"), said(b, "metal"));
    if (a.circuit.box.empty()) a.circuit.box = b.circuit.box;
    if (b.circuit.box.empty()) b.circuit.box = a.circuit.box;
    if (!a.circuit.hot.empty() && a.circuit.hot == b.circuit.hot)
        b.table.complain("hot", fmt::format("{} is the hot of {} already", quoted(b.circuit.hot), a.circuit.mark),
                         "give each of the two its own conductor");
    for (auto const* key : {"cable", "length", "segments", "colors", "tie", "wiring", "metal"}) {
        if (said(a, key) == said(b, key)) continue;
        auto const& from = said(a, key) ? a.circuit.mark : b.circuit.mark;
        r.places.set(Subject::circuit, said(a, key) ? b.circuit.mark : a.circuit.mark, key,
                     r.places.find(Subject::circuit, from, key));
    }
}

} // namespace

void match_pairs(Reading& r) {
    std::map<std::string, std::vector<std::size_t>> groups;
    for (std::size_t i = 0; i < r.circuits.size(); ++i)
        if (auto const& group = r.job.circuits[i].multiwire; !group.empty()) groups[group].push_back(i);
    for (auto const& [group, members] : groups) {
        auto const member = [&, &of = members](std::size_t n) {
            return Member{r.job.circuits[of[n]], r.circuits[of[n]]};
        };
        if (members.size() == 1)
            member(0).table.complain("multiwire", fmt::format("it is alone in the group {}", quoted(group)),
                                     "give the circuit that shares its neutral the same  multiwire,  or take it away");
        else if (members.size() > 2)
            member(2).table.complain(
                "multiwire",
                fmt::format("the group {} has {} circuits, and one neutral serves two", quoted(group), members.size()),
                "make pairs, each with a group of its own");
        else
            match(r, member(0), member(1));
    }
}

} // namespace legwork
