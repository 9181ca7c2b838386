// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Composed sheets to named files.
#pragma once

#include "cli/files/old_sheets.h"
#include "cli/problems.h"
#include "cli/session.h"

#include <span>
#include <string>
#include <vector>

namespace legwork {

struct WrittenFile {
    std::string sheet, panel, format, path;
    int page = 1, pages = 1; // a PDF holds all pages and counts as page 1
};

struct WrittenSheets {
    std::vector<WrittenFile> files;
    OldSheets old;
    std::vector<std::string> cut{}; // what some sheet does not show whole, in words
    FileProblems problems{};        // a form that is too small: nothing was written then
};

// "directory-Main.pdf", "directory-Main-1.svg", "labels.pdf", ...: the panel's name reduced, clashes numbered.
// Everything is drawn before the first file is written, and all drafts are on the disk before the first is put in its
// place. Never over the job file. Throws Failure, which says what is new and what old when that went wrong midway.
WrittenSheets write_sheets(Session const& session, std::span<SheetOrder const> orders,
                           std::vector<std::string> const& formats, std::string const& folder);

} // namespace legwork
