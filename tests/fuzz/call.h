// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A command line as the bytes of an input: words, one a line; an empty line; then what job.toml and standard input
// hold.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace fuzz {

struct Call {
    std::vector<std::string> words; // none leads out of the folder that the program stands in
    std::string job;
};
Call call_of(std::string_view bytes);

// Where the words end and the job begins.
std::size_t end_of_words(std::string_view bytes);

} // namespace fuzz
