// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Prints libFuzzer's dictionary: TOML's own signs and every word that a file of ours knows.
#include "fuzz/known_keys.h"

#include <array>
#include <cstdio>
#include <set>

namespace {

constexpr std::array<std::string_view, 30> kToml{"[[circuit]]\n",
                                                 "[[panel]]\n",
                                                 "[[supply]]\n",
                                                 "[[situation]]\n",
                                                 "[[cable]]\n",
                                                 "[[accept]]\n",
                                                 "[job]\n",
                                                 "[dwelling]\n",
                                                 "[[circuit.segments]]\n",
                                                 "[",
                                                 "]",
                                                 "[[",
                                                 "]]",
                                                 "{",
                                                 "}",
                                                 " = ",
                                                 ", ",
                                                 ".",
                                                 "# ",
                                                 "\n",
                                                 "\r\n",
                                                 "\"\"\"",
                                                 "'''",
                                                 "\"",
                                                 "'",
                                                 "\\u00e9",
                                                 "\\U0001F600",
                                                 "\xEF\xBB\xBF",
                                                 "0x",
                                                 "1e9"};

void print(std::string_view word) {
    std::fputc('"', stdout);
    for (char const c : word)
        if (c >= ' ' && c <= '~' && c != '"' && c != '\\')
            std::fputc(c, stdout);
        else
            std::printf("\\x%02X", static_cast<unsigned char>(c));
    std::fputs("\"\n", stdout);
}

} // namespace

int main() {
    std::set<std::string> all(kToml.begin(), kToml.end());
    for (auto& word : fuzz::all_words()) all.insert(std::move(word));
    for (auto const& word : all)
        if (!word.empty() && word.size() <= 64) print(word); // libFuzzer takes no longer ones
}
