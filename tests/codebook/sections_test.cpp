// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How an edition says where it speaks: silence, not read, and a section are three things. What must not build is in
// tests/editions/incomplete.
#include "codebook/cite.h"
#include "codebook/editions/checked_edition.h"
#include "codebook/editions/nec_2023/sections.h"

#include "catch.h"

using namespace legwork;
using namespace how_read;

namespace {
constexpr auto kChanged = std::to_array<SectionRow>({
    {"mw-grouping", "200.4(B)", memory},
    {"dir-person", silent},
    {"afci-needed", unread},
});
constexpr SectionTable kSame = same_as<nec_2023::kSections, kChanged>(), kUnread = unread_but<kChanged>();

Section const& in(SectionTable const& table, std::string_view topic) { return table.of_topic[*topic_number(topic)]; }
} // namespace

TEST_CASE("sections: as another edition, but for some rows", "[codebook][sections]") {
    REQUIRE(in(kSame, "mw-grouping") == Section{"200.4(B)", Source::memory});
    REQUIRE(in(kSame, "dir-person").is_silent());
    REQUIRE(in(kSame, "afci-needed").is_unread());
    for (Topic const& t : kTopics) {
        if (std::ranges::find(kChanged, t.name, &SectionRow::topic) != kChanged.end()) continue;
        CAPTURE(t.name);
        REQUIRE(in(kSame, t.name) == in(nec_2023::kSections, t.name));
    }
}

TEST_CASE("sections: unread but for some rows, physics and custom need no code", "[codebook][sections]") {
    for (Topic const& t : kTopics) {
        auto const& says = in(kUnread, t.name);
        CAPTURE(t.name);
        if (std::ranges::find(kChanged, t.name, &SectionRow::topic) != kChanged.end())
            REQUIRE(says == in(kSame, t.name));
        else if (t.basis == Topic::Basis::code)
            REQUIRE(says.is_unread());
        else
            REQUIRE(says == Section{{}, Source::practice});
    }
    STATIC_REQUIRE(Section{}.is_unread()); // nothing is silent that nobody has looked at
    STATIC_REQUIRE_FALSE(Section{}.is_silent());
}

TEST_CASE("sections: what is not read is cited so", "[codebook][sections]") {
    REQUIRE(text({"NEC 2023", "", Source::unread}) == "NEC 2023 (not read yet)");
    REQUIRE(name(Source::unread) == "unread");
    for (CodeBook const* book : code_books())
        for (Topic const& t : topics()) {
            auto const& says = section_of(*book, t.name);
            auto const cited = cite(*book, t.name);
            CAPTURE(book->edition, t.name);
            REQUIRE(cited.section == says.where);
            REQUIRE(cited.source == says.source);
            REQUIRE((says.speaks() ? 1 : 0) + (says.is_silent() ? 1 : 0) + (says.is_unread() ? 1 : 0) == 1);
        }
}

TEST_CASE("pages: a table that is not there is never used unasked", "[codebook][sections]") {
    constexpr CodePage<int> not_read = unread, none = silent;
    static constexpr int seven = 7;
    constexpr CodePage<int> there = seven;
    REQUIRE(not_read.is_unread());
    REQUIRE(not_read.get() == nullptr);
    REQUIRE_THROWS_AS(not_read.table(), Failure);
    REQUIRE_FALSE(none.is_unread());
    REQUIRE(none.get() == nullptr);
    REQUIRE_THROWS_AS(none.table(), Failure);
    REQUIRE(there.table() == 7);
}
