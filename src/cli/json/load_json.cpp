// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/json/json.h"
#include "cli/json/json_values.h"
#include "words/catalogue.h"

namespace legwork {

namespace {
// What a program reads is in English, whatever language sheets speak.
std::string said(Phrase const& phrase) { return english().words(phrase); }
Json said_json(Phrase const& phrase) { return said(phrase); }

// Amperes to the hundredth, as they are shown.
Json amps_json(Amps a) {
    auto const hundredths = (a.count + 5) / 10;
    return static_cast<double>(hundredths) / 100.0;
}
Json amps_or_null(std::optional<Amps> a) { return a ? amps_json(*a) : Json(nullptr); }

std::string_view kind_name(LoadStep::Kind kind) {
    return kind == LoadStep::Kind::item ? "item" : kind == LoadStep::Kind::subtotal ? "subtotal" : "counted";
}

Json step_json(LoadStep const& s) {
    return {{"item", said(s.item)},
            {"reference", text(s.reference)},
            {"source", name(s.reference.source)},
            {"kind", kind_name(s.kind)},
            {"arithmetic", text_or_null(said(s.arithmetic))},
            {"va", s.va},
            {"circuits", s.circuits}};
}

Json wire_json(ServiceWire const& w) {
    auto const gauge = [](std::optional<Gauge> g) { return g ? Json(name(*g)) : Json(nullptr); };
    return {{"copper_awg", gauge(w.copper)},
            {"aluminium_awg", gauge(w.aluminium)},
            {"terminals_c", w.celsius > 0 ? Json(w.celsius) : Json(nullptr)},
            {"reference", text(w.reference)}};
}

Json load_json(PanelLoad const& p) {
    if (!p.load) return {{"panel", p.panel->name}, {"method", nullptr}, {"why", p.why}, {"fix", p.fix}};
    auto const& load = *p.load;
    auto const& size = p.size;
    return {{"panel", p.panel->name},
            {"method", name(load.method)},
            {"title", said(load.title)},
            {"why", said(load.why)},
            {"steps", list(load.steps, step_json)},
            {"total_va", load.total_va},
            {"volts", p.facts.volts.count},
            {"amps", amps_json(size.amps)},
            {"leg_amps",
             size.lines ? Json{{"a", amps_json(size.lines->a)}, {"b", amps_json(size.lines->b)}} : Json(nullptr)},
            {"neutral_steps", list(load.neutral, step_json)},
            {"neutral_va", or_null(load.neutral_va)},
            {"neutral_amps", amps_or_null(size.neutral_amps)},
            {"least_a", amps_or_null(size.floor)},
            {"service_a", amps_or_null(size.service)},
            {"wires", list(size.wires, wire_json)},
            {"present_a", amps_or_null(p.facts.rating)},
            {"fits", p.facts.rating && (!size.fits || load.unknown.empty()) ? Json(size.fits) : Json(nullptr)},
            {"left_va", or_null(size.left_va)},
            {"largest_circuit_a", amps_or_null(size.largest_circuit)},
            {"verdict", text_or_null(said(p.verdict))},
            {"unknown", list(load.unknown, said_json)},
            {"notes", list(load.notes, said_json)}};
}

Json with_job(Building const& building, Json const& made) {
    Json all{{"job", building.name}, {"code", building.code}};
    all.update(made);
    return all;
}
} // namespace

void write_load_json(Building const& building, PanelLoad const& load, Streams& streams) {
    write(with_job(building, load_json(load)), streams);
}

void write_more_json(Building const& building, AddedCircuit const& told, WithMore const& more, Streams& streams) {
    auto const& c = *told.circuit;
    auto const panel_json = [](PanelWithMore const& p) {
        return Json{{"panel", p.after.panel->name},  {"fits", or_null(p.fits)},
                    {"more_va", p.more_va},          {"decides", p.grew ? step_json(*p.grew) : Json(nullptr)},
                    {"before", load_json(p.before)}, {"after", load_json(p.after)}};
    };
    write(with_job(building, {{"added",
                               {{"mark", c.mark},
                                {"name", c.name},
                                {"use", c.use->name},
                                {"panel", c.panel->name},
                                {"poles", c.poles},
                                {"breaker_a", amps_or_null(c.breaker)},
                                {"load_va", c.load ? Json(whole_va(*c.load)) : Json(nullptr)},
                                {"taken", told.taken}}},
                              {"fits", or_null(more.fits)},
                              {"no_space", text_or_null(more.no_space)},
                              {"panels", list(more.panels, panel_json)}}),
          streams);
}

} // namespace legwork
