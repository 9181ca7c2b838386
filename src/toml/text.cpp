// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "toml/text.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <sstream>

// The library's headers are not written for our warnings.
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wconversion"
#pragma GCC diagnostic ignored "-Wshadow"
#include <toml.hpp>
#pragma GCC diagnostic pop

namespace legwork {

namespace {

// Bytes of the text that toml11 was given.
struct Span {
    std::size_t begin = 0, size = 0;
};

// Where each line of it begins, since toml11 counts lines and bytes of a line, both from 1.
class Lines {
public:
    Lines(std::string_view text) {
        for (auto newline = text.find('\n'); newline != std::string_view::npos; newline = text.find('\n', newline + 1))
            begins_.push_back(newline + 1);
    }

    std::size_t at(std::size_t line, std::size_t column) const {
        return begins_[std::clamp<std::size_t>(line, 1, begins_.size()) - 1] + std::max<std::size_t>(column, 1) - 1;
    }

private:
    std::vector<std::size_t> begins_{0};
};

// What toml11 3 and 4 call differently. Sorted tables: the hashed ones can be slowed down by keys made to collide.
#if defined(TOML11_VERSION_MAJOR) && TOML11_VERSION_MAJOR >= 4
struct Types : toml::type_config {
    using comment_type = toml::discard_comments;
    template <typename Key, typename T>
    using table_type = std::map<Key, T>;
};
using Value = toml::basic_value<Types>;

Value parse(std::istream& text) { return toml::parse<Types>(text, ""); }

std::string const& string_of(Value const& v) { return v.as_string(); }

Span span_of(Value const& v, Lines const& lines) {
    auto const place = v.location();
    if (!place.is_ok()) return {};
    return {lines.at(place.first_line_number(), place.first_column_number()), place.length()};
}

std::size_t place_of(toml::syntax_error const& wrong, Lines const& lines) {
    if (wrong.errors().empty() || wrong.errors().front().locations().empty()) return 0;
    auto const& place = wrong.errors().front().locations().front().first;
    return lines.at(place.first_line_number(), place.first_column_number());
}
#else
using Value = toml::basic_value<toml::discard_comments, std::map, std::vector>;

Value parse(std::istream& text) { return toml::parse<toml::discard_comments, std::map>(text, ""); }

std::string const& string_of(Value const& v) { return v.as_string().str; }

// Not by location(), which counts the lines before each value.
Span span_of(Value const& v, Lines const&) {
    auto const* region = dynamic_cast<toml::detail::region const*>(toml::detail::get_region(v));
    if (!region) return {};
    return {static_cast<std::size_t>(region->first() - region->begin()), region->size()};
}

std::size_t place_of(toml::syntax_error const& wrong, Lines const& lines) {
    return lines.at(wrong.location().line(), wrong.location().column());
}
#endif

// Turns toml11's values into ours.
class Converter {
public:
    Converter(TomlScan const& scan, Lines const& lines) : scan_(scan), lines_(lines) {}

    TomlValue value(Value const& v) const {
        auto const [begin, end] = range(v);
        return {content(v), begin, end};
    }

    TomlTable table(Value::table_type const& from) const {
        TomlTable to;
        for (auto const& [key, v] : from) {
            auto converted = value(v);
            auto const at = scan_.key_of(converted.begin);
            to.push_back({key, at, std::move(converted)});
        }
        std::ranges::sort(to, {}, &TomlEntry::at);
        return to;
    }

private:
    decltype(TomlValue::is) content(Value const& v) const {
        if (v.is_boolean()) return v.as_boolean();
        if (v.is_integer()) return v.as_integer();
        if (v.is_floating()) return v.as_floating();
        if (v.is_string()) return string_of(v);
        if (v.is_local_date()) {
            auto const d = v.as_local_date();
            return TomlDate{d.year, d.month + 1, d.day};
        }
        if (v.is_array()) {
            TomlArray list;
            for (auto const& element : v.as_array()) list.push_back(value(element));
            return list;
        }
        if (v.is_table()) return table(v.as_table());
        return TomlTime{};
    }

    std::pair<std::size_t, std::size_t> range(Value const& v) const {
        auto const [begin, size] = span_of(v, lines_);
        return {scan_.original(begin), scan_.original(begin + std::max<std::size_t>(size, 1) - 1) + 1};
    }

    TomlScan const& scan_;
    Lines const& lines_;
};

std::string first_line(std::string_view what) {
    return fit_to_print(what.substr(0, std::min(what.find('\n'), what.size())));
}

} // namespace

TomlValue const* find(TomlTable const& table, std::string_view key) {
    auto const found = std::ranges::find(table, key, &TomlEntry::key);
    return found == table.end() ? nullptr : &found->value;
}

std::optional<TomlTable> parse_toml(std::string_view bytes, Complaints& out, TomlLimits const& limits) {
    auto const scan = scan_toml(bytes, limits);
    if (scan.fault) {
        out.add(scan.fault->at, scan.fault->message, scan.fault->fix);
        return std::nullopt;
    }
    Lines const lines(scan.significant);
    try {
        std::istringstream stream(scan.significant);
        return Converter(scan, lines).table(parse(stream).as_table());
    } catch (toml::syntax_error const& wrong) {
        // The scanner found the grammar whole: what is left is a key or a table that is defined twice.
        out.add(scan.key_of(scan.original(place_of(wrong, lines))), "this key or table is defined a second time",
                "keep one of the two; a further circuit begins with  [[circuit]]  in double brackets");
    } catch (std::exception const& wrong) {
        out.add(0, fmt::format("this is no TOML that can be read: {}", first_line(wrong.what())), "simplify the file");
    }
    return std::nullopt;
}

} // namespace legwork
