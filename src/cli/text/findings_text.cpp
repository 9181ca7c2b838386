// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/text/text.h"

#include "cli/text/words.h"
#include "rules/check.h"
#include "sheet/common.h"
#include "toml/problem.h"
#include "units/shell.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace legwork {

namespace {

std::string reference_line(Reference const& r) {
    bool const says_nothing = r.section.empty() && r.source != Source::practice && r.source != Source::unread;
    return says_nothing ? std::string() : reference_words(r);
}

// Most messages name their circuits; the others are told in front.
std::string message(Finding const& f) {
    bool const named =
        std::ranges::any_of(f.where.circuits, [&](auto const& m) { return f.message.find(m) != std::string::npos; });
    return fit_to_print(f.where.circuits.empty() || named ? f.message : joined(f.where.circuits) + ": " + f.message);
}

// The colour of the severity word is put in after the lines are broken, which are then the same
// with and without it.
std::string severity_and(std::string const& before, Finding const& f, std::string const& says, Streams const& streams) {
    auto const plain = severity_word(f.severity, false);
    auto told = in_lines(fmt::format("{}{}: {} [{}]", before, plain, says, f.rule), streams.width, 4);
    if (auto const at = told.find(plain, std::min(told.size(), before.empty() ? 0 : before.size() - 1));
        streams.color_out && at != std::string::npos)
        told.replace(at, plain.size(), severity_word(f.severity, true));
    return told;
}

std::string head(Session const& s, Finding const& f, Streams const& streams) {
    return severity_and(at_place(s.file, place_of(s.places, f.where)) + ": ", f, message(f), streams);
}

std::string accepted_line(Finding const& f) {
    return fmt::format("Accepted by {}: {}", f.accepted_by.empty() ? "nobody named" : fit_to_print(f.accepted_by),
                       f.accepted_why.empty() ? "no reason given" : fit_to_print(f.accepted_why));
}

void indented(std::string const& words, Streams& streams) {
    if (!words.empty()) streams.out << "    " << in_lines(words, streams.width, 8, 4) << '\n';
}

// The marks of all of them, each once.
std::vector<std::string> circuits_of(Alike const& some) {
    std::vector<std::string> marks;
    for (Finding const* f : some)
        for (auto const& mark : f->where.circuits)
            if (std::ranges::count(marks, mark) == 0) marks.push_back(mark);
    return marks;
}

using Told = FindingGroup::Told;

void list_alike(Session const& s, Alike const& some, Told told, Streams& streams) {
    Finding const& f = *some.front();
    auto fix = f.fix.empty() ? "" : "Do: " + fit_to_print(f.fix);
    auto source = reference_line(f.reference);
    bool const close = told == Told::closely;
    bool const said = !source.empty() && f.message.find(source) != std::string::npos; // by the message already
    if (close && (said || f.reference.source == Source::practice)) source.clear();
    if (close && !fix.empty() && !source.empty()) fix += " " + std::exchange(source, "") + ".";
    streams.out << head(s, f, streams) << '\n';
    if (some.size() > 1)
        indented(fmt::format("The same of {}.", listed(circuits_of({some.begin() + 1, some.end()}))), streams);
    indented(fix, streams);
    indented(source, streams);
    if (f.accepted) indented(accepted_line(f), streams);
    if (!close || f.severity == Severity::error) streams.out << '\n';
}

// A line a panel and kind, without a place, since it has many: of one what it says, of several what their rule asks.
void list_in_short(Session const& s, FindingGroup const& g, Streams& streams) {
    for (Alike const& some : by_panel_and_kind(g.findings)) {
        Finding const& f = *some.front();
        Rule const* rule = rule_named(f.rule);
        auto const asked = some.size() == 1 || !rule
                               ? message(f)
                               : fmt::format("{}: see to this: {}", listed(circuits_of(some)), rule->asks);
        streams.out << severity_and("", f, asked, streams) << '\n';
    }
    streams.out << "    "
                << in_lines(fmt::format("`legwork check {} --by circuit` tells each in full.", shell_file(s.file)),
                            streams.width, 4, 4)
                << "\n\n";
}

void list_group(Session const& s, FindingGroup const& g, Streams& streams) {
    if (!g.heading.empty()) {
        auto const heading = fitted_line(fit_to_print(g.heading), streams.width);
        streams.out << heading << '\n' << std::string(character_count(heading), '-') << '\n';
    }
    if (g.told == Told::in_short) return list_in_short(s, g, streams);
    if (!g.heading.empty()) // under a heading each stands where it belongs
        for (Finding const* f : g.findings) list_alike(s, {f}, g.told, streams);
    else
        for (Alike const& some : alike_but_for_the_circuit(g.findings)) list_alike(s, some, g.told, streams);
    if (g.told == Told::closely && g.findings.back()->severity != Severity::error) streams.out << '\n';
}

// "2 of 9 findings are shown; ..." where only a part was asked for.
void tell_part(Session const& s, FindingFilter const& shown, Streams& streams) {
    if (!shown.is_part()) return;
    auto const n = std::ranges::count_if(s.findings, [&](Finding const& f) { return is_shown(s, shown, f); });
    streams.out << in_lines(fmt::format("{} of {} shown; the counts and the exit status are of the whole job.", n,
                                        counted(static_cast<int>(s.findings.size()), "finding")),
                            streams.width, 4)
                << '\n';
}

} // namespace

std::string counts(Findings const& findings) {
    auto text = fmt::format("{}, {}, {}", counted(count(findings, Severity::error), "error"),
                            counted(count(findings, Severity::warning), "warning"),
                            counted(count(findings, Severity::note), "note"));
    auto const accepted = static_cast<int>(std::ranges::count_if(findings, &Finding::accepted));
    return accepted == 0 ? text : text + fmt::format(", {} accepted", accepted);
}

void list_findings(Session const& s, FindingFilter const& shown, Streams& streams) {
    for (FindingGroup const& g : finding_groups(s, shown)) list_group(s, g, streams);
    // On one line, however long: it is what other programs look for.
    streams.out << fmt::format("{} ({}): {}.\n", shown_file(s.file), s.building.code, counts(s.findings));
    tell_part(s, shown, streams);
    if (!s.findings.empty()) streams.out << "legwork explain RULE tells more of the rule in [ ].\n";
    streams.out << '\n' << in_lines(english().words(caution()), streams.width, 0) << '\n';
}

void list_of_sheets(Session const& s, Streams& streams) {
    for (Finding const& f : s.findings)
        if (is_of_sheets(f) && !f.accepted) list_alike(s, {&f}, Told::in_full, streams);
}

} // namespace legwork
