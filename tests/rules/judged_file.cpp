// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "judged_file.h"
#include "building/resolve.h"
#include "source_folder.h"

#include "balance/balance.h"
#include "codebook/stock/cables.h"
#include "codebook/stock/receptacles.h"
#include "codebook/stock/uses.h"
#include "job/job.h"
#include "job/read.h"

#include <fmt/format.h>

#include <fstream>
#include <iterator>

namespace made {

using namespace legwork;

std::string bytes_of(std::string const& path) {
    std::ifstream file(in_sources(path), std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

namespace {
ReadJob read(std::string const& bytes) {
    auto const guess = [](typed::Circuit const& c) { return guess_use(c.name, c.room, c.poles, c.outlets); };
    return read_job(bytes, {editions(), use_names(), named_cable_kinds(), receptacle_names(), guess});
}
} // namespace

std::optional<typed::Job> job_of(std::string const& bytes) { return read(bytes).job; }

JudgedFile judge(std::string const& bytes) {
    auto const got = read(bytes);
    JudgedFile v;
    for (Problem const& p : got.problems) v.problems += fmt::format("{}: {}\n", p.place.line, p.message);
    if (!got.job) return v;
    v.plan = as_filed(resolve(*got.job));
    v.findings = check(resolve(*got.job), v.plan, *code_book(got.job->code)).findings;
    v.exit = count(v.findings, Severity::error) > 0 ? 1 : 0;
    return v;
}

} // namespace made
