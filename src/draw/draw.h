// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Pages to bytes: the only folder that knows Cairo, Pango and fontconfig. fonts.h and line.h set a text once, for its
// width as for every format; marks.h gives a page to Cairo for PDF and PNG; SVG is written here (svg.cpp), with each
// letter as an outline, so that it looks the same where the font is not there. Everything is drawn into memory, since
// Cairo reports no error on a full disk; same pages, same bytes, whatever else the process drew.
#pragma once

#include "page/page.h"
#include "page/text_width.h"

#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// The bundled faces, with the machine's own as a fallback for letters they lack. Throws Failure when the bundled face
// is not in `folder`.
class Fonts : public TextWidth {
public:
    explicit Fonts(std::string const& folder);
    Fonts(Fonts const&) = delete;
    Fonts& operator=(Fonts const&) = delete;
    ~Fonts() override;
    Mm width(std::string_view words, Mm x_height, Weight weight) const override;
    std::vector<std::string> missing(std::string_view words) const override;

    struct Inside;
    Inside const& inside() const { return *inside_; }

private:
    std::unique_ptr<Inside> inside_;
};

struct DocumentInfo {
    std::string title;
    std::string date;      // "2026-05-02" from the job; empty: a fixed date, so that the bytes stay equal
    std::string mark = {}; // see below
};

// `mark`, when there is one, is a word of ASCII letters, digits and "-" that goes into the bytes as it is, where nobody
// who looks at the page sees it (a keyword, metadata, a comment), so that a program knows the file again.
std::string draw_pdf(std::vector<Page> const& pages, DocumentInfo const& info, Fonts const& fonts);
std::string draw_svg(Page const& page, Fonts const& fonts, std::string_view mark = {});
std::string draw_png(Page const& page, Fonts const& fonts, double dots_per_inch, std::string_view mark = {});

} // namespace legwork
