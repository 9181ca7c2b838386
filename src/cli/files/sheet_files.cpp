// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/files/sheet_files.h"

#include "output/files.h"
#include "sheet/crowded.h"
#include "sheet/sheets.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <set>

namespace legwork {

namespace fs = std::filesystem;

namespace {

constexpr double kPictureDots = 200; // dots per inch of a PNG: a label's small print stays readable

struct SheetBytes {
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
          std::vector<SheetBytes>& drawn) {
    auto const mark = job_mark(s.building, s.file);
    WrittenFile file{.sheet = sheet.name,
                     .panel = sheet.panel,
                     .format = format,
                     .path = stem + "." + format,
                     .page = 1,
                     .pages = static_cast<int>(sheet.pages.size())};
    if (format == "pdf") {
        drawn.push_back(
            {file, draw_pdf(sheet.pages, {sheet.title, date_text(s.building.date), mark}, s.fonts->fonts())});
        return;
    }
    for (Page const& page : sheet.pages) {
        file.path = fmt::format("{}-{}.{}", stem, file.page, format);
        drawn.push_back({file, format == "svg" ? draw_svg(page, s.fonts->fonts(), mark)
                                               : draw_png(page, s.fonts->fonts(), kPictureDots, mark)});
        ++file.page;
    }
}

// A form of a person's own may be too small for a sheet, which nobody could read then; those that come with the program
// are known to be large enough.
void look_for_crowds(SheetInput const& input, Form const& form, Sheet const& sheet, FileProblems& problems) {
    if (form.file.empty() || !problems.problems.empty()) return;
    for (Page const& page : sheet.pages)
        if (auto const why = crowded(page, input.widths); !why.empty()) {
            auto const whose = sheet.panel.empty() ? "" : " of panel " + sheet.panel;
            problems =
                one_problem(form.file, fmt::format("the sheet {}{} does not fit on it: {}", sheet.name, whose, why),
                            "give it a larger page or a smaller margin");
            return;
        }
}

std::vector<Sheet> compose(Session const& s, std::span<SheetOrder const> orders, WrittenSheets& done) {
    auto const input = s.sheet_input();
    std::vector<Sheet> sheets;
    for (SheetOrder const& o : orders)
        for (Sheet& sheet : o.kind->compose(input.in(language_of(*o.kind, s.building)), o.form)) {
            if (sheet.pages.empty()) continue;
            look_for_crowds(input, o.form, sheet, done.problems);
            for (auto const& cut : sheet.cut) {
                auto told = fmt::format("{} on the form {}: {}", sheet.name, o.form.name, cut);
                if (std::ranges::find(done.cut, told) == done.cut.end()) done.cut.push_back(std::move(told));
            }
            sheets.push_back(std::move(sheet));
        }
    return sheets;
}

std::vector<WrittenFile> write(Session const& s, std::vector<SheetBytes> drawn, fs::path const& out) {
    std::vector<FileToWrite> files;
    for (SheetBytes& d : drawn) {
        d.file.path = (out / d.file.path).lexically_normal().string();
        files.push_back({d.file.path, d.bytes});
    }
    write_files(files, s.file == "-" ? "" : s.file);
    std::vector<WrittenFile> written;
    for (SheetBytes& d : drawn) written.push_back(std::move(d.file));
    return written;
}

} // namespace

WrittenSheets write_sheets(Session const& s, std::span<SheetOrder const> orders,
                           std::vector<std::string> const& formats, std::string const& folder) {
    fs::path const out(folder.empty() ? "." : folder);
    std::set<std::string> const wanted(formats.begin(), formats.end());
    std::vector<SheetBytes> drawn;
    std::set<std::string> kinds, taken, names;
    for (SheetOrder const& o : orders) kinds.emplace(o.kind->name);
    WrittenSheets done;
    auto const sheets = compose(s, orders, done);
    if (!done.problems.problems.empty()) return done;
    std::vector<std::string> stems;
    for (Sheet const& sheet : sheets) {
        stems.push_back(
            unused_stem(sheet.panel.empty() ? sheet.name : sheet.name + "-" + file_stem(sheet.panel), taken));
        for (auto const& format : wanted) draw(s, sheet, stems.back(), format, drawn);
    }
    done.files = write(s, std::move(drawn), out);
    for (WrittenFile const& f : done.files) names.insert(fs::path(f.path).filename().string());
    for (std::size_t i = 0; i < sheets.size(); ++i)
        for (auto const& format : wanted)
            if (format != "pdf")
                find_pages_beyond(out.string(), stems[i], format, static_cast<int>(sheets[i].pages.size()), names,
                                  done.old);
    find_gone(out.string(), job_mark(s.building, s.file), kinds, wanted, names, done.old);
    return done;
}

} // namespace legwork
