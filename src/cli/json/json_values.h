// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How a value is said to other programs. Keys keep the order in which they are named.
#pragma once

#include "cli/command.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>

namespace legwork {

using Json = nlohmann::ordered_json;

// A result, after a first key `legwork` that says which program and which form of its results this is.
void write(Json const& value, Streams& streams);

inline Json number_or_null(int n) { return n > 0 ? Json(n) : Json(nullptr); }
inline Json text_or_null(std::string const& text) { return text.empty() ? Json(nullptr) : Json(text); }
template <class T>
Json or_null(std::optional<T> const& value) {
    return value ? Json(*value) : Json(nullptr);
}

template <class List, class Make>
Json list(List const& from, Make make) {
    auto made = Json::array();
    for (auto const& item : from) made.push_back(make(item));
    return made;
}

} // namespace legwork
