// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/load.h"

#include "sheet/common.h"
#include "sheet/load_table.h"
#include "sheet/load_words.h"
#include "words/say.h"

#include <algorithm>
#include <iterator>

namespace legwork {

namespace {

std::vector<RuleMark> all_marks(PanelLoad const& load) {
    std::vector<RuleMark> marks;
    for (auto const* steps : {&load.load->steps, &load.load->neutral})
        for (LoadStep const& s : *steps) marks.push_back(rule_mark(s));
    for (LoadResult const& r : load.results) marks.push_back(rule_mark(r));
    return marks;
}

// Some lines go into later ones.
bool goes_on(LoadSteps const& steps) {
    return std::ranges::any_of(steps, [](LoadStep const& s) { return s.kind != LoadStep::Kind::counted; });
}

// A line of one load of which nothing is known.
bool is_missing(LoadStep const& s, LoadCalculation const& load) {
    return s.circuits.size() == 1 && std::ranges::count(load.unknown_loads, s.circuits.front()) > 0;
}

struct StepTitles {
    Phrase steps, total;
};

// From the method to the last note, top to bottom.
class LoadSheet {
public:
    LoadSheet(SheetInput const& input, PanelLoad const& load, Mm width, Spacing spacing)
        : input_(input), load_(load), table_(input, load, width, spacing), so_far_(!load.load->unknown.empty()) {
        add_method();
        add_steps({say("load/the-load"), say("load/total")}, load.load->steps, load.load->total_va);
        if (load.load->neutral_va && !load.load->neutral.empty())
            add_steps({say("load/of-neutral"), say("load/total-of-neutral")}, load.load->neutral,
                      *load.load->neutral_va);
        add_words(say("load/legs"), in_words(leg_words(load)));
        add_results();
        add_missing();
        add_words(say("load/granted"), in_words(load.load->notes));
    }

    Blocks blocks, heads;

private:
    void add(Block b) { blocks.push_back(std::move(b)); }
    void add_paragraph(std::string const& words, Mm x_height, Weight weight, Mm above) {
        auto lines = table_.paragraph(words, x_height, weight, above);
        std::ranges::move(lines, std::back_inserter(blocks));
    }
    std::vector<std::string> in_words(Phrases const& phrases) const {
        std::vector<std::string> words;
        for (Phrase const& p : phrases) words.push_back(input_.words(p));
        return words;
    }

    void add_method() {
        add_paragraph(input_.words(load_.load->title), kNames, Weight::bold, 0);
        add_paragraph(input_.words(load_.load->why), kDetail, Weight::regular, 0);
        add_paragraph(input_.words(facts_words(load_)), kDetail, Weight::regular, 0);
        if (goes_on(load_.load->steps))
            add_paragraph(input_.words(say("load/how-to-follow")), kFloor, Weight::regular, 1);
        if (so_far_) add(table_.framed({verdict_words(load_).front()}));
    }

    void add_steps(StepTitles const& titles, LoadSteps const& steps, std::int64_t total_va) {
        int const head = static_cast<int>(heads.size());
        bool const listed = goes_on(steps);
        heads.push_back(table_.head(say("load/continued", titles.steps), listed));
        add(table_.head(titles.steps, listed));
        for (LoadStep const& s : steps) {
            auto b = table_.step(s, s.va > 0 || !is_missing(s, *load_.load));
            b.head = head;
            add(std::move(b));
        }
        blocks.back().with_next = true; // the last line with the total
        auto sum = table_.total(so_far_ ? say("load/so-far", titles.total) : titles.total, total_words(steps, total_va),
                                total_va);
        sum.head = head;
        add(std::move(sum));
    }

    void add_results() {
        add(table_.title(say("load/results")));
        for (LoadResult const& r : load_.results) {
            add(table_.result(r, so_far_));
            blocks.back().with_next = true;
        }
        add(table_.framed(verdict_words(load_)));
    }

    void add_missing() {
        auto lines = in_words(load_.load->unknown);
        if (lines.empty()) return;
        std::ranges::transform(lines, lines.begin(), capital);
        lines.push_back(input_.words(say("load/find-out")));
        add_words(say("load/missing"), lines);
    }

    void add_words(Phrase const& title, std::vector<std::string> const& paragraphs) {
        if (paragraphs.empty()) return;
        add(table_.title(title));
        for (std::string const& p : paragraphs) add_paragraph(p, kDetail, Weight::regular, 0.6);
    }

    SheetInput const& input_;
    PanelLoad const& load_;
    LoadTable table_;
    bool so_far_;
};

// The page of the framed answer, and how many there are.
std::pair<std::size_t, std::size_t> extent(std::vector<Page> const& pages) {
    auto const framed = [](Mark const& m) { return std::holds_alternative<Box>(m); };
    std::size_t answer = pages.size();
    while (answer > 0 && std::ranges::none_of(pages[answer - 1].marks, framed)) --answer;
    return {answer, pages.size()};
}

Sheet sheet_of(SheetInput const& input, Form const& form, PanelLoad const& load) {
    auto const& panel = *load.panel;
    Frame frame;
    frame.title = input.words(say("load/title"));
    frame.subtitle = input.words(say("list/comma", panel.name, supply_word(panel)));
    for (Phrase const& line : star_words(all_marks(load))) frame.foot.push_back(input.words(line));
    std::ranges::move(accepted_lines(input, panel.name), std::back_inserter(frame.foot));
    frame.shows_spaces = hangs_on_spaces(load); // also of circuits in panels below
    auto const room = content_area(input, form, frame);
    auto const composed = [&](Spacing spacing) {
        LoadSheet const made(input, load, room.width, spacing);
        return in_pages(form, room, made.blocks, made.heads);
    };
    auto pages = composed(Spacing::wide);
    if (pages.size() > 1) // closer, if that brings the answer a page forward or saves one
        if (auto closer = composed(Spacing::close); extent(closer) < extent(pages)) pages = std::move(closer);
    Sheet sheet{"load", panel.name, input.words(comma_list({input.building.name, say("load/document", panel.name)})),
                std::move(pages)};
    add_frame(input, form, frame, sheet);
    return sheet;
}

} // namespace

std::vector<Sheet> compose_load(SheetInput const& input, Form const& form) {
    std::vector<Sheet> sheets;
    for (Panel const& panel : input.building.panels) {
        auto const load = panel_load(input.building, input.plan, input.book, panel);
        bool const nothing = !load.load || (load.load->steps.empty() && load.load->unknown.empty());
        if (!nothing) sheets.push_back(sheet_of(input, form, load));
    }
    return sheets;
}

} // namespace legwork
