// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Breakers are tried from the smallest up, since the method that the code allows may hang on the size; the first that
// carries what is then calculated, and that no rule of the panel's load speaks of, is wanted.
#include "propose/wanted.h"

#include "building/trial.h"
#include "codebook/cite.h"
#include "codebook/stock/usual.h"
#include "propose/feeder_objection.h"
#include "reckon/leg_amps.h"
#include "reckon/service.h"
#include "units/shell.h"
#include "units/text.h"
#include "words/catalogue.h"
#include "words/say.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <functional>

namespace legwork {

namespace {
using LoadOf = std::function<PanelLoad(Building const&, Panel const&)>;

// Every load that counts on one hot alone has its leg.
bool has_legs(PanelLoad const& p) {
    auto const placed = [&](std::vector<LineLoad> const& some) {
        return std::ranges::all_of(some, [&](LineLoad const& l) { return p.facts.legs.contains(l.mark); });
    };
    auto const& other = p.load->other_season;
    return !p.facts.three_wire || (placed(p.load->one_line) && (!other || placed(other->one_line)));
}

bool decides(PanelLoad const& p) {
    return p.load && p.load->unknown.empty() && !p.load->all_at_once && p.size.service && has_legs(p);
}

// To the hundredth of an ampere, as the load calculation prints it.
std::string shown(Amps a) { return text(Amps{(a.count + 5) / 10 * 10}); }

// Least that the feeder must be good for.
Amps least_of(ServiceSize const& size) { return std::max(size.to_carry, size.floor.value_or(0_A)); }

std::string_view topic_of(LoadMethod method) {
    switch (method) {
    case LoadMethod::optional: return "load-service/optional";
    case LoadMethod::existing: return "load-service/existing";
    case LoadMethod::measured: return "load-service/measured";
    case LoadMethod::standard: break;
    }
    return "load-service";
}

struct BreakerTrial {
    Amps breaker;
    PanelLoad load;
    std::string refused{}, way_out{}; // why it does not do
};

Building with_breaker(Case const& c, Panel const& fed, Amps breaker) {
    Sizes const sizes{fed.feeder->number, breaker, {}};
    return with_sizes(c.building, {&sizes, 1});
}

BreakerTrial tried(Case const& c, Panel const& fed, Amps breaker, LoadOf const& load_of) {
    Building const trial = with_breaker(c, fed, breaker);
    BreakerTrial t{breaker, load_of(trial, trial.panels[fed.number])};
    t.load.panel = &fed; // of the building that stays
    if (!decides(t.load))
        t.refused = "the load calculation is not complete by the method for that size";
    else if (least_of(t.load.size) > breaker)
        t.refused =
            fmt::format("by the {} method it must carry {}", name(t.load.load->method), shown(least_of(t.load.size)));
    else if (auto const f = load_objection({trial, c.plan, c.book}, fed))
        t.refused = f->message, t.way_out = f->fix;
    return t;
}

// What the wire must carry in the situation that draws most.
struct InSituation {
    std::string what; // "situation \"Winter evening\""
    Amps amps = 0_A;
};
InSituation most_in_situation(Case const& c, Panel const& fed) {
    InSituation most;
    for (Feed const& feed : fed.feeds)
        for (InUse const& use : in_use(c, fed, feed)) {
            if (use.everything) continue;
            auto const& legs = use.legs;
            bool const one_hot = fed.feeder->poles == 1 || phase_degrees(feed.kind) == 0;
            Amps const amps{std::llround((one_hot ? legs.a + legs.b : std::max(legs.a, legs.b)) * 1000)};
            if (amps > most.amps)
                most = {use.alone ? use.alone->mark + ", which no situation has,"
                                  : fmt::format("situation \"{}\"", use.situation->name),
                        amps};
        }
    return most;
}

// As the legs carry it, for what is lost on the way.
CalculatedLegs on_legs(PanelLoad const& p, Circuit const& feeder) {
    auto const& sources = p.panel->feeds;
    auto const same = std::ranges::find_if(sources, [&](Feed const& f) {
        return has_two_hots(f.kind) == p.facts.three_wire && (f.kind == SupplyKind::wye_120_208) == p.facts.wye;
    });
    CalculatedLegs legs{{}, same == sources.end() ? SupplyKind::split_120_240 : same->kind};
    double const amps = value(p.size.to_carry);
    if (feeder.poles == 1)
        legs.at = {amps, 0};
    else if (!p.facts.three_wire)
        legs.at = {amps / 2, amps / 2};
    else
        legs.at = p.size.lines ? LegAmps{value(p.size.lines->a), value(p.size.lines->b)} : LegAmps{amps, amps};
    return legs;
}

Step would_not_do(Amps breaker, std::string const& why) {
    return arithmetic(fmt::format("{} would not do: {}", text(breaker), why));
}

class WantedByCalculation {
public:
    WantedByCalculation(Case const& c, Panel const& fed)
        : c_(c), fed_(fed), feeder_(*fed.feeder), named_(load(c.building, fed)) {}

    std::optional<Wanted> wanted() {
        if (!decides(named_)) return std::nullopt;
        if (feeder_.breaker) return with(named_);
        if (fed_.bus && !fed_.main) w_.most = *fed_.bus;
        // By the method that an electrician takes; else by any that the code allows.
        for (auto const &by :
             {LoadOf([&](Building const&trial, Panel const&p) { return load(trial, p); }),
              LoadOf([&](Building const&trial, Panel const&p) { return permitted_load(trial, c_.plan, c_.book, p); })})
            if (auto const found = smallest(by)) {
                with(found->load);
                say_choice(*found);
                return std::move(w_);
            }
        with(named_);
        if (!w_.most || *w_.most >= w_.breaker) w_.find_out = with_way_out(refused_, way_out_);
        return std::move(w_);
    }

private:
    PanelLoad load(Building const& building, Panel const& panel) const {
        return panel_load(building, c_.plan, c_.book, panel);
    }

    std::optional<BreakerTrial> smallest(LoadOf const& by) {
        refused_.clear();
        for (int const size : c_.book.standard_breakers) {
            Amps const breaker{size * std::int64_t{1000}};
            if (breaker < least_proposed_breaker() || (w_.most && breaker > *w_.most)) continue;
            auto t = tried(c_, fed_, breaker, by);
            if (t.refused.empty()) return t;
            if (t.load.load && t.load.load->method != named_.load->method)
                t.refused += ". " + english().words(t.load.load->why);
            last_ = breaker;
            refused_ = std::move(t.refused);
            way_out_ = std::move(t.way_out);
        }
        return std::nullopt;
    }

    Wanted& with(PanelLoad const& p) {
        auto const& size = p.size;
        w_.whole_panel = true;
        w_.whole_dwelling = p.load->whole_dwelling;
        w_.topic = topic_of(p.load->method);
        w_.source = cite(c_.book, w_.topic).source;
        w_.calculated = on_legs(p, feeder_);
        w_.breaker = w_.wire = size.to_carry;
        say_load(p);
        if (size.floor && *size.floor > w_.breaker) {
            w_.breaker = *size.floor;
            if (size.floor_is_load) w_.wire = *size.floor;
            say(fmt::format("the least for all of a dwelling: {}", text(*size.floor)), "load-service/minimum");
        }
        if (auto const s = most_in_situation(c_, fed_); s.amps > w_.wire) {
            w_.wire = s.amps;
            w_.breaker = std::max(w_.breaker, s.amps);
            say(fmt::format("{} draws more: {}", s.what, shown(s.amps)), "panel-main-overloaded");
        }
        if (w_.most)
            w_.steps.push_back(
                arithmetic(fmt::format("its bus, with no main ahead of it, takes {} at most", text(*w_.most))));
        return w_;
    }

    void say(std::string says, std::string_view topic) { w_.steps.push_back(step(c_, std::move(says), topic)); }

    // "Optional method for one dwelling (NEC 2023 220.82(B)): 28800 VA at 240 V = 120 A"
    void say_load(PanelLoad const& p) {
        auto const& size = p.size;
        say(fmt::format("{}: {} VA at {} = {}; `legwork load --panel {}` shows the steps",
                        english().words(p.load->title), p.load->total_va, text(p.facts.volts), shown(size.amps),
                        shell_name(fed_.name)),
            "load-service/volts");
        if (size.lines)
            w_.steps.push_back(
                arithmetic(fmt::format("leg {} carries more{}, {}", size.lines->a_is_heavier() ? 'A' : 'B',
                                       size.lines->other_season ? " while the other of heating and cooling runs" : "",
                                       english().words(size.lines->arithmetic))));
        if (size.to_carry < (size.lines ? size.lines->heavier() : size.amps))
            say(fmt::format("the part of an ampere left out: {}", shown(size.to_carry)), "load-service/half-amps");
    }

    // Where another size comes out than the calculation names before the feeder has one.
    void say_choice(BreakerTrial const& found) {
        auto const next = standard_breaker_at_or_above(c_.book, std::max(w_.breaker, least_proposed_breaker()));
        if (found.load.load->method != named_.load->method && named_.size.service != found.breaker)
            w_.steps.push_back(arithmetic(fmt::format(
                "before it has a size `legwork load` names {}, by the {} method; at that size another holds. {}",
                text(*named_.size.service), name(named_.load->method), english().words(found.load.load->why))));
        if (next && *next >= found.breaker) return;
        w_.steps.push_back(would_not_do(last_, refused_));
        w_.breaker = found.breaker;
    }

    Case const& c_;
    Panel const& fed_;
    Circuit const& feeder_;
    PanelLoad named_; // as `legwork load` tells it now
    Wanted w_;
    Amps last_ = 0_A; // the largest that was refused
    std::string refused_, way_out_;
};
} // namespace

std::optional<Wanted> wanted_by_calculation(Case const& c, Panel const& fed) {
    return WantedByCalculation(c, fed).wanted();
}

std::string lacking_in_calculation(Case const& c, Panel const& fed) {
    auto const p = panel_load(c.building, c.plan, c.book, fed);
    if (!p.load || p.load->all_at_once || p.load->unknown.empty()) return {};
    return fmt::format("its load calculation is not complete ({}): no demand factor is taken",
                       english().words(joined("list/semicolon", p.load->unknown)));
}

Wanted unopposed(Case const& c, Panel const& fed, Wanted w) {
    std::optional<Finding> refused;
    Amps last = 0_A;
    for (int const size : c.book.standard_breakers) {
        Amps const breaker{size * std::int64_t{1000}};
        if (breaker < std::max(w.breaker, least_proposed_breaker()) || (w.most && breaker > *w.most)) continue;
        Building const trial = with_breaker(c, fed, breaker);
        if (auto f = load_objection({trial, c.plan, c.book}, fed)) {
            last = breaker;
            refused = std::move(f);
            continue;
        }
        auto const p = panel_load(trial, c.plan, c.book, trial.panels[fed.number]);
        if (p.load && !p.load->all_at_once) w.wire = std::max(w.wire, least_of(p.size));
        if (!refused) return w;
        w.wire = std::max(w.wire, most_in_situation(c, fed).amps);
        w.steps.push_back(would_not_do(last, refused->message));
        w.breaker = breaker;
        return w;
    }
    if (refused) w.find_out = with_way_out(refused->message, refused->fix);
    return w;
}

} // namespace legwork
