// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/gravity.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
constexpr std::array kGravities{
    // rule, NEC, CE
    Gravity{"mw-one-panel", "E", "E"},
    Gravity{"mw-same-space", "E", "E"},
    Gravity{"mw-in-phase-supply", "E", "E"},
    Gravity{"mw-opposite-legs", "E", "E"},
    Gravity{"mw-not-adjacent", "E/W", "E/W"},
    Gravity{"mw-disconnect", "E/W", "E/W, W, N"},
    Gravity{"mw-line-to-line", "E", "E"},
    Gravity{"mw-unequal", "W", "W"},
    Gravity{"mw-conductors", "E", "E"},
    Gravity{"mw-neutral-current", "E", "E"},
    Gravity{"mw-one-pole-gfci", "E", "E"},
    Gravity{"mw-pigtail", "N", "N"},
    Gravity{"mw-grouping", "N", "-"},
    Gravity{"mw-open-neutral", "N", "N"},
    Gravity{"mw-unpaired", "W", "W"},
    Gravity{"mw-keep-on", "W", "W"},

    Gravity{"wire-breaker-fits", "E", "E"},
    Gravity{"wire-load-fits", "E", "E"},
    Gravity{"wire-continuous", "E", "E, W"},
    Gravity{"wire-breaker-size", "W", "W"},
    Gravity{"wire-outlet", "E, E/W", "E, E/W"},
    Gravity{"wire-conductors", "E/W, W", "E/W, W"},
    Gravity{"wire-drop", "N", "W"},
    Gravity{"wire-smaller-downstream", "N", "N"},
    Gravity{"wire-outlet-count", "-", "W"},

    Gravity{"panel-240-on-120", "E, W", "E, W"},
    Gravity{"panel-208-heat", "W", "W"},
    Gravity{"panel-dead-space", "E", "E"},
    Gravity{"panel-two-legs", "E", "E"},
    Gravity{"panel-no-tandem", "E", "E"},
    Gravity{"panel-circuits", "E", "E"},
    Gravity{"panel-no-room", "E", "E"},
    Gravity{"panel-main-overloaded", "W, N", "W, N"},
    Gravity{"panel-legs-uneven", "W", "W"},
    Gravity{"panel-backfeed", "E", "W"},
    Gravity{"panel-neutral-terminals", "E", "E"},
    Gravity{"panel-feeder-wires", "E/W", "E/W"},
    Gravity{"panel-sub-neutral", "N", "N"},
    Gravity{"panel-spare-spaces", "-", "E, W"},
    Gravity{"panel-sign", "N", "N"},
    Gravity{"panel-hang", "W", "-"},
    Gravity{"panel-outbuilding", "E", "W"},

    Gravity{"dir-unnamed", "E", "E"},
    Gravity{"dir-vague", "W", "W"},
    Gravity{"dir-duplicate", "W", "W"},
    Gravity{"dir-person", "E/W, W", "W"},
    Gravity{"dir-name-too-long", "W", "W"},
    Gravity{"dir-no-letter", "W", "W"},

    Gravity{"tape-white-as-hot", "N, E", "N, E"},
    Gravity{"tape-as-neutral", "E", "W"},
    Gravity{"tape-green", "E", "E"},

    Gravity{"gfci-needed", "E/W, N", "E/W, N"},
    Gravity{"afci-needed", "E/W, N", "E/W, N"},

    Gravity{"need-kitchen", "W", "W"},
    Gravity{"need-laundry", "W", "W"},
    Gravity{"need-bath", "W", "W"},
    Gravity{"need-garage", "W", "W"},
    Gravity{"need-outdoor", "W", "W"},
    Gravity{"need-kitchen-share", "W", "W"},
    Gravity{"need-dedicated", "W", "W"},
    Gravity{"need-neutral-at-switch", "W", "W"},

    Gravity{"load-service", "E/W, W, N", "E/W, W, N"},

    Gravity{"job-assumed", "N", "N"},
    Gravity{"job-unknown", "N", "N"},
    Gravity{"job-accept-unused", "W", "W"},
};

// Calls `take` with each short form between the commas.
template <class Take>
void for_each_form(std::string_view forms, Take take) {
    while (!forms.empty()) {
        auto const comma = forms.find(", ");
        take(forms.substr(0, comma));
        forms.remove_prefix(comma == std::string_view::npos ? forms.size() : comma + 2);
    }
}

std::string_view words_of_form(std::string_view form) {
    if (form == "E") return "an error";
    if (form == "W") return "a warning";
    if (form == "N") return "a note";
    if (form == "E/W") return "an error, on existing work a warning";
    return "silent";
}
} // namespace

std::span<Gravity const> gravities() { return kGravities; }

Gravity const* gravity_of(std::string_view rule) {
    auto const at = std::ranges::find(kGravities, rule, &Gravity::rule);
    return at == kGravities.end() ? nullptr : &*at;
}

std::string_view in(Gravity const& g, Family family) { return family == Family::nec ? g.nec : g.ce; }

std::string gravity_words(std::string_view forms) {
    std::string words;
    for_each_form(forms, [&](std::string_view form) {
        words += words.empty() ? "" : "; or ";
        words += words_of_form(form);
    });
    return words;
}

bool allows(std::string_view forms, Severity severity) {
    bool allowed = false;
    for_each_form(forms, [&](std::string_view form) {
        if (severity == Severity::error) allowed |= form == "E" || form == "E/W";
        if (severity == Severity::warning) allowed |= form != "N" && form != "-";
        if (severity == Severity::note) allowed |= form == "N";
    });
    return allowed;
}

} // namespace legwork
