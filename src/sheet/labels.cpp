// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/labels.h"

#include "rules/rule.h"
#include "sheet/cells.h"
#include "sheet/labels_face.h"
#include "sheet/labels_margins.h"
#include "words/say.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <iterator>
#include <span>

namespace legwork {

namespace {

// What stands on one label, drawn where text may stand.
using Face = std::function<void(Pen const&, Rect)>;

// Of a form's labels; nothing on a form without any.
Rect face_area(std::vector<Cell> const& cells) { return cells.empty() ? Rect{} : cells.front().faces.front(); }

bool takes_text(Rect const& face) { return face.width > 0 && face.height >= block_height(1, kFloor); }

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

std::vector<Face> faces(SheetInput const& input, Mm width) {
    std::vector<Face> found;
    for (auto const& end : cable_ends(input.building, cable_runs(input.building, input.book), input.catalogue)) {
        for (auto const& label : end.labels)
            found.push_back([label](Pen const& pen, Rect area) { add_cable_label(pen, area, label); });
        for (auto const& some : marker_labels(input.widths, width, end))
            found.push_back([some](Pen const& pen, Rect area) { add_markers(pen, area, some); });
    }
    std::string unsaid;
    for (Run const& run : input.building.runs)
        if (is_unsaid(run)) unsaid += (unsaid.empty() ? "" : ", ") + run.mark;
    if (!unsaid.empty() && !found.empty()) {
        auto const words = input.words(say("label/none-for", unsaid));
        found.push_back([words](Pen const& pen, Rect area) { add_notice(pen, area, words); });
    }
    return found;
}

std::vector<Face> carriers(SheetInput const& input, Rect face, Phrase const& page) {
    std::vector<Face> found;
    for (auto const& lines : carrier_labels(input, face, page))
        found.push_back([lines](Pen const& pen, Rect area) { add_carrier(pen, area, lines); });
    return found;
}

std::vector<Face> joined(std::vector<Face> first, std::vector<Face> then) {
    std::ranges::move(then, std::back_inserter(first));
    return first;
}

// Where scissors part two labels of a roll that has no die cut between them.
void add_cuts(Pen const& pen, Form const& form, std::size_t used) {
    if (!form.is_roll() || form.pitch_y > form.label_height) return;
    auto const rows = (static_cast<int>(used) + form.columns - 1) / form.columns;
    for (int row = 1; row < rows; ++row) {
        Mm const y = form.top + row * form.pitch_y;
        pen.add(Line{0, y, form.width, y, 0.15, kBlack, true});
    }
}

void add_labels(Pen const& pen, std::vector<Cell> const& cells, std::span<Face const> labels) {
    for (std::size_t i = 0; i < labels.size(); ++i)
        for (Rect const& face : cells[i].faces) labels[i](pen.in(cells[i].place), face);
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
    Rect const area = face_area(cells(form));
    if (!takes_text(area)) return {};
    Page scratch;
    Pen const pen(scratch, input.widths);
    Shown shown;
    for (auto const& end : cable_ends(input.building, cable_runs(input.building, input.book), input.catalogue)) {
        for (auto const& label : end.labels) shown.add(*end.run, add_cable_label(pen, area, label));
        for (auto const& some : marker_labels(input.widths, area.width, end))
            shown.add_markers(*end.run, add_markers(pen, area, some));
    }
    return std::move(shown).names();
}

std::vector<Sheet> compose_labels(SheetInput const& input, Form const& form) {
    auto const places = cells(form);
    Rect const face = face_area(places);
    if (!takes_text(face)) return {};
    auto labels = faces(input, face.width);
    if (labels.empty()) return {};

    // A roll says once what job it is of, a sheet on each page: in its margins, else on the first labels.
    if (form.is_roll()) labels = joined(carriers(input, face, {}), std::move(labels));
    bool const margins = !form.is_roll() && margins_hold_imprint(input, form);
    bool const carried = !form.is_roll() && !margins;
    std::size_t const on_each = carried ? carriers(input, face, page_of(99, 99)).size() : 0;
    // A stock so small that a page could not carry its own imprint gets one label a page at least.
    std::size_t const per_page = places.size() > on_each ? places.size() - on_each : 1;
    std::size_t const pages = (labels.size() + per_page - 1) / per_page;

    Sheet sheet{"labels", "", input.words(say("label/title")), {}};
    if (has_mark_alone(face)) sheet.cut.emplace_back("labels so low have room for the mark alone");
    for (std::size_t p = 0; p < pages; ++p) {
        auto here = carried ? carriers(input, face, page_of(p + 1, pages)) : std::vector<Face>{};
        if (here.size() >= places.size()) here.resize(places.size() - 1);
        std::ranges::copy(
            std::span(labels).subspan(p * per_page).first(std::min(per_page, labels.size() - p * per_page)),
            std::back_inserter(here));
        Page page = blank_page(form);
        page.height = page_height(form, std::span(places).first(here.size()));
        Pen const pen(page, input.widths);
        std::vector<std::string> cut;
        if (margins) add_margins(pen.telling(cut), input, form, p + 1, pages);
        if (p == 0)
            for (auto const& words : cut)
                sheet.cut.push_back(fmt::format("its margin has room for no more than \"{}\"", words));
        add_labels(pen, places, here);
        add_cuts(pen, form, here.size());
        sheet.pages.push_back(std::move(page));
    }
    return {sheet};
}

} // namespace legwork
