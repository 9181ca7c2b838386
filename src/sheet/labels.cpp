// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/labels.h"

#include "rules/rule.h"
#include "sheet/labels_face.h"
#include "sheet/labels_margins.h"

#include <algorithm>
#include <functional>

namespace legwork {

namespace {

// One die-cut label's contents, drawn into its area.
using Face = std::function<void(Page&, Rect)>;

// Inside the die cut, and inside what the printer reaches: on stock without margins the outer labels lose a strip.
Rect text_area(Form const& form, int cell) {
    Mm const x = form.left + (cell % form.columns) * form.pitch_x, y = form.top + (cell / form.columns) * form.pitch_y;
    Mm const left = std::max(x + kDieClear, form.margin), top = std::max(y + kDieClear, form.margin);
    Mm const right = std::min(x + form.label_width - kDieClear, form.width - form.margin);
    Mm const bottom = std::min(y + form.label_height - kDieClear, form.height - form.margin);
    return {left, top, std::max(0.0, right - left), std::max(0.0, bottom - top)};
}

// The least that any cell gives: all labels take that, and look alike. Nothing on a form without labels.
Rect least_area(Form const& form) {
    if (form.columns < 1 || form.rows < 1) return {};
    Rect least = text_area(form, 0);
    for (int cell = 1; cell < form.columns * form.rows; ++cell) {
        auto const area = text_area(form, cell);
        least.width = std::min(least.width, area.width);
        least.height = std::min(least.height, area.height);
    }
    return least;
}

bool takes_text(Rect const& least) { return least.width > 0 && least.height >= block_height(1, kFloor); }

Rect face_area(Form const& form, int cell, Rect const& least) {
    Rect area = text_area(form, cell);
    area.x += (area.width - least.width) / 2;
    area.y += (area.height - least.height) / 2;
    area.width = least.width;
    area.height = least.height;
    return area;
}

// As many as stand whole beside each other on one label.
std::vector<std::vector<Marker>> marker_labels(TextWidth const& widths, Mm width, CableEnd const& end) {
    std::vector<std::vector<Marker>> labels;
    for (std::span<Marker const> rest = end.markers; !rest.empty();) {
        auto const some = rest.first(strips(widths, width, rest));
        labels.emplace_back(some.begin(), some.end());
        rest = rest.subspan(some.size());
    }
    return labels;
}

std::vector<Face> faces(SheetInput const& input, Form const& form) {
    std::vector<Face> found;
    Mm const width = least_area(form).width;
    auto const& widths = input.widths;
    for (auto const& end : cable_ends(input.building, cable_runs(input.building, input.book), input.catalogue)) {
        for (auto const& label : end.labels)
            found.push_back([label, &widths](Page& page, Rect area) { add_cable_label(page, widths, area, label); });
        for (auto const& some : marker_labels(widths, width, end))
            found.push_back([some, &widths](Page& page, Rect area) { add_markers(page, widths, area, some); });
    }
    std::string unsaid;
    for (Run const& run : input.building.runs)
        if (is_unsaid(run)) unsaid += (unsaid.empty() ? "" : ", ") + run.mark;
    if (!unsaid.empty() && !found.empty()) {
        auto const words = input.words(say("label/none-for", unsaid));
        found.push_back([words, &widths](Page& page, Rect area) { add_notice(page, widths, area, words); });
    }
    return found;
}

// What the labels of one cable show, of all of them together.
class Shown {
public:
    void add(Run const& run, LabelShows const& shows) {
        for (std::size_t i = 0; i < shows.feeds.size(); ++i)
            add(run.of_circuit ? about(*run.carries[i], "name") : about(run, "name"), shows.feeds[i],
                Printed::Name::kName);
        if (!shows.mark) add(about(run, ""), false, "the mark");
        if (!shows.ends) add(about(run, ""), false, "the name of an end");
        if (!shows.cable) add(about(run, ""), false, "the kind of the cable");
    }
    void add_markers(Run const& run, bool whole) {
        if (!whole) add(about(run, ""), false, "what its conductors are marked with");
    }
    std::vector<Printed::Name> names() && { return std::move(names_); }

private:
    static Where about(Circuit const& c, std::string key) { return legwork::about(c, std::move(key)); }
    static Where about(Run const& run, std::string key) {
        return run.of_circuit ? legwork::about(run.carries, key) : Where{"", {run.mark}, key};
    }
    // Once a name, however many labels say it.
    void add(Where of, bool whole, std::string_view what) {
        auto const same = std::ranges::find_if(
            names_, [&](Printed::Name const& n) { return n.of.circuits == of.circuits && n.what == what; });
        if (same == names_.end())
            names_.push_back({std::move(of), whole, std::string(what)});
        else
            same->whole &= whole;
    }

    std::vector<Printed::Name> names_;
};

} // namespace

std::vector<Printed::Name> names_on_labels(SheetInput const& input, Form const& form) {
    Rect const area = least_area(form);
    if (!takes_text(area)) return {};
    Page scratch;
    Shown shown;
    for (auto const& end : cable_ends(input.building, cable_runs(input.building, input.book), input.catalogue)) {
        for (auto const& label : end.labels) shown.add(*end.run, add_cable_label(scratch, input.widths, area, label));
        for (auto const& some : marker_labels(input.widths, area.width, end))
            shown.add_markers(*end.run, add_markers(scratch, input.widths, area, some));
    }
    return std::move(shown).names();
}

std::vector<Sheet> compose_labels(SheetInput const& input, Form const& form) {
    auto const least = least_area(form);
    if (!takes_text(least)) return {};
    auto const cells = static_cast<std::size_t>(form.columns) * static_cast<std::size_t>(form.rows);
    auto const labels = faces(input, form);
    if (labels.empty()) return {};

    bool const margins = margins_hold_imprint(input, form);
    auto const carriers = margins ? std::vector<std::vector<std::string>>{} : carrier_labels(input, least, 99, 99);
    // A stock so small that a page could not carry its own imprint gets one label a page at least.
    std::size_t const per_page = cells > carriers.size() ? cells - carriers.size() : 1;
    std::size_t const pages = (labels.size() + per_page - 1) / per_page;

    Sheet sheet{"labels", "", input.words(say("label/title")), {}};
    for (std::size_t p = 0; p < pages; ++p) {
        Page page = blank_page(form);
        std::size_t cell = 0;
        if (margins)
            add_margins(page, input, form, p + 1, pages);
        else
            for (auto const& lines : carrier_labels(input, least, p + 1, pages)) {
                if (cell + 1 >= cells) break;
                add_carrier(page, face_area(form, static_cast<int>(cell++), least), lines);
            }
        for (std::size_t i = p * per_page; i < std::min(labels.size(), (p + 1) * per_page); ++i)
            labels[i](page, face_area(form, static_cast<int>(cell++), least));
        sheet.pages.push_back(std::move(page));
    }
    return {sheet};
}

} // namespace legwork
