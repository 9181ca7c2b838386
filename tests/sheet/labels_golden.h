// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Pages as text, one mark a line, beside what was looked at and found good. After a change that is meant: look at the
// printed page, then put NAME.new in the place of NAME.
#pragma once

#include "page/page.h"
#include "source_folder.h"

#include <fmt/format.h>

#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

namespace legwork::sheet_test {

inline std::string dumped(std::vector<Sheet> const& sheets) {
    std::string all;
    for (auto const& sheet : sheets)
        for (std::size_t i = 0; i < sheet.pages.size(); ++i)
            all += fmt::format("{} page {} of {}\n{}", sheet.name, i + 1, sheet.pages.size(), dump(sheet.pages[i]));
    return all;
}

// True when the file holds this text; else NAME.new beside it does.
inline bool matches_golden(std::string const& name, std::string const& text) {
    std::string const path = in_sources("tests/sheet/golden/") + name;
    std::ifstream in(path, std::ios::binary);
    std::string const held{std::istreambuf_iterator<char>(in), {}};
    if (in && held == text) return std::remove((path + ".new").c_str()), true;
    std::ofstream(path + ".new", std::ios::binary) << text;
    return false;
}

} // namespace legwork::sheet_test
