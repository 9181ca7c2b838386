// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/tape_notes_cards.h"

#include "sheet/common_frame.h"
#include "sheet/labels_list.h"
#include "sheet/tape_notes_words.h"
#include "words/say.h"

#include <fmt/format.h>

#include <map>

namespace legwork {

namespace {

CableNote cable_note(SheetInput const& input, EndOf const& end) {
    Run const& run = end.run();
    CableRun const& cable = end.cable();
    CableNote note;
    note.mark = run.mark;
    bool const other_panel = end.far ? run.is_home_run() : run.is_feeder();
    auto const& other = (end.far ? run.from : run.to).called;
    auto const& kind = run.piece.called;
    Phrase const called = kind.empty() ? say("note/cable") : Phrase(kind);
    Phrase const place = other_panel ? panel_phrase(other) : Phrase(other);
    note.about = input.words(end.far ? say("note/from", called, place) : say("note/to", called, place));
    note.stops = stops(input, run);
    for (std::size_t i = 0; i < cable.conductors.size(); ++i) note.wires.push_back(wire_note(input, end, i));
    note.remarks = pair_remarks(input, end);
    if (!end.far && !cable.note.empty()) note.remarks.push_back(input.words(cable.note));
    note.faults = cable_faults(input, cable);
    return note;
}

Phrase panel_title(std::string const& name) { return Phrase::unless_said(say("note/panel-title", name)); }

class Cards {
public:
    explicit Cards(SheetInput const& input)
        : input_(input),
          cables_(cable_runs(input.building, input.book)),
          unsaid_(input.building.panels.size() + input.building.unlisted.size()) {
        for (auto const* list : {&input.building.panels, &input.building.unlisted})
            for (Panel const& p : *list)
                panels_.push_back({p.name, true, input.words(panel_title(p.name)), p.building, {}, {}});
    }

    std::vector<BoxCard> make() {
        auto const& runs = input_.building.runs;
        for (std::size_t i = 0; i < runs.size(); ++i) {
            if (!runs[i].of_circuit) continue;
            if (is_unsaid(runs[i]))
                add_unsaid(runs[i]);
            else
                add(i);
        }
        return take();
    }

private:
    void add(std::size_t run) {
        for (bool const far : {false, true}) {
            EndOf const end{input_.building, cables_, run, far};
            BoxCard* card = end.panel() ? panel(end.here()) : box(end);
            if (!card) continue;
            card->dc_only = (card->cables.empty() || card->dc_only) && end.run().carries.front()->on_dc();
            card->cables.push_back(cable_note(input_, end));
        }
    }

    void add_unsaid(Run const& run) {
        if (!run.from.panel) return;
        auto& marks = unsaid_[run.from.panel->number];
        marks += (marks.empty() ? "" : ", ") + run.mark;
    }

    std::vector<BoxCard> take() {
        for (std::size_t i = 0; i < panels_.size(); ++i)
            if (!unsaid_[i].empty())
                panels_[i].missing.push_back(input_.words(
                    say("note/no-cable", unsaid_[i],
                        as_is(i < input_.building.panels.size() ? "cable = \"12/2\"" : "feeder_cable = \"6/3\""))));
        for (Panel const& p : input_.building.panels)
            if (auto& card = panels_[p.number]; card.cables.empty()) card.dc_only = p.is_dc();
        std::vector<BoxCard> cards;
        auto const move_in = [&](std::vector<BoxCard>& from) {
            for (auto& card : from)
                if (!card.cables.empty() || !card.missing.empty()) cards.push_back(std::move(card));
        };
        move_in(panels_);
        move_in(boxes_);
        return cards;
    }

    BoxCard* panel(RunEnd const& at) { return at.panel ? &panels_[at.panel->number] : nullptr; }

    BoxCard* box(EndOf const& end) {
        auto const [at, fresh] = index_.try_emplace(end.here().box, boxes_.size());
        auto const& called = end.here().called;
        if (fresh)
            boxes_.push_back({called,
                              false,
                              called,
                              input_.words(comma_list({say("note/box-end"), end.run().carries.front()->room})),
                              {},
                              {},
                              false});
        return &boxes_[at->second];
    }

    SheetInput const& input_;
    std::vector<CableRun> cables_;
    std::vector<BoxCard> panels_, boxes_; // panels: by number
    std::map<WiringBox const*, std::size_t> index_;
    std::vector<std::string> unsaid_; // by panel: marks
};

} // namespace

std::vector<BoxCard> tape_cards(SheetInput const& input) { return Cards(input).make(); }

std::vector<std::string> other_cables(Building const& building) {
    std::vector<std::string> marks;
    for (Run const& run : building.runs)
        if (!run.of_circuit && run.carries.empty()) marks.push_back(run.mark);
    return marks;
}

std::vector<std::string> live_between_boxes(SheetInput const& input) {
    std::vector<std::string> cables;
    for (Run const& run : input.building.runs) {
        if (run.of_circuit || run.carries.empty()) continue;
        std::vector<std::string> marks;
        for (Circuit const* c : run.carries) marks.push_back(c->mark);
        cables.push_back(input.words(say("note/live-cable", run.mark, fmt::format("{}", fmt::join(marks, "+")))));
    }
    return cables;
}

} // namespace legwork
