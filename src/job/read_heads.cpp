// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// [job].
#include "job/reading.h"

#include <algorithm>
#include <fmt/format.h>

namespace legwork {

namespace {

std::vector<std::string> read_languages(TableReader& t) {
    std::vector<std::string> languages;
    auto const said = t.text("language");
    if (said.empty()) return {"en"};
    static std::vector<std::string> const known{"en", "fr", "es"};
    for (std::size_t from = 0; from <= said.size();) {
        auto const plus = std::min(said.find('+', from), said.size());
        languages.push_back(said.substr(from, plus - from));
        from = plus + 1;
    }
    bool const all_known = std::ranges::all_of(languages, [](auto const& l) { return contains(known, l); });
    if (all_known && (languages.size() == 1 || (languages.size() == 2 && languages[0] != languages[1])))
        return languages;
    t.complain("language", fmt::format("\"language\" cannot be {}", quoted(said)),
               "write \"en\", \"fr\", \"es\" or two of them: \"en+fr\"");
    return {"en"};
}

void read_code(Reading& r, TableReader& t) {
    r.job.code = t.required_text("code", "\"NEC 2023\"");
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
    job.units = t.choice<UnitSystem>("units", {{"metric", UnitSystem::metric}, {"inch", UnitSystem::inch}})
                    .value_or(UnitSystem::metric);
    job.tails = t.length("tails");
    job.loop = t.length("loop");
    t.finish();
    record(r, Subject::job, "", t);
}

} // namespace

void read_heads(Reading& r, TableReader& file) {
    if (auto const t = file.table("job", "[job]"))
        read_job_table(r, *t);
    else if (!file.has("job"))
        file.complain("job", "the table [job] is missing", "begin the file with  [job]  and  code = \"NEC 2023\"");
    if (auto const t = file.table("dwelling", "[dwelling]")) read_dwelling(r, *t);
    if (!file.has("panel"))
        file.complain("panel", "there is no panel", "add  [[panel]]  with its name, spaces and supply");
}

} // namespace legwork
