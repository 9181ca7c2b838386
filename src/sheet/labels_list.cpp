// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/labels_list.h"

#include "panel/feeds.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

std::vector<typed::Circuit const*> circuits_of(typed::Job const& job, CableRun const& run) {
    std::vector<typed::Circuit const*> found;
    for (auto const& mark : run.circuits)
        if (auto const* c = circuit_of(job, mark)) found.push_back(c);
    return found;
}

typed::Cable const* cable_of(typed::Job const& job, CableRun const& run) {
    if (!run.circuits.empty()) return nullptr;
    auto const at = std::ranges::find(job.cables, run.mark, &typed::Cable::mark);
    return at == job.cables.end() ? nullptr : &*at;
}

bool shared(CableRun const& run) { return run.circuits.size() > 1; }

std::vector<Fed> feeds_of(typed::Job const& job, CableRun const& run) {
    std::vector<Fed> fed;
    for (auto const* c : circuits_of(job, run)) fed.push_back({shared(run) ? c->mark : "", c->name, c->room});
    if (auto const* cable = cable_of(job, run)) fed.push_back({"", cable->name, ""});
    return fed;
}

struct EndWords {
    std::string end, other; // as the label of this end says it; as the label of the far end does
};

// A [[cable]] joins places; only circuits end in boxes.
EndWords end_words(CableRun const& run, bool panel) {
    if (panel) return {"Panel end:", "other end: panel"};
    if (run.circuits.empty()) return {"This end:", "other end:"};
    return {"Box end:", "other end: box"};
}

std::string dated(typed::Job const& job, std::string const& spaces) {
    if (!job.revision.empty()) return fmt::format("{}, rev {}", spaces, job.revision);
    if (job.date) return fmt::format("{}, {:04}-{:02}-{:02}", spaces, job.date->year, job.date->month, job.date->day);
    return "";
}

// A space on a label goes out of date when the balance moves the circuit, so only what the file holds is said, and
// dated. Only at the panel, where it is looked for.
std::string spaces_words(typed::Job const& job, std::vector<typed::Circuit const*> const& circuits, bool panel) {
    std::string spaces;
    for (auto const* c : circuits) {
        if (!panel || !c->space) return "";
        spaces += (spaces.empty() ? "" : "+") + text(*c->space);
    }
    return dated(job, spaces);
}

bool neutral_to_mark(CableRun const& run) {
    if (run.conductors.empty()) return run.missing_neutrals == 0;
    // A conductor that must not be the neutral gets no marker that says it is.
    return std::ranges::any_of(run.conductors, [](Conductor const& c) {
        return c.job == ConductorJob::neutral && c.remark != Remark::forbidden;
    });
}

void add_hot(std::vector<Marker>& markers, typed::Job const& job, CableRun const& run, typed::Circuit const& c, bool panel) {
    Marker marker{c.mark, "", spaces_words(job, {&c}, panel), panel ? "panel end" : "box end"};
    if (run.conductors.empty()) {
        marker.note = "hot";
        markers.push_back(marker);
    }
    for (auto const& wire : run.conductors) {
        if (wire.job != ConductorJob::hot || wire.circuit != c.mark || wire.remark == Remark::forbidden) continue;
        marker.note = wire.color;
        markers.push_back(marker);
    }
}

std::vector<Marker> markers_of(typed::Job const& job, CableRun const& run, bool panel) {
    std::vector<Marker> markers;
    if (!shared(run)) return markers;
    auto const circuits = circuits_of(job, run);
    if (neutral_to_mark(run))
        markers.push_back({"N " + run.mark, "", spaces_words(job, circuits, panel), panel ? "panel end" : "box end"});
    for (auto const* c : circuits) add_hot(markers, job, run, *c, panel);
    return markers;
}

std::string cable_words(typed::Job const& job, CableRun const& run) {
    auto const circuits = circuits_of(job, run);
    auto const breaker = breaker_words(circuits);
    bool const fused = std::ranges::any_of(circuits, [&](typed::Circuit const* c) {
        auto const* panel = panel_of(job, c->panel);
        if (!panel) return false;
        auto const sources = feeds(job, *panel);
        return !sources.empty() && is_dc(sources.front().kind);
    });
    std::string words = run.kind;
    if (!breaker.empty()) words += (words.empty() ? "" : ", ") + breaker + (fused ? " fuse" : "");
    return words;
}

} // namespace

std::string breaker_words(std::vector<typed::Circuit const*> const& circuits) {
    if (circuits.empty() || !circuits.front()->breaker) return "";
    auto const& first = *circuits.front();
    if (circuits.size() > 1 && circuits.back()->breaker && circuits.back()->breaker != first.breaker) {
        std::string const amps = text(*first.breaker); // "15 A"
        return fmt::format("{} and {}", amps.substr(0, amps.rfind(' ')), text(*circuits.back()->breaker));
    }
    bool const two_pole = first.tie == Tie::two_pole_breaker && (first.poles == 2 || circuits.size() > 1);
    return (two_pole ? "2P " : "") + text(*first.breaker);
}

bool is_unsaid(typed::Job const& job, CableRun const& run) {
    typed::Circuit const* c = run.circuits.empty() ? nullptr : circuit_of(job, run.circuits.front());
    if (!c || run.segment > 0 || !run_of(job, *c).empty()) return false;
    auto const asked = [](typed::Circuit const* each) {
        return each && std::ranges::any_of(each->asked, [](std::string const& key) {
                   return key == "cable" || key == "segments" || key == "length";
               });
    };
    return !asked(c) && !asked(partner(job, *c));
}

std::vector<CableEnd> cable_ends(typed::Job const& job, std::vector<CableRun> const& runs) {
    std::vector<CableEnd> ends;
    for (auto const& run : runs) {
        if (is_unsaid(job, run)) continue;
        auto const near_words = end_words(run, run.from_panel), far_words = end_words(run, run.to_panel);
        CableLabel const common{run.mark, feeds_of(job, run), cable_words(job, run), "", "", "", "", false};
        for (bool const far : {false, true}) {
            auto label = common;
            label.end_word = (far ? far_words : near_words).end;
            label.end_name = far ? run.to : run.from;
            label.other_word = (far ? near_words : far_words).other;
            label.other_name = far ? run.from : run.to;
            CableEnd end;
            end.labels.push_back(label);
            label.keep = true;
            end.labels.push_back(label);
            end.markers = markers_of(job, run, far ? run.to_panel : run.from_panel);
            ends.push_back(std::move(end));
        }
    }
    return ends;
}

} // namespace legwork
