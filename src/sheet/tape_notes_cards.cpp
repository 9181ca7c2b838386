// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/tape_notes_cards.h"

#include "sheet/labels_list.h"
#include "sheet/tape_notes_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace legwork {

namespace {

// Boxes are told apart by their name; one that only goes by its circuit's name also by the circuit.
std::string box_key(typed::Job const& job, EndOf const& end) {
    CableRun const& run = end.run;
    typed::Circuit const* c = circuit_of(job, run.circuits.front());
    std::string const& name = end.far ? run.to : run.from;
    if (!c) return name;
    auto const index = static_cast<std::size_t>(end.far ? run.segment : run.segment - 1);
    auto const pieces = run_of(job, *c);
    typed::Circuit const* p = partner(job, *c);
    bool const said = (index < pieces.size() && !pieces[index].to.empty()) ||
                      (index == 0 && (!c->box.empty() || (p && !p->box.empty())));
    if (said) return name;
    return name + '\n' + (index == 0 ? cable_mark(job, *c) : c->mark);
}

CableNote cable_note(SheetInput const& input, EndOf const& end) {
    CableRun const& run = end.run;
    CableNote note;
    note.mark = run.mark;
    bool const other_panel = end.far ? run.from_panel : run.to_panel;
    auto const& other = end.far ? run.from : run.to;
    note.about = fmt::format("{}{} {}{}", run.kind, run.kind.empty() ? "cable" : "", end.far ? "from " : "to ",
                             other_panel ? panel_words(other) : other);
    note.stops = stops(input.findings, run);
    for (std::size_t i = 0; i < run.conductors.size(); ++i) note.wires.push_back(wire_note(input, end, i));
    note.remarks = pair_remarks(input, end);
    if (!end.far && !run.note.empty()) note.remarks.push_back(run.note);
    note.faults = cable_faults(run);
    return note;
}

class Cards {
public:
    Cards(SheetInput const& input, std::vector<CableRun> const& runs) : input_(input), runs_(runs) {
        for (typed::Panel const& p : input.job.panels) panels_.push_back({p.name, "panel", p.building, {}, {}});
    }

    void add(CableRun const& run) {
        for (bool const far : {false, true}) {
            EndOf const end{runs_, run, far};
            BoxCard* card = end.panel() ? panel(far ? run.to : run.from) : box(end);
            if (card) card->cables.push_back(cable_note(input_, end));
        }
    }

    void add_unsaid(CableRun const& run) {
        if (auto* card = panel(run.from)) unsaid_[card->title] += (unsaid_[card->title].empty() ? "" : ", ") + run.mark;
    }

    std::vector<BoxCard> take() {
        for (auto& card : panels_)
            if (auto const at = unsaid_.find(card.title); at != unsaid_.end())
                card.missing.push_back(
                    fmt::format("No cable in the job file for {}: where there is one, add it (cable = \"12/2\") and "
                                "print again.",
                                at->second));
        std::vector<BoxCard> cards;
        auto const move_in = [&](std::vector<BoxCard>& from) {
            for (auto& card : from)
                if (!card.cables.empty() || !card.missing.empty()) cards.push_back(std::move(card));
        };
        move_in(panels_);
        move_in(boxes_);
        return cards;
    }

private:
    BoxCard* panel(std::string const& name) {
        auto const at = std::ranges::find(panels_, name, &BoxCard::title);
        return at == panels_.end() ? nullptr : &*at;
    }

    BoxCard* box(EndOf const& end) {
        auto const [at, fresh] = index_.try_emplace(box_key(input_.job, end), boxes_.size());
        if (fresh) {
            typed::Circuit const* c = circuit_of(input_.job, end.run.circuits.front());
            boxes_.push_back({end.far ? end.run.to : end.run.from, "box", c ? c->room : "", {}, {}});
        }
        return &boxes_[at->second];
    }

    SheetInput const& input_;
    std::vector<CableRun> const& runs_;
    std::vector<BoxCard> panels_, boxes_;
    std::map<std::string, std::size_t> index_;
    std::map<std::string, std::string> unsaid_; // by panel: marks
};

} // namespace

std::vector<BoxCard> tape_cards(SheetInput const& input) {
    auto const runs = cable_runs(input.job, input.book);
    Cards cards(input, runs);
    for (auto const& run : runs) {
        if (run.circuits.empty()) continue;
        if (is_unsaid(input.job, run))
            cards.add_unsaid(run);
        else
            cards.add(run);
    }
    return cards.take();
}

std::vector<std::string> other_cables(typed::Job const& job) {
    std::vector<std::string> marks;
    for (auto const& cable : job.cables) marks.push_back(cable.mark);
    return marks;
}

} // namespace legwork
