// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/call/shared_rows.h"

#include "cli/command.h"
#include "cli/files/form_file.h"
#include "cli/keys/keys.h"
#include "cli/session.h"
#include "cli/vocabulary.h"
#include "codebook/tables/tables.h"
#include "output/files.h"

#include <cstdlib>
#include <filesystem>

namespace legwork {

namespace {

Candidates rules_where(bool only_checked) {
    Candidates all;
    for (Rule const* r : rules())
        if (!only_checked || r->is_checked()) all.words.push_back({std::string(r->id), std::string(r->asks)});
    return all;
}

// A shell hands the word over as it was typed.
std::string without_tilde(std::string const& path) {
    char const* const home = std::getenv("HOME");
    return home && path.starts_with("~/") ? home + path.substr(1) : path;
}

} // namespace

Candidates job_files(Given const&) { return {{}, Files::jobs}; }
Candidates new_files(Given const&) { return {{}, Files::any}; }
Candidates folders(Given const&) { return {{}, Files::folders}; }

Candidates commands_by_name(Given const&) {
    Candidates all;
    for (Command const* c : commands()) all.words.push_back({std::string(c->name), std::string(c->summary)});
    return all;
}

Candidates rules_by_name(Given const&) { return rules_where(false); }
Candidates checked_rules_by_name(Given const&) { return rules_where(true); }

Candidates tables_by_name(Given const&) {
    Candidates all;
    for (CodeTable const& t : code_tables()) all.words.push_back({std::string(t.name), std::string(t.title)});
    return all;
}

Candidates key_tables_by_name(Given const&) {
    Candidates all;
    for (KeyTable const* t : key_tables()) all.words.push_back({std::string(t->name), std::string(t->help)});
    return all;
}

Candidates forms_by_name(Given const&) {
    Candidates all{{}, Files::jobs};
    for (Form const& f : installed_forms()) all.words.push_back({f.name, f.title});
    return all;
}

Candidates panels_of_job(Given const& typed) {
    Words const* job = typed.of(job_row.name);
    if (!job || job->empty()) return {};
    auto const path = without_tilde(job->front());
    std::string why;
    if (!std::filesystem::is_regular_file(path)) return {}; // a pipe would be waited for
    auto const bytes = read_file(path, kLargestJob, why);
    if (!bytes || bytes->size() > kLargestJob) return {};
    auto const read = read_job(*bytes, vocabulary());
    Candidates all;
    if (read.job)
        for (auto const& p : read.job->panels) all.words.push_back({p.name, ""});
    return all;
}

} // namespace legwork
