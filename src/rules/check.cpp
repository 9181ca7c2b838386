// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/check.h"

#include "rules/accept.h"
#include "rules/load/list.h"
#include "rules/multiwire/list.h"
#include "rules/need/list.h"
#include "rules/panel/list.h"
#include "rules/protection/list.h"
#include "rules/rule.h"
#include "rules/tape/list.h"
#include "rules/themes.h"
#include "rules/wire/list.h"

#include <algorithm>
#include <iterator>

namespace legwork {

namespace {
std::vector<Rule const*> all_rules() {
    std::vector<Rule const*> all;
    auto const add = [&](std::span<Rule const> some) {
        for (Rule const& r : some) all.push_back(&r);
    };
    for (Rule const* r : {LEGWORK_MULTIWIRE_RULES(LEGWORK_ADDRESS)}) all.push_back(r);
    for (Rule const* r : {LEGWORK_WIRE_RULES(LEGWORK_ADDRESS)}) all.push_back(r);
    for (Rule const* r : {LEGWORK_PANEL_RULES(LEGWORK_ADDRESS)}) all.push_back(r);
    add(directory_rules());
    for (Rule const* r : {LEGWORK_TAPE_RULES(LEGWORK_ADDRESS)}) all.push_back(r);
    for (Rule const* r : {LEGWORK_GROUND_FAULT_RULES(LEGWORK_ADDRESS) LEGWORK_ARC_FAULT_RULES(LEGWORK_ADDRESS)})
        all.push_back(r);
    for (Rule const* r : {LEGWORK_NEED_RULES(LEGWORK_ADDRESS)}) all.push_back(r);
    for (Rule const* r : {LEGWORK_LOAD_RULES(LEGWORK_ADDRESS)}) all.push_back(r);
    add(job_rules());
    add(later_rules());
    return all;
}

// The file's order as far as a Job knows it: what is about the whole job, then panels, circuits, other cables.
std::pair<int, std::ptrdiff_t> file_order(Job const& job, Where const& where) {
    if (!where.circuits.empty()) {
        std::string const& first = where.circuits.front();
        if (auto const c = std::ranges::find(job.circuits, first, &Circuit::mark); c != job.circuits.end())
            return {2, c - job.circuits.begin()};
        return {3, std::ranges::find(job.cables, first, &Cable::mark) - job.cables.begin()};
    }
    if (where.panel.empty()) return {0, 0};
    return {1, std::ranges::find(job.panels, where.panel, &Panel::name) - job.panels.begin()};
}
} // namespace

std::span<Rule const* const> rules() {
    static std::vector<Rule const*> const all = all_rules();
    return all;
}

Rule const* rule_named(std::string_view id) {
    auto const at = std::ranges::find(rules(), id, &Rule::id);
    return at == rules().end() ? nullptr : *at;
}

Verdict judged(Rule const& rule, Case const& c) {
    if (rule.judge) return rule.judge(c);
    Inspection seen;
    if (rule.find)
        for (Finding& f : rule.find(c)) seen.looked(), seen.found(std::move(f));
    return seen.verdict();
}

Findings check(Job const& job, Plan const& plan, CodeBook const& book, Findings elsewhere) {
    Case const c{job, plan, book};
    Findings all;
    for (Rule const* rule : rules()) std::ranges::move(judged(*rule, c).findings(), std::back_inserter(all));
    std::ranges::move(elsewhere, std::back_inserter(all));
    apply_accepts(job, all);
    for (Finding& f : unused_accepts(c, all)) all.push_back(std::move(f));
    sort_findings(job, all);
    return all;
}

void sort_findings(Job const& job, Findings& findings) {
    std::ranges::stable_sort(
        findings, {}, [&](Finding const& f) { return std::tuple(f.accepted, f.severity, file_order(job, f.where)); });
}

int count(Findings const& findings, Severity severity) {
    return static_cast<int>(
        std::ranges::count_if(findings, [&](Finding const& f) { return f.severity == severity && !f.accepted; }));
}

} // namespace legwork
