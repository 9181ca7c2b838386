// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork print JOB: the sheets as files.

#include "cli/command.h"
#include "cli/form_file.h"
#include "cli/json.h"
#include "cli/session.h"
#include "cli/sheet_files.h"
#include "cli/text.h"
#include "cli/words.h"
#include "rules/check.h"
#include "sheet/common.h"
#include "sheet/sheets.h"
#include "toml/near.h"
#include "toml/problem.h"
#include "units/failure.h"
#include "units/shell.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace legwork {

namespace {

void add_options(CLI::App& app, Options& options) {
    add_job(app, options);
    app.add_option("--out", options.out_folder, "folder to write to, made when missing; here when not said");
    app.add_option("--sheet", options.sheets, "only this sheet (repeatable); all when not said")
        ->allow_extra_args(false);
    app.add_option("--form", options.forms, "form to print a sheet on: a name of legwork forms, or a file (repeatable)")
        ->allow_extra_args(false);
    app.add_option("--format", options.formats, "pdf, svg or png (repeatable); pdf and svg when not said")
        ->allow_extra_args(false)
        ->check(CLI::IsMember({"pdf", "svg", "png"}));
    add_json(app, options);
}

// The sheets to print, each with its form; or what was wrong with the call.
struct Order {
    std::vector<SheetOrder> sheets;
    FileProblems problems;
};

Order refused(std::string message, std::string fix) {
    return {{}, one_problem("", std::move(message), std::move(fix))};
}

Order unknown_sheet(std::string const& name) {
    std::vector<std::string> names;
    for (SheetKind const& k : sheet_kinds()) names.emplace_back(k.name);
    return refused(fmt::format("there is no sheet \"{}\"", name),
                   did_you_mean(name, names, "the sheets are " + joined(names)));
}

Order order(Options const& options) {
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
    streams.out << in_lines(english().words(caution()), 100, 0) << '\n';
}

// A sheet that was asked for by name and of which there is no page, so that nobody looks for a file.
void tell_empty(Options const& options, std::vector<WrittenFile> const& files, Streams& streams) {
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

int run(Options const& options, Streams& streams) {
    auto ordered = order(options);
    if (!ordered.problems.problems.empty())
        return tell_problems(ordered.problems, options.json, streams), exit_not_understood;
    auto opened = open_job(options.file);
    if (!opened.session) return tell_problems(opened.problems, options.json, streams), exit_not_understood;
    auto& s = *opened.session;
    judge_on(s, ordered.sheets);
    auto formats = options.formats.empty() ? std::vector<std::string>{"pdf", "svg"} : options.formats;
    auto const written = write_sheets(s, ordered.sheets, formats, options.out_folder);
    if (options.json)
        write_files_json(s, written.files, streams);
    else
        tell_files(s, written.files, streams);
    tell_empty(options, written.files, streams);
    tell_old(written.old, streams);
    return error_exit(s);
}

} // namespace

Command const print_command{"print", "the sheets, PDF and SVG", add_options, run};

} // namespace legwork
