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

// Sorted tables: toml11's hashed ones can be slowed down by keys made to collide.
using Value = toml::basic_value<toml::discard_comments, std::map, std::vector>;

// Turns toml11's values into ours.
class Converter {
public:
    Converter(TomlScan const& scan) : scan_(scan) {}

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
        if (v.is_string()) return v.as_string().str;
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
        auto const* region = dynamic_cast<toml::detail::region const*>(toml::detail::get_region(v));
        if (!region) return {0, 0};
        auto const begin = static_cast<std::size_t>(region->first() - region->begin());
        auto const last = begin + std::max<std::size_t>(region->size(), 1) - 1;
        return {scan_.original(begin), scan_.original(last) + 1};
    }

    TomlScan const& scan_;
};

// Where toml11 stopped, in the file.
std::size_t place_of(toml::source_location const& at, TomlScan const& scan) {
    std::size_t line_begin = 0;
    for (std::size_t line = 1; line < at.line(); ++line) {
        auto const next = scan.significant.find('\n', line_begin);
        if (next == std::string::npos) break;
        line_begin = next + 1;
    }
    return scan.key_of(scan.original(line_begin + std::max<std::size_t>(at.column(), 1) - 1));
}

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
    try {
        std::istringstream stream(scan.significant);
        auto const root = toml::parse<toml::discard_comments, std::map>(stream, "");
        return Converter(scan).table(root.as_table());
    } catch (toml::syntax_error const& wrong) {
        // The scanner found the grammar whole: what is left is a key or a table that is defined twice.
        out.add(place_of(wrong.location(), scan), "this key or table is defined a second time",
                "keep one of the two; a further circuit begins with  [[circuit]]  in double brackets");
    } catch (std::exception const& wrong) {
        out.add(0, fmt::format("this is no TOML that can be read: {}", first_line(wrong.what())), "simplify the file");
    }
    return std::nullopt;
}

} // namespace legwork
