// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// check and load, as text and as JSON.
#include "fuzz/opened.h"
#include "fuzz/promises.h"

#include "cli/json/json.h"
#include "cli/text/measure_list.h"
#include "cli/text/text.h"
#include "cli/text/words.h"
#include "job/job.h"

using namespace legwork;

namespace {

void promise_findings(Session const& s) {
    for (Finding const& f : s.findings) {
        fuzz::promise(!f.rule.empty() && !f.message.empty() && !f.fix.empty(), "a finding says what and what to do",
                      f.rule);
        auto const place = place_of(s.places, f.where);
        if (place.line > 0) fuzz::promise_place(place, s.bytes);
    }
}

void show_findings(Session const& s) {
    for (auto const by : {FindingFilter::By::gravity, FindingFilter::By::circuit, FindingFilter::By::theme})
        fuzz::shown_by([&](Streams& to) { list_findings(s, {by, {}, Severity::note}, to); });
    fuzz::promise_json(fuzz::shown_by([&](Streams& to) { write_findings_json(s, {}, to); }));
    fuzz::shown_by([&](Streams& to) { list_to_measure(s, to); });
    fuzz::promise_json(fuzz::shown_by([&](Streams& to) { write_measure_json(s, to); }));
}

void show_load(Session const& s, Panel const& panel, std::optional<LoadMethod> method) {
    auto const load = panel_load(s.building, s.plan, *s.book, panel, method);
    if (!load.load) return fuzz::promise(!load.why.empty() && !load.fix.empty(), "no load says why and the way out");
    fuzz::shown_by([&](Streams& to) { tell_load(s, load, to); });
    fuzz::promise_json(fuzz::shown_by([&](Streams& to) { write_load_json(s.building, load, to); }));
}

void show_one_more(Session const& s, Panel const& panel) {
    auto const told = added_circuit("vehicle charger, 40 A, 2 poles, continuous", s.building, *s.book, panel);
    if (!told.circuit) return fuzz::promise(!told.why.empty(), "no circuit to add says why");
    auto const more = with_more(s.building, s.plan, *s.book, *told.circuit);
    fuzz::shown_by([&](Streams& to) { tell_more(s, told, more, to); });
    fuzz::promise_json(fuzz::shown_by([&](Streams& to) { write_more_json(s.building, told, more, to); }));
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
    auto const s = fuzz::opened(fuzz::text_of(data, size));
    if (!s) return 0;
    promise_findings(*s);
    show_findings(*s);
    for (Panel const& panel : s->building.panels) {
        show_load(*s, panel, std::nullopt);
        for (auto const& method : load_method_names()) show_load(*s, panel, load_method(method));
    }
    if (auto const* service = service_panel(s->building)) show_one_more(*s, *service);
    return 0;
}
