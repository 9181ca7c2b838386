// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/directory.h"

#include "sheet/common.h"
#include "sheet/common_words.h"
#include "sheet/directory_list.h"
#include "sheet/directory_map.h"
#include "sheet/directory_words.h"
#include "words/say.h"

#include <algorithm>
#include <iterator>

namespace legwork {

namespace {

constexpr Mm kGap = 3, kMainBox = 7;

struct ComposedDirectory {
    Sheet sheet;
    std::vector<std::string> shortened;
    std::size_t panel_pages = 0; // without those that hold lists only
    auto size() const { return std::pair(panel_pages, sheet.pages.size()); }
};

class Directory {
public:
    Directory(SheetInput const& input, Form const& form, Panel const& panel)
        : input_(input),
          panel_(panel),
          form_(form),
          hanging_(panel),
          directory_{input.building, input.plan, code_book(input.building.code), input.catalogue.language()},
          entries_(panel_entries(directory_, panel)) {
        frame_.title = panel.name;
        frame_.subtitle = input.words(say("directory/title"));
        frame_.panel = panel.name;
        frame_.shows_spaces = true;
        frame_.strip = true;
        legs_ = !panel.is_dc();
        frame_.foot = foot();
    }

    // Told without a measure of the face or a line laid out: by the widest that letters can be, on the lowest and
    // narrowest lines that there can be.
    bool surely_takes_all_names() const {
        Mm const lists =
            greatest_height(in_words(source_rows(directory_, panel_)), form_.width - 2 * form_.margin, kDetail);
        Mm const room = least_content_height(input_, form_, frame_) - lists - 2 * kGap - kMapHeight - kMainBox;
        if (room < 2 * kLeastRow) return false; // a page has two rows at least
        return std::ranges::all_of(entries_.entries, [&](Entry const& e) {
            return surely_shows_name(e, input_.catalogue, form_.width - 2 * form_.margin);
        });
    }

    ComposedDirectory make() {
        room_ = content_area(input_, form_, frame_);
        settle(kDetail);
        if (made_.sheet.pages.size() > 1) { // the lists smaller, if that keeps the panel on one page or saves one
            ComposedDirectory larger = std::move(made_);
            settle(kFloor);
            if (made_.size() >= larger.size()) made_ = std::move(larger);
        }
        add_frame(input_, form_, frame_, made_.sheet);
        made_.sheet.name = "directory";
        made_.sheet.panel = panel_.name;
        made_.sheet.title = input_.words(comma_list({input_.building.name, say("directory/document", panel_.name)}));
        return std::move(made_);
    }

private:
    std::vector<std::string> foot() const {
        std::vector<std::string> lines{capital(input_.words(abbreviations(entries_, legs_)))};
        bool const two_legs = panel_.legs == Legs::two;
        if (auto const totals = leg_totals(plan_of(input_.plan, panel_.name), two_legs); !totals.empty())
            lines.push_back(input_.words(totals));
        std::ranges::move(accepted_lines(input_, panel_.name), std::back_inserter(lines));
        return lines;
    }

    // What a line has no room for goes below the panel, and asks for lower lines: so twice.
    void settle(Mm list_size) {
        list_size_ = list_size;
        notes_.clear();
        compose();
        if (!notes_.empty()) compose();
    }

    std::vector<ListRow> in_words(std::vector<PhraseRow> const& rows) const {
        std::vector<ListRow> words;
        for (auto const& [lead, said] : rows) words.push_back({input_.words(lead), input_.words(said)});
        return words;
    }

    List list(std::vector<PhraseRow> const& rows) const {
        return {input_.widths, in_words(rows), room_.width, list_size_};
    }

    void compose() {
        List const below = list(below_rows()), sources = list(source_rows(directory_, panel_));
        made_ = {};
        notes_.clear();
        Mm const map = hanging_.turned() ? kMapHeight + kGap : 0;
        Mm const top = room_.y + sources.height() + kGap + map;
        Mm const room = room_.y + room_.height - top - (box_end() ? kMainBox : 0);
        Mm const for_list = below.empty() ? 0 : below.height() + kGap;
        auto const spans = page_spans(hanging_, entries_, std::max(1, static_cast<int>(room / kLeastRow)));
        made_.panel_pages = spans.size();
        for (std::size_t i = 0; i < spans.size(); ++i) {
            bool const last = i + 1 == spans.size();
            made_.sheet.pages.push_back(blank_page(form_));
            sources.add(pen(), room_.x, room_.y);
            if (map > 0) add_panel_map(pen(), block(), main_words(), room_.x, top - map, room_.width);
            int const rows = spans[i].to - spans[i].from;
            // A list that does not fit even below the lowest lines has a page of its own.
            Mm const with_list = (room - for_list) / rows;
            Mm const row = last && with_list >= kLeastRow ? with_list : room / rows;
            add_block(spans[i], top, std::min(row, kGreatestRow), i == 0, last);
        }
        std::ranges::stable_sort(notes_, {}, [](BelowNote const& n) { return std::pair(n.space, n.where); });
        add_lists();
    }

    // The map of a turned panel shows the main itself.
    std::optional<PanelEnd> box_end() const { return hanging_.turned() ? std::nullopt : hanging_.main_end(); }

    Pen pen() { return {made_.sheet.pages.back(), input_.widths}; }
    BlockInput block() const { return {input_.widths, hanging_, entries_, legs_, input_.catalogue}; }

    void add_block(BlockSpan span, Mm top, Mm row, bool first, bool last) {
        Mm y = top;
        if (first && box_end() == PanelEnd::top) {
            add_main(y);
            y += kMainBox;
        }
        Mm const rows_top = y;
        y += row * (span.to - span.from);
        if (last && box_end() == PanelEnd::bottom) {
            add_main(y + 1);
            y += kMainBox;
        }
        auto made = panel_block(pen(), block(), span, room_.x, rows_top, room_.width, row);
        std::ranges::move(made.notes, std::back_inserter(notes_));
        std::ranges::move(made.shortened, std::back_inserter(made_.shortened));
        below_ = y;
    }

    std::string main_words() const {
        return input_.words(panel_.main ? say("directory/main-amps", said(*panel_.main)) : say("directory/main"));
    }

    void add_main(Mm y) {
        Mm const width = 60, height = kMainBox - 1, middle = room_.x + room_.width / 2;
        pen().add(Box{middle - width / 2, y, width, height, 0.5, kBlack, false, kWhite, 0, false});
        pen().add(Text{middle, y + (height + cap_height(kNames)) / 2, kNames, main_words(), Weight::bold, Align::centre,
                       kBlack, 0});
    }

    std::vector<PhraseRow> below_rows() const {
        auto rows = off_by_hand_rows(directory_, panel_);
        if (!entries_.not_placed.empty()) rows.push_back({say("directory/not-placed"), {}});
        for (Entry const& e : entries_.not_placed) {
            Phrases said{comma_list({e.name, e.place, e.breaker})};
            said.insert(said.end(), e.warnings.begin(), e.warnings.end());
            rows.push_back({e.mark, joined("list/semicolon", said)});
        }
        if (!notes_.empty()) rows.push_back({say("directory/more-about"), {}});
        for (std::size_t i = 0; i < notes_.size(); ++i) {
            BelowNote const& note = notes_[i];
            bool const same = i > 0 && notes_[i - 1].where == note.where;
            if (same)
                rows.back().words = say("list/semicolon", rows.back().words, note.words);
            else
                rows.push_back({note.where + (note.mark.empty() ? "" : "  " + note.mark), note.words});
        }
        return rows;
    }

    // Below the panel, and on further pages when that is not enough.
    void add_lists() {
        List const below = list(below_rows());
        Mm y = below_ + kGap;
        for (std::size_t done = 0; done < below.lines();) {
            std::size_t n = below.fitting(done, room_.y + room_.height - y);
            if (n < 2 && n < below.lines() - done && y > room_.y) { // a heading alone
                made_.sheet.pages.push_back(blank_page(form_));
                y = room_.y;
                continue;
            }
            n = std::max<std::size_t>(n, 1);
            below.add(pen(), room_.x, y, done, done + n);
            done += n;
            y = room_.y + room_.height;
        }
    }

    SheetInput const& input_;
    Panel const& panel_;
    Form const& form_;
    Hanging hanging_;
    DirectoryInput directory_;
    PanelEntries entries_;
    Frame frame_;
    bool legs_ = true;
    Rect room_;
    Mm below_ = 0, list_size_ = kDetail;
    std::vector<BelowNote> notes_;
    ComposedDirectory made_;
};

std::vector<Printed::Name> names(SheetInput const& input, Form const& form, bool lay_out_all) {
    std::vector<Printed::Name> names;
    for (Panel const& panel : input.building.panels) {
        Directory directory(input, form, panel);
        std::vector<std::string> shortened;
        if (lay_out_all || !directory.surely_takes_all_names()) shortened = directory.make().shortened;
        for (Circuit const* c : panel.circuits) {
            bool const whole = std::ranges::find(shortened, c->mark) == shortened.end();
            auto const& language = input.catalogue.language();
            if (!whole || !name_in(language, *c).empty())
                names.push_back({{panel.name, {c->mark}, std::string(name_key_in(language, *c))}, whole});
        }
    }
    return names;
}

} // namespace

std::vector<Sheet> compose_directory(SheetInput const& input, Form const& form) {
    std::vector<Sheet> sheets;
    for (Panel const& panel : input.building.panels) sheets.push_back(Directory(input, form, panel).make().sheet);
    return sheets;
}

std::vector<Printed::Name> names_on_lines(SheetInput const& input, Form const& form) {
    return names(input, form, false);
}

std::vector<Printed::Name> names_on_laid_out_lines(SheetInput const& input, Form const& form) {
    return names(input, form, true);
}

} // namespace legwork
