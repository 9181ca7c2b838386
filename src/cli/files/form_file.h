// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Forms as files: those in templates/ by name, a person's own by path.
#pragma once

#include "cli/problems.h"
#include "sheet/form.h"

#include <optional>
#include <string>
#include <vector>

namespace legwork {

// All forms that come with the program, by sheet, then name. Throws Failure when one of them cannot be read.
std::vector<Form> installed_forms();

// The form that a sheet is printed on when none is asked for. Throws Failure when it is missing.
Form default_form(std::string const& sheet);

bool is_default(Form const& form);

struct OpenedForm {
    std::optional<Form> form;
    FileProblems problems;
};
// A name ("directory-a4") or a file ("my/labels.toml").
OpenedForm open_form(std::string const& name_or_file);

} // namespace legwork
