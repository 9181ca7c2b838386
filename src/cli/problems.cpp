// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/problems.h"

#include "cli/json/json.h"
#include "cli/text/words.h"
#include "toml/problem.h"

#include <fmt/format.h>

namespace legwork {

namespace {

void tell(std::string const& file, Problem const& p, Streams& streams) {
    auto const where = file.empty() ? std::string("legwork") : at_place(file, p.place);
    streams.err << fmt::format("{}: {}: {}\n", where, severity_word(Severity::error, streams.color_err),
                               fit_to_print(p.message));
    if (!p.line.empty()) streams.err << "    " << p.line << '\n';
    if (p.caret > 0) streams.err << fmt::format("    {:>{}}\n", '^', p.caret);
    if (!p.fix.empty()) streams.err << "    " << fit_to_print(p.fix) << '\n';
}

} // namespace

FileProblems one_problem(std::string file, std::string message, std::string fix) {
    Problem problem;
    problem.message = std::move(message);
    problem.fix = std::move(fix);
    return {std::move(file), {std::move(problem)}};
}

void tell_problems(FileProblems const& found, bool json, Streams& streams) {
    if (json) {
        write_problems_json(found, streams);
        return;
    }
    for (auto const& p : found.problems) tell(found.file, p, streams);
    if (!found.file.empty() && found.problems.size() > 1)
        streams.err << fmt::format("{} mistakes; nothing else was looked at.\n", found.problems.size());
}

void tell_failure(std::string const& why, bool json, Streams& streams) {
    tell_problems(one_problem("", why, ""), json, streams);
}

} // namespace legwork
