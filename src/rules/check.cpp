// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/check.h"

#include "rules/unread.h"

#include <algorithm>
#include <iterator>

namespace legwork {

namespace {
std::vector<Rule const*> all_rules() {
    std::vector<Rule const*> all;
    for (Theme const& theme : themes()) all.insert(all.end(), theme.rules.begin(), theme.rules.end());
    return all;
}

// The rules one kind after the other: what is printed after the job itself, and what is found after all that.
class RuleRun {
public:
    RuleRun(Case const& c, Printed const& printed) : c_(c), printed_(printed), verdicts_(rules().size()) {}

    Judgement judgement() {
        run([&](Rule const& r) { return r.judge != nullptr; }, [&](Rule const& r) { return r.judge(c_); });
        run([&](Rule const& r) { return r.judge_printed != nullptr; },
            [&](Rule const& r) { return r.judge_printed(c_, printed_); });
        apply_accepts(c_.building, all_);
        Findings const found = all_;
        run([&](Rule const& r) { return r.judge_findings != nullptr; },
            [&](Rule const& r) { return r.judge_findings(c_, found); });
        sort_findings(c_.building, all_);
        return {std::move(all_), outcomes()};
    }

private:
    template <class Wanted, class Judge>
    void run(Wanted wanted, Judge judge) {
        for (std::size_t i = 0; i < verdicts_.size(); ++i) {
            Rule const& rule = *rules()[i];
            if (!wanted(rule)) continue;
            verdicts_[i] = as_far_as_read(rule, c_, [&] { return judge(rule); });
            std::ranges::copy(verdicts_[i]->findings(), std::back_inserter(all_));
        }
    }

    std::vector<Outcome> outcomes() {
        std::vector<Outcome> all;
        for (std::size_t i = 0; i < verdicts_.size(); ++i)
            if (verdicts_[i]) all.push_back({rules()[i], std::move(*verdicts_[i])});
        return all;
    }

    Case const& c_;
    Printed const& printed_;
    std::vector<std::optional<Verdict>> verdicts_; // of each rule
    Findings all_;
};

// The file's order as far as a building knows it: what is about the whole job, then panels, circuits, other cables.
std::pair<int, std::size_t> file_order(Building const& building, Where const& where) {
    if (!where.circuits.empty()) {
        std::string const& first = where.circuits.front();
        if (Circuit const* c = circuit_named(building, first)) return {2, c->number};
        auto const cable =
            std::ranges::find_if(building.runs, [&](Run const& run) { return !run.of_circuit && run.mark == first; });
        return {3, static_cast<std::size_t>(cable - building.runs.begin())};
    }
    if (where.panel.empty()) return {0, 0};
    Panel const* panel = panel_named(building, where.panel);
    return {1, panel ? panel->number : building.panels.size()};
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
    return rule.judge ? as_far_as_read(rule, c, [&] { return rule.judge(c); }) : Inspection{}.verdict();
}

Judgement check(Building const& building, Plan const& plan, CodeBook const& book, Printed const& printed) {
    Case const c{building, plan, book};
    return RuleRun(c, printed).judgement();
}

Judgement with_sheets(Judgement judgement, Building const& building, Plan const& plan, CodeBook const& book,
                      Printed const& printed) {
    Case const c{building, plan, book};
    std::erase_if(judgement.findings, is_of_sheets);
    for (auto& [rule, verdict] : judgement.outcomes) {
        if (!rule->judge_printed) continue;
        verdict = as_far_as_read(*rule, c, [&judge = *rule->judge_printed, &c, &printed] { return judge(c, printed); });
        std::ranges::copy(verdict.findings(), std::back_inserter(judgement.findings));
    }
    apply_accepts(building, judgement.findings);
    sort_findings(building, judgement.findings);
    return judgement;
}

bool is_of_sheets(Finding const& f) {
    Rule const* rule = rule_named(f.rule);
    return rule && rule->judge_printed;
}

void sort_findings(Building const& building, Findings& findings) {
    std::ranges::stable_sort(findings, {}, [&](Finding const& f) {
        return std::tuple(f.accepted, f.severity, file_order(building, f.where));
    });
}

int count(Findings const& findings, Severity severity) {
    return static_cast<int>(
        std::ranges::count_if(findings, [&](Finding const& f) { return f.severity == severity && !f.accepted; }));
}

bool lacks_sizes(Findings const& findings) {
    return std::ranges::any_of(findings, [](Finding const& f) { return f.lacks_sizes && !f.accepted; });
}

} // namespace legwork
