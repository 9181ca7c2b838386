// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// [job].
#include "job/reading.h"

#include <algorithm>
#include <fmt/format.h>

namespace legwork {

namespace {

// "en", "en+fr"
std::vector<std::string> read_languages(TableReader& t) {
    auto const said = t.word("language");
    if (said.empty()) return {"en"};
    auto const plus = said.find('+');
    if (plus == std::string::npos) return {said};
    return {said.substr(0, plus), said.substr(plus + 1)};
}

void read_code(Reading& r, TableReader& t) {
    r.job.code = t.required_text("code");
    if (!r.job.code.empty() && !contains(r.words.editions, r.job.code))
        t.unknown_word(t.value_at("code"), "code", r.job.code, r.words.editions);
}

void read_job_table(Reading& r, TableReader t) {
    typed::Job& job = r.job;
    t.allow_questions(job.asked);
    read_code(r, t);
    job.name = t.text("name");
    job.revision = t.text("revision");
    job.date = t.date("date");
    job.languages = read_languages(t);
    job.units = t.choice("units", {UnitSystem::metric, UnitSystem::inch}).value_or(UnitSystem::metric);
    job.tails = t.length("tails");
    job.loop = t.length("loop");
    t.finish();
    record(r, Subject::job, "", t);
}

} // namespace

void read_heads(Reading& r, TableReader& file) {
    if (auto const t = file.table("job"))
        read_job_table(r, *t);
    else if (!file.has("job"))
        file.complain("job", "the table [job] is missing", "begin the file with  [job]  and  code = \"NEC 2023\"");
    if (auto const t = file.table("dwelling")) read_dwelling(r, *t);
    if (!file.has("panel"))
        file.complain("panel", "there is no panel", "add  [[panel]]  with its name, spaces and supply");
}

} // namespace legwork
