// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Which method holds for a building, and which an electrician would take.
#include "codebook/cite.h"
#include "codebook/reference_phrase.h"
#include "demand/methods.h"
#include "words/catalogue.h"
#include "words/say.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
constexpr std::array<std::string_view, 4> kNames{"standard", "optional", "existing", "measured"};

// Why a method does not hold, and what to do; empty when it does.
struct MethodRefusal {
    Phrase why; // of a row where the sheet may say it
    std::string fix;
    explicit operator bool() const { return !why.empty(); }
};

Reference reference(LoadQuestion const& q, std::string_view topic) {
    return cite(q.book, "load-service/" + std::string(topic));
}
Phrase section(LoadQuestion const& q, std::string_view topic) { return reference_phrase(reference(q, topic)); }

bool is_unread(LoadQuestion const& q, std::string_view topic) { return reference(q, topic).source == Source::unread; }

bool anything_existing(LoadQuestion const& q) {
    return std::ranges::any_of(circuits_under(q.panel), &Circuit::existing);
}
bool anything_new(LoadQuestion const& q) {
    auto const loads = loads_of(q);
    auto const any_new = [](LoadItems const& some) { return std::ranges::any_of(some, &LoadItem::is_new); };
    return any_new(loads.items) || any_new(loads.managed) || any_new(loads.other_buildings);
}

constexpr std::string_view kStandardInstead = "take  --method standard";

// What the optional methods ask of a building.
MethodRefusal not_a_dwelling(LoadQuestion const& q, LoadMethod method) {
    auto const what = name(method);
    if (!q.building.dwelling)
        return {fmt::format("the {} method is for one dwelling, and the job has no table [dwelling]", what),
                "add  [dwelling]  with its  area,  or " + std::string(kStandardInstead)};
    if (!carries_dwelling(q.building, q.panel))
        return {fmt::format("the {} method is for the whole of a dwelling, and panel \"{}\" feeds a part of it", what,
                            q.panel.name),
                std::string(kStandardInstead)};
    if (!q.facts.three_wire)
        return {say("load/needs-two-hots", phrase(method), section(q, what)), std::string(kStandardInstead)};
    return {};
}

MethodRefusal no_such_method(LoadQuestion const& q, LoadMethod method) {
    return {is_unread(q, name(method)) ? say("load/method-unread", phrase(method), as_is(q.book.edition))
                                       : say("load/method-none", as_is(q.book.edition), phrase(method)),
            demand_factors(q.book).by_blocks
                ? "take  --method standard,  or  --method measured  where a year's peak is known"
                : std::string(kStandardInstead)};
}

MethodRefusal optional_refused(LoadQuestion const& q) {
    auto const& o = demand_factors(q.book).optional;
    if (!o) return no_such_method(q, LoadMethod::optional);
    if (auto r = not_a_dwelling(q, LoadMethod::optional)) return r;
    auto const least = Amps{o->least_amps.value * 1000};
    if (q.facts.rating && *q.facts.rating < least)
        return {say("load/needs-amps", phrase(LoadMethod::optional), section(q, "optional"), said(least),
                    q.facts.rated_by, said(*q.facts.rating)),
                std::string(kStandardInstead)};
    return {};
}

MethodRefusal existing_refused(LoadQuestion const& q) {
    if (!demand_factors(q.book).existing) return no_such_method(q, LoadMethod::existing);
    if (auto r = not_a_dwelling(q, LoadMethod::existing)) return r;
    if (!anything_existing(q) && !q.panel.existing)
        return {as_is("the method for an existing dwelling asks what stands there already, and no circuit says  "
                      "existing = true"),
                "mark what was there with  existing = true,  or " + std::string(kStandardInstead)};
    return {};
}

MethodRefusal measured_refused(LoadQuestion const& q) {
    if (is_unread(q, "measured")) return no_such_method(q, LoadMethod::measured);
    auto const& p = demand_factors(q.book).peak;
    if (!q.building.dwelling || !q.building.dwelling->peak)
        return {as_is("the measured method asks for the largest draw of a year, and the job does not know it"),
                "add  peak = { amps = \"62 A\", days = 365 }  to [dwelling], or " + std::string(kStandardInstead)};
    if (q.panel.feeder_said || !carries_dwelling(q.building, q.panel))
        return {fmt::format("the peak was read at the service, and panel \"{}\" feeds a part of it", q.panel.name),
                "name the service's panel, or " + std::string(kStandardInstead)};
    auto const days = q.building.dwelling->peak->days;
    auto const least = p.recorded_days ? p.recorded_days->value : p.year_days.value;
    if (days < least)
        return {fmt::format("a peak of {} days is too short: {} asks for {}", days, text(reference(q, "measured")),
                            p.recorded_days ? fmt::format("a year, or {} days with a recorder", least)
                                            : fmt::format("{} days", least)),
                "read it longer, or " + std::string(kStandardInstead)};
    bool const own_source = std::ranges::any_of(circuits_under(q.panel), [](Circuit const* c) {
        auto const* use = c->use;
        return use && use->interactive;
    });
    if (own_source)
        return {as_is("what is read at the service is not the load where solar or a battery feeds the house too"),
                std::string(kStandardInstead)};
    if (!anything_existing(q))
        return {as_is("the measured method adds what is new to the peak, and no circuit says that it was there then"),
                "mark what was there with  existing = true,  or " + std::string(kStandardInstead)};
    return {};
}

MethodRefusal refused(LoadQuestion const& q, LoadMethod method) {
    switch (method) {
    case LoadMethod::optional: return optional_refused(q);
    case LoadMethod::existing: return existing_refused(q);
    case LoadMethod::measured: return measured_refused(q);
    case LoadMethod::standard: break;
    }
    return {};
}

LoadCalculation standard(LoadQuestion const& q, Work&& w) {
    auto const& f = w.factors;
    if (w.q.building.dwelling && f.by_floor) {
        standard_by_floor(w, *f.by_floor);
        if (!w.whole) w.notes.push_back(say("load/part-by-list"));
        auto title =
            w.whole ? say("load/title-dwelling", as_is(q.book.edition)) : say("load/title-part", as_is(q.book.edition));
        return finished(std::move(w), LoadMethod::standard, std::move(title));
    }
    if (w.whole && f.by_blocks) {
        by_blocks(w, *f.by_blocks);
        return finished(std::move(w), LoadMethod::standard, say("load/title-blocks", as_is(q.book.edition)));
    }
    listed(w, f.listed);
    if (!q.building.dwelling && f.by_blocks) w.notes.push_back(say("load/look-at-table-14"));
    if (!q.building.dwelling && f.by_floor) w.notes.push_back(say("load/look-at-table-220"));
    auto load = finished(std::move(w), LoadMethod::standard, say("load/title-listed", section(q, "listed")));
    load.all_at_once = true;
    return load;
}

LoadCalculation by_method(LoadQuestion const& q, LoadMethod method) {
    auto w = work_on(q);
    auto const& f = w.factors;
    switch (method) {
    case LoadMethod::optional:
        optional_new(w, *f.by_floor, *f.optional);
        return finished(std::move(w), method, say("load/title-optional", section(q, "optional")));
    case LoadMethod::existing: {
        bool const heat = adds_climate(w.loads);
        optional_existing(w, *f.by_floor, *f.existing);
        return finished(std::move(w), method,
                        heat ? say("load/title-existing-heat", section(q, "existing-heat"))
                             : say("load/title-existing", section(q, "existing")));
    }
    case LoadMethod::measured:
        measured(w, f.peak, *q.building.dwelling->peak);
        return finished(std::move(w), method, say("load/title-measured", section(q, "measured")));
    case LoadMethod::standard: break;
    }
    return standard(q, std::move(w));
}

struct Choice {
    LoadMethod method;
    Phrase why;
};

Choice chosen(LoadQuestion const& q) {
    auto const& f = demand_factors(q.book);
    if (!measured_refused(q) && anything_new(q)) return {LoadMethod::measured, say("load/why-measured")};
    if (!existing_refused(q) && anything_existing(q))
        return {LoadMethod::existing,
                say("load/why-existing", section(q, adds_climate(loads_of(q)) ? "existing-heat" : "existing"))};
    auto const no = optional_refused(q);
    if (!no) return {LoadMethod::optional, say("load/why-optional", said(Amps{f.optional->least_amps.value * 1000}))};
    if (!q.building.dwelling) return {LoadMethod::standard, say("load/why-no-dwelling")};
    if (!carries_dwelling(q.building, q.panel)) return {LoadMethod::standard, say("load/why-part")};
    if (!f.optional && !is_unread(q, "optional"))
        return {LoadMethod::standard, say("load/why-one-method", as_is(q.book.edition))};
    return {LoadMethod::standard, say("load/why-standard", no.why)};
}
} // namespace

std::string_view name(LoadMethod method) { return kNames[static_cast<std::size_t>(method)]; }

Phrase phrase(LoadMethod method) {
    switch (method) {
    case LoadMethod::standard: break;
    case LoadMethod::optional: return say("load/method-optional");
    case LoadMethod::existing: return say("load/method-existing");
    case LoadMethod::measured: return say("load/method-measured");
    }
    return say("load/method-standard");
}

std::optional<LoadMethod> load_method(std::string_view name) {
    auto const at = std::ranges::find(kNames, name);
    if (at == kNames.end()) return std::nullopt;
    return static_cast<LoadMethod>(at - kNames.begin());
}

std::vector<std::string> load_method_names() { return {kNames.begin(), kNames.end()}; }

namespace {
Phrase topic_phrase(std::string_view topic) {
    auto const row = row_number(fmt::format("load/topic-{}", topic));
    return row < kRows.size() ? Phrase(row, {}) : as_is(topic);
}

// A figure that hangs on an unread section is not known.
void name_unread(LoadCalculation& load, LoadQuestion const& q) {
    auto const edition = as_is(q.book.edition);
    for (LoadStep const& s : load.steps) {
        if (s.reference.source != Source::unread) continue;
        auto const what = say("load/unread-step", edition, topic_phrase(s.topic));
        if (std::ranges::count(load.unknown, what) == 0) load.unknown.push_back(what);
    }
    if (is_unread(q, "neutral")) load.notes.push_back(say("load/unread-neutral", edition));
}
} // namespace

LoadAnswer reckon(LoadQuestion const& q, std::optional<LoadMethod> asked) {
    if (q.book.demand_factors.is_unread())
        return {std::nullopt, fmt::format("how {} reckons a load is not read yet", q.book.edition),
                "reckon it by hand, or see with an older edition as  code  what that one asks"};
    if (asked)
        if (auto no = refused(q, *asked)) return {std::nullopt, english().words(no.why), std::move(no.fix)};
    auto const choice = asked ? Choice{*asked, say("load/why-asked")} : chosen(q);
    auto load = by_method(q, choice.method);
    load.why = choice.why;
    if (choice.method != LoadMethod::measured) add_neutral(load, q);
    add_other_buildings(load, q);
    add_granted(load, q);
    name_unread(load, q);
    return {std::move(load), {}, {}};
}

} // namespace legwork
