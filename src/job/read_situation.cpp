// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// [[situation]] and [[accept]].
#include "job/reading.h"

#include <algorithm>
#include <fmt/format.h>

namespace legwork {

namespace {

// The uses that circuits of this job have, each once.
std::vector<std::string> uses_here(typed::Job const& job) {
    std::vector<std::string> uses;
    for (auto const& c : job.circuits)
        if (!c.use.empty() && !contains(uses, c.use)) uses.push_back(c.use);
    return uses;
}

// A share that names nothing would change nothing, and nobody would notice.
std::string way_out(Reading const& r, std::string_view key, std::vector<std::string> known) {
    known.insert(known.end(), r.marks.begin(), r.marks.end());
    return r.out.full() ? std::string()
                        : did_you_mean(key, known, "name a use or a mark that a circuit of this file has");
}

void read_share(Reading& r, TableReader& t, TomlEntry const& e, std::vector<std::string> const& uses,
                typed::Situation& s) {
    auto const share = t.millionths(e.key);
    bool const is_mark = contains(r.marks, e.key);
    bool const is_use = contains(r.words.uses, e.key);
    if (is_mark && is_use)
        return r.out.add(e.at, fmt::format("{}: {} is a use and the mark of a circuit", t.what(), quoted(e.key)),
                         "rename the circuit's mark, so that it is clear which is meant");
    if (!is_mark && !contains(uses, e.key))
        return r.out.add(
            e.at,
            is_use ? fmt::format("{}: no circuit has the use {}", t.what(), quoted(e.key))
                   : fmt::format("{}: {} is neither a use nor the mark of a circuit", t.what(), quoted(e.key)),
            way_out(r, e.key, uses));
    if (share) (is_mark ? s.by_mark : s.by_use)[e.key] = *share;
}

void read_situation(Reading& r, TableReader& t, std::vector<std::string> const& uses, typed::Situation& s) {
    if (s.name == "connected")
        t.complain("name", "\"connected\" is always there: every load at share 1", "give this situation another name");
    s.other = t.millionths("other").value_or(s.other);
    auto shares = t.table("share", t.what());
    if (shares)
        for (auto const& e : shares->entries()) read_share(r, *shares, e, uses, s);
    bool const names_one = t.has("share") && !(shares && shares->entries().empty());
    s.supply = t.text("supply");
    if (!s.supply.empty() && !contains(r.supply_names, s.supply))
        t.complain("supply", fmt::format("there is no supply {}", quoted(s.supply)),
                   did_you_mean(s.supply, r.supply_names, "describe it under  [[supply]]"));
    if (!names_one && !t.has("other") && !t.has("supply"))
        t.complain("share", "it names no load", "add  share = { heating = 1.0 }  or  other = 0.5");
    t.finish();
    record(r, Subject::situation, s.name, t);
}

void read_accept(Reading& r, TableReader& t, typed::Accept& a) {
    a.rule = t.required_text("rule");
    if (!a.rule.empty() && !r.words.rules.empty() && !contains(r.words.rules, a.rule))
        t.complain("rule", fmt::format("there is no rule {}", quoted(a.rule)),
                   did_you_mean(a.rule, r.words.rules, "legwork explain, with nothing after it, lists the rules"));
    a.why = t.text("why");
    a.by = t.text("by");
    a.circuit = t.text("circuit");
    a.panel = t.text("panel");
    if (!a.circuit.empty()) r.is_circuit(t, a.circuit, t.value_at("circuit"));
    if (!a.panel.empty() && !contains(r.panel_names, a.panel))
        t.unknown_word(t.value_at("panel"), "panel", a.panel, r.panel_names);
    if (!t.has("circuit") && !t.has("panel"))
        t.complain("", "it does not say where the finding may stand",
                   "add the  circuit  or the  panel  of the finding");
    t.finish();
}

} // namespace

void read_situations(Reading& r) {
    auto const uses = uses_here(r.job);
    for (std::size_t i = 0; i < r.situations.size(); ++i) read_situation(r, r.situations[i], uses, r.job.situations[i]);
}

void read_accepts(Reading& r) {
    for (std::size_t i = 0; i < r.accepts.size(); ++i) {
        read_accept(r, r.accepts[i], r.job.accepts[i]);
        record(r, Subject::accept, std::to_string(i), r.accepts[i]);
    }
}

} // namespace legwork
