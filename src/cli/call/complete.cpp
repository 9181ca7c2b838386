// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/call/complete.h"

#include "cli/call/answer.h"
#include "cli/call/bash_line.h"

#include <algorithm>
#include <exception>

namespace legwork {

namespace {

std::string_view name(Files files) {
    switch (files) {
    case Files::any: return "any";
    case Files::jobs: return "jobs";
    case Files::folders: return "folders";
    case Files::none: break;
    }
    return "none";
}

// A candidate is a line.
bool is_one_line(std::string_view text) {
    return std::ranges::none_of(text, [](char c) { return static_cast<unsigned char>(c) < 0x20U || c == 0x7F; });
}

std::string escaped(std::string_view text) { // for zsh's _describe
    std::string out;
    for (char const c : text) {
        if (c == ':' || c == '\\') out += '\\';
        out += c;
    }
    return out;
}

void tell(Answer const& a, bool zsh, Streams& streams) {
    streams.out << name(a.candidates.files) << '\n' << a.before << '\n';
    for (auto const& [word, help] : a.candidates.words) {
        if (!is_one_line(word)) continue;
        streams.out << (zsh ? escaped(word) : a.before + word);
        if (!help.empty()) streams.out << (zsh ? ':' : '\t') << help;
        streams.out << '\n';
    }
}

// Quoted by us, or by the line editor where files may be among them.
void tell_bash(BashLine const& line, Answer const& a, Streams& streams) {
    auto const kept = line.part.substr(0, line.kept);
    streams.out << name(a.candidates.files) << '\n' << line.part.substr(std::max(line.kept, a.before.size())) << '\n';
    for (Candidate const& c : a.candidates.words) {
        auto const word = a.before + c.word;
        if (!is_one_line(word) || !word.starts_with(line.part)) continue;
        auto const end = word.substr(kept.size());
        streams.out << (a.candidates.files == Files::none ? bash_quoted(end, line.quote) : end) << '\n';
    }
}

void reply(std::vector<std::string> const& words, Streams& streams) {
    if (words.size() >= 3 && words[0] == "bash") {
        auto line = read_bash_line(words[1], words[2]);
        if (line.words.empty()) return;
        line.words.erase(line.words.begin()); // the program
        tell_bash(line, answer(line.words, line.part), streams);
    } else if (words.size() >= 2 && (words[0] == "zsh" || words[0] == "fish")) {
        tell(answer({words.begin() + 1, words.end() - 1}, words.back()), words[0] == "zsh", streams);
    }
}

} // namespace

int complete(std::vector<std::string> const& words, Streams& streams) {
    try {
        reply(words, streams);
    } catch (std::exception const&) { // nobody reads a message between two keys
    }
    return exit_done;
}

} // namespace legwork
