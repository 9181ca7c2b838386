// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/text/text.h"

#include "cli/text/words.h"
#include "reckon/say.h"
#include "sheet/common.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

constexpr std::size_t kIndent = 24;

std::string findings_words(Verdict const& v) {
    return v.findings().empty() ? "" : plural(v.findings().size(), "finding") + ", ";
}

// "passed    14 looked at; nearest: drop 2.8 % of 3 % on K1"
std::string words(Verdict const& v) {
    using enum Verdict::Kind;
    auto const head = fmt::format("{:<9}", name(v.kind()));
    switch (v.kind()) {
    case fired: return head + fmt::format("{}{} looked at", findings_words(v), v.looked_at());
    case passed:
        return head +
               fmt::format("{} looked at{}", v.looked_at(), v.nearest().empty() ? "" : "; nearest: " + v.nearest());
    case unread: return head + "what this edition asks was not read";
    case nothing: break;
    }
    return head + "to look at";
}

// "12 rules fired, 40 passed, 13 had nothing to look at"
std::string sums(std::vector<Outcome> const& outcomes) {
    auto const of = [&](Verdict::Kind kind) {
        return std::ranges::count_if(outcomes, [&](Outcome const& o) { return o.verdict.kind() == kind; });
    };
    using enum Verdict::Kind;
    auto told = fmt::format("{} fired, {} passed, {} had nothing to look at",
                            plural(static_cast<std::size_t>(of(fired)), "rule"), of(passed), of(nothing));
    return of(unread) > 0 ? told + fmt::format(", {} not read in this edition", of(unread)) : told;
}

std::string not_checked() {
    std::vector<std::string> ids;
    for (Rule const* rule : rules())
        if (!rule->is_checked()) ids.emplace_back(rule->id);
    return ids.empty() ? "" : fmt::format("Not checked yet, whatever the job: {}.", listed(ids));
}

} // namespace

void list_verdicts(Session const& s, FindingFilter const& shown, Streams& streams) {
    for (auto const& [rule, verdict] : s.outcomes)
        if (is_shown(shown, *rule))
            streams.out << fmt::format("{:<{}}", rule->id, kIndent)
                        << in_lines(fit_to_print(words(verdict)), streams.width, kIndent + 9, kIndent) << '\n';
    streams.out << '\n'
                << in_lines(fmt::format("{} ({}): {}.", shown_file(s.file), s.building.code, sums(s.outcomes)),
                            streams.width, 0)
                << '\n';
    streams.out << in_lines("Nothing to look at: the job has none of what the rule judges, or not the figures for it. "
                            "Passed says that no fault was found in what was looked at, and no more.",
                            streams.width, 0)
                << '\n'
                << in_lines(not_checked(), streams.width, 0) << "\n\n"
                << in_lines(english().words(caution()), streams.width, 0) << '\n';
}

} // namespace legwork
