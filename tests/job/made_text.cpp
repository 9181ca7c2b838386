// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "job/made_text.h"
#include "job/job.h"
#include "source_folder.h"

#include "catch.h"
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <fstream>
#include <iterator>

namespace made {

Vocabulary const& words() {
    static Vocabulary const vocabulary{{"CE 2018", "CE 2021", "CE 2024", "NEC 2017", "NEC 2020", "NEC 2023"},
                                       {"lighting", "kitchen counter", "receptacles", "heating", "baseboard",
                                        "water heater", "feeder", "spare", "generator inlet", "main", "range", "dryer",
                                        "refrigerator"},
                                       {"cat6", "cat5e", "coax"},
                                       {"5-15R", "5-20R", "6-20R", "14-50R", "TT-30R", "L14-30R"},
                                       {},
                                       {"dir-vague", "mw-disconnect", "wire-drop"}};
    return vocabulary;
}

std::string job_with(std::string_view rest) {
    return "[job]\ncode = \"NEC 2023\"\n[[panel]]\nname = \"Main\"\nspaces = 24\nsupply = \"120/240\"\n" +
           std::string(rest);
}

std::vector<std::string> complaints(std::string_view bytes) {
    auto const read = read_job(bytes, words());
    CHECK(read.job.has_value() == read.problems.empty());
    std::vector<std::string> told;
    for (auto const& p : read.problems)
        told.push_back(fmt::format("{}:{} {} | {}", p.place.line, p.place.column, p.message, p.fix));
    return told;
}

typed::Job good(std::string_view bytes) {
    INFO(fmt::format("{}", fmt::join(complaints(bytes), "\n")));
    auto const read = read_job(bytes, words());
    REQUIRE(read.job);
    return *read.job;
}

std::string file(std::string const& path) {
    std::ifstream stream(in_sources(path), std::ios::binary);
    REQUIRE(stream);
    return {std::istreambuf_iterator<char>(stream), {}};
}

} // namespace made
