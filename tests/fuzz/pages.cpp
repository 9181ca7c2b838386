// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "fuzz/pages.h"

#include "fuzz/promises.h"

#include <glib.h>

#include <memory>

namespace fuzz {

using namespace legwork;

namespace {

void promise_pdf(std::string const& bytes) {
    promise(bytes.starts_with("%PDF-1.") && bytes.ends_with("%%EOF\n"), "a PDF is whole");
}

void promise_svg(std::string const& bytes) {
    static GMarkupParser const parser{};
    std::unique_ptr<GMarkupParseContext, decltype(&g_markup_parse_context_free)> const context(
        g_markup_parse_context_new(&parser, GMarkupParseFlags{}, nullptr, nullptr), g_markup_parse_context_free);
    bool const well_formed =
        g_markup_parse_context_parse(context.get(), bytes.data(), static_cast<gssize>(bytes.size()), nullptr) &&
        g_markup_parse_context_end_parse(context.get(), nullptr);
    promise(well_formed && bytes.find("<svg") != std::string::npos, "an SVG is well-formed", bytes);
}

} // namespace

void draw_sheet(Session const& s, SheetKind const& kind, Form const& form) {
    auto const input = s.sheet_input();
    for (Sheet const& sheet : kind.compose(input, form)) {
        if (sheet.pages.empty()) continue;
        promise_pdf(draw_pdf(sheet.pages, {sheet.title, ""}, s.fonts->fonts()));
        for (Page const& page : sheet.pages) promise_svg(draw_svg(page, s.fonts->fonts()));
    }
}

} // namespace fuzz
