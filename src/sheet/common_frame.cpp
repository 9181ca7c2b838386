// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/common_frame.h"

#include "rules/check.h"
#include "sheet/common_text.h"
#include "sheet/pen.h"
#include "words/say.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

constexpr Mm kStrip = 8, kHead = 13.6, kBand = 7, kGap = 2;

Mm width_between(Form const& form) { return form.width - 2 * form.margin; }

std::vector<std::string> wrapped_small(TextWidth const& widths, std::string_view words, Mm width) {
    // Height enough that no line is lost; a word wider than the page is shortened.
    return fit(widths, words, Weight::regular, width, 1000, kFloor).lines;
}

// Lines of the foot from top to bottom, without the last (imprint and how to reprint).
std::vector<std::string> foot_lines(SheetInput const& input, Form const& form, Frame const& frame) {
    std::vector<std::string> lines;
    auto const add = [&](std::string_view words) {
        for (std::string& line : wrapped_small(input.widths, words, width_between(form)))
            lines.push_back(std::move(line));
    };
    for (std::string const& own : frame.foot) add(own);
    Panel const* panel = panel_named(input.building, frame.panel);
    add(input.words(panel && panel->is_dc() ? say("frame/caution-dc") : caution())); // the shorter of the two
    return lines;
}

Mm foot_height(SheetInput const& input, Form const& form, Frame const& frame) {
    return block_height(foot_lines(input, form, frame).size() + 1, kFloor) + kGap;
}

Mm band_height(SheetInput const& input, Frame const& frame) {
    return bands(input, frame.panel, frame.shows_spaces).empty() ? 0 : kBand + kGap;
}

void add_strip(SheetInput const& input, Pen const& pen, Form const& form) {
    Mm const y = form.margin + kStrip - kGap;
    pen.add(Text{form.margin, y - 0.8, kFloor, input.words(say("frame/changes-by-hand")), Weight::regular, Align::left,
                 kLighter, 0});
    pen.add(Line{form.margin, y, form.width - form.margin, y, 0.15, kLighter, false});
}

void add_head(SheetInput const& input, Form const& form, Frame const& frame, Pen const& pen, Mm top, std::size_t number,
              std::size_t pages) {
    Mm const left = form.margin, right = form.width - form.margin, width = right - left;
    Mm const first = top + cap_height(kTitle), second = first + descent(kTitle) + 0.3 + cap_height(kDetail);
    pen.add_lines(fit_line(input.widths, frame.title, Weight::bold, width * 0.5 - kGap, kTitle), left, first,
                  Weight::bold);
    pen.add_lines(fit_line(input.widths, frame.subtitle, Weight::regular, width * 0.45 - kGap, kDetail), left, second,
                  Weight::regular);
    pen.add_lines(fit_line(input.widths, input.building.name, Weight::bold, width * 0.5 - kGap, kNames), right, first,
                  Weight::bold, Align::right);
    auto const words = input.words(
        comma_list({revision_phrase(input.building), page_of(number, pages), checked_against(input.building)}));
    pen.add_lines(fit_line(input.widths, words, Weight::regular, width * 0.55 - kGap, kDetail), right, second,
                  Weight::regular, Align::right);
    pen.add(Line{left, top + kHead - kGap, right, top + kHead - kGap, 0.15, kBlack, false});
}

void add_bands(SheetInput const& input, Form const& form, Frame const& frame, Pen const& pen, Mm top) {
    auto const words = bands(input, frame.panel, frame.shows_spaces);
    if (words.empty()) return;
    auto const n = static_cast<Mm>(words.size());
    Mm const width = (width_between(form) - (n - 1) * kGap) / n;
    Mm x = form.margin;
    for (std::string const& band : words) {
        pen.add(Box{x, top, width, kBand, 0.5, kBlack, true, grey(0.94), 0, false});
        auto const text = fit_line(input.widths, band, Weight::bold, width - 2 * kGap, kNames);
        pen.add_lines(text, x + width / 2, top + (kBand + cap_height(text.x_height)) / 2, Weight::bold, Align::centre);
        x += width + kGap;
    }
}

void add_foot(SheetInput const& input, Form const& form, Frame const& frame, Pen const& pen) {
    Mm const left = form.margin, right = form.width - form.margin, bottom = form.height - form.margin;
    auto const lines = foot_lines(input, form, frame);
    Mm y = bottom - descent(kFloor) - static_cast<Mm>(lines.size()) * leading(kFloor);
    Mm const rule = y - cap_height(kFloor) - kGap * 0.6;
    pen.add(Line{left, rule, right, rule, 0.15, kBlack, false});
    pen.add_lines({lines, kFloor, false}, left, y, Weight::regular);
    y = bottom - descent(kFloor);
    pen.add_lines(fit_line(input.widths, input.words(imprint(input.building)), Weight::regular,
                           (right - left) * 0.5 - kGap, kFloor),
                  left, y, Weight::regular);
    // Cut where the file lies deep in folders: no word about the building is lost.
    pen.untold().add_lines(fit_line(input.widths, input.words(how_to_reprint(input)), Weight::regular,
                                    (right - left) * 0.5 - kGap, kFloor),
                           right, y, Weight::regular, Align::right);
}

// The panel that the acceptance names, that its circuit is in, or that the finding is about.
bool concerns(Accepted const& a, Finding const& f, std::string_view panel) {
    Panel const* own = a.panel ? a.panel : a.circuit ? a.circuit->panel : nullptr;
    return (own && own->name == panel) || f.where.panel == panel;
}

Phrase accepted_phrase(Accepted const& a) {
    auto const thing = a.circuit ? a.circuit->mark : a.panel ? a.panel->name : std::string();
    auto fault = a.why.empty() ? say("frame/fault", a.rule, thing) : say("frame/fault-why", a.rule, thing, a.why);
    return a.by.empty() ? say("frame/accepted", std::move(fault)) : say("frame/accepted-by", a.by, std::move(fault));
}

Mm head_top(Form const& form, Frame const& frame) { return form.margin + (frame.strip ? kStrip : 0); }

} // namespace

Rect content_area(SheetInput const& input, Form const& form, Frame const& frame) {
    Mm const top = head_top(form, frame) + kHead + band_height(input, frame);
    Mm const bottom = form.height - form.margin - foot_height(input, form, frame) - kGap;
    return {form.margin, top, width_between(form), bottom - top};
}

Mm least_content_height(SheetInput const& input, Form const& form, Frame const& frame) {
    double lines = 1 + most_lines(input.words(caution()), kFloor, width_between(form));
    for (std::string const& own : frame.foot) lines += most_lines(own, kFloor, width_between(form));
    Mm const foot = lines * leading(kFloor) + kGap;
    return form.height - 2 * form.margin - kStrip - kHead - (kBand + kGap) - foot - kGap;
}

void add_frame(SheetInput const& input, Form const& form, Frame const& frame, Sheet& sheet) {
    for (std::size_t i = 0; i < sheet.pages.size(); ++i) {
        std::vector<std::string> cut;
        Pen const pen = Pen(sheet.pages[i], input.widths).telling(cut);
        if (frame.strip) add_strip(input, pen, form);
        add_head(input, form, frame, pen, head_top(form, frame), i + 1, sheet.pages.size());
        add_bands(input, form, frame, pen, head_top(form, frame) + kHead);
        add_foot(input, form, frame, pen);
        if (i > 0) continue; // every page says the same
        for (auto const& words : cut)
            sheet.cut.push_back(fmt::format("its head or foot has room for no more than \"{}\"", words));
    }
}

Page blank_page(Form const& form) { return {form.width, form.height, {}}; }

std::vector<std::string> bands(SheetInput const& input, std::string_view panel, bool shows_spaces) {
    std::vector<std::string> words;
    auto const add = [&](Phrase const& band) { words.push_back(input.words(band)); };
    if (int const standing = count(input.findings, Severity::error); standing > 0)
        add(standing == 1 ? say("frame/draft-one", figure(1)) : say("frame/draft", figure(standing)));
    if (lacks_sizes(input.findings)) add(say("frame/draft-sizes"));
    if (shows_spaces && proposes_spaces(input.plan, panel)) add(say("frame/proposed"));
    return words;
}

std::vector<std::string> accepted_lines(SheetInput const& input, std::string_view panel) {
    std::vector<std::string> lines;
    for (Accepted const& a : input.building.accepts) {
        auto const told_here = [&](Finding const& f) {
            return f.accepted && covers(a, f) && (panel.empty() || concerns(a, f, panel));
        };
        if (std::ranges::any_of(input.findings, told_here)) lines.push_back(input.words(accepted_phrase(a)));
    }
    return lines;
}

bool proposes_spaces(Plan const& plan, std::string_view panel) {
    return std::ranges::any_of(plan.panels, [&](PanelPlan const& p) {
        return (panel.empty() || p.panel == panel) && std::ranges::any_of(p.placements, [](Placement const& c) {
                   return !c.slots.empty() && c.slots != c.from;
               });
    });
}

Phrase date_phrase(Date const& date) {
    return say("figure/date", as_is(fmt::format("{:04}", date.year)), as_is(fmt::format("{:02}", date.month)),
               as_is(fmt::format("{:02}", date.day)));
}

Phrase revision_phrase(Building const& building) {
    Phrases words;
    if (!building.revision.empty()) words.push_back(say("frame/revision", building.revision));
    if (building.date) words.push_back(date_phrase(*building.date));
    return comma_list(words);
}

Phrase page_of(std::size_t number, std::size_t pages) {
    return say("frame/page", figure(static_cast<std::int64_t>(number)), figure(static_cast<std::int64_t>(pages)));
}

Phrase imprint(Building const& building) { return comma_list({building.name, revision_phrase(building)}); }

Phrase checked_against(Building const& building) { return say("frame/checked-against", building.code); }

Phrase how_to_reprint(SheetInput const& input) {
    bool const named = !input.file.empty() && input.file != "-";
    return say("frame/reprint", named ? Phrase(input.file) : say("frame/reprint-file"));
}

bool is_all_dc(Building const& building) {
    return !building.panels.empty() && std::ranges::all_of(building.panels, &Panel::is_dc);
}
Phrase caution() { return say("frame/caution"); }

Phrase comma_list(Phrases words) {
    std::erase_if(words, [](Phrase const& w) { return w.empty(); });
    return joined("list/comma", words);
}

} // namespace legwork
