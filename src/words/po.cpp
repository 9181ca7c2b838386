// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "words/po.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>

namespace legwork {

namespace {

struct Escape {
    char letter, meant;
};
constexpr std::array kEscapes{Escape{'n', '\n'}, Escape{'t', '\t'}, Escape{'"', '"'}, Escape{'\\', '\\'}};

// The text of a line's quotes; nothing when they are not well formed.
std::optional<std::string> unquoted(std::string_view words) {
    if (words.size() < 2 || words.front() != '"' || words.back() != '"') return std::nullopt;
    words = words.substr(1, words.size() - 2);
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i] == '"') return std::nullopt;
        if (words[i] != '\\') {
            text += words[i];
            continue;
        }
        if (++i == words.size()) return std::nullopt;
        auto const at = std::ranges::find(kEscapes, words[i], &Escape::letter);
        if (at == kEscapes.end()) return std::nullopt;
        text += at->meant;
    }
    return text;
}

class PoReader {
public:
    PoFile read(std::string_view bytes) {
        while (!bytes.empty()) {
            auto const end = std::min(bytes.find('\n'), bytes.size());
            ++line_;
            take(bytes.substr(0, end));
            bytes.remove_prefix(std::min(end + 1, bytes.size()));
        }
        finish();
        return std::move(file_);
    }

private:
    void take(std::string_view line) {
        if (line.empty()) return finish();
        if (line.starts_with("#~")) return; // what was once translated
        if (line.starts_with("#")) return comment(line);
        if (line.starts_with("\"")) return more(line);
        auto const space = line.find(' ');
        if (space == std::string_view::npos) return wrong("a keyword and words in quotes are expected");
        begin(line.substr(0, space), line.substr(space + 1));
    }

    void comment(std::string_view line) {
        if (into_) finish();
        if (!line.starts_with("#,")) return;
        for (line.remove_prefix(2); !line.empty();) {
            auto const end = std::min(line.find(','), line.size());
            auto flag = line.substr(0, end);
            flag.remove_prefix(std::min(flag.find_first_not_of(' '), flag.size()));
            entry_.flags.emplace_back(flag);
            line.remove_prefix(std::min(end + 1, line.size()));
        }
    }

    void begin(std::string_view keyword, std::string_view quotes) {
        if (keyword == "msgctxt" || (keyword == "msgid" && !open_)) {
            if (into_) finish();
            open_ = true;
            entry_.line = line_;
        }
        if (keyword == "msgctxt")
            into_ = &entry_.context;
        else if (keyword == "msgid")
            into_ = &entry_.english;
        else if (keyword == "msgstr" && open_) {
            into_ = &entry_.translation;
            has_translation_ = true;
        } else
            return wrong(fmt::format("\"{}\" is not expected here", keyword));
        more(quotes);
    }

    void more(std::string_view quotes) {
        auto const text = unquoted(quotes);
        if (!into_ || !text) return wrong("words in quotes are expected, with \\n \\t \\\" \\\\ only");
        *into_ += *text;
    }

    void finish() {
        if (open_ && !has_translation_) wrong("msgstr is missing");
        bool const fuzzy = std::ranges::count(entry_.flags, "fuzzy") > 0;
        if (fuzzy) entry_.translation.clear();
        bool const head = entry_.context.empty() && entry_.english.empty();
        if (open_ && head) file_.head = entry_.translation;
        if (open_ && !head) {
            if (entry_.context.empty()) wrong("msgctxt is missing");
            if (std::ranges::count(file_.entries, entry_.context, &PoEntry::context) > 0)
                wrong(fmt::format("\"{}\" stands twice", entry_.context));
            file_.entries.push_back(std::move(entry_));
        }
        if (into_ || open_) entry_ = {};
        into_ = nullptr;
        open_ = has_translation_ = false;
    }

    void wrong(std::string_view what) { file_.wrong.push_back(fmt::format("line {}: {}", line_, what)); }

    PoFile file_;
    PoEntry entry_;
    std::string* into_ = nullptr; // what lines in quotes go on
    bool open_ = false, has_translation_ = false;
    int line_ = 0;
};

} // namespace

PoFile read_po(std::string_view bytes) { return PoReader().read(bytes); }

} // namespace legwork
