// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One colour with two meanings in one panel of direct current. The channels of strips stand apart: their colours are
// their names.
#include "cable/run.h"
#include "rules/dc/list.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <map>

namespace legwork {

namespace {
bool has_channels(CableRun const& cable) {
    return std::ranges::any_of(cable.conductors, [](Conductor const& w) { return w.job == ConductorJob::channel; });
}

using Circuits = std::vector<Circuit const*>;
struct Meanings {
    Circuits plus, minus;
};

void add(Circuits& to, Circuit const* c) {
    if (std::ranges::find(to, c) == to.end()) to.push_back(c);
}

std::string marks(Circuits const& all) {
    std::vector<std::string> words;
    for (Circuit const* c : all) words.push_back(c->mark);
    return listed(words);
}

// By colour as made, of the home runs and what follows them.
std::map<std::string, Meanings> meanings(std::vector<CableRun> const& cables, Panel const& panel) {
    std::map<std::string, Meanings> of_color;
    for (CableRun const& cable : cables) {
        if (!cable.of->of_circuit || has_channels(cable)) continue;
        Circuit const* c = cable.of->carries.front();
        if (c->panel != &panel) continue;
        for (Conductor const& w : cable.conductors) {
            if (w.job == ConductorJob::hot) add(of_color[w.color].plus, c);
            if (w.job == ConductorJob::neutral) add(of_color[w.color].minus, c);
        }
    }
    return of_color;
}

Finding two_meanings(Case const& c, std::string const& color, Meanings const& m) {
    Circuits all = m.plus;
    for (Circuit const* each : m.minus) add(all, each);
    auto f = finding(c, tape_dc, Gravity::usual, about(all, "colors"));
    f.message = fmt::format("{} is plus in {} and minus in {}", color, marks(m.plus), marks(m.minus));
    f.message.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(f.message.front())));
    f.fix = "Pull one kind of cable for all (red and black, or red and yellow), or say by  colors  and  hot  how the "
            "wires really go; else wrap every plus red and every minus black at both ends, and write the volts beside";
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    auto const cables = cable_runs(c.building, c.book);
    for (Panel const& panel : c.building.panels) {
        if (!panel.is_dc()) continue;
        auto const of_color = meanings(cables, panel);
        if (of_color.empty()) continue;
        seen.looked(static_cast<int>(panel.circuits.size()));
        for (auto const& [color, m] : of_color)
            if (!m.plus.empty() && !m.minus.empty()) seen.found(two_meanings(c, color, m));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const tape_dc{
    .id = "tape-dc",
    .asks = "No colour of wire is plus in one circuit of a DC panel and minus in another.",
    .why = "Black is a hot wire in a 120 V box and the minus of a battery; house cable has black and white, where "
           "other cable has red and black: with both in one panel black is plus here and minus there. Somebody who "
           "takes one for the other burns out a controller or touches what they thought was dead. The channels of "
           "a lighting strip are left out: their colours are their names, and a green or white one is neither ground "
           "nor neutral.",
    .remedy = "Mark plus red and minus black at every end, write the volts beside the marks, and keep DC wires out of "
              "the boxes of house wiring.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .stops_cables = false,
    .judge = judge,
};

} // namespace legwork
