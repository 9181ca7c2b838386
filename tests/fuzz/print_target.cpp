// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Every sheet of the job, as PDF and SVG, on a form of each paper.
#include "fuzz/opened.h"
#include "fuzz/pages.h"

#include "cli/files/form_file.h"

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
    static auto const forms = legwork::installed_forms();
    auto const s = fuzz::opened(fuzz::text_of(data, size));
    if (!s) return 0;
    auto number = fuzz::number_of(s->bytes);
    for (legwork::SheetKind const& kind : legwork::sheet_kinds()) {
        std::vector<legwork::Form const*> fitting;
        for (auto const& f : forms)
            if (f.sheet == kind.name) fitting.push_back(&f);
        fuzz::draw_sheet(*s, kind, *fitting.at(number++ % fitting.size()));
    }
    return 0;
}
