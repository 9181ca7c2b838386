// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/tape_notes.h"

#include "rules/rule.h"
#include "sheet/tape_notes_draw.h"
#include "words/say.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <map>

namespace legwork {

namespace {

constexpr Mm kGap = 4;         // between cards, for the scissors
constexpr Mm kLeastWidth = 85; // of a card: its rows need it

std::string part_words(SheetInput const& input, std::size_t number, std::size_t parts) {
    return input.words(
        say("note/part", figure(static_cast<std::int64_t>(number)), figure(static_cast<std::int64_t>(parts))));
}

struct Part {
    BoxCard card;
    std::string part; // "2 of 3"; empty for a whole card
    Mm height = 0;
};

// A card that no column could hold goes on as several, parted between cables.
std::vector<BoxCard> parted(TextWidth const& widths, BoxCard const& card, CardFoot const& foot, Mm width, Mm height) {
    BoxCard const empty{card.title, card.is_panel, card.heading, card.under, {}, {}, card.dc_only};
    auto const height_with = [&](std::vector<CableNote> const& cables, std::vector<std::string> const& missing) {
        return card_height(widths, width,
                           {card.title, card.is_panel, card.heading, card.under, cables, missing, card.dc_only}, foot);
    };
    Mm const bare = height_with({}, {}), missing = height_with({}, card.missing) - bare;
    std::vector<BoxCard> parts{empty};
    Mm used = bare - kCardRule; // the first cable of a card has no rule above it
    for (auto const& cable : card.cables) {
        Mm const more = height_with({cable}, {}) - bare + kCardRule;
        if (!parts.back().cables.empty() && used + more > height) {
            parts.push_back(empty);
            used = bare - kCardRule;
        }
        parts.back().cables.push_back(cable);
        used += more;
    }
    if (!parts.back().cables.empty() && used + missing > height) parts.push_back(empty);
    parts.back().missing = card.missing;
    return parts;
}

std::vector<Part> parts_of(SheetInput const& input, CardFoot const& foot, Mm width, Mm height) {
    std::vector<Part> all;
    for (auto const& card : tape_cards(input)) {
        auto const parts = parted(input.widths, card, foot, width, height);
        for (std::size_t i = 0; i < parts.size(); ++i)
            all.push_back({parts[i], parts.size() > 1 ? part_words(input, i + 1, parts.size()) : "",
                           card_height(input.widths, width, parts[i], foot)});
    }
    return all;
}

// A card goes into the first column, of all pages so far, that still has room for it.
class Columns {
public:
    Columns(Rect area, std::size_t each_page) : area_(area), each_page_(each_page) {}

    struct Spot {
        std::size_t page;
        Mm x, y;
    };
    Mm width() const {
        auto const n = static_cast<Mm>(each_page_);
        return (area_.width - (n - 1) * kGap) / n;
    }
    Spot take(Mm height) {
        std::size_t column = 0;
        while (column < used_.size() && used_[column] > 0 && used_[column] + height > area_.height) ++column;
        if (column == used_.size()) used_.push_back(0);
        Spot const spot{column / each_page_, area_.x + static_cast<Mm>(column % each_page_) * (width() + kGap),
                        area_.y + used_[column]};
        used_[column] += height + kGap;
        return spot;
    }

private:
    Rect area_;
    std::size_t each_page_;
    std::vector<Mm> used_;
};

CardFoot card_foot(SheetInput const& input) {
    CardFoot foot;
    // What is proposed says so in its row.
    Phrases said;
    for (auto const& band : bands(input, "", false)) said.push_back(band);
    foot.band = input.words(joined("note/bands", said));
    foot.widest_part = part_words(input, 99, 99);
    foot.care = input.words(say("note/care"));
    foot.care_dc = input.words(say("note/care-dc"));
    foot.imprint = input.words(say("list/comma", imprint(input.building), input.building.code));
    return foot;
}

// The sheet before it is drawn.
struct Cut {
    Frame frame;
    CardFoot foot;
    Columns columns;
    std::vector<Part> parts;
};

Cut cut_into_cards(SheetInput const& input, Form const& form) {
    Frame frame;
    frame.title = input.words(say("note/title"));
    frame.subtitle = input.words(say("note/subtitle"));
    frame.shows_spaces = true;
    frame.foot.push_back(input.words(say("note/as-made-means")));
    if (auto const others = other_cables(input.building); !others.empty())
        frame.foot.push_back(input.words(say("note/other-cables", fmt::format("{}", fmt::join(others, ", ")))));
    if (auto const live = live_between_boxes(input); !live.empty())
        frame.foot.push_back(input.words(say("note/live-cables", fmt::format("{}", fmt::join(live, ", ")))));
    std::ranges::move(accepted_lines(input, ""), std::back_inserter(frame.foot));
    Rect const area = content_area(input, form, frame);
    auto const each = static_cast<std::size_t>(std::max(1.0, (area.width + kGap) / (kLeastWidth + kGap)));
    Columns const columns(area, each);
    auto const foot = card_foot(input);
    return {std::move(frame), foot, columns, parts_of(input, foot, columns.width(), area.height)};
}

Where where(Building const& building, std::string const& cable_mark) {
    auto const run = std::ranges::find(building.runs, cable_mark, &Run::mark);
    return run != building.runs.end() && run->of_circuit ? about(run->carries) : Where{"", {cable_mark}, ""};
}

} // namespace

std::vector<Sheet> compose_tape_notes(SheetInput const& input, Form const& form) {
    auto [frame, foot, columns, parts] = cut_into_cards(input, form);
    Sheet sheet{"tape-notes", "", input.words(say("note/title")), {}};
    for (auto const& part : parts) {
        auto const at = columns.take(part.height);
        while (sheet.pages.size() <= at.page) sheet.pages.push_back(blank_page(form));
        add_card({sheet.pages[at.page], input.widths}, at.x, at.y, columns.width(), part.card, part.part, foot);
    }
    if (sheet.pages.empty()) return {};
    add_frame(input, form, frame, sheet);
    return {sheet};
}

std::vector<Printed::Name> names_on_notes(SheetInput const& input, Form const& form) {
    auto const made = cut_into_cards(input, form);
    std::map<std::string, bool> cables; // whole on all cards
    std::vector<Printed::Name> titles;
    for (auto const& [card, part, height] : made.parts) {
        Page scratch;
        auto const shows = add_card({scratch, input.widths}, 0, 0, made.columns.width(), card, part, made.foot);
        for (std::size_t i = 0; i < card.cables.size(); ++i)
            cables.try_emplace(card.cables[i].mark, true).first->second &= shows.cables[i];
        if (shows.title) continue;
        bool const panel = card.is_panel || card.cables.empty();
        titles.push_back({panel ? Where{card.title, {}, "name"} : where(input.building, card.cables.front().mark),
                          false, card.is_panel ? "the name of the panel" : "the name of the box"});
    }
    std::vector<Printed::Name> names;
    for (auto const& [mark, whole] : cables)
        names.push_back({where(input.building, mark), whole, "what stands of its wires"});
    std::ranges::move(titles, std::back_inserter(names));
    return names;
}

} // namespace legwork
