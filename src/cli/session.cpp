// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/session.h"

#include "balance/balance.h"
#include "building/resolve.h"
#include "cli/files/form_file.h"
#include "cli/text/words.h"
#include "cli/vocabulary.h"
#include "output/files.h"
#include "units/failure.h"

#include <fmt/format.h>

namespace legwork {

namespace {

Opened refused(std::string const& file, std::string message, std::string fix) {
    return {std::nullopt, one_problem(file, std::move(message), std::move(fix))};
}

// A directory without a band, as it will be once the errors are put right.
Judgement judge(Session const& s) {
    std::vector<SheetOrder> const directory{{sheet_kind("directory"), default_form("directory")}};
    return check(s.building, s.plan, *s.book, printed_words(s.sheet_input(), directory));
}

void put(Session& s, Judgement judgement) {
    s.findings = std::move(judgement.findings);
    s.outcomes = std::move(judgement.outcomes);
}

} // namespace

void judge_on(Session& s, std::span<SheetOrder const> sheets) {
    auto const printed = printed_words(s.sheet_input(), sheets);
    put(s, with_sheets({std::move(s.findings), std::move(s.outcomes)}, s.building, s.plan, *s.book, printed));
}

void require_sound(Building const& building, Plan const& plan, bool filed) {
    auto const faults = recheck(building, plan, filed);
    if (!faults.empty())
        throw Failure(
            "legwork's own plan does not add up, so nothing of it is shown; please report this with the job file: " +
            joined(faults, "; "));
}

Opened open_job(std::string const& file, std::string bytes, std::optional<double> seconds,
                std::shared_ptr<Fonts const> fonts) {
    auto read = read_job(bytes, vocabulary());
    if (!read.job) return {std::nullopt, {file, std::move(read.problems)}};
    Session s;
    s.file = file;
    s.bytes = std::move(bytes);
    s.building = resolve(*read.job);
    s.places = std::move(read.places);
    s.book = code_book(s.building.code);
    if (!s.book) throw Failure("there is no code book for " + s.building.code);
    s.seconds = seconds;
    s.plan = as_filed(s.building, seconds);
    require_sound(s.building, s.plan, true);
    s.fonts = std::make_shared<LateFonts const>(std::move(fonts));
    put(s, judge(s));
    return {std::move(s), {}};
}

Opened open_job(std::string const& file, std::optional<double> seconds) {
    std::string why;
    auto bytes = read_file(file, kLargestJob, why);
    if (!bytes) return refused(file, "cannot read it: " + why, "name a job file, or \"-\" for standard input");
    if (bytes->size() > kLargestJob)
        return refused(file, "it is larger than 1 MiB",
                       "name a job file: the largest real ones are a hundredth of that");
    return open_job(file, std::move(*bytes), seconds);
}

int error_exit(Session const& session) {
    return count(session.findings, Severity::error) > 0 ? exit_error_finding : exit_done;
}

} // namespace legwork
