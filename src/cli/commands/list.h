// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "cli/command.h"

namespace legwork {

extern Command const new_command, check_command, balance_command, print_command, load_command, forms_command,
    explain_command, help_command;

} // namespace legwork
