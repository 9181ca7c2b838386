// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "fuzz/mutate.h"

#include "fuzz/toml_pieces.h"

#include <algorithm>
#include <array>

namespace fuzz {

namespace {

// A file in hand, with what is needed to change it.
struct Workpiece {
    TomlPieces pieces;
    std::span<KnownKey const> keys;
    Dice& dice;

    std::size_t any_piece() { return dice.below(pieces.size()); }
    // Of the tables with a header; 0, what stands before them, when there is none.
    std::size_t any_table() { return pieces.size() > 1 ? 1 + dice.below(pieces.size() - 1) : 0; }
    // A line with a key, whichever; null when there is none in the piece that was hit.
    std::string* any_key_line(std::size_t piece) {
        auto& lines = pieces[piece].lines;
        for (int tries = 0; tries < 4 && !lines.empty(); ++tries)
            if (auto& line = lines[dice.below(lines.size())]; key_line(line)) return &line;
        return nullptr;
    }
    std::string* any_key_line() { return any_key_line(any_piece()); }
    // Null when no table of this name is known, or it has no such key.
    KnownKey const* known(std::string_view table, std::string_view key) const {
        auto const at = std::ranges::find_if(keys, [&](auto const& k) { return k.table == table && k.key() == key; });
        return at == keys.end() ? nullptr : &*at;
    }
    KnownKey const& any_known(std::string_view table) {
        auto const first = std::ranges::find(keys, table, &KnownKey::table);
        auto const end = std::find_if(first, keys.end(), [&](KnownKey const& k) { return k.table != table; });
        if (first == end) return dice.one_of(keys);
        return *(first + static_cast<std::ptrdiff_t>(dice.below(static_cast<std::size_t>(end - first))));
    }
    std::string value(KnownKey const& key) { return made_value(key, names_in(pieces), dice); }
};

auto iterator_to(auto& list, std::size_t at) { return list.begin() + static_cast<std::ptrdiff_t>(at); }

// In another key's place the line keeps its own blanks and comment.
void set_value(std::string& line, std::string value) {
    auto parts = *key_line(line);
    parts.value = std::move(value);
    line = parts.line();
}

void rename(Workpiece& w, TomlPiece& piece) {
    for (auto const* name : {"mark", "name", "space"})
        for (auto& line : piece.lines)
            if (auto const is = key_line(line); is && is->name() == name)
                if (auto const* key = w.known(piece.name, name)) set_value(line, w.value(*key));
}

void duplicate_table(Workpiece& w) {
    auto const at = w.any_table();
    auto copy = w.pieces[at];
    if (!w.dice.once_in(4)) rename(w, copy);
    w.pieces.insert(iterator_to(w.pieces, 1 + w.dice.below(w.pieces.size())), std::move(copy));
}

void drop_table(Workpiece& w) {
    if (auto const at = w.any_table()) w.pieces.erase(iterator_to(w.pieces, at));
}

void swap_tables(Workpiece& w) { std::swap(w.pieces[w.any_table()], w.pieces[w.any_table()]); }

void duplicate_line(Workpiece& w) {
    auto const* line = w.any_key_line();
    if (!line) return;
    auto const copy = *line;
    auto& lines = w.pieces[w.any_piece()].lines;
    lines.insert(iterator_to(lines, w.dice.below(lines.size() + 1)), copy);
}

void drop_line(Workpiece& w) {
    auto& lines = w.pieces[w.any_piece()].lines;
    if (!lines.empty()) lines.erase(iterator_to(lines, w.dice.below(lines.size())));
}

void swap_lines(Workpiece& w) {
    auto *a = w.any_key_line(), *b = w.any_key_line();
    if (a && b && a != b) std::swap(*a, *b);
}

void swap_values(Workpiece& w) {
    auto *a = w.any_key_line(), *b = w.any_key_line();
    if (!a || !b || a == b) return;
    auto const of_a = key_line(*a)->value, of_b = key_line(*b)->value;
    set_value(*a, of_b);
    set_value(*b, of_a);
}

void to_extreme(Workpiece& w) {
    if (auto* line = w.any_key_line()) set_value(*line, std::string(w.dice.one_of(extremes())));
}

// Another value such as this key may have.
void change_value(Workpiece& w) {
    auto const piece = w.any_piece();
    auto* line = w.any_key_line(piece);
    if (!line) return;
    if (auto const* key = w.known(w.pieces[piece].name, key_line(*line)->name())) set_value(*line, w.value(*key));
}

void put_key(Workpiece& w, std::size_t at, KnownKey const& key) {
    auto& lines = w.pieces[at].lines;
    auto line = std::string(key.key()) + " = " + w.value(key) + '\n';
    if (!lines.empty() && !lines.back().ends_with('\n')) lines.back() += '\n';
    lines.insert(iterator_to(lines, std::min<std::size_t>(lines.size(), at == 0 ? 0 : 1)), std::move(line));
}

// A known key into a table that has not got it; where it has, another value.
void insert_key(Workpiece& w) {
    auto const at = w.any_piece();
    auto& piece = w.pieces[at];
    auto const& key = w.any_known(piece.name);
    for (auto& line : piece.lines)
        if (auto const is = key_line(line); is && is->name() == key.key() && !w.dice.once_in(8))
            return set_value(line, w.value(key));
    put_key(w, at, key);
}

void insert_table(Workpiece& w) {
    std::string name(w.dice.one_of(w.keys).table);
    if (name.empty()) return;
    bool const one = name == "job" || name == "dwelling";
    auto const at = 1 + w.dice.below(w.pieces.size());
    auto header = one ? '[' + name + "]\n" : "[[" + name + "]]\n";
    w.pieces.insert(iterator_to(w.pieces, at), TomlPiece{name, {std::move(header)}});
    auto const first = std::ranges::find(w.keys, name, &KnownKey::table);
    put_key(w, at, *first); // a mark or a name
    for (auto n = w.dice.below(8); n > 0; --n) put_key(w, at, w.any_known(name));
}

constexpr std::array kChanges{duplicate_table, drop_table, swap_tables, duplicate_line, drop_line,    swap_lines,
                              swap_values,     to_extreme, to_extreme,  change_value,   change_value, change_value,
                              insert_key,      insert_key, insert_key,  insert_table};

} // namespace

std::string mutated(std::string_view text, std::span<KnownKey const> keys, Dice& dice) {
    Workpiece w{taken_apart(text), keys, dice};
    for (auto changes = 1 + dice.below(2); changes > 0; --changes) dice.one_of(kChanges)(w);
    return put_together(w.pieces);
}

std::string spliced(std::string_view text, std::string_view other, Dice& dice) {
    auto pieces = taken_apart(text);
    auto const theirs = taken_apart(other);
    for (auto n = 1 + dice.below(3); n > 0; --n) {
        auto const& piece = theirs[dice.below(theirs.size())];
        if (dice.once_in(3)) { // their lines into one of ours
            auto& lines = pieces[dice.below(pieces.size())].lines;
            auto const header = static_cast<std::ptrdiff_t>(std::min<std::size_t>(piece.lines.size(), 1));
            lines.insert(lines.end(), piece.lines.begin() + header, piece.lines.end());
        } else {
            pieces.insert(iterator_to(pieces, 1 + dice.below(pieces.size())), piece);
        }
    }
    return put_together(pieces);
}

} // namespace fuzz
