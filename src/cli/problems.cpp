// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/problems.h"

#include "cli/json.h"
#include "cli/words.h"

#include <fmt/format.h>

namespace legwork {

namespace {

// Tabs are kept, so that the caret stands under the letter whatever width the terminal gives them.
std::string caret_line(std::string const& line, int column) {
    std::string blank;
    int at = 1;
    for (char const c : line) {
        if ((static_cast<unsigned char>(c) & 0xC0U) == 0x80U) continue; // within a letter
        if (at++ >= column) break;
        blank += c == '\t' ? '\t' : ' ';
    }
    return blank + '^';
}

void tell(std::string const& file, Problem const& p, Streams& streams) {
    auto const where = file.empty() ? std::string("legwork: ") : at_place(file, p.place) + ": ";
    streams.err << where << severity_word(Severity::error, streams.color_err) << ": " << printable(p.message) << '\n';
    if (!p.line.empty()) {
        auto const line = printable(p.line);
        streams.err << "    " << line << '\n';
        if (p.caret > 0) streams.err << "    " << caret_line(line, p.caret) << '\n';
    }
    if (!p.fix.empty()) streams.err << "    " << printable(p.fix) << '\n';
}

} // namespace

void tell_problems(FileProblems const& found, bool json, Streams& streams) {
    if (json) {
        write_json(problems_json(found), streams);
        return;
    }
    for (auto const& p : found.problems) tell(found.file, p, streams);
    if (!found.file.empty() && found.problems.size() > 1)
        streams.err << fmt::format("{} mistakes; nothing else was looked at.\n", found.problems.size());
}

void tell_failure(std::string const& why, bool json, Streams& streams) {
    Problem failure;
    failure.message = why;
    tell_problems({"", {failure}}, json, streams);
}

} // namespace legwork
