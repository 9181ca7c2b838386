// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/call/usage.h"

#include "cli/call/parser.h"
#include "cli/call/split.h"
#include "cli/text/words.h"

#include <fmt/format.h>

namespace legwork {

std::string value_words(Option const& o) {
    if (!o.takes_value() || o.is_positional()) return {};
    return o.one_of && o.value.empty() ? joined(o.one_of(), "|") : std::string(o.value);
}

std::vector<Option> with_help(std::vector<Option> of) {
    of.push_back(kHelpOption);
    return of;
}

std::string help_words(Option const& o) {
    std::string words(o.help);
    if (o.kind == Kind::words) words += " (repeatable)";
    if (!o.unsaid.empty()) words += fmt::format("; {} when not said", o.unsaid);
    return words;
}

std::string company_words(Option const& o) {
    std::string words;
    if (!o.needs.empty()) words = fmt::format("Only with {}.", o.needs);
    if (!o.excludes.empty())
        words += fmt::format("{}Not with {}.", words.empty() ? "" : " ", joined(split(o.excludes)));
    return words;
}

} // namespace legwork
