// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/sheets.h"

#include "page/usual_letters.h"
#include "sheet/common_words.h"
#include "sheet/directory.h"
#include "sheet/labels.h"
#include "sheet/load.h"
#include "sheet/tape_notes.h"
#include "words/spoken.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
constexpr std::array kKinds{
    SheetKind{"directory", "directory-letter", compose_directory, names_on_lines, "its line of the directory",
              "the line is shortened, the whole name stands below"},
    SheetKind{"labels", "labels-letter", compose_labels, names_on_labels, "the labels of its cable",
              "they show a part of it"},
    SheetKind{"tape-notes", "tape-notes-letter", compose_tape_notes, names_on_notes, "its tape notes",
              "they show a part of it"},
    SheetKind{"load", "load-letter", compose_load},
};

// Every text of the job that reaches a sheet.
std::vector<std::string> printed_texts(Circuit const& c, std::string_view language) {
    std::vector<std::string> words{c.mark, c.name, name_in(language, c), c.room, c.note, c.building, c.box};
    bool const shares = c.pair && c.pair->second == &c; // the shared home run stands at its first member
    for (std::size_t i = shares ? 1 : 0; i < c.run.size(); ++i) words.push_back(c.run[i].to);
    return words;
}

std::string missing_letters(TextWidth const& widths, std::vector<std::string> const& words) {
    std::vector<std::string> letters;
    for (std::string const& w : words) {
        if (UsualLetters().missing(w).empty()) continue;
        for (std::string& letter : widths.missing(w))
            if (std::ranges::count(letters, letter) == 0) letters.push_back(std::move(letter));
    }
    return fmt::format("{}", fmt::join(letters, " "));
}

std::vector<Printed::Letters> letters_of(Building const& building, TextWidth const& widths) {
    auto const& language = spoken("directory", building.languages).language();
    std::vector<Printed::Letters> all;
    auto const look = [&](Where where, std::vector<std::string> const& words) {
        if (std::ranges::any_of(words, [](std::string const& w) { return !w.empty(); }))
            all.push_back({std::move(where), missing_letters(widths, words)});
    };
    std::vector<std::string> of_job{building.name, building.revision};
    for (Supply const& s : building.supplies) of_job.push_back(s.name);
    look({}, of_job);
    for (Panel const& p : building.panels) look({p.name, {}, "name"}, {p.name, p.fed_from, p.building});
    for (Circuit const& c : building.circuits)
        look({c.panel ? c.panel->name : "", {c.mark}, "name"}, printed_texts(c, language));
    for (Run const& r : building.runs)
        if (!r.of_circuit) look({"", {r.mark}, "name"}, {r.mark, r.name, r.from.called, r.to.called});
    return all;
}
} // namespace

Printed printed_words(SheetInput const& input, std::span<SheetOrder const> orders) {
    Printed printed;
    for (auto const& [kind, form] : orders)
        if (kind->names)
            printed.sheets.push_back({form.title, kind->room, kind->if_cut,
                                      kind->names(input.in(language_of(*kind, input.building)), form)});
    printed.letters = letters_of(input.building, input.widths);
    return printed;
}

Catalogue const& language_of(SheetKind const& kind, Building const& building) {
    return spoken(kind.name, building.languages);
}

std::span<SheetKind const> sheet_kinds() { return kKinds; }

SheetKind const* sheet_kind(std::string_view name) {
    auto const at = std::ranges::find(kKinds, name, &SheetKind::name);
    return at == kKinds.end() ? nullptr : &*at;
}

} // namespace legwork
