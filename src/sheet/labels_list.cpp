// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/labels_list.h"

#include "reckon/say.h"
#include "sheet/common_frame.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

bool shared(Run const& run) { return run.of_circuit && run.carries.size() > 1; }

std::vector<Fed> feeds_of(Run const& run) {
    if (!run.of_circuit) return {{"", run.name, ""}};
    std::vector<Fed> fed;
    for (auto const* c : run.carries) fed.push_back({shared(run) ? c->mark : "", c->name, c->room});
    return fed;
}

struct EndWords {
    std::string end, other; // as the label of this end says it; as the label of the far end does
};

// A [[cable]] joins places; only circuits end in boxes.
EndWords end_words(Run const& run, bool panel) {
    if (panel) return {"Panel end:", "other end: panel"};
    if (!run.of_circuit) return {"This end:", "other end:"};
    return {"Box end:", "other end: box"};
}

std::string dated(Building const& building, std::string const& spaces) {
    if (!building.revision.empty()) return fmt::format("{}, rev {}", spaces, building.revision);
    if (building.date) return fmt::format("{}, {}", spaces, date_words(building));
    return "";
}

// A space on a label goes out of date when the balance moves the circuit, so only what the file holds is said, and
// dated. Only at the panel, where it is looked for.
std::string spaces_words(Building const& building, std::vector<Circuit const*> const& circuits, bool panel) {
    std::string spaces;
    for (auto const* c : circuits) {
        if (!panel || !c->space) return "";
        spaces += (spaces.empty() ? "" : "+") + text(*c->space);
    }
    return dated(building, spaces);
}

bool neutral_to_mark(CableRun const& cable) {
    if (cable.conductors.empty()) return cable.missing_neutrals == 0;
    // A conductor that must not be the neutral gets no marker that says it is.
    return std::ranges::any_of(cable.conductors, [](Conductor const& c) {
        return c.job == ConductorJob::neutral && c.remark != Remark::forbidden;
    });
}

void add_hot(std::vector<Marker>& markers, Building const& building, CableRun const& cable, Circuit const& c,
             bool panel) {
    Marker marker{c.mark, "", spaces_words(building, {&c}, panel), panel ? "panel end" : "box end"};
    if (cable.conductors.empty()) {
        marker.note = "hot";
        markers.push_back(marker);
    }
    for (auto const& wire : cable.conductors) {
        if (wire.job != ConductorJob::hot || wire.circuit != c.mark || wire.remark == Remark::forbidden) continue;
        marker.note = wire.color;
        markers.push_back(marker);
    }
}

std::vector<Marker> markers_of(Building const& building, Run const& run, CableRun const& cable, bool panel) {
    std::vector<Marker> markers;
    if (!shared(run)) return markers;
    if (neutral_to_mark(cable))
        markers.push_back(
            {"N " + run.mark, "", spaces_words(building, run.carries, panel), panel ? "panel end" : "box end"});
    for (auto const* c : run.carries) add_hot(markers, building, cable, *c, panel);
    return markers;
}

std::string cable_words(Run const& run) {
    if (!run.of_circuit) return run.piece.called;
    auto const breaker = breaker_words(run.carries);
    bool const fused = std::ranges::any_of(run.carries, &Circuit::on_dc);
    std::string words = run.piece.called;
    if (!breaker.empty()) words += (words.empty() ? "" : ", ") + breaker + (fused ? " fuse" : "");
    return words;
}

} // namespace

bool is_unsaid(Run const& run) {
    if (!run.is_home_run() || !run.carries.front()->run.empty()) return false;
    auto const asked = [](Circuit const* each) {
        return each && std::ranges::any_of(each->asked, [](std::string const& key) {
                   return key == "cable" || key == "segments" || key == "length";
               });
    };
    return !asked(run.carries.front()) && !asked(run.carries.front()->partner());
}

std::vector<CableEnd> cable_ends(Building const& building, std::vector<CableRun> const& cables) {
    std::vector<CableEnd> ends;
    for (std::size_t i = 0; i < cables.size(); ++i) {
        Run const& run = building.runs[i];
        if (is_unsaid(run)) continue;
        auto const near_words = end_words(run, run.is_home_run()), far_words = end_words(run, run.is_feeder());
        CableLabel const common{run.mark, feeds_of(run), cable_words(run), "", "", "", "", false};
        for (bool const far : {false, true}) {
            auto label = common;
            label.end_word = (far ? far_words : near_words).end;
            label.end_name = (far ? run.to : run.from).called;
            label.other_word = (far ? near_words : far_words).other;
            label.other_name = (far ? run.from : run.to).called;
            CableEnd end;
            end.run = &run;
            end.labels.push_back(label);
            label.keep = true;
            end.labels.push_back(label);
            end.markers = markers_of(building, run, cables[i], far ? run.is_feeder() : run.is_home_run());
            ends.push_back(std::move(end));
        }
    }
    return ends;
}

} // namespace legwork
