// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Puts values into a job file in place: every byte outside the values stays as it was.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// One key of one [[circuit]] and the TOML text of its value, for instance {"K1", "space", "\"7b\""}.
struct Edit {
    std::string mark, key, value;
    std::optional<std::size_t> segment = {}; // the key stands in this one of the circuit's `segments`, from 0
};

struct EditedJob {
    std::string bytes; // empty when it could not be done
    std::string why;   // empty when it was done
};

// `bytes` must be a job that read_job accepts. Works for every shape TOML allows: dotted keys, inline tables, arrays
// of inline tables, CRLF, tabs, comments, multi-line strings. The result is read again and compared before it is
// returned: it differs from the old job in the edited keys only.
EditedJob edit_job(std::string_view bytes, std::vector<Edit> const& edits);

} // namespace legwork
