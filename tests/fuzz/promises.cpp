// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "fuzz/promises.h"

#include "units/utf8.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdio>
#include <cstdlib>

namespace fuzz {

void broken(std::string_view promise, std::string_view shown) {
    std::fprintf(stderr, "BROKEN PROMISE: %.*s\n%.*s\n", static_cast<int>(promise.size()), promise.data(),
                 static_cast<int>(shown.size()), shown.data());
    std::abort();
}

void promise(bool holds, std::string_view what, std::string_view shown) {
    if (!holds) broken(what, shown);
}

void promise_utf8(std::string_view text) { promise(!legwork::first_bad_utf8(text), "what is shown is UTF-8", text); }

void promise_json(std::string const& text) {
    promise_utf8(text);
    promise(nlohmann::json::accept(text), "what --json shows is JSON", text);
}

void promise_place(legwork::Place place, std::string_view bytes) {
    auto const shown = std::to_string(place.line) + ":" + std::to_string(place.column);
    promise(place.line >= 1 && place.line <= std::ranges::count(bytes, '\n') + 1, "a line is one of the file's", shown);
    for (int line = 1; line < place.line; ++line) bytes.remove_prefix(bytes.find('\n') + 1);
    auto const width = std::min(bytes.find('\n'), bytes.size());
    promise(place.column >= 1 && static_cast<std::size_t>(place.column) <= width + 1,
            "a column is one of the line's, or just behind it", shown);
}

void promise_problems(std::vector<legwork::Problem> const& problems, std::string_view bytes) {
    promise(problems.size() <= 201, "no more than 200 mistakes are told one by one");
    for (auto const& p : problems) {
        promise(!p.message.empty() && !p.fix.empty(), "a mistake says what is wrong and the way out", p.message);
        promise_place(p.place, bytes);
        promise(p.caret >= 0 && static_cast<std::size_t>(p.caret) <= legwork::character_count(p.line) + 1,
                "the caret stands below the line", p.line);
        promise_utf8(legwork::render(p, "job.toml"));
    }
}

} // namespace fuzz
