// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How an edition says where it speaks of each topic of topics.h. Three answers are told apart, and none is the default
// of another:
//
//     {"mw-grouping", "200.4(B), 210.4(D)", seen}   this section does
//     {"mw-grouping", silent}                       none does
//     {"mw-grouping", unread}                       nobody has looked
//
// An edition is written in one of three ways, from the rows in its folder:
//
//     whole<rows>()            a row for every topic
//     same_as<other, rows>()   as that edition, but for these: whoever writes it has read the others too
//     unread_but<rows>()       nobody has read it but for these
//
// A topic that is missing, not known or there twice does not build.
#pragma once

#include "codebook/source.h"
#include "codebook/topics.h"

namespace legwork {

struct Section {
    std::string_view where{}; // "210.4(B)"; empty when silent or unread
    Source source = Source::unread;
    FromMemory numbers = FromMemory::none; // of those in `where`

    constexpr bool is_unread() const { return source == Source::unread; }
    constexpr bool speaks() const { return !where.empty(); }
    constexpr bool is_silent() const { return !speaks() && !is_unread(); }
    friend constexpr bool operator==(Section const&, Section const&) = default;
};

struct SectionTable {
    std::array<Section, kTopics.size()> of_topic; // by its number in kTopics
};

struct SectionRow {
    std::string_view topic;
    Section says;

    // `source`: how the content was come by; `numbers`: which of the section's numbers are from memory.
    consteval SectionRow(std::string_view of, std::string_view where, Source source,
                         FromMemory numbers = FromMemory::none)
        : topic(of), says{where, source, numbers} {
        if (where.empty() || source == Source::unread) throw "say silent or unread instead";
    }
    consteval SectionRow(std::string_view of, Silent, Source source = Source::practice) : topic(of), says{{}, source} {
        if (source == Source::unread) throw "what nobody has read is not known to be silent";
    }
    consteval SectionRow(std::string_view of, Unread) : topic(of), says{} {}
};

// The rest is how rows are held against the topics.
namespace section_rows {

// A topic's name as the compiler can show it: as the argument of a template.
struct Name {
    std::array<char, 48> letters{};
    constexpr Name() = default;
    constexpr explicit Name(std::string_view name) { std::ranges::copy(name, letters.begin()); }
    constexpr bool none() const { return letters.front() == '\0'; }
};

template <auto const& kRows>
constexpr SectionRow const* row_of(std::string_view topic) {
    auto const at = std::ranges::find(kRows, topic, &SectionRow::topic);
    return at == std::ranges::end(kRows) ? nullptr : &*at;
}

// The first row that no topic, or no topic of a code, has; the first that is there twice; the first topic without one.
template <auto const& kRows>
consteval Name not_known() {
    for (SectionRow const& r : kRows)
        if (auto const n = topic_number(r.topic); !n || kTopics[*n].basis == Topic::Basis::custom) return Name(r.topic);
    return {};
}
template <auto const& kRows>
consteval Name twice() {
    for (SectionRow const& r : kRows)
        if (row_of<kRows>(r.topic) != &r) return Name(r.topic);
    return {};
}
template <auto const& kRows>
consteval Name missing() {
    for (Topic const& t : kTopics)
        if (t.basis != Topic::Basis::custom && !row_of<kRows>(t.name)) return Name(t.name);
    return {};
}
template <auto const& kRows>
consteval Name wrongly_unread() {
    for (SectionRow const& r : kRows)
        if (auto const n = topic_number(r.topic); n && kTopics[*n].basis == Topic::Basis::physics && r.says.is_unread())
            return Name(r.topic);
    return {};
}

template <Name kTopic>
struct Known {
    static_assert(kTopic.none(), "a row of an edition has a topic that no code is asked about: see topics.h");
};
template <Name kTopic>
struct Once {
    static_assert(kTopic.none(), "an edition has two rows for one topic");
};
template <Name kTopic>
struct Complete {
    static_assert(kTopic.none(), "an edition has no row for a topic: give its section, or say silent or unread");
};
template <Name kTopic>
struct NeedsNoCode {
    static_assert(kTopic.none(), "physics is not unread: say silent where its section is not known");
};

template <auto const& kRows>
consteval SectionTable changed(SectionTable table) {
    Known<not_known<kRows>()>();
    Once<twice<kRows>()>();
    NeedsNoCode<wrongly_unread<kRows>()>();
    for (SectionRow const& r : kRows)
        if (auto const n = topic_number(r.topic)) table.of_topic[*n] = r.says;
    return table;
}

// Custom and physics stand without a code.
consteval SectionTable unread_table() {
    SectionTable table{};
    for (std::size_t i = 0; i < kTopics.size(); ++i)
        if (kTopics[i].basis != Topic::Basis::code) table.of_topic[i].source = Source::practice;
    return table;
}

} // namespace section_rows

template <auto const& kRows>
consteval SectionTable whole() {
    section_rows::Complete<section_rows::missing<kRows>()>();
    return section_rows::changed<kRows>(section_rows::unread_table());
}

template <auto const& kOther, auto const& kRows>
consteval SectionTable same_as() {
    return section_rows::changed<kRows>(kOther);
}

template <auto const& kRows>
consteval SectionTable unread_but() {
    return section_rows::changed<kRows>(section_rows::unread_table());
}

} // namespace legwork
