// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/listing.h"

#include "check/check.h"
#include "cli/words.h"
#include "job/problem.h"
#include "sheet/common.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

constexpr std::size_t kWidth = 100;

std::string reference_line(Reference const& r) {
    if (r.section.empty()) return r.source == Source::practice ? text(r) : "";
    bool const said = r.section.find("memory") != std::string::npos;
    if (r.source == Source::memory && !said) return text(r) + " (from memory: look it up)";
    return text(r);
}

// Most messages name their circuits; the others are told in front.
std::string message(Finding const& f) {
    bool const named =
        std::ranges::any_of(f.where.circuits, [&](auto const& m) { return f.message.find(m) != std::string::npos; });
    return fit_to_print(f.where.circuits.empty() || named ? f.message : joined(f.where.circuits) + ": " + f.message);
}

// The colour of the severity word is put in after the lines are broken, which are then the same with and without it.
std::string head(Session const& s, Finding const& f, bool color) {
    auto const place = at_place(s.file, place_of(s.places, f.where)) + ": ";
    auto const plain = severity_word(f.severity, false);
    auto told = in_lines(fmt::format("{}{}: {} [{}]", place, plain, message(f), f.rule), kWidth, 4);
    if (auto const at = told.find(plain, std::min(told.size(), place.size() - 1)); color && at != std::string::npos)
        told.replace(at, plain.size(), severity_word(f.severity, true));
    return told;
}

void list_one(Session const& s, Finding const& f, Streams& streams) {
    streams.out << head(s, f, streams.color_out) << '\n';
    if (!f.fix.empty()) streams.out << "    " << in_lines("Do: " + fit_to_print(f.fix), kWidth, 8, 4) << '\n';
    if (auto const line = reference_line(f.reference); !line.empty()) streams.out << "    " << line << '\n';
    if (f.accepted)
        streams.out << "    "
                    << in_lines(
                           fmt::format("Accepted by {}: {}", fit_to_print(f.accepted_by), fit_to_print(f.accepted_why)),
                           kWidth, 8, 4)
                    << '\n';
    streams.out << '\n';
}

} // namespace

std::string counts(Findings const& findings) {
    auto text = fmt::format("{}, {}, {}", counted(count(findings, Severity::error), "error"),
                            counted(count(findings, Severity::warning), "warning"),
                            counted(count(findings, Severity::note), "note"));
    auto const accepted = static_cast<int>(std::ranges::count_if(findings, &Finding::accepted));
    return accepted == 0 ? text : text + fmt::format(", {} accepted", accepted);
}

void list_findings(Session const& s, Streams& streams) {
    for (Finding const& f : s.findings)
        if (!f.accepted) list_one(s, f, streams);
    for (Finding const& f : s.findings)
        if (f.accepted) list_one(s, f, streams);
    streams.out << fmt::format("{} ({}): {}.\n", shown_file(s.file), s.job.code, counts(s.findings));
    if (!s.findings.empty()) streams.out << "legwork explain RULE tells more of the rule in [ ].\n";
    streams.out << '\n' << in_lines(caution(), kWidth, 0) << '\n';
}

} // namespace legwork
