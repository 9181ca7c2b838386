// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "cli/command.h"
#include "codebook/tables/tables.h"

namespace legwork {

// A code table for people: its parts under the editions that they hold for, each row with how it was come by.
void print_table(CodeTable const& table, Streams& streams);
// The names and titles of all tables.
void list_tables(Streams& streams);

} // namespace legwork
