// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "check/check.h"

#include "check/accept.h"
#include "check/say.h"
#include "check/themes.h"

#include <algorithm>
#include <iterator>

namespace legwork {

namespace {
std::vector<Rule> all_rules() {
    std::vector<Rule> all;
    for (auto const theme : {multiwire_rules(), wire_rules(), panel_rules(), directory_rules(), tape_rules(),
                             protection_rules(), need_rules(), load_rules(), job_rules(), later_rules()})
        all.insert(all.end(), theme.begin(), theme.end());
    return all;
}

// The file's order as far as a Job knows it: what is about the whole job, then panels, circuits, other cables.
std::pair<int, std::ptrdiff_t> file_order(typed::Job const& job, Where const& where) {
    if (!where.circuits.empty()) {
        std::string const& first = where.circuits.front();
        if (auto const c = std::ranges::find(job.circuits, first, &typed::Circuit::mark); c != job.circuits.end())
            return {2, c - job.circuits.begin()};
        return {3, std::ranges::find(job.cables, first, &typed::Cable::mark) - job.cables.begin()};
    }
    if (where.panel.empty()) return {0, 0};
    return {1, std::ranges::find(job.panels, where.panel, &typed::Panel::name) - job.panels.begin()};
}
} // namespace

std::span<Rule const> rules() {
    static std::vector<Rule> const all = all_rules();
    return all;
}

Rule const* rule_named(std::string_view id) {
    auto const at = std::ranges::find(rules(), id, &Rule::id);
    return at == rules().end() ? nullptr : &*at;
}

Findings check(typed::Job const& job, Plan const& plan, CodeBook const& book, Findings elsewhere) {
    Case const c{job, plan, book};
    Findings all;
    for (Rule const& rule : rules()) {
        if (!rule.find) continue;
        auto found = rule.find(c);
        for (Finding& f : found) {
            f.message = as_sentence(std::move(f.message));
            f.fix = as_sentence(std::move(f.fix));
            all.push_back(std::move(f));
        }
    }
    std::ranges::move(elsewhere, std::back_inserter(all));
    apply_accepts(job, all);
    for (Finding& f : unused_accepts(c, all)) all.push_back(std::move(f));
    sort_findings(job, all);
    return all;
}

void sort_findings(typed::Job const& job, Findings& findings) {
    std::ranges::stable_sort(
        findings, {}, [&](Finding const& f) { return std::tuple(f.accepted, f.severity, file_order(job, f.where)); });
}

int count(Findings const& findings, Severity severity) {
    return static_cast<int>(
        std::ranges::count_if(findings, [&](Finding const& f) { return f.severity == severity && !f.accepted; }));
}

} // namespace legwork
