// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Any bytes are a job or a list of mistakes, and the same each time.
#include "fuzz/promises.h"

#include "cli/vocabulary.h"

#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
    static auto const words = legwork::vocabulary();
    std::string_view const bytes(reinterpret_cast<char const*>(data), size);
    auto const read = legwork::read_job(bytes, words);
    fuzz::promise(read.job.has_value() == read.problems.empty(), "either a job or mistakes");
    fuzz::promise_problems(read.problems, bytes);
    return 0;
}
