// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What holds for every input whatever. A broken promise is told on standard error and ends the process, so that the
// fuzzer keeps the input.
#pragma once

#include "toml/problem.h"

#include <string>
#include <string_view>
#include <vector>

namespace fuzz {

[[noreturn]] void broken(std::string_view promise, std::string_view shown = {});
void promise(bool holds, std::string_view what, std::string_view shown = {});

void promise_utf8(std::string_view text);
// One JSON value, its texts UTF-8.
void promise_json(std::string const& text);
// Whole messages with a way out; places within the file.
void promise_problems(std::vector<legwork::Problem> const& problems, std::string_view bytes);
// The line is one of the file's, the column one of the line's or just behind it.
void promise_place(legwork::Place place, std::string_view bytes);

} // namespace fuzz
