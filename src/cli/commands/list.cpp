// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/command.h"

#include <algorithm>
#include <array>

namespace legwork {

extern Command const new_command, check_command, balance_command, print_command, load_command, compare_command,
    forms_command, explain_command, help_command;

namespace {
constexpr std::array kCommands{&new_command,     &check_command, &balance_command, &print_command, &load_command,
                               &compare_command, &forms_command, &explain_command, &help_command};
} // namespace

std::span<Command const* const> commands() { return kCommands; }

Command const* command_named(std::string_view name) {
    auto const found = std::ranges::find(kCommands, name, &Command::name);
    return found == kCommands.end() ? nullptr : *found;
}

} // namespace legwork
