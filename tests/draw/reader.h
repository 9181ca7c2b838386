// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Other programs read what was drawn: poppler, qpdf, librsvg, libxml2.
#pragma once

#include "temporary_folder.h"

#include <array>
#include <cstdio>
#include <fstream>
#include <memory>
#include <stdexcept>
#include <string>

namespace legwork::draw_test {

struct Answer {
    int status = 0;
    std::string out; // standard output and errors
};

// Runs `command` with the bytes in a file, whose name stands where the command says FILE.
inline Answer ask(std::string command, std::string const& bytes, std::string const& name) {
    TemporaryFolder const folder;
    std::string const path = folder / name;
    std::ofstream(path, std::ios::binary) << bytes;
    command.replace(command.find("FILE"), 4, "'" + path + "'");
    command += " 2>&1";
    FILE* const pipe = ::popen(command.c_str(), "r");
    if (!pipe) throw std::runtime_error("cannot run " + command);
    Answer answer;
    std::array<char, 4096> part{};
    for (std::size_t n = 0; (n = std::fread(part.data(), 1, part.size(), pipe)) > 0;) answer.out.append(part.data(), n);
    answer.status = ::pclose(pipe);
    return answer;
}

} // namespace legwork::draw_test
