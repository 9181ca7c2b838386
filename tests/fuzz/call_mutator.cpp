// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The words of a call, or the job it is about.
#include "fuzz/call.h"
#include "fuzz/mutate.h"
#include "fuzz/mutator.h"

#include <array>

namespace fuzz {

namespace {

constexpr std::array kWords = std::to_array<std::string_view>({
    "new",
    "check",
    "balance",
    "print",
    "load",
    "compare",
    "forms",
    "explain",
    "job.toml",
    "-",
    "mine.toml",
    "--json",
    "--help",
    "-h",
    "--version",
    "--measure",
    "--by",
    "circuit",
    "theme",
    "--rule",
    "--min",
    "error",
    "warning",
    "note",
    "--propose",
    "--write",
    "--table",
    "--best",
    "--moves",
    "3",
    "0",
    "-1",
    "10001",
    "--seconds",
    "0.05",
    "--out",
    "sheets",
    "--sheet",
    "labels",
    "load",
    "--form",
    "labels-a4",
    "--format",
    "pdf",
    "svg",
    "png",
    "--method",
    "optional",
    "existing",
    "measured",
    "standard",
    "--panel",
    "Main",
    "--add",
    "range, 40 A, 2 poles",
    "--",
    "--json=false",
    "--write=",
    "--moves=2",
    "--out=.",
    "wire-drop",
    "dir-name-too-long",
    "",
    "\xC3\xA9\xFF\x1B[1m",
});

std::string with_words(Call const& call) {
    std::string text;
    for (auto const& word : call.words) text += word + '\n';
    return text + '\n' + call.job;
}

} // namespace

std::string changed(std::string_view text, Dice& dice) {
    auto call = call_of(text);
    if (dice.once_in(3)) {
        call.job = mutated(call.job, job_keys(), dice);
        return with_words(call);
    }
    for (auto changes = 1 + dice.below(3); changes > 0; --changes) {
        auto const at = dice.below(call.words.size() + 1);
        auto const here = call.words.begin() + static_cast<std::ptrdiff_t>(at);
        std::string word(dice.one_of(kWords));
        if (at < call.words.size() && dice.once_in(3))
            call.words.erase(here);
        else if (at < call.words.size() && dice.once_in(2))
            *here = word;
        else
            call.words.insert(here, word);
    }
    return with_words(call);
}

} // namespace fuzz
