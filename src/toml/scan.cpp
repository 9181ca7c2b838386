// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "toml/scan.h"
#include "toml/problem.h"
#include "toml/scalar.h"
#include "units/utf8.h"

#include <algorithm>
#include <cstdint>
#include <fmt/format.h>

namespace legwork {

namespace {

constexpr bool is_bare_key(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_' || c == '-';
}

// Recursive descent over the grammar; the nesting limit bounds the recursion. Every function returns false after the
// first fault, and leaves `at_` behind what it read otherwise.
class Scanner {
public:
    Scanner(std::string_view text, TomlLimits const& limits) : text_(text), limits_(limits) {}

    TomlScan run() {
        if (text_.starts_with(kByteOrderMark)) at_ = kByteOrderMark.size();
        keep_from(at_);
        while (statement()) {
        }
        keep_until(text_.size());
        return std::move(scan_);
    }

private:
    // A header or a key with its value, and what stands before and behind it on its lines. False at the end.
    bool statement() {
        if (!skip_between()) return false;
        if (at_end()) return false;
        return (peek() == '[' ? header() : key_and_value(header_depth_)) && end_of_statement();
    }

    bool header() {
        bool const array = peek(1) == '[';
        at_ += array ? 2 : 1;
        skip_blanks();
        header_depth_ = 0;
        if (!key_path(header_depth_)) return false;
        skip_blanks();
        if (!text_.substr(at_).starts_with(array ? "]]" : "]"))
            return fault(at_, "the header of this table is not closed", array ? "end it with ]]" : "end it with ]");
        at_ += array ? 2 : 1;
        return true;
    }

    bool key_and_value(int depth) {
        auto const key = at_;
        if (!key_path(depth)) return false;
        skip_blanks();
        if (peek() != '=')
            return fault(at_, fmt::format("{} has no value", quoted(text_.substr(key, at_ - key))),
                         "write  key = value");
        ++at_;
        skip_blanks();
        if (at_end() || peek() == '\n' || peek() == '\r' || peek() == '#')
            return fault(at_, "the value is missing", "write one behind the =");
        scan_.keys.push_back({at_, key});
        return value(depth);
    }

    // `depth` grows by the parts of the key.
    bool key_path(int& depth) {
        for (;;) {
            if (!deeper(depth) || !count_value(at_) || !simple_key()) return false;
            auto const end = at_;
            skip_blanks();
            if (peek() != '.') return at_ = end, true;
            ++at_;
            skip_blanks();
        }
    }

    bool simple_key() {
        if (peek() == '"' || peek() == '\'') {
            if (text_.substr(at_).starts_with(R"(""")") || text_.substr(at_).starts_with("'''"))
                return fault(at_, "a key cannot be a text of several lines", "write the key without quotes");
            auto const begin = at_;
            return count_value(begin) && string(); // counts twice: toml11 is slow at it
        }
        auto const begin = at_;
        while (!at_end() && is_bare_key(peek())) ++at_;
        if (at_ == begin)
            return fault(at_, "a key is expected here", "write  key = value  or a table's header:  [[circuit]]");
        return true;
    }

    bool value(int depth) {
        switch (peek()) {
        case '"':
        case '\'': return string();
        case '[': return array(depth);
        case '{': return inline_table(depth);
        default: return bare_value();
        }
    }

    bool array(int depth) {
        auto const begin = at_++;
        if (!deeper(depth)) return false;
        for (;;) {
            if (!skip_between()) return false;
            if (peek() == ']') return ++at_, true;
            if (at_end()) return fault(begin, "this list is not closed", "end it with ]");
            if (!count_value(at_) || !value(depth) || !skip_between()) return false;
            if (peek() == ',')
                ++at_;
            else if (peek() != ']')
                return at_end() ? fault(begin, "this list is not closed", "end it with ]")
                                : fault(at_, "a comma is missing in this list",
                                        "write a comma between two values, ] at the end");
        }
    }

    bool inline_table(int depth) {
        auto const begin = at_++;
        if (!deeper(depth)) return false;
        skip_blanks();
        if (peek() == '}') return ++at_, true;
        for (;;) {
            skip_blanks();
            if (!in_inline_table(begin) || !key_and_value(depth)) return false;
            skip_blanks();
            if (peek() == '}') return ++at_, true;
            if (!in_inline_table(begin)) return false;
            if (peek() != ',')
                return fault(at_, "a comma is missing in this table", "write a comma between two keys, } at the end");
            ++at_;
            skip_blanks();
            if (peek() == '}') return fault(at_, "a comma stands before the }", "take the comma away");
        }
    }

    bool in_inline_table(std::size_t begin) {
        if (at_end()) return fault(begin, "this table is not closed", "end it with }");
        if (peek() == '\n' || peek() == '\r' || peek() == '#')
            return fault(at_, "a table in braces must stand on one line",
                         "write it on one line, or as a table of its own:  [[circuit]]");
        return true;
    }

    bool string() {
        auto const begin = at_;
        char const quote = peek();
        bool const several_lines = peek(1) == quote && peek(2) == quote;
        at_ += several_lines ? 3 : 1;
        while (!at_end()) {
            char const c = peek();
            if (c == quote && !several_lines) return ++at_, true;
            if (c == quote && peek(1) == quote && peek(2) == quote) {
                at_ += 3; // one or two more quotes belong to the text
                for (int more = 0; more < 2 && peek() == quote; ++more) ++at_;
                return true;
            }
            if (!several_lines && (c == '\n' || c == '\r')) break;
            if (c == '\\' && quote == '"') {
                if (!escape(several_lines)) return false;
            } else
                ++at_;
        }
        return fault(begin, "this text in quotes is not closed",
                     fmt::format("end it with {}", std::string(several_lines ? 3 : 1, quote)));
    }

    bool escape(bool several_lines) {
        auto const begin = at_++;
        char const c = peek();
        if (std::string_view("btnfr\"\\").find(c) != std::string_view::npos && !at_end()) return ++at_, true;
        if (c == 'u' || c == 'U') return ++at_, code_point(begin, c == 'u' ? 4 : 8);
        if (several_lines) { // a backslash at the end of a line swallows the line's end
            skip_blanks();
            if (peek() == '\n' || peek() == '\r') return ++at_, count_value(begin); // toml11 is slow at these
        }
        return fault(begin, "a backslash stands for a special character here, and this is none",
                     R"(write \\ for one backslash, \" for a quote)");
    }

    bool code_point(std::size_t begin, std::size_t count) {
        std::uint32_t code = 0;
        for (std::size_t i = 0; i < count; ++i, ++at_) {
            char const c = peek();
            if (at_end() || std::string_view("0123456789abcdefABCDEF").find(c) == std::string_view::npos)
                return fault(begin, fmt::format("\\u and \\U take 4 and 8 digits 0-9, a-f"),
                             "give the character's number, or type it");
            code = code << 4 | static_cast<std::uint32_t>(c <= '9' ? c - '0' : (c | 0x20) - 'a' + 10);
        }
        if (code > 0x10FFFF || (code >= 0xD800 && code <= 0xDFFF))
            return fault(begin, "this number is no character of Unicode", "type the character itself");
        return true;
    }

    bool bare_value() {
        auto const begin = at_;
        while (!at_end() && std::string_view(" \t\r\n,]}#").find(peek()) == std::string_view::npos) ++at_;
        if (is_date(text_.substr(begin, at_ - begin)) && peek() == ' ' && peek(1) >= '0' && peek(1) <= '9') {
            ++at_; // a date and a time
            while (!at_end() && std::string_view(" \t\r\n,]}#").find(peek()) == std::string_view::npos) ++at_;
        }
        if (at_ == begin) return fault(at_, "a value is missing", "write one, or take the comma away");
        auto const wrong = bare_value_fault(text_.substr(begin, at_ - begin));
        return !wrong || fault(begin, wrong->message, wrong->fix);
    }

    bool end_of_statement() {
        skip_blanks();
        if (at_end() || peek() == '\n' || peek() == '\r' || peek() == '#') return true;
        return fault(at_, "something stands behind the value",
                     "begin a new line for the next key; put text, and a number with its unit, in quotes: \"20 A\"");
    }

    // Blanks, line ends and comments. toml11 gets the last line end of them and what is behind it.
    bool skip_between() {
        auto const begin = at_;
        std::optional<std::size_t> newline;
        bool comment = false;
        for (skip_blanks(); !at_end(); skip_blanks()) {
            if (peek() == '#') {
                comment = true;
                at_ = std::min(text_.find('\n', at_), text_.size());
            } else if (peek() == '\n') {
                newline = at_++;
            } else if (peek() == '\r') {
                ++at_;
            } else {
                break;
            }
        }
        auto const kept_again = newline.value_or(at_);
        if (!comment && kept_again <= begin + 1) return true;
        if (!comment && !newline) return true;
        keep_until(begin);
        keep_from(kept_again);
        return true;
    }

    void skip_blanks() {
        while (!at_end() && (peek() == ' ' || peek() == '\t')) ++at_;
    }

    void keep_from(std::size_t at) { kept_from_ = at; }
    void keep_until(std::size_t at) {
        if (at == kept_from_) return;
        scan_.kept.push_back({scan_.significant.size(), kept_from_});
        scan_.significant += text_.substr(kept_from_, at - kept_from_);
    }

    bool deeper(int& depth) {
        if (++depth <= limits_.nesting) return true;
        return fault(at_, fmt::format("tables and lists stand more than {} deep in each other", limits_.nesting),
                     "a job file needs no more than 4");
    }

    // Each costs toml11 a few looks at its whole line.
    bool count_value(std::size_t begin) {
        if (begin >= line_end_) {
            auto const before = text_.rfind('\n', begin);
            line_end_ = std::min(text_.find('\n', begin), text_.size());
            line_size_ = line_end_ - (before == std::string_view::npos ? 0 : before);
        }
        crowding_ += line_size_;
        if (++values_ > limits_.values)
            return fault(begin, fmt::format("the file has more than {} values", limits_.values),
                         "split it: one file for one building");
        if (crowding_ > limits_.crowding)
            return fault(begin, fmt::format("this line of {} bytes holds too many values", line_size_),
                         "break the list into lines, one table a line");
        return true;
    }

    bool at_end() const { return at_ >= text_.size(); }
    char peek(std::size_t ahead = 0) const { return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0'; }
    bool fault(std::size_t at, std::string message, std::string fix) {
        scan_.fault = TomlFault{at, std::move(message), std::move(fix)};
        return false;
    }

    std::string_view text_;
    TomlLimits limits_;
    TomlScan scan_;
    std::size_t at_ = 0, kept_from_ = 0;
    std::size_t values_ = 0, crowding_ = 0, line_size_ = 0, line_end_ = 0;
    int header_depth_ = 0;
};

} // namespace

std::size_t TomlScan::original(std::size_t at) const {
    auto const next = std::ranges::upper_bound(kept, at, {}, &Kept::to);
    return next == kept.begin() ? at : (next - 1)->from + (at - (next - 1)->to);
}

std::size_t TomlScan::key_of(std::size_t value_begin) const {
    auto const found = std::ranges::lower_bound(keys, value_begin, {}, &KeyAt::value);
    return found != keys.end() && found->value == value_begin ? found->key : value_begin;
}

TomlScan scan_toml(std::string_view bytes, TomlLimits const& limits) {
    if (auto wrong = byte_fault(bytes, limits)) {
        TomlScan scan;
        scan.fault = std::move(wrong);
        return scan;
    }
    return Scanner(bytes, limits).run();
}

} // namespace legwork
