// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/sheets.h"

#include "codebook/cite.h"
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

Finding warning(typed::Job const& job, std::string_view rule, Where where, std::string message, std::string fix) {
    Finding f;
    f.rule = rule;
    f.severity = Severity::warning;
    f.where = std::move(where);
    f.message = std::move(message);
    f.fix = std::move(fix);
    if (auto const* book = code_book(job.code)) f.reference = cite(*book, rule);
    return f;
}

// Every text of the job that reaches a sheet.
std::vector<std::string> printed_words(typed::Circuit const& c) {
    std::vector<std::string> words{c.mark, c.name, c.room, c.note, c.building, c.box};
    for (typed::Segment const& s : c.run) words.push_back(s.to);
    return words;
}

std::string missing_letters(TextWidth const& widths, std::vector<std::string> const& words) {
    std::vector<std::string> letters;
    for (std::string const& w : words)
        for (std::string& letter : widths.missing(w))
            if (std::ranges::count(letters, letter) == 0) letters.push_back(std::move(letter));
    return fmt::format("{}", fmt::join(letters, " "));
}

Findings letters_without_a_face(typed::Job const& job, TextWidth const& widths) {
    Findings found;
    auto const look = [&](Where const& where, std::vector<std::string> const& words) {
        if (auto const letters = missing_letters(widths, words); !letters.empty())
            found.push_back(
                warning(job, "dir-no-letter", where,
                        fmt::format("no typeface has these letters, so the sheets show a box for each: {}", letters),
                        "write it in other letters, or install a typeface that has them and print again"));
    };
    std::vector<std::string> of_job{job.name, job.revision};
    for (typed::Supply const& s : job.supplies) of_job.push_back(s.name);
    look({}, of_job);
    for (typed::Panel const& p : job.panels) look({p.name, {}, "name"}, {p.name, p.fed_from, p.building});
    for (typed::Circuit const& c : job.circuits) look({c.panel, {c.mark}, "name"}, printed_words(c));
    for (typed::Cable const& c : job.cables) look({"", {c.mark}, "name"}, {c.mark, c.name, c.from, c.to});
    return found;
}
} // namespace

Findings sheet_findings(typed::Job const& job, Plan const& plan, Form const& directory, TextWidth const& widths) {
    Findings found;
    for (std::string const& mark : shortened_names(job, plan, directory, widths)) {
        auto const* c = circuit_of(job, mark);
        if (!c) continue;
        found.push_back(warning(job, "dir-name-too-long", {c->panel, {mark}, "name"},
                                fmt::format("the name is too long for its line of the directory ({}) even in the "
                                            "smallest print: the line is shortened, the whole name stands below",
                                            directory.title),
                                "say place and thing in fewer words; the room has a key of its own"));
    }
    auto letters = letters_without_a_face(job, widths);
    std::ranges::move(letters, std::back_inserter(found));
    return found;
}

std::span<SheetKind const> sheet_kinds() { return kKinds; }

SheetKind const* sheet_kind(std::string_view name) {
    auto const at = std::ranges::find(kKinds, name, &SheetKind::name);
    return at == kKinds.end() ? nullptr : &*at;
}

} // namespace legwork
