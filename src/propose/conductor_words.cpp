// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cable/run.h"
#include "propose/sizing.h"
#include "reckon/say.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// What a conductor is for that is neither a hot nor the neutral.
std::string extra(Circuit const& circuit) {
    return circuit.third == ThirdWire::neutral ? std::string() : std::string(word(circuit.third));
}
} // namespace

Insulated insulated_in(Circuit const& circuit, std::size_t piece) {
    Insulated in;
    in.pair = piece == 0 ? circuit.partner() : nullptr;
    in.hots = circuit.poles + (in.pair ? 1 : 0);
    in.neutral = needs_neutral(circuit);
    if (piece == 0) in.more = extra(circuit);
    if (in.pair && in.more.empty()) in.more = extra(*in.pair);
    if (piece > 0 && circuit.switch_loop && piece + 1 == circuit.run.size()) in.more = "switched, back from the switch";
    return in;
}

namespace {
std::string content(Circuit const& circuit, Insulated const& in) {
    if (in.pair) return fmt::format("one hot each of {} and {}, one neutral for both", circuit.mark, in.pair->mark);
    return fmt::format("{}{}", circuit.poles == 2 ? "two hots" : "a hot",
                       in.neutral ? " and a neutral" : ", no neutral");
}
} // namespace

std::vector<Step> conductor_steps(Circuit const& circuit, std::vector<std::string> const& cables) {
    std::vector<Step> steps;
    for (std::size_t piece = 0; piece < cables.size(); ++piece) {
        if (cables[piece].empty()) continue;
        auto const in = insulated_in(circuit, piece);
        steps.push_back(arithmetic(
            fmt::format("{}{}{}, and ground: {}", cables.size() > 1 ? fmt::format("in piece {}: ", piece + 1) : "",
                        content(circuit, in), in.more.empty() ? "" : ", one more (" + in.more + ")", cables[piece])));
    }
    if (steps.empty() || circuit.poles != 2 || needs_neutral(circuit)) return steps;
    if (circuit.use && circuit.use->may_use_neutral_at_240 && !circuit.lists_outlets)
        steps.push_back(arithmetic("if its terminals have an N, say third = \"neutral\" and let it be proposed again"));
    if (circuit.wiring == Wiring::conduit && circuit.colors.empty())
        steps.push_back(arithmetic("in conduit neither hot is white: pull black and red, and say colors = [\"black\", "
                                   "\"red\"]"));
    return steps;
}

} // namespace legwork
