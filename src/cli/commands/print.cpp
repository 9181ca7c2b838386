// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork print JOB: the sheets as files.

#include "cli/call/rows.h"
#include "cli/call/shared_rows.h"
#include "cli/files/form_file.h"
#include "cli/files/sheet_files.h"
#include "cli/json/json.h"
#include "cli/session.h"
#include "cli/text/text.h"
#include "cli/text/words.h"
#include "rules/check.h"
#include "sheet/common.h"
#include "sheet/sheets.h"
#include "toml/near.h"
#include "toml/problem.h"
#include "units/failure.h"
#include "units/shell.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace legwork {

namespace {

struct PrintOptions {
    std::string job, out_folder = ".";
    std::vector<std::string> sheets, forms, formats;
    bool json = false;
};

Words sheet_names() {
    Words names;
    for (SheetKind const& k : sheet_kinds()) names.emplace_back(k.name);
    return names;
}

// Whether there is such a sheet is for unknown_sheet() to say, with what was meant.
Candidates sheets_by_name(Given const&) {
    Candidates all;
    for (auto const& name : sheet_names()) all.words.push_back({name, ""});
    return all;
}

constexpr OptionRow<PrintOptions> kOptions[] = {
    {job_row, &PrintOptions::job},
    {{.name = "--out",
      .value = "DIR",
      .help = "folder to write to, made with its parents",
      .unsaid = "here",
      .completes = folders},
     &PrintOptions::out_folder},
    {{.name = "--sheet",
      .value = "NAME",
      .help = "only this sheet: directory, labels, tape-notes or load",
      .unsaid = "all",
      .more = "The sheet load is the load calculation of each panel, step by step.",
      .completes = sheets_by_name},
     &PrintOptions::sheets},
    {{.name = "--form",
      .value = "NAME|FILE",
      .help = "form to print a sheet on: a name of legwork forms, or a file of your own",
      .more = "One a sheet.",
      .completes = forms_by_name},
     &PrintOptions::forms},
    {{.name = "--format",
      .help = "file format",
      .unsaid = "pdf and svg",
      .more = "A PDF holds all pages, the others one file a page.",
      .one_of =
          [] {
              return Words{"pdf", "svg", "png"};
          }},
     &PrintOptions::formats},
    {json_row, &PrintOptions::json},
};

// The sheets to print, each with its form; or what was wrong with the call.
struct Order {
    std::vector<SheetOrder> sheets;
    FileProblems problems;
};

Order refused(std::string message, std::string fix) {
    return {{}, one_problem("", std::move(message), std::move(fix))};
}

Order unknown_sheet(std::string const& name) {
    auto const names = sheet_names();
    return refused(fmt::format("there is no sheet \"{}\"", name),
                   did_you_mean(name, names, "the sheets are " + joined(names)));
}

Order order(PrintOptions const& options) {
    for (auto const& name : options.sheets)
        if (!sheet_kind(name)) return unknown_sheet(name);
    auto const is_wanted = [&](std::string_view sheet) {
        return options.sheets.empty() || std::ranges::count(options.sheets, sheet) > 0;
    };
    std::map<std::string, Form> forms; // by sheet
    for (auto const& name : options.forms) {
        auto opened = open_form(name);
        if (!opened.form) return {{}, std::move(opened.problems)};
        auto const sheet = opened.form->sheet;
        if (!is_wanted(sheet))
            return refused(
                fmt::format("the form \"{}\" is for the sheet \"{}\", which is not to be printed", name, sheet),
                "legwork forms lists the forms by sheet");
        if (!forms.emplace(sheet, std::move(*opened.form)).second)
            return refused(fmt::format("two forms for the sheet \"{}\"", sheet), "give one --form for a sheet");
    }
    Order made;
    for (SheetKind const& k : sheet_kinds()) {
        std::string const sheet(k.name);
        if (!is_wanted(sheet)) continue;
        auto const own = forms.find(sheet);
        made.sheets.push_back({&k, own != forms.end() ? own->second : default_form(sheet)});
    }
    return made;
}

void tell_files(Session const& s, std::vector<WrittenFile> const& files, Streams& streams) {
    for (WrittenFile const& f : files)
        streams.out << fmt::format("wrote {}{}\n", fit_to_print(f.path),
                                   f.format == "pdf" ? fmt::format(" ({})", counted(f.pages, "page")) : "");
    streams.out << '\n';
    list_of_sheets(s, streams);
    streams.out << fmt::format("{} ({}): {}.\n", shown_file(s.file), s.building.code, counts(s.findings));
    if (error_exit(s) != exit_done)
        streams.out << fmt::format("The sheets carry the band DRAFT; legwork check {} says what to put right.\n",
                                   shell_file(s.file));
    if (lacks_sizes(s.findings))
        streams.out << fmt::format("The sheets carry the band DRAFT: sizes missing; legwork check {} --propose works "
                                   "out breakers and cables.\n",
                                   shell_file(s.file));
    streams.out << in_lines(english().words(caution()), streams.width, 0) << '\n';
}

// A sheet that was asked for by name and of which there is no page, so that nobody looks for a file.
void tell_empty(PrintOptions const& options, std::vector<WrittenFile> const& files, Streams& streams) {
    for (auto const& name : options.sheets)
        if (std::ranges::count(files, name, &WrittenFile::sheet) == 0)
            streams.err << fmt::format("legwork: nothing in this job stands on the sheet \"{}\", so no file was "
                                       "written for it\n",
                                       name);
}

void tell_old(OldSheets const& old, Streams& streams) {
    for (auto const& path : old.beyond)
        streams.err << fmt::format("legwork: {} is from an earlier print with more pages: throw it away\n",
                                   fit_to_print(path));
    for (auto const& path : old.gone)
        streams.err << fmt::format(
            "legwork: {} is from an earlier print of this job, in which it has no place any more "
            "(its panel is gone or has another name): throw it away\n",
            fit_to_print(path));
    for (auto const& why : old.unknown)
        streams.err << fmt::format("legwork: whether a sheet of an earlier print lies there is not known: {}\n",
                                   fit_to_print(why));
}

int run(PrintOptions const& options, Streams& streams) {
    auto ordered = order(options);
    if (!ordered.problems.problems.empty())
        return tell_problems(ordered.problems, options.json, streams), exit_not_understood;
    auto opened = open_job(options.job);
    if (!opened.session) return tell_problems(opened.problems, options.json, streams), exit_not_understood;
    auto& s = *opened.session;
    judge_on(s, ordered.sheets);
    auto formats = options.formats.empty() ? std::vector<std::string>{"pdf", "svg"} : options.formats;
    auto const written = write_sheets(s, ordered.sheets, formats, options.out_folder);
    if (!written.problems.problems.empty())
        return tell_problems(written.problems, options.json, streams), exit_not_understood;
    if (options.json)
        write_files_json(s, written.files, streams);
    else
        tell_files(s, written.files, streams);
    tell_empty(options, written.files, streams);
    for (auto const& cut : written.cut) streams.err << fmt::format("legwork: {}\n", fit_to_print(cut));
    tell_old(written.old, streams);
    return error_exit(s);
}

} // namespace

extern Command const print_command{
    "print", "the sheets, PDF and SVG",
    "All of them are on the disk before the first takes its place. A sheet of an earlier print "
    "of the same job (by its name) "
    "that this one would have written anew, but whose panel is gone or has another name now, "
    "is told as one to throw away. "
    "Names are judged on the sheets and forms that are printed: what one of them cannot show "
    "whole even in the smallest "
    "print is listed with the form, in JSON under the key `findings`; the other findings are "
    "counted, and `check` lists "
    "them.",
    options_of<kOptions>, run_with<kOptions, run>};

} // namespace legwork
