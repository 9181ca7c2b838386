// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "fuzz/opened.h"

#include "cli/files/share.h"
#include "fuzz/promises.h"

#include <sstream>

namespace fuzz {

std::string text_of(std::uint8_t const* data, std::size_t size) { return {reinterpret_cast<char const*>(data), size}; }

std::shared_ptr<legwork::Fonts const> fonts() {
    constexpr int kInputs = 2000; // they remember every text they have set
    static std::shared_ptr<legwork::Fonts const> kept;
    static int uses = 0;
    if (!kept || ++uses % kInputs == 0) kept = std::make_shared<legwork::Fonts const>(legwork::share_folder("fonts"));
    return kept;
}

std::optional<legwork::Session> opened(std::string bytes) {
    auto const typed = bytes;
    auto result = legwork::open_job("job.toml", std::move(bytes), std::nullopt, fonts());
    promise(result.session.has_value() == result.problems.problems.empty(), "either a job or mistakes");
    promise_problems(result.problems.problems, typed);
    return std::move(result.session);
}

std::string shown_by(std::function<void(legwork::Streams&)> const& command) {
    std::ostringstream out, err;
    legwork::Streams streams{out, err};
    command(streams);
    promise_utf8(out.str());
    promise_utf8(err.str());
    return out.str();
}

unsigned number_of(std::string_view bytes) {
    unsigned number = 2166136261U; // FNV-1a
    for (char const c : bytes) number = (number ^ static_cast<unsigned char>(c)) * 16777619U;
    return number;
}

} // namespace fuzz
