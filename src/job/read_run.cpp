// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Cables: their kind, colours and lengths, of a circuit's home run and of [[cable]]; and [[box]], where they meet.
#include "job/keys/circuit.h"
#include "job/reading.h"
#include "units/decimal.h"
#include "units/power_cable.h"

#include <algorithm>
#include <fmt/format.h>

namespace legwork {

namespace {

// "red", "white with red stripe", "White/black"
bool is_color(std::string_view text) {
    static constexpr std::array<std::string_view, 22> words{
        "black",  "red",    "blue", "white", "grey",      "gray",   "green", "bare",    "brown", "orange", "yellow",
        "violet", "purple", "pink", "tan",   "turquoise", "silver", "gold",  "natural", "with",  "stripe", "striped"};
    std::string word;
    std::size_t found = 0;
    for (std::size_t i = 0; i <= text.size(); ++i) {
        char const c = i < text.size() ? text[i] : ' ';
        bool const letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        if (letter)
            word += static_cast<char>(c | 0x20);
        else if (c != ' ' && c != '/' && c != '-')
            return false;
        if (letter || word.empty()) continue;
        if (std::ranges::find(words, word) == words.end()) return false;
        word.clear();
        ++found;
    }
    return found > 0;
}

bool good_color(TableReader& t, std::string const& said, std::size_t at) {
    if (is_color(said)) return true;
    static std::vector<std::string> const colors{"black", "red",    "blue",   "white",  "grey",   "green", "bare",
                                                 "brown", "orange", "yellow", "violet", "purple", "pink",  "tan"};
    t.complaints().add(at, fmt::format("{}: {} is no colour", t.what(), quoted(said)),
                       did_you_mean(said, colors, "write it in English: \"red\", \"white with red stripe\""));
    return false;
}

void read_segments(Reading& r, TableReader& t, typed::Circuit& c) {
    auto segments = t.tables("segments", fmt::format("{}, a segment", t.what()));
    for (auto const* other : {"cable", "length"})
        if (t.has(other))
            t.complain(other, fmt::format("\"{}\" and \"segments\" both describe the home run", other),
                       fmt::format("keep the segments, take  {}  away", other));
    if (segments.size() > std::size_t{kMostSegments})
        t.complain("segments", fmt::format("there are {} segments, {} at most", segments.size(), kMostSegments),
                   "give the cable in fewer pieces");
    std::vector<std::string> asked;
    for (auto& s : segments) {
        s.allow_questions(asked);
        bool const first = c.run.empty();
        c.run.push_back({read_cable_kind(r, s, "kind"), s.length("length"), s.text("to"), read_where(s),
                         s.flag("tap").value_or(false)});
        if (first && c.run.back().tap)
            s.complain("tap", "the first piece is the circuit itself, and no tap of it",
                       "write  tap = true  at the piece that leaves the circuit for its appliance");
        s.finish();
    }
    for (auto const& key : asked) c.asked.push_back(key == "kind" ? "cable" : key);
    if (auto const* list = std::get_if<TomlArray>(&t.entry("segments")->value.is); list && list->empty())
        t.complain("segments", "the list of segments is empty",
                   "write  segments = [{ kind = \"12/3\", length = \"18 m\" }]");
}

// The circuits of a piece of wiring that is described by itself.
std::vector<std::string> read_carried(Reading& r, TableReader& t) {
    std::vector<std::string> marks;
    for (auto const& [mark, at] : t.texts("carries")) {
        if (!r.is_circuit(t, mark, at)) continue;
        if (contains(marks, mark))
            r.out.add(at, fmt::format("{}: the circuit {} is named twice", t.what(), mark), "name it once");
        marks.push_back(mark);
    }
    return marks;
}

} // namespace

std::string read_cable_kind(Reading& r, TableReader& t, std::string_view key) {
    if (t.is_question(key)) return {};
    auto kind = t.text(key);
    if (kind.empty() || power_cable(kind) || contains(r.words.cable_kinds, kind)) return kind;
    auto known = r.words.cable_kinds;
    for (auto const* usual :
         {"14/2", "14/3", "12/2", "12/3", "10/2", "10/3", "8/3", "6/3", "4/3", "2/3", "1/0/3", "2/0/3", "4/0/3"})
        known.emplace_back(usual);
    r.out.add(
        t.value_at(key), fmt::format("{}: there is no cable kind {}", t.what(), quoted(kind)),
        did_you_mean(kind, known,
                     "write gauge and insulated conductors: \"12/2\", \"12/3\", \"1/0/3\"; other kinds are listed by  "
                     "legwork explain --table cables"));
    return {};
}

WirePlace read_where(TableReader& t) {
    using enum WirePlace;
    return t.choice("where", {dry, damp, wet, outdoors, buried}).value_or(unsaid);
}

std::vector<std::string> read_colors(TableReader& t, std::string_view key) {
    std::vector<std::string> colors;
    for (auto const& [color, at] : t.texts(key))
        if (good_color(t, color, at)) colors.push_back(small_letters(color));
    return colors;
}

std::string read_color(TableReader& t, std::string_view key) {
    auto const color = t.text(key);
    return color.empty() || !good_color(t, color, t.value_at(key)) ? std::string() : small_letters(color);
}

void read_home_run(Reading& r, TableReader& t, typed::Circuit& c) {
    typed::Segment whole{read_cable_kind(r, t, "cable"), t.length("length"), ""};
    if (t.has("segments")) return read_segments(r, t, c);
    if (!whole.kind.empty() || whole.length) c.run.push_back(std::move(whole));
}

void read_cables(Reading& r) {
    for (std::size_t i = 0; i < r.cables.size(); ++i) {
        TableReader& t = r.cables[i];
        typed::Cable& c = r.job.cables[i];
        t.allow_questions(c.asked);
        c.name = t.text("name");
        c.kind = read_cable_kind(r, t, "kind");
        c.from = t.text("from");
        c.to = t.text("to");
        c.length = t.length("length");
        c.carries = read_carried(r, t);
        c.role = t.word("role");
        c.where = read_where(t);
        t.finish();
        record(r, Subject::cable, c.mark, t);
    }
}

void read_boxes(Reading& r) {
    for (std::size_t i = 0; i < r.boxes.size(); ++i) {
        TableReader& t = r.boxes[i];
        typed::Box& b = r.job.boxes[i];
        t.allow_questions(b.asked);
        b.size = t.text("size");
        b.volume = t.volume("volume");
        if (t.has("size") && t.has("volume"))
            t.complain("volume", "\"size\" and \"volume\" both say how large it is", "keep one of the two");
        b.devices = plain(t.texts("devices"));
        b.clamps = t.flag("clamps");
        t.finish();
        record(r, Subject::box, b.name, t);
    }
}

} // namespace legwork
