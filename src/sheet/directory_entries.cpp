// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/directory_entries.h"

#include "reckon/say.h"
#include "reckon/wire_downstream.h"
#include "sheet/common_words.h"
#include "units/text.h"
#include "words/say.h"

#include <algorithm>
#include <set>

namespace legwork {

namespace {

bool has_no_wire(Circuit const& c) { return c.is_spare() && c.run.empty(); }

// Halves next to each other: two of one space, or the last and the first of two neighbouring ones.
bool adjoining(Layout const& layout, Spot s, Spot t) {
    auto const end = [&](Spot x) { // in half rows from the start of its column
        int const row = layout.position(x.space).row;
        return 2 * row - (x.half == 'a' ? 1 : 0);
    };
    auto const begin = [&](Spot x) { return 2 * layout.position(x.space).row - (x.half == 'b' ? 1 : 2); };
    if (layout.position(s.space).column != layout.position(t.space).column) return false;
    return end(s) == begin(t) || end(t) == begin(s);
}

std::vector<Spot> slots_of(Plan const& plan, std::string const& mark) {
    auto const* p = placement_of(plan, mark);
    return p ? p->slots : std::vector<Spot>{};
}

std::string place_words(Circuit const& c, Panel const& panel) {
    if (c.building.empty() || c.building == panel.building || c.building == c.room) return c.room;
    return c.room.empty() ? c.building : c.room + ", " + c.building;
}

// "GFCI+AFCI", "AFCI, GFCI at outlet".
void say_protection(Circuit const& c, Phrases& out) {
    bool const gfci = c.gfci == Protection::breaker, afci = c.afci == Protection::breaker;
    if (gfci && afci)
        out.push_back(say("directory/gfci-afci"));
    else if (gfci)
        out.push_back(say("directory/gfci"));
    else if (afci)
        out.push_back(say("directory/afci"));
    bool const gfci_out = c.gfci == Protection::outlet, afci_out = c.afci == Protection::outlet;
    if (gfci_out && afci_out)
        out.push_back(say("directory/gfci-afci-outlet"));
    else if (gfci_out)
        out.push_back(say("directory/gfci-outlet"));
    else if (afci_out)
        out.push_back(say("directory/afci-outlet"));
}

class Maker {
public:
    Maker(DirectoryInput const& input, Panel const& panel) : input_(input), panel_(panel), layout_(panel.layout) {}

    PanelEntries make() {
        for (Circuit const* c : panel_.circuits) add(*c, slots_of(input_.plan, c->mark));
        for (int space = 1; space <= layout_.spaces(); ++space) add_rest(space);
        std::ranges::stable_sort(made_.entries, {}, [](Entry const& e) { return e.slots.front(); });
        return std::move(made_);
    }

private:
    void add(Circuit const& c, std::vector<Spot> const& slots) {
        Entry entry = entry_of(c, slots);
        bool const free = std::ranges::all_of(slots, [&](Spot s) { return layout_.has(s.space) && is_free(s); });
        if (slots.empty() || !free) {
            if (!slots.empty()) entry.warnings.push_back(say("directory/taken", numbers(slots)));
            entry.slots.clear();
            made_.not_placed.push_back(std::move(entry));
            return;
        }
        for (Spot const s : slots) taken_.insert(s);
        if (tied(c, slots)) made_.ties.push_back({slots[0], slots[1]});
        if (auto const* other = tied_partner(c); other && c.number < other->number)
            made_.ties.push_back({slots[0], slots_of(input_.plan, other->mark)[0]});
        made_.entries.push_back(std::move(entry));
    }

    // What is left of a space: the whole, or a half.
    void add_rest(int space) {
        if (!is_free({space, 0}) && !has_half(space)) return;
        if (!has_half(space)) return add_empty({space, 0});
        for (char const half : {'a', 'b'})
            if (!taken_.contains({space, half})) add_empty({space, half});
    }

    void add_empty(Spot at) {
        Entry entry;
        entry.slots = {at};
        entry.kind = layout_.is_blocked(at.space) ? EntryKind::blocked
                     : panel_.is_live(at.space)   ? EntryKind::space
                                                  : EntryKind::not_fed;
        made_.entries.push_back(std::move(entry));
    }

    bool has_half(int space) const { return taken_.contains({space, 'a'}) || taken_.contains({space, 'b'}); }
    bool is_free(Spot s) const {
        if (taken_.contains({s.space, 0}) || taken_.contains(s)) return false;
        return s.half != 0 || !has_half(s.space);
    }

    Entry entry_of(Circuit const& c, std::vector<Spot> const& slots) const {
        Entry entry;
        entry.kind = has_no_wire(c) ? EntryKind::spare : c.off ? EntryKind::future : EntryKind::circuit;
        entry.slots = slots;
        entry.mark = c.mark;
        entry.name = name_phrase(c);
        entry.place = place_words(c, panel_);
        entry.poles = c.poles;
        entry.breaker = breaker_phrase(c);
        say_warnings(c, slots, entry.warnings);
        entry.gfci = c.gfci;
        entry.afci = c.afci;
        say_protection(c, entry.remarks);
        if (auto most = largest_breaker(c); !most.empty()) {
            entry.smaller_wire = true;
            entry.remarks.push_back(std::move(most));
        }
        if (auto const* sub = c.fed_panel()) entry.remarks.push_back(say("directory/feeds", sub->name));
        for (Panel const* dc : c.supplies_dc) entry.remarks.push_back(say("directory/power-supply-of", dc->name));
        if (!c.note.empty()) entry.remarks.push_back(c.note);
        return entry;
    }

    Phrase name_phrase(Circuit const& c) const {
        if (auto const& name = name_in(input_.language, c); !name.empty()) return name;
        return c.is_spare() ? say("directory/spare-wired") : say("directory/no-name");
    }

    Phrase largest_breaker(Circuit const& c) const {
        if (!input_.book) return {};
        auto const wire = smaller_wire({input_.building, input_.plan, *input_.book}, c);
        return wire ? largest_breaker_phrase(*wire) : Phrase();
    }

    void say_warnings(Circuit const& c, std::vector<Spot> const& slots, Phrases& out) const {
        if (auto const* other = c.partner()) {
            auto const where = position_phrase(input_.plan, panel_, *other);
            out.push_back(tied_partner(c) ? say("directory/off-with", where) : say("directory/shares-neutral", where));
        }
        if (c.poles == 2 && slots.size() == 2) {
            if (c.tie == Tie::none)
                out.push_back(say("directory/not-tied", text(slots[0]), text(slots[1])));
            else if (!adjoining(layout_, slots[0], slots[1]))
                out.push_back(say("directory/one-breaker", text(slots[0]), text(slots[1])));
        }
        if (c.is_source() && !c.is(PanelPart::main)) out.push_back(say("directory/can-feed"));
        auto const dead = [&](Spot s) { return layout_.has(s.space) && !panel_.is_live(s.space); };
        if (std::ranges::any_of(slots, dead)) out.push_back(say("directory/space-not-fed"));
    }

    // The handles of a two-pole breaker, or of two tied singles.
    bool tied(Circuit const& c, std::vector<Spot> const& slots) const {
        return c.poles == 2 && slots.size() == 2 && c.tie != Tie::none;
    }

    // The other circuit of its pair, if a tie really can join them: next to each other in this panel.
    Circuit const* tied_partner(Circuit const& c) const {
        auto const* other = c.partner();
        if (!other || c.pair->tie == Tie::none || other->panel != c.panel) return nullptr;
        auto const mine = slots_of(input_.plan, c.mark), theirs = slots_of(input_.plan, other->mark);
        bool const both =
            mine.size() == 1 && theirs.size() == 1 && layout_.has(mine[0].space) && layout_.has(theirs[0].space);
        return both && adjoining(layout_, mine[0], theirs[0]) ? other : nullptr;
    }

    DirectoryInput const& input_;
    Panel const& panel_;
    Layout const& layout_;
    std::set<Spot> taken_;
    PanelEntries made_;
};

} // namespace

PanelEntries panel_entries(DirectoryInput const& input, Panel const& panel) { return Maker(input, panel).make(); }

std::string numbers(std::vector<Spot> const& slots) {
    std::string words;
    for (Spot const s : slots) words += (words.empty() ? "" : "+") + text(s);
    return words;
}

Phrase position_phrase(Plan const& plan, Panel const& panel, Circuit const& c) {
    auto const slots = slots_of(plan, c.mark);
    if (c.panel != &panel) return say("directory/in-panel", c.mark, c.panel ? c.panel->name : std::string());
    if (slots.empty()) return say("directory/no-space", c.mark);
    return numbers(slots);
}

bool stands_in(Plan const& plan, Panel const& panel, Circuit const& c) {
    return c.panel == &panel && !slots_of(plan, c.mark).empty();
}

} // namespace legwork
