// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Every run of cable with its two ends, and the boxes between them.
#include "building/resolving.h"
#include "codebook/stock/guess_box.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <string_view>
#include <utility>

namespace legwork {

namespace {

std::string called(Circuit const& c) { return c.name.empty() ? c.mark : c.name; }

// The box at the far end of a piece. The first box: `box`, else the circuit's name; further ones counted (#2) where
// they have no name, the box where a pair splits too. No words, since sheets speak several languages.
std::string box_name(Circuit const& c, std::size_t i) {
    if (i < c.run.size() && !c.run[i].to.empty()) return c.run[i].to;
    Circuit const* p = c.partner();
    if (i > 0) return p && i == 1 ? called(c) : fmt::format("{} #{}", called(c), p ? i : i + 1);
    if (!c.box.empty()) return c.box;
    if (p && !p->box.empty()) return p->box;
    bool const splits = p && (c.run.size() > 1 || p->run.size() > 1);
    if (splits) return c.cable_mark() + " #1";
    return p && c.name.empty() ? called(*p) : called(c);
}

bool is_box_named(Circuit const& c, std::size_t i) {
    if (i < c.run.size() && !c.run[i].to.empty()) return true;
    return i == 0 && (!c.box.empty() || (c.pair && !c.partner()->box.empty()));
}

RunRole role_called(std::string_view words) {
    constexpr std::array roles{std::pair{"feed", RunRole::feed},
                               std::pair{"on to", RunRole::on_to},
                               std::pair{"switch leg", RunRole::switch_leg},
                               std::pair{"travellers", RunRole::travellers},
                               std::pair{"line", RunRole::line},
                               std::pair{"load", RunRole::load}};
    for (auto const& [word, role] : roles)
        if (word == words) return role;
    return RunRole::unsaid;
}

class Runs {
public:
    explicit Runs(Resolving& r) : r_(r) {
        for (typed::Box const& said : r.job.boxes) {
            WiringBox& box = named_box(said.name);
            box.listed = true;
            box.size = said.size;
            box.volume = said.volume;
            box.devices = said.devices;
            box.clamps = said.clamps;
        }
    }

    void add(Circuit const& c) {
        std::vector<Circuit const*> carries{&c};
        if (c.pair) carries.push_back(c.partner());
        Run const home = piece_of(c, 0, c.cable_mark(), carries, {c.panel, nullptr, c.panel ? c.panel->name : ""});
        r_.building.runs.push_back(home);
        for (Circuit const* each : carries) add_rest(*each, home);
    }

    void add(typed::Cable const& cable) {
        Run run;
        run.mark = cable.mark;
        run.name = cable.name;
        run.piece = {cable_kind_named(cable.kind), cable.kind, cable.length, {}, cable.where};
        for (Circuit const& c : r_.building.circuits)
            if (std::ranges::count(cable.carries, c.mark) > 0) run.carries.push_back(&c);
        run.role = role_called(cable.role);
        run.from = end_called(cable.from);
        run.to = end_called(cable.to);
        r_.building.runs.push_back(std::move(run));
    }

private:
    void add_rest(Circuit const& c, Run const& home) {
        auto before = home.to;
        for (std::size_t i = 1; i < c.run.size(); ++i) {
            auto run = piece_of(c, i, c.mark, {&c}, before);
            before = run.to;
            r_.building.runs.push_back(std::move(run));
        }
    }

    Run piece_of(Circuit const& c, std::size_t i, std::string mark, std::vector<Circuit const*> carries, RunEnd from) {
        Run run;
        run.mark = std::move(mark);
        run.of_circuit = true;
        run.carries = std::move(carries);
        run.segment = static_cast<int>(i);
        if (i < c.run.size()) run.piece = c.run[i];
        run.to_switch = is_switch_box(run.piece.to);
        run.from = std::move(from);
        Panel const* fed = c.fed_panel();
        bool const to_panel = fed && i + 1 >= c.run.size();
        run.to = to_panel ? RunEnd{fed, nullptr, fed->name} : box_end(c, i);
        return run;
    }

    // A box that goes by its circuit's name only is that circuit's alone, whatever others are called.
    RunEnd box_end(Circuit const& c, std::size_t i) {
        auto const name = box_name(c, i);
        bool const named = is_box_named(c, i);
        WiringBox& box = named ? named_box(name) : box_under(name + '\n' + (i == 0 ? c.cable_mark() : c.mark), name);
        if (reached_.insert(&box).second) box.room = c.room;
        return {nullptr, &box, name};
    }

    WiringBox& named_box(std::string const& name) {
        WiringBox& box = box_under(name, name);
        box.named = true;
        return box;
    }

    WiringBox& box_under(std::string const& key, std::string const& name) {
        auto const [at, fresh] = known_.try_emplace(key, nullptr);
        if (fresh) {
            at->second = &r_.building.boxes.emplace_back();
            at->second->number = r_.building.boxes.size() - 1;
            at->second->name = name;
        }
        return *at->second;
    }

    // A place is a panel or a named box where it says exactly that.
    RunEnd end_called(std::string const& words) const {
        auto const box = known_.find(words);
        return {r_.panel(words), box == known_.end() ? nullptr : box->second, words};
    }

    Resolving& r_;
    std::set<WiringBox const*> reached_;      // by circuits
    std::map<std::string, WiringBox*> known_; // by name; of a nameless box with its circuit's mark
};

} // namespace

void resolve_runs(Resolving& r) {
    Runs runs(r);
    for (Circuit const& c : r.building.circuits) {
        if (c.pair && c.pair->second == &c) continue; // stands at its first member
        if (c.is_spare() && c.run.empty()) continue;
        runs.add(c);
    }
    for (typed::Cable const& cable : r.job.cables) runs.add(cable);
}

} // namespace legwork
