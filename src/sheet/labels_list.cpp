// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/labels_list.h"

#include "reckon/say.h"
#include "sheet/common_frame.h"
#include "sheet/common_words.h"
#include "units/text.h"
#include "words/say.h"

#include <algorithm>

namespace legwork {

namespace {

bool shared(Run const& run) { return run.of_circuit && run.carries.size() > 1; }

std::vector<Fed> feeds_of(Run const& run, std::string_view language) {
    if (!run.of_circuit) return {{"", run.name, ""}};
    std::vector<Fed> fed;
    for (auto const* c : run.carries) fed.push_back({shared(run) ? c->mark : "", name_in(language, *c), c->room});
    return fed;
}

struct EndPhrases {
    Phrase end, other; // as the label of this end says it; as the label of the far end does
};

// A [[cable]] joins places; only circuits end in boxes.
EndPhrases end_phrases(Run const& run, bool panel, std::string const& name) {
    bool const none = name.empty();
    if (panel)
        return {none ? say("label/panel-end-unnamed") : say("label/panel-end", name),
                none ? say("label/other-panel-unnamed") : say("label/other-panel", name)};
    if (!run.of_circuit)
        return {none ? say("label/this-end-unnamed") : say("label/this-end", name),
                none ? say("label/other-end-unnamed") : say("label/other-end", name)};
    return {none ? say("label/box-end-unnamed") : say("label/box-end", name),
            none ? say("label/other-box-unnamed") : say("label/other-box", name)};
}

Phrase dated(Building const& building, std::string const& spaces) {
    if (!building.revision.empty()) return say("label/spaces", spaces, building.revision);
    if (building.date) return comma_list({spaces, date_phrase(*building.date)});
    return {};
}

// A space on a label goes out of date when the balance moves the circuit, so only what the file holds is said, and
// dated. Only at the panel, where it is looked for.
Phrase spaces_phrase(Building const& building, std::vector<Circuit const*> const& circuits, bool panel) {
    std::string spaces;
    for (auto const* c : circuits) {
        if (!panel || !c->space) return {};
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

// The words of the labels of one job.
class Words {
public:
    Words(Building const& building, Catalogue const& catalogue) : building_(building), catalogue_(catalogue) {}

    std::string operator()(Phrase const& phrase) const { return catalogue_.words(phrase); }

    std::vector<Marker> markers_of(Run const& run, CableRun const& cable, bool panel) const {
        std::vector<Marker> markers;
        if (!shared(run)) return markers;
        if (neutral_to_mark(cable)) markers.push_back(marker(say("label/neutral", run.mark), run.carries, panel));
        for (auto const* c : run.carries) add_hot(markers, cable, *c, panel);
        return markers;
    }

private:
    Marker marker(Phrase const& words, std::vector<Circuit const*> const& circuits, bool panel) const {
        return {catalogue_.words(words), "", catalogue_.words(spaces_phrase(building_, circuits, panel)),
                catalogue_.words(panel ? say("label/marker-panel-end") : say("label/marker-box-end"))};
    }

    void add_hot(std::vector<Marker>& markers, CableRun const& cable, Circuit const& c, bool panel) const {
        auto hot = marker(c.mark, {&c}, panel);
        if (cable.conductors.empty()) {
            hot.note = catalogue_.words(say("label/hot"));
            markers.push_back(hot);
        }
        for (auto const& wire : cable.conductors) {
            if (wire.job != ConductorJob::hot || wire.circuit != c.mark || wire.remark == Remark::forbidden) continue;
            hot.note = catalogue_.words(colour(wire.color));
            markers.push_back(hot);
        }
    }

    Building const& building_;
    Catalogue const& catalogue_;
};

// "keep"; of direct current "DC 12 V, keep": no colour tells its volts, and these words are never cut short.
Phrase which_phrase(Run const& run, Phrase which) {
    Circuit const* c = run.of_circuit ? run.carries.front() : nullptr;
    if (!c || !c->on_dc()) return which;
    return comma_list({say("label/dc", said(volts_to_neutral(c->panel->feeds.front().kind))), std::move(which)});
}

Phrase cable_phrase(Run const& run) {
    if (!run.of_circuit) return run.piece.called;
    auto breaker = breaker_phrase(run.carries);
    bool const fused = std::ranges::any_of(run.carries, &Circuit::on_dc);
    if (fused && !breaker.empty()) breaker = say("label/fuse", std::move(breaker));
    return comma_list({run.piece.called, std::move(breaker)});
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

std::vector<CableEnd> cable_ends(Building const& building, std::vector<CableRun> const& cables,
                                 Catalogue const& catalogue) {
    Words const words(building, catalogue);
    std::vector<CableEnd> ends;
    for (std::size_t i = 0; i < cables.size(); ++i) {
        Run const& run = building.runs[i];
        if (is_unsaid(run)) continue;
        auto const near_end = end_phrases(run, run.is_home_run(), run.from.called),
                   far_end = end_phrases(run, run.is_feeder(), run.to.called);
        CableLabel const common{run.mark, feeds_of(run, catalogue.language()), words(cable_phrase(run)), "", "", "", "",
                                ""};
        for (bool const far : {false, true}) {
            auto label = common;
            label.end = words((far ? far_end : near_end).end);
            label.end_name = (far ? run.to : run.from).called;
            label.other = words((far ? near_end : far_end).other);
            label.other_name = (far ? run.from : run.to).called;
            CableEnd end;
            end.run = &run;
            for (auto const& which : {say("label/tip"), say("label/keep")}) {
                label.which = words(which_phrase(run, which));
                end.labels.push_back(label);
            }
            end.markers = words.markers_of(run, cables[i], far ? run.is_feeder() : run.is_home_run());
            ends.push_back(std::move(end));
        }
    }
    return ends;
}

} // namespace legwork
