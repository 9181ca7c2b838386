// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork forms: the page geometries there are.

#include "cli/command.h"
#include "cli/form_file.h"
#include "cli/json.h"
#include "sheet/sheets.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

namespace legwork {

namespace {

void add_options(CLI::App& app, Options& options) { add_json(app, options); }

bool is_default(Form const& f) {
    auto const* kind = sheet_kind(f.sheet);
    return kind && kind->default_form == f.name;
}

Json form_json(Form const& f) {
    return {{"form", f.name},      {"sheet", f.sheet},      {"title", f.title},
            {"width_mm", f.width}, {"height_mm", f.height}, {"default", is_default(f)}};
}

int run(Options const& options, Streams& streams) {
    auto const forms = installed_forms();
    if (options.json) {
        auto all = Json::array();
        for (Form const& f : forms) all.push_back(form_json(f));
        write_json({{"forms", all}}, streams);
        return exit_done;
    }
    streams.out << fmt::format("{:<12}  {:<24}  {}\n", "sheet", "form", "geometry");
    for (Form const& f : forms)
        streams.out << fmt::format("{:<12}  {:<24}  {}{}\n", f.sheet, f.name, f.title,
                                   is_default(f) ? " (used when none is said)" : "");
    streams.out << "\nlegwork print JOB --form NAME uses one; a file of your own does as well.\n";
    return exit_done;
}

} // namespace

Command const forms_command{"forms", "the forms there are, by sheet and size", add_options, run};

} // namespace legwork
