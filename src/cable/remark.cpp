// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cable/conductors.h"

#include "codebook/cite.h"
#include "words/say.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// The first usual hot colour that no other conductor of the cable has, so that the two can be told apart.
std::string hot_tape(std::vector<WireColor> const& colors) {
    for (auto const hot : {Insulation::red, Insulation::black, Insulation::blue})
        if (std::ranges::find(colors, hot, &WireColor::is) == colors.end()) return std::string(name(hot));
    return std::string(name(Insulation::red));
}

// `tape`: what it may be taped with; empty where another conductor is the way out.
Remark as_remark(Remarking r, std::string const& tape) {
    switch (r) {
    case Remarking::never: return Remark::forbidden;
    case Remarking::disputed: return Remark::ask_first;
    case Remarking::unread: return tape.empty() ? Remark::forbidden : Remark::ask_first;
    case Remarking::not_asked: // taped all the same: whoever opens the box next takes a white for a neutral
    case Remarking::allowed: break;
    }
    return Remark::tape;
}

void apply(Conductor& c, RemarkingRow const& row, CodeBook const& book, std::string tape, Phrase why) {
    c.remark = as_remark(row.as, tape);
    if (c.remark != Remark::forbidden) c.tape = std::move(tape);
    c.why = row.as == Remarking::unread ? say("wire/unread", as_is(book.edition)) : std::move(why);
    c.reference = cite(book, row.topic);
    c.reference.source = row.source;
}

void white_as_hot(Conductor& c, std::vector<WireColor> const& colors, CableTask const& task, CodeBook const& book) {
    auto const& table = book.remarking;
    if (task.wiring == Wiring::conduit)
        return apply(c, table.white_as_hot_in_conduit, book, {}, say("wire/conduit-white-hot"));
    if (task.wires == Wires::switch_loop) {
        auto const& row = table.white_in_switch_loop;
        return apply(c, row, book, hot_tape(colors),
                     row.as == Remarking::not_asked ? say("wire/switch-loop-unasked") : say("wire/switch-loop"));
    }
    apply(c, table.white_as_hot_in_cable, book, hot_tape(colors), say("wire/white-hot"));
}

Phrase awg(Gauge gauge) { return with_unit(fmt::format("{} AWG", name(gauge))); }

void colored_neutral(Conductor& c, CableTask const& task, CodeBook const& book) {
    auto const& table = book.remarking;
    if (task.gauge >= table.large_from)
        return apply(c, table.large_as_neutral, book, "white", say("wire/large-neutral", awg(table.large_from)));
    auto const& row =
        task.wiring == Wiring::conduit ? table.small_as_neutral_in_conduit : table.small_as_neutral_in_cable;
    apply(c, row, book, "white",
          row.as == Remarking::disputed ? say("wire/neutral-disputed")
                                        : say("wire/small-neutral", awg(table.large_from)));
}
} // namespace

void remark(Conductor& c, std::vector<WireColor> const& colors, CableTask const& task, CodeBook const& book) {
    bool const unused = c.job == ConductorJob::spare || c.job == ConductorJob::ground;
    if (task.wires == Wires::dc || unused) return;
    if (is_green(c.insulation)) return apply(c, book.remarking.green, book, {}, say("wire/green"));
    bool const neutral = c.job == ConductorJob::neutral;
    if (neutral == is_white(c.insulation)) return;
    if (neutral)
        colored_neutral(c, task, book);
    else
        white_as_hot(c, colors, task, book);
}

} // namespace legwork
