// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/json/json.h"
#include "cli/text/words.h"

#include "cli/files/form_file.h"
#include "cli/json/json_values.h"
#include "cli/text/measure_list.h"
#include "codebook/cite.h"
#include "codebook/sections.h"
#include "codebook/tables/tables.h"
#include "panel/feeds.h"
#include "rules/check.h"
#include "sheet/cells.h"
#include "units/text.h"

namespace legwork {

namespace {

std::string panel_of_finding(Building const& building, Finding const& f) {
    if (!f.where.panel.empty() || f.where.circuits.empty()) return f.where.panel;
    auto const* c = circuit_named(building, f.where.circuits.front());
    return c && c->panel ? c->panel->name : "";
}

Json finding_json(Session const& s, Finding const& f) {
    auto const place = place_of(s.places, f.where);
    auto reference = f.reference.edition;
    if (!f.reference.section.empty())
        reference += (reference.empty() ? "" : " ") + section_words(f.reference);
    else
        reference.clear();
    Json made{{"rule", f.rule},
              {"severity", name(f.severity)},
              {"panel", text_or_null(panel_of_finding(s.building, f))},
              {"circuits", f.where.circuits},
              {"line", number_or_null(place.line)},
              {"column", number_or_null(place.column)},
              {"message", f.message},
              {"fix", f.fix},
              {"reference", reference},
              {"source", name(f.reference.source)}};
    if (f.accepted) {
        made["by"] = f.accepted_by;
        made["why"] = f.accepted_why;
    }
    return made;
}

Json verdicts_json(Session const& s, FindingFilter const& shown) {
    auto all = Json::array();
    for (auto const& [rule, verdict] : s.outcomes)
        if (is_shown(shown, *rule))
            all.push_back({{"rule", rule->id},
                           {"verdict", name(verdict.kind())},
                           {"looked_at", verdict.looked_at()},
                           {"nearest", text_or_null(verdict.nearest())}});
    return all;
}

std::vector<std::string> texts(std::vector<Spot> const& spots) {
    std::vector<std::string> all;
    for (Spot const s : spots) all.push_back(text(s));
    return all;
}

Json placement_json(Placement const& p) {
    return {{"circuit", p.circuit},
            {"spaces", texts(p.slots)},
            {"leg", p.leg ? Json(std::string(1, letter(*p.leg))) : Json(nullptr)},
            {"from", texts(p.from)}};
}

Json situation_json(SituationLoad const& s) {
    return {{"name", s.name},
            {"leg_a_va", s.leg_a_va},
            {"leg_b_va", s.leg_b_va},
            {"imbalance_va", s.imbalance_va},
            {"neutral_a", s.neutral_a}};
}

Json panel_json(Building const& building, PanelPlan const& p) {
    auto const* panel = panel_named(building, p.panel);
    auto const sources = panel ? panel->feeds : std::vector<Feed>{};
    auto names = Json::array();
    for (Feed const& f : sources)
        if (!f.source.empty()) names.push_back(f.source);
    Json made{{"panel", p.panel},
              {"supply", sources.empty() ? Json(nullptr) : Json(name(sources.front().kind))},
              {"supplies", names},
              {"proven", p.proven},
              {"imbalance_va", or_null(p.imbalance_va)},
              {"least_imbalance_va", or_null(p.proven ? p.least_imbalance_va : std::nullopt)},
              {"lower_bound_va", or_null(p.lower_bound_va)},
              {"situations", list(p.situations, situation_json)},
              {"moves", p.moves},
              {"tradeoff", list(p.tradeoff,
                                [](TradeoffStep const& t) {
                                    return Json{{"moves", t.moves}, {"imbalance_va", t.imbalance_va}};
                                })},
              {"placements", list(p.placements, placement_json)}};
    if (!p.why.empty()) made["why"] = p.why;
    if (!p.proven) made["best_found_va"] = or_null(p.least_imbalance_va);
    if (p.stopped_by_time) made["stopped"] = "time";
    return made;
}

Json file_json(WrittenFile const& f) {
    return {{"sheet", f.sheet},   {"panel", text_or_null(f.panel)},
            {"format", f.format}, {"page", f.page},
            {"pages", f.pages},   {"path", f.path}};
}

// `style` and `goes_round_mm` are for labels that know what they go round.
Json form_json(Form const& f) {
    bool const labels = f.columns > 0;
    return {{"name", f.name},
            {"sheet", f.sheet},
            {"style", nullptr},
            {"page_mm", {f.width, f.height}},
            {"label_mm", labels ? Json{f.label_width, f.label_height} : Json(nullptr)},
            {"per_page", labels ? cells(f).size() : 1},
            {"goes_round_mm", nullptr}};
}

std::vector<std::string> words_of_list(std::string_view list) {
    std::vector<std::string> words;
    for (; !list.empty(); list.remove_prefix(std::min(list.size(), list.find(' ') + 1))) {
        words.emplace_back(list.substr(0, list.find(' ')));
        if (list.find(' ') == std::string_view::npos) break;
    }
    return words;
}

std::string_view name(Subject thing) {
    switch (thing) {
    case Subject::circuit: return "circuit";
    case Subject::panel: return "panel";
    case Subject::cable: return "cable";
    case Subject::supply: return "supply";
    case Subject::dwelling: return "dwelling";
    default: return "job";
    }
}

Json measure_json(Session const& s, MeasureItem const& i) {
    auto const place = s.places.find(i.of.thing, i.of.id, i.of.key);
    return {{"panel", text_or_null(i.of.panel)},
            {"at", name(i.of.how.at)},
            {"thing", name(i.of.thing)},
            {"id", text_or_null(i.of.id)},
            {"spaces", i.spaces},
            {"name", text_or_null(i.name)},
            {"room", text_or_null(i.room)},
            {"key", i.of.key},
            {"what", i.what},
            {"how", i.how},
            {"with", i.with},
            {"cover", name(i.of.how.cover)},
            {"decides", i.decides},
            {"rules", words_of_list(i.of.how.rules)},
            {"line", number_or_null(place.line)},
            {"column", number_or_null(place.column)}};
}

std::string_view name(Acceptance::Of of) {
    if (of == Acceptance::Of::all) return "yes";
    return of == Acceptance::Of::some ? "some" : "no";
}

Json citation_json(Topic const& t) {
    Json sections = Json::object();
    auto unread = Json::array();
    for (auto const family : {Family::nec, Family::ce})
        for (CodeBook const* b : books_of(family)) {
            auto const& says = section_of(*b, t.name);
            sections[std::string(b->edition)] = text_or_null(section_words(cite(*b, t.name)));
            if (says.is_unread()) unread.push_back(b->edition);
        }
    Json all{{"topic", t.name},
             {"sections", sections},
             {"nec_source", name(source_of(books_of(Family::nec), t.name))},
             {"ce_source", name(source_of(books_of(Family::ce), t.name))}};
    if (!unread.empty()) all["unread"] = unread; // null in "sections" is then not silence
    return all;
}

Json rule_json(Rule const& r) {
    auto const gravity = [&](Family f) { return r.is_checked() ? Json(letters(r.gravity, f)) : Json(nullptr); };
    auto sections = Json::array();
    for (Topic const& t : topics())
        if (t.rule() == r.id) sections.push_back(citation_json(t));
    return {{"rule", r.id},
            {"asks", r.asks},
            {"why", r.why},
            {"remedy", r.remedy},
            {"checked", r.is_checked()},
            {"gravity", {{"nec", gravity(Family::nec)}, {"ce", gravity(Family::ce)}}},
            {"doubt", text_or_null(std::string(r.gravity.doubt))},
            {"accept", name(r.accept.of)},
            {"codes", sections}};
}

Json row_json(TableRow const& r) {
    return {{"cells", r.cells}, {"source", r.source ? Json(name(*r.source)) : Json(nullptr)}};
}

Json part_json(TablePart const& p) {
    return {{"editions", p.editions},
            {"sections", text_or_null(p.sections)},
            {"heads", p.heads},
            {"rows", list(p.rows, row_json)}};
}

// Goes up when a key changes its meaning or goes away; a new key is no new format.
constexpr int kFormat = 1;

} // namespace

void write(Json const& value, Streams& streams) {
    Json whole{{"legwork", {{"version", LEGWORK_VERSION}, {"format", kFormat}}}};
    whole.update(value);
    // A job's text is whole UTF-8; a file's name need not be.
    streams.out << whole.dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
}

void write_problems_json(FileProblems const& found, Streams& streams) {
    auto const problem = [&](Problem const& p) {
        return Json{{"file", text_or_null(found.file)},
                    {"line", number_or_null(p.place.line)},
                    {"column", number_or_null(p.place.column)},
                    {"message", p.message},
                    {"fix", p.fix}};
    };
    write({{"job", nullptr}, {"problems", list(found.problems, problem)}}, streams);
}

void write_findings_json(Session const& s, FindingFilter const& shown, Streams& streams) {
    auto standing = Json::array(), accepted = Json::array();
    for (Finding const& f : s.findings)
        if (is_shown(s, shown, f)) (f.accepted ? accepted : standing).push_back(finding_json(s, f));
    Json made{{"job", s.building.name},
              {"code", s.building.code},
              {"errors", count(s.findings, Severity::error)},
              {"warnings", count(s.findings, Severity::warning)},
              {"notes", count(s.findings, Severity::note)},
              {"accepted", accepted},
              {"findings", standing},
              {"verdicts", verdicts_json(s, shown)}};
    if (shown.is_part()) {
        made["filter"] = {{"rules", shown.rules}, {"min", name(shown.least)}};
        if (shown.only_new) made["filter"]["new"] = true;
    }
    write(made, streams);
}

void write_measure_json(Session const& s, Streams& streams) {
    write({{"job", s.building.name},
           {"code", s.building.code},
           {"measure", list(measure_items(s), [&](MeasureItem const& i) { return measure_json(s, i); })}},
          streams);
}

void write_plan_json(Building const& building, Plan const& plan, Rewrite const& saved, Streams& streams) {
    Json made{{"job", building.name},
              {"panels", list(plan.panels, [&](PanelPlan const& p) { return panel_json(building, p); })}};
    if (!saved.before.empty()) made["written"] = {{"path", saved.file}, {"before", saved.before}};
    write(made, streams);
}

void write_files_json(Session const& s, std::vector<WrittenFile> const& files, Streams& streams) {
    auto findings = Json::array();
    for (Finding const& f : s.findings)
        if (is_of_sheets(f) && !f.accepted) findings.push_back(finding_json(s, f));
    write({{"job", s.building.name}, {"files", list(files, file_json)}, {"findings", findings}}, streams);
}

void write_forms_json(std::vector<Form> const& forms, Streams& streams) {
    write({{"forms", list(forms, form_json)}}, streams);
}

void write_table_names_json(Streams& streams) {
    write({{"tables", list(code_tables(),
                           [](CodeTable const& t) {
                               return Json{{"table", t.name}, {"title", t.title}};
                           })}},
          streams);
}

void write_table_json(CodeTable const& table, Streams& streams) {
    write({{"table", table.name}, {"title", table.title}, {"parts", list(table.parts(), part_json)}}, streams);
}

void write_rule_json(Rule const& rule, Streams& streams) { write(rule_json(rule), streams); }

void write_rules_json(std::span<Rule const* const> rules, Streams& streams) {
    write({{"rules", list(rules, [](Rule const* r) { return rule_json(*r); })}}, streams);
}

} // namespace legwork
