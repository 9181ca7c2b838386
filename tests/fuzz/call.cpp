// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "fuzz/call.h"

#include <algorithm>

namespace fuzz {

namespace {

// What the system hands a program: no zero byte. What this one must not be handed: a way out of its folder.
std::string kept_inside(std::string_view line) {
    std::string word(line);
    std::ranges::replace(word, '/', '_');
    std::ranges::replace(word, '\0', '_');
    for (auto at = word.find(".."); at != std::string::npos; at = word.find("..")) word[at] = '_';
    return word;
}

} // namespace

std::size_t end_of_words(std::string_view bytes) {
    if (bytes.starts_with('\n')) return 1;
    auto const blank = bytes.find("\n\n");
    return blank == std::string_view::npos ? bytes.size() : blank + 2;
}

Call call_of(std::string_view bytes) {
    constexpr std::size_t kMostWords = 24;
    Call call;
    auto head = bytes.substr(0, end_of_words(bytes));
    call.job = bytes.substr(head.size());
    while (!head.empty() && call.words.size() < kMostWords) {
        auto const end = std::min(head.find('\n'), head.size());
        if (end > 0) call.words.push_back(kept_inside(head.substr(0, end)));
        head.remove_prefix(std::min(end + 1, head.size()));
    }
    return call;
}

} // namespace fuzz
