// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork forms: the page geometries there are.

#include "cli/call/rows.h"
#include "cli/call/shared_rows.h"
#include "cli/files/form_file.h"
#include "cli/json/json.h"
#include "sheet/sheets.h"

#include <fmt/format.h>

namespace legwork {

namespace {

struct FormsOptions {
    bool json = false;
};

constexpr OptionRow<FormsOptions> kOptions[] = {{json_row, &FormsOptions::json}};

int run(FormsOptions const& options, Streams& streams) {
    auto const forms = installed_forms();
    if (options.json) return write_forms_json(forms, streams), exit_done;
    streams.out << fmt::format("{:<12}  {:<24}  {}\n", "sheet", "form", "geometry");
    for (Form const& f : forms)
        streams.out << fmt::format("{:<12}  {:<24}  {}{}\n", f.sheet, f.name, f.title,
                                   is_default(f) ? " (used when none is said)" : "");
    streams.out << "\nlegwork print JOB --form NAME uses one; a file of your own does as well.\n";
    return exit_done;
}

} // namespace

extern Command const forms_command{"forms", "the forms there are, by sheet and size", "", options_of<kOptions>,
                                   run_with<kOptions, run>};

} // namespace legwork
