// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/sheet_files.h"

#include "output/files.h"
#include "sheet/sheets.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <set>

namespace legwork {

namespace fs = std::filesystem;

namespace {

constexpr double kPictureDots = 200; // dots per inch of a PNG: a label's small print stays readable

struct Drawn {
    WrittenFile file;
    std::string bytes;
};

std::string lower(std::string text) {
    for (char& c : text)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return text;
}

// Clashes also on a disk that does not tell capitals from small letters.
std::string unused_stem(std::string const& wanted, std::set<std::string>& taken) {
    auto stem = wanted;
    for (int n = 2; !taken.insert(lower(stem)).second; ++n) stem = fmt::format("{}-{}", wanted, n);
    return stem;
}

std::string date_text(std::optional<Date> const& d) {
    return d ? fmt::format("{:04}-{:02}-{:02}", d->year, d->month, d->day) : "";
}

void draw(Session const& s, Sheet const& sheet, std::string const& stem, std::string const& format,
          std::vector<Drawn>& drawn) {
    WrittenFile file{.sheet = sheet.name,
                     .panel = sheet.panel,
                     .format = format,
                     .path = stem + "." + format,
                     .page = 1,
                     .pages = static_cast<int>(sheet.pages.size())};
    if (format == "pdf") {
        drawn.push_back({file, draw_pdf(sheet.pages, {sheet.title, date_text(s.job.date)}, *s.fonts)});
        return;
    }
    for (Page const& page : sheet.pages) {
        file.path = fmt::format("{}-{}.{}", stem, file.page, format);
        drawn.push_back({file, format == "svg" ? draw_svg(page, *s.fonts) : draw_png(page, *s.fonts, kPictureDots)});
        ++file.page;
    }
}

std::vector<Sheet> compose(Session const& s, std::vector<SheetOrder> const& orders) {
    SheetInput const input{s.job, s.plan, s.findings, *s.book, *s.fonts, s.file};
    std::vector<Sheet> sheets;
    for (SheetOrder const& o : orders)
        for (Sheet& sheet : o.kind->compose(input, *o.form))
            if (!sheet.pages.empty()) sheets.push_back(std::move(sheet));
    return sheets;
}

// Pages that this print did not write, though their names follow on those it did.
std::vector<std::string> left_over(fs::path const& folder, std::string const& stem, std::string const& format,
                                   int pages) {
    std::vector<std::string> found;
    std::error_code failed;
    for (int page = pages + 1;; ++page) {
        auto const path = folder / fmt::format("{}-{}.{}", stem, page, format);
        if (!fs::exists(path, failed)) return found;
        found.push_back(path.string());
    }
}

} // namespace

WrittenSheets write_sheets(Session const& s, std::vector<SheetOrder> const& orders,
                           std::vector<std::string> const& formats, std::string const& folder) {
    fs::path const out(folder.empty() ? "." : folder);
    std::vector<Drawn> drawn;
    std::vector<std::string> stale;
    std::set<std::string> taken;
    for (Sheet const& sheet : compose(s, orders)) {
        auto const stem =
            unused_stem(sheet.panel.empty() ? sheet.name : sheet.name + "-" + file_stem(sheet.panel), taken);
        for (auto const& format : std::set<std::string>(formats.begin(), formats.end())) {
            draw(s, sheet, stem, format, drawn);
            if (format != "pdf")
                std::ranges::move(left_over(out, stem, format, static_cast<int>(sheet.pages.size())),
                                  std::back_inserter(stale));
        }
    }
    std::vector<FileToWrite> files;
    for (Drawn& d : drawn) {
        d.file.path = (out / d.file.path).lexically_normal().string();
        files.push_back({d.file.path, d.bytes});
    }
    write_files(files, s.file == "-" ? "" : s.file);
    WrittenSheets done;
    for (Drawn& d : drawn) done.files.push_back(std::move(d.file));
    std::ranges::copy_if(stale, std::back_inserter(done.left_over), [&](std::string const& path) {
        return std::ranges::count(done.files, fs::path(path).lexically_normal().string(), &WrittenFile::path) == 0;
    });
    return done;
}

} // namespace legwork
