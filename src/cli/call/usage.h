// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How help names options and their values.
#pragma once

#include "cli/call/option.h"

#include <string>

namespace legwork {

std::string value_words(Option const& option);         // "circuit|theme", "RULE", "" of a flag
std::vector<Option> with_help(std::vector<Option> of); // and --help at the end
// "group by circuit or by theme; worst first when not said", without a full stop
std::string help_words(Option const& option);
// "Not with --rule, --min. Only with --propose.": what other options it hangs on; empty for none.
std::string company_words(Option const& option);

} // namespace legwork
