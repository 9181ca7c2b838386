// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/sheets.h"

#include "sheet/directory.h"
#include "sheet/labels.h"
#include "sheet/load.h"
#include "sheet/tape_notes.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
constexpr std::array kKinds{
    SheetKind{"directory", "directory-letter", compose_directory},
    SheetKind{"labels", "labels-letter", compose_labels},
    SheetKind{"tape-notes", "tape-notes-letter", compose_tape_notes},
    SheetKind{"load", "load-letter", compose_load},
};

// Every text of the job that reaches a sheet.
std::vector<std::string> printed_texts(Circuit const& c) {
    std::vector<std::string> words{c.mark, c.name, c.room, c.note, c.building, c.box};
    for (Segment const& s : c.run) words.push_back(s.to);
    return words;
}

std::string missing_letters(TextWidth const& widths, std::vector<std::string> const& words) {
    std::vector<std::string> letters;
    for (std::string const& w : words)
        for (std::string& letter : widths.missing(w))
            if (std::ranges::count(letters, letter) == 0) letters.push_back(std::move(letter));
    return fmt::format("{}", fmt::join(letters, " "));
}

std::vector<Printed::Letters> letters_of(Job const& job, TextWidth const& widths) {
    std::vector<Printed::Letters> all;
    auto const look = [&](Where where, std::vector<std::string> const& words) {
        if (std::ranges::any_of(words, [](std::string const& w) { return !w.empty(); }))
            all.push_back({std::move(where), missing_letters(widths, words)});
    };
    std::vector<std::string> of_job{job.name, job.revision};
    for (Supply const& s : job.supplies) of_job.push_back(s.name);
    look({}, of_job);
    for (Panel const& p : job.panels) look({p.name, {}, "name"}, {p.name, p.fed_from, p.building});
    for (Circuit const& c : job.circuits) look({c.panel, {c.mark}, "name"}, printed_texts(c));
    for (Cable const& c : job.cables) look({"", {c.mark}, "name"}, {c.mark, c.name, c.from, c.to});
    return all;
}
} // namespace

Printed printed_words(Job const& job, Plan const& plan, Form const& directory, TextWidth const& widths) {
    return {names_on_lines(job, plan, directory, widths), directory.title, letters_of(job, widths)};
}

std::span<SheetKind const> sheet_kinds() { return kKinds; }

SheetKind const* sheet_kind(std::string_view name) {
    auto const at = std::ranges::find(kKinds, name, &SheetKind::name);
    return at == kKinds.end() ? nullptr : &*at;
}

} // namespace legwork
