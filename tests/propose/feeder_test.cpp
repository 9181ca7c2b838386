// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Random feeders and the circuits behind them, against the slow twin: what is proposed passes every wire rule, and
// nothing smaller carries the panel.
#include "building/resolve.h"
#include "cable/drop.h"
#include "exhaustive.h"
#include "proposed_jobs.h"
#include "reckon/run_drop.h"
#include "reckon/service.h"
#include "shops.h"
#include "units/text.h"

#include "catch.h"
#include <rapidcheck.h>

#include <algorithm>
#include <array>

using namespace legwork;
using namespace legwork::testing;

namespace {
std::string told(std::vector<Proposal> const& all) {
    std::string words;
    for (auto const& p : all) words += p.circuit + "\n" + steps_of(p) + "find out: " + p.find_out + "\n";
    return words;
}

struct Tried {
    typed::Job job;
    Amps breaker;
    Gauge gauge;
};
// The slow twin of one shop: every breaker with every wire, asked of the rules; the calculated load is taken as given.
class FeederTwin {
public:
    FeederTwin(Shop const& shop, std::string const& edition)
        : shop_(shop),
          edition_(edition),
          book_(*code_book(edition)),
          nec_(edition.starts_with("NEC")),
          feeder_(shop.job.circuits.front()),
          by_demand_(decides(shop.job)) {
        marks_ = shop.branches;
        auto near = filled(shop.job, {"SP"}, 225_A, Gauge::awg4_0, insulated());
        near.circuits.front().run.front().length = from_mm(10);
        // The branches by themselves lose little; what else is said of them is no matter of the feeder.
        others_ = objections(near, marks_, edition);
        marks_.emplace_back("SP");
        auto const legs = weighed_legs(shop.job, nec_);
        at_once_ = feeder_.poles == 1 ? legs[0] + legs[1] : std::max(legs[0], legs[1]);
        if (auto const main = shop.job.panels.back().main) at_once_ = std::min(at_once_, value(*main));
    }
    bool by_demand() const { return by_demand_; }
    std::string const& others() const { return others_; }

    std::optional<Sizes> smallest() const {
        for (bool const any_method : {false, true})
            for (int const a : {15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200}) {
                bool lossy = false; // it carries the panel; a larger breaker is no cure for what is lost
                for (GaugeName const& g : kGauges) {
                    Amps const breaker{a * 1000};
                    if (g.gauge < Gauge::awg14 || ampacity_of_feeder(g.gauge, breaker, feeder_, nec_) == 0) continue;
                    Tried const t{filled(shop_.job, {"SP"}, breaker, g.gauge, insulated()), breaker, g.gauge};
                    auto const plan = as_typed(t.job);
                    auto const building = resolve(t.job);
                    auto const p = any_method ? permitted_load(building, plan, book_, building.panels.back())
                                              : panel_load(building, plan, book_, building.panels.back());
                    if (!does(t, p)) continue;
                    if (!by_demand_ || loses_little(t, p))
                        return Sizes{breaker, std::string(g.name) + "/" + std::to_string(insulated())};
                    lossy = true;
                }
                if (lossy) return std::nullopt;
            }
        return std::nullopt;
    }

private:
    int insulated() const { return feeder_.poles + 1; }
    bool decides(typed::Job const& job) const {
        auto const building = resolve(job);
        return decides(panel_load(building, as_typed(job), book_, building.panels.back()));
    }
    static bool decides(PanelLoad const& p) { return p.load && p.load->unknown.empty() && !p.load->all_at_once; }

    bool does(Tried const& t, PanelLoad const& p) const {
        double const wire = ampacity_of_feeder(t.gauge, t.breaker, feeder_, nec_);
        if (!by_demand_ && (value(t.breaker) < at_once_ - 0.006 || wire < at_once_ - 0.006)) return false;
        if (by_demand_ && !(decides(p) && carries(t, p, wire))) return false;
        bool const at_least = !by_demand_ && p.load && !p.load->all_at_once;
        if (at_least && value(std::max(p.size.to_carry, p.size.floor.value_or(0_A))) > wire) return false;
        return load_rules_are_silent(t.job) && objections(t.job, marks_, edition_) == others_;
    }

    bool carries(Tried const& t, PanelLoad const& p, double wire) const {
        auto const least = std::max(p.size.to_carry, p.size.floor.value_or(0_A));
        if (t.breaker < least) return false;
        // CE 8-200(1)(b) is a least load, NEC 230.79(C) a least disconnect; the latter is not of feeders.
        return value(nec_ ? p.size.to_carry : least) <= wire || (p.load->whole_dwelling && in_dwelling_table(t));
    }

    // NEC Table 310.12 (2017: Annex D, example D7).
    bool in_dwelling_table(Tried const& t) const {
        struct Row {
            Amps breaker;
            Gauge copper, aluminium;
        };
        static constexpr std::array kRows{
            Row{100_A, Gauge::awg4, Gauge::awg2},     Row{110_A, Gauge::awg3, Gauge::awg1},
            Row{125_A, Gauge::awg2, Gauge::awg1_0},   Row{150_A, Gauge::awg1, Gauge::awg2_0},
            Row{175_A, Gauge::awg1_0, Gauge::awg3_0}, Row{200_A, Gauge::awg2_0, Gauge::awg4_0}};
        auto const* row = std::ranges::find(kRows, t.breaker, &Row::breaker);
        return nec_ && row != kRows.end() && t.gauge >= (feeder_.metal == Metal::copper ? row->copper : row->aluminium);
    }

    bool load_rules_are_silent(typed::Job const& job) const {
        auto const plan = as_typed(job);
        for (auto const* id : {"load-service", "panel-main-overloaded"})
            for (Finding const& f : judged(*rule_named(id), {resolve(job), plan, book_}).findings())
                if (f.severity != Severity::note && f.where.panel == "Shop") return false;
        return true;
    }

    static bool within(double percent, double limit) { return percent < limit + 0.05; }

    // 3 % of the feeder, 5 % with a branch behind it (NEC 215.2, informational note; CE 8-102).
    bool loses_little(Tried const& t, PanelLoad const& p) const {
        auto const plan = as_typed(t.job);
        auto const building = resolve(t.job);
        Case const c{building, plan, book_};
        double const ohms = run_length(building.circuits.front()).ohms, all = value(p.size.to_carry);
        double const a = p.size.lines ? value(p.size.lines->a) : all, b = p.size.lines ? value(p.size.lines->b) : all;
        std::array<double, 3> lost{}; // percent on A, on B, between
        if (feeder_.poles == 1) {
            lost.fill(2 * all * ohms / 120 * 100);
        } else if (p.facts.wye) {
            auto const v = three_wire_drop(a, b, 120, ohms);
            lost = {v.a / 120 * 100, v.b / 120 * 100, v.between / 208 * 100};
        } else {
            lost = {(2 * a - b) * ohms / 120 * 100, (2 * b - a) * ohms / 120 * 100, (a + b) * ohms / 240 * 100};
        }
        for (double const percent : lost)
            if (!within(percent, 3)) return false;
        return std::ranges::all_of(building.circuits, [&](Circuit const& o) {
            auto const own = o.panel->name == "Shop" ? branch_drop(c, o) : std::nullopt;
            if (!own || !within(own->percent(), 3)) return true;
            double const ahead =
                o.poles == 2 ? lost[2] : lost.at(static_cast<std::size_t>((o.space->space - 1) / 2 % 2));
            return within(own->percent() + ahead, 5);
        });
    }

    Shop const& shop_;
    std::string const& edition_;
    CodeBook const& book_;
    bool nec_;
    typed::Circuit const& feeder_;
    bool by_demand_;
    std::vector<std::string> marks_;
    std::string others_;
    double at_once_ = 0;
};

typed::Circuit any_feeder() {
    auto feeder = bare("feeder", {}, chance(6) ? 1 : 2);
    feeder.run.front().length = from_mm(*rc::gen::inRange<std::int64_t>(1, 12) * 10'000);
    if (chance(4)) feeder.metal = Metal::aluminium;
    if (chance(4)) feeder.wiring = Wiring::conduit;
    return feeder;
}

// All of a dwelling behind the feeder, or a part of one.
void make_dwelling(typed::Job& job) {
    job.dwelling = typed::Dwelling{};
    if (!chance(4)) job.dwelling->area = Area{*rc::gen::inRange<std::int64_t>(15, 140) * 1'000'000};
    if (!chance(3)) return;
    auto light = bare("lighting", 300_VA);
    light.mark = "L1";
    light.panel = "Main";
    light.space = Spot{21, 0};
    light.breaker = 15_A;
    light.run.front().kind = "14/2";
    job.circuits.push_back(light);
}
} // namespace

TEST_CASE("of any feeder, the smallest that carries its panel and loses little enough", "[propose][twin][feeder]") {
    REQUIRE(rc::check([] {
        auto const edition = any_edition();
        auto shop = any_shop(any_feeder());
        if (!chance(3)) make_dwelling(shop.job);
        if (chance(4)) shop.job.panels.back().main = *rc::gen::element(30_A, 60_A, 100_A);
        FeederTwin const twin(shop, edition);
        RC_CLASSIFY(twin.by_demand());
        RC_ASSERT(twin.others().find("wire-drop") == std::string::npos);
        auto const all = all_proposed(shop.job, edition);
        RC_LOG() << edition << "\n" << told(all);
        RC_ASSERT(all.size() == 1U);
        auto const& p = all.front();
        auto const best = twin.smallest();
        if (best) RC_LOG() << "twin: " << text(best->breaker) << " " << best->cable << "\n";
        RC_ASSERT(p.find_out.empty() == best.has_value());
        if (!best) return;
        RC_ASSERT(p.breaker == best->breaker);
        RC_ASSERT(p.cables == std::vector<std::string>{best->cable});
    }));
}

TEST_CASE("behind any feeder, the smallest branch that loses little enough with it", "[propose][twin][feeder]") {
    REQUIRE(rc::check([] {
        auto const edition = any_edition();
        auto feeder = bare("feeder", {}, 2);
        feeder.run = {{*rc::gen::element<std::string>("8/3", "6/3", "2/3"), any_length(50), ""}};
        feeder.breaker = *rc::gen::element(40_A, 60_A);
        auto shop = any_shop(feeder);
        auto far = in_shop("K1", 20);
        far.breaker.reset();
        far.run = {{"", any_length(40), ""}};
        shop.job.circuits.push_back(far);
        if (chance(3) && shop.branches.size() > 1) shop.job.circuits[1].load.reset(); // then a share of its breaker
        RC_LOG() << edition << "\n" << told(all_proposed(shop.job, edition));
        auto const all = all_proposed(shop.job, edition);
        auto const best = smallest(shop.job, {"K1"}, edition);
        if (best) RC_LOG() << "twin: " << text(best->breaker) << " " << best->cable << "\n";
        RC_ASSERT(all.size() == 1U);
        RC_ASSERT(all.front().find_out.empty() == best.has_value());
        if (!best) return;
        RC_ASSERT(all.front().breaker == best->breaker);
        RC_ASSERT(all.front().cables.front() == best->cable);
    }));
}
