// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cable/run.h"

#include "cable/conductors.h"
#include "codebook/cables.h"
#include "codebook/uses.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// The panel's power is DC: its own source, one of its sources, or the panel's above (feeders make no cycle).
bool is_dc_panel(typed::Job const& job, std::string const& name) {
    typed::Panel const* p = panel_of(job, name);
    for (std::size_t depth = 0; p && p->feeder && depth < job.panels.size(); ++depth)
        if (typed::Panel const* above = panel_of(job, p->feeder->panel)) p = above;
    if (!p) return false;
    auto const dc = [](typed::Supply const& s) { return s.kind >= SupplyKind::dc_12; };
    if (p->supply) return dc(*p->supply);
    typed::Supply const* s = p->supplies.empty() ? nullptr : supply_of(job, p->supplies.front());
    return s && dc(*s);
}

bool may_use_neutral(typed::Circuit const& c) {
    Use const* use = use_named(c.use);
    return c.outlets.empty() && use && use->may_use_neutral_at_240;
}

// What the home run of a circuit or a pair has to carry.
CableTask home_task(typed::Job const& job, typed::Circuit const& c, typed::Circuit const* p) {
    CableTask task;
    task.hots.push_back({c.mark, c.hot});
    if (p)
        task.hots.push_back({p->mark, p->hot});
    else if (c.poles == 2)
        task.hots.push_back({c.mark, ""});
    task.neutral = p || needs_neutral(job, c);
    task.white_is_neutral = may_use_neutral(c);
    task.neutral_circuit = p ? "" : c.mark;
    typed::Circuit const& says_third = c.third.empty() && p ? *p : c;
    task.third = says_third.third;
    task.third_circuit = says_third.mark;
    return task;
}

// The circuit says that it has a switch loop, and this last piece ends at a switch.
bool is_loop(typed::Circuit const& c, std::vector<typed::Segment> const& run, std::size_t i) {
    if (!c.switch_loop || c.poles != 1 || i == 0 || i + 1 != run.size()) return false;
    std::string to;
    for (char const ch : run[i].to) to += ch >= 'A' && ch <= 'Z' ? static_cast<char>(ch - 'A' + 'a') : ch;
    return to.find("switch") != to.npos;
}

std::string called(typed::Circuit const& c) { return c.name.empty() ? c.mark : c.name; }

// The box at the far end of a piece. The first box: `box`, else the circuit's name; further ones counted (#2) where
// they have no name, the box where a pair splits too. No words, since sheets speak several languages.
std::string box_name(typed::Job const& job, typed::Circuit const& c, std::vector<typed::Segment> const& run, std::size_t i) {
    if (i < run.size() && !run[i].to.empty()) return run[i].to;
    typed::Circuit const* p = partner(job, c);
    if (i > 0) return p && i == 1 ? called(c) : fmt::format("{} #{}", called(c), p ? i : i + 1);
    if (!c.box.empty()) return c.box;
    if (p && !p->box.empty()) return p->box;
    bool const splits = p && (run.size() > 1 || run_of(job, *p).size() > 1);
    if (splits) return cable_mark(job, c) + " #1";
    return p && c.name.empty() ? called(*p) : called(c);
}

std::string hot_of(CableRun const& run, std::string_view circuit) {
    auto const at = std::ranges::find_if(
        run.conductors, [&](Conductor const& c) { return c.job == ConductorJob::hot && c.circuit == circuit; });
    return at == run.conductors.end() ? std::string() : at->color;
}

Conductor made(std::string color, ConductorJob job) {
    Conductor c;
    c.color = std::move(color);
    c.job = job;
    return c;
}

std::vector<Conductor> unused(std::vector<std::string> const& colors) {
    std::vector<Conductor> found;
    for (std::string const& color : colors) found.push_back(made(color, ConductorJob::spare));
    return found;
}

// All pieces of one circuit; of a pair those of its first member, the home run being shared.
class Pieces {
public:
    Pieces(typed::Job const& job, CodeBook const& book) : job_(job), book_(book) {}

    CableRun home(typed::Circuit const& c, typed::Circuit const* p) const {
        auto const run = run_of(job_, c);
        CableRun piece = ends(c, run, 0);
        piece.mark = cable_mark(job_, c);
        piece.circuits = p ? std::vector{c.mark, p->mark} : std::vector{c.mark};
        auto const& colors = c.colors.empty() && p ? p->colors : c.colors;
        wire(piece, c, home_task(job_, c, p), colors);
        return piece;
    }

    // The pieces after the home run, each with its own neutral.
    void add_rest(std::vector<CableRun>& runs, typed::Circuit const& c, CableRun const& home_run) const {
        auto const run = run_of(job_, c);
        CableRun before = home_run;
        for (std::size_t i = 1; i < run.size(); ++i) {
            CableRun piece = ends(c, run, i);
            piece.from = before.to;
            piece.mark = c.mark;
            piece.circuits = {c.mark};
            CableTask task = home_task(job_, c, nullptr);
            task.hots.front().color.clear(); // `hot` speaks of the home run
            if (is_loop(c, run, i)) task.wires = Wires::switch_loop;
            wire(piece, c, task, {});
            piece.note = change(hot_of(before, c.mark), hot_of(piece, c.mark), c);
            runs.push_back(piece);
            before = piece;
        }
    }

private:
    static std::string change(std::string const& before, std::string const& now, typed::Circuit const& c) {
        if (before.empty() || now.empty() || before == now) return {};
        return fmt::format("{}: its hot is {} up to this box, {} from here on; join the two.", c.mark, before, now);
    }

    CableRun ends(typed::Circuit const& c, std::vector<typed::Segment> const& run, std::size_t i) const {
        CableRun piece;
        piece.segment = static_cast<int>(i);
        if (i < run.size()) {
            piece.kind = run[i].kind;
            piece.length = run[i].length;
        }
        piece.from_panel = i == 0;
        if (i == 0) piece.from = c.panel; // a later piece begins where the one before ends
        typed::Panel const* fed = fed_panel(job_, c);
        piece.to_panel = fed && i + 1 >= run.size();
        piece.to = piece.to_panel ? fed->name : box_name(job_, c, run, i);
        return piece;
    }

    void wire(CableRun& piece, typed::Circuit const& c, CableTask task, std::vector<std::string> const& said_colors) const {
        auto const kind = cable_kind(piece.kind);
        if (!kind || !kind->gauge) return;
        bool const dc = is_dc_panel(job_, c.panel);
        auto const& colors = said_colors.empty() ? kind->colors : said_colors;
        if (!kind->power && !dc) {
            piece.conductors = unused(colors); // no AC power cable: nothing in it may carry the circuit
            return;
        }
        if (dc) task.wires = Wires::dc;
        task.wiring = wiring_of(job_, c);
        task.gauge = *kind->gauge;
        task.ground = kind->ground;
        auto found = conductors_of(colors, task, book_);
        piece.conductors = std::move(found.conductors);
        piece.missing_hots = found.missing_hots;
        piece.missing_neutrals = found.missing_neutrals;
    }

    typed::Job const& job_;
    CodeBook const& book_;
};

CableRun other_cable(typed::Cable const& cable) {
    CableRun run;
    run.mark = cable.mark;
    run.kind = cable.kind;
    run.length = cable.length;
    run.from = cable.from;
    run.to = cable.to;
    auto const kind = cable_kind(cable.kind);
    if (!kind) return run;
    run.conductors = unused(kind->colors);
    if (kind->ground) run.conductors.push_back(made("bare", ConductorJob::ground));
    return run;
}
} // namespace

std::vector<CableRun> cable_runs(typed::Job const& job, CodeBook const& book) {
    Pieces const pieces(job, book);
    std::vector<CableRun> runs;
    for (typed::Circuit const& c : job.circuits) {
        typed::Circuit const* p = partner(job, c);
        if (p && p < &c) continue; // stands at its first member
        if (c.use == "spare" && run_of(job, c).empty()) continue;
        auto const home = pieces.home(c, p);
        runs.push_back(home);
        pieces.add_rest(runs, c, home);
        if (p) pieces.add_rest(runs, *p, home);
    }
    for (typed::Cable const& cable : job.cables) runs.push_back(other_cable(cable));
    return runs;
}

std::string hot_color(typed::Job const& job, CodeBook const& book, typed::Circuit const& c) {
    typed::Circuit const* p = partner(job, c);
    bool const second = p && p < &c;
    return hot_of(Pieces(job, book).home(second ? *p : c, second ? &c : p), c.mark);
}

} // namespace legwork
