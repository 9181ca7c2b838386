// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// An edit is a splice: the bytes of one value are exchanged, or a key is put in behind the last one that its table has.
// Everything else is copied, so it cannot change; what the text means afterwards is read again and compared.
#include "job/write.h"
#include "job/circuit_table.h"
#include "toml/text.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace legwork {

namespace {

struct Splice {
    std::size_t begin, end; // these bytes give way
    std::string text;
};

// Why not, when it cannot be read.
std::optional<TomlTable> parsed(std::string_view bytes, std::string* why = nullptr) {
    SourceText const source(bytes);
    Complaints out(source);
    auto root = parse_toml(bytes, out);
    if (why && !root) *why = out.in_file_order().front().message;
    return root;
}

// The same keys and values, whatever their order and place.
bool same(TomlValue const& a, TomlValue const& b);
bool same(TomlTable const& a, TomlTable const& b) {
    return a.size() == b.size() && std::ranges::all_of(a, [&](TomlEntry const& e) {
               auto const* other = find(b, e.key);
               return other && same(e.value, *other);
           });
}
bool same(TomlValue const& a, TomlValue const& b) {
    if (a.is.index() != b.is.index()) return false;
    if (auto const* t = std::get_if<TomlTable>(&a.is)) return same(*t, std::get<TomlTable>(b.is));
    if (auto const* list = std::get_if<TomlArray>(&a.is))
        return std::ranges::equal(*list, std::get<TomlArray>(b.is),
                                  [](auto const& x, auto const& y) { return same(x, y); });
    if (auto const* d = std::get_if<double>(&a.is)) {
        double const other = std::get<double>(b.is);
        return *d == other || (std::isnan(*d) && std::isnan(other));
    }
    if (auto const* d = std::get_if<TomlDate>(&a.is)) {
        auto const& o = std::get<TomlDate>(b.is);
        return d->year == o.year && d->month == o.month && d->day == o.day;
    }
    if (auto const* v = std::get_if<std::string>(&a.is)) return *v == std::get<std::string>(b.is);
    if (auto const* v = std::get_if<std::int64_t>(&a.is)) return *v == std::get<std::int64_t>(b.is);
    if (auto const* v = std::get_if<bool>(&a.is)) return *v == std::get<bool>(b.is);
    return true; // times: their text was not touched
}

// A table and the value that it is, which tells where it stands.
struct Target {
    TomlTable* table = nullptr;
    TomlValue const* whole = nullptr;
};

Target target_in(TomlTable& root, Edit const& edit) {
    TomlValue* circuit = circuit_value(root, edit.mark);
    if (!circuit) return {};
    auto* const table = std::get_if<TomlTable>(&circuit->is);
    if (!edit.segment) return {table, circuit};
    auto const list = std::ranges::find(*table, "segments", &TomlEntry::key);
    auto* const array = list == table->end() ? nullptr : std::get_if<TomlArray>(&list->value.is);
    if (!array || *edit.segment >= array->size()) return {};
    TomlValue& one = (*array)[*edit.segment];
    return {std::get_if<TomlTable>(&one.is), &one};
}

// The value that a TOML text stands for; nothing unless it is one value on one line and nothing else.
std::optional<TomlValue> value_of(std::string_view text) {
    constexpr std::string_view key = "v=";
    auto const whole = std::string(key) + std::string(text);
    auto root = parsed(whole);
    bool const alone = root && root->size() == 1 && root->front().value.begin == key.size() &&
                       root->front().value.end == whole.size() && text.find_first_of("\r\n") == std::string_view::npos;
    return alone ? std::optional(root->front().value) : std::nullopt;
}

class Editor {
public:
    explicit Editor(std::string_view bytes) : bytes_(bytes) {}

    // Where and how to put a key into a table that has not got it.
    Splice insertion(TomlValue const& whole, TomlTable const& table, Edit const& edit) const {
        auto const own = own_keys(table);
        if (own.empty()) return first_key(whole, edit);
        auto const& last = *own.back();
        if (bytes_[whole.begin] == '{') return {last.value.end, last.value.end, ", " + typed_like(last, edit, 0)};
        auto const line = std::string(indent_of(last)) + typed_like(last, edit, in_column(own) ? key_width(last) : 0);
        auto const newline = bytes_.find('\n', last.value.end);
        if (newline == std::string_view::npos) return {bytes_.size(), bytes_.size(), line_end(0) + line};
        return {newline + 1, newline + 1, line + line_end(newline)};
    }

private:
    // Into "{}", or under a header with no line of its own.
    Splice first_key(TomlValue const& whole, Edit const& edit) const {
        if (bytes_[whole.begin] == '{')
            return {whole.begin + 1, whole.begin + 1, fmt::format(" {} = {} ", edit.key, edit.value)};
        auto const line = fmt::format("{} = {}", edit.key, edit.value);
        auto const newline = bytes_.find('\n', whole.end);
        if (newline == std::string_view::npos) return {bytes_.size(), bytes_.size(), line_end(0) + line};
        return {newline + 1, newline + 1, line + line_end(newline)};
    }

    // The keys that stand in the table's own lines, in their order: tables with headers of their own may follow
    // ([[circuit.segments]]).
    static std::vector<TomlEntry const*> own_keys(TomlTable const& table) {
        std::vector<TomlEntry const*> own;
        for (auto const& e : table)
            if (e.at != e.value.begin) own.push_back(&e);
        std::ranges::sort(own, {}, [](TomlEntry const* e) { return e->at; });
        return own;
    }

    std::size_t equals_of(TomlEntry const& e) const { return bytes_.rfind('=', e.value.begin); }
    std::size_t key_width(TomlEntry const& e) const { return equals_of(e) - e.at; } // with the blanks behind it

    // The equals signs stand below each other.
    bool in_column(std::vector<TomlEntry const*> const& own) const {
        auto const padded = [&](TomlEntry const* e) { return bytes_.substr(e->at, key_width(*e)).ends_with("  "); };
        return std::ranges::any_of(own, padded) &&
               std::ranges::all_of(own, [&](TomlEntry const* e) { return key_width(*e) == key_width(*own.back()); });
    }

    // "space   = 7": blanks as its neighbour has them, the key filled up to `width`.
    std::string typed_like(TomlEntry const& neighbour, Edit const& edit, std::size_t width) const {
        auto const equals = equals_of(neighbour);
        auto key = edit.key;
        if (char const blank = bytes_[equals - 1]; blank == ' ' || blank == '\t') key += blank;
        if (width > key.size()) key.resize(width, ' ');
        return key + "=" + std::string(bytes_.substr(equals + 1, neighbour.value.begin - equals - 1)) + edit.value;
    }

    std::string_view indent_of(TomlEntry const& e) const {
        auto const newline = bytes_.rfind('\n', e.at);
        auto const begin = newline == std::string_view::npos ? 0 : newline + 1;
        auto const text = bytes_.substr(begin, e.at - begin);
        return text.find_first_not_of(" \t") == std::string_view::npos ? text : std::string_view();
    }

    // How the line that ends at this line feed ends; 0 asks for the file's first.
    std::string line_end(std::size_t newline) const {
        if (newline == 0) newline = bytes_.find('\n');
        return newline != std::string_view::npos && newline > 0 && bytes_[newline - 1] == '\r' ? "\r\n" : "\n";
    }

    std::string_view bytes_;
};

EditedJob refused(std::string why) { return {"", std::move(why)}; }

std::string spliced(std::string_view bytes, std::vector<Splice> splices) {
    std::ranges::stable_sort(splices, {}, &Splice::begin);
    std::string result;
    std::size_t at = 0;
    for (auto const& s : splices) {
        result += bytes.substr(at, s.begin - at);
        result += s.text;
        at = s.end;
    }
    return result += bytes.substr(at);
}

bool is_repeated(std::vector<Edit> const& edits, Edit const& edit) {
    return std::ranges::count_if(edits, [&](Edit const& e) {
               return e.mark == edit.mark && e.key == edit.key && e.segment == edit.segment;
           }) > 1;
}

std::string what_of(Edit const& edit) {
    return edit.segment ? fmt::format("segment {} of circuit {}", *edit.segment + 1, quoted(edit.mark))
                        : fmt::format("circuit {}", quoted(edit.mark));
}

bool is_bare_key(std::string_view key) {
    return !key.empty() && key.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_-") ==
                               std::string_view::npos;
}

} // namespace

EditedJob edit_job(std::string_view bytes, std::vector<Edit> const& edits) {
    auto const before = parsed(bytes);
    if (!before) return refused("the job file is not valid TOML");
    auto wanted = *before;
    std::vector<Splice> splices;
    for (auto const& edit : edits) {
        auto const value = value_of(edit.value);
        if (is_repeated(edits, edit)) return refused(fmt::format("{} of {} is to change twice", edit.key, edit.mark));
        if (!value || !is_bare_key(edit.key) || edit.key == "mark")
            return refused(fmt::format("{} = {} cannot be written", edit.key, quoted(edit.value)));
        auto const [table, whole] = target_in(wanted, edit);
        if (!table) return refused("there is no " + what_of(edit));
        auto const old = std::ranges::find(*table, edit.key, &TomlEntry::key);
        if (old != table->end()) {
            if (old->at == old->value.begin)
                return refused(fmt::format("{} of {} stands in tables of its own", edit.key, edit.mark));
            splices.push_back({old->value.begin, old->value.end, edit.value});
            old->value.is = value->is;
        } else {
            splices.push_back(Editor(bytes).insertion(*whole, *table, edit));
            table->push_back({edit.key, 0, {value->is, 0, 0}});
        }
    }
    auto result = spliced(bytes, std::move(splices));
    std::string why;
    auto const after = parsed(result, &why);
    if (!after) // each value is sound: only a limit of the file's size is left
        return refused(fmt::format("then it could not be read any more: {}; make it smaller first", why));
    if (!same(*after, wanted)) return refused("the changed file does not read as it should; it was left alone");
    return {std::move(result), ""};
}

} // namespace legwork
