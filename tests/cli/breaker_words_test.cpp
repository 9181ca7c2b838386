// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A breaker is called the same wherever it is spoken of.

#include "calls.h"
#include "cli/files/form_file.h"
#include "cli/session.h"
#include "output/files.h"
#include "reckon/say.h"
#include "sheet/sheets.h"
#include "source_folder.h"
#include "temporary_folder.h"

#include "catch.h"

#include <algorithm>

using namespace legwork;

namespace {

// `tie` stands at the two-pole circuit W, and at the second of the pair K.
std::string job_with(std::string const& tie) {
    return R"([job]
name = "Workshop"
code = "CE 2024"
[[panel]]
name   = "Main"
spaces = 12
supply = "120/240"
main   = "60 A"
[[circuit]]
mark    = "W"
name    = "Water heater"
room    = "Loft"
breaker = "20 A"
poles   = 2
cable   = "12/2"
space   = 5
)" + tie + R"(
[[circuit]]
mark      = "K1"
name      = "Receptacles, north wall"
room      = "Kitchen"
breaker   = "15 A"
cable     = "14/3"
multiwire = "K"
space     = 2
[[circuit]]
mark      = "K2"
name      = "Receptacles, south wall"
room      = "Kitchen"
breaker   = "15 A"
multiwire = "K"
space     = 4
)" + tie;
}

// All words of a sheet, a line each.
std::string words_of(Session const& s, std::string const& kind) {
    Fonts const widths(in_sources("fonts"));
    std::string all = "\n";
    for (auto const& sheet :
         sheet_kind(kind)->compose({s.building, s.plan, s.findings, *s.book, widths, s.file}, default_form(kind)))
        for (auto const& page : sheet.pages)
            for (auto const& mark : page.marks)
                if (auto const* text = std::get_if<Text>(&mark)) all += text->words + "\n";
    return all;
}

std::string line_with(std::string const& all, std::string const& words) {
    auto const at = all.find(words);
    REQUIRE(at != all.npos);
    return all.substr(all.rfind('\n', at) + 1, all.find('\n', at) - all.rfind('\n', at) - 1);
}

} // namespace

TEST_CASE("a two-pole breaker is called the same on every sheet and on the terminal, whatever ties its handles",
          "[cli][breaker]") {
    TemporaryFolder const folder;
    for (auto const* tie : {"", "tie = \"handle tie\"\n", "tie = \"two-pole breaker\"\n", "tie = \"none\"\n"}) {
        CAPTURE(tie);
        write_file(folder / "job.toml", job_with(tie));
        auto const opened = open_job(folder / "job.toml");
        REQUIRE(opened.session);
        CHECK(breaker_words(*circuit_named(opened.session->building, "W")) == "2P 20 A");
        CHECK_THAT(words_of(*opened.session, "directory"), Contains("\n2P 20 A\n"));
        CHECK_THAT(words_of(*opened.session, "labels"), Contains("\n12/2, 2P 20 A\n"));
        CHECK_THAT(line_with(call({"balance", folder / "job.toml"}).out, "Water heater"), Contains("2P 20 A"));
        // The notes call a breaker by its spaces; both poles are of one.
        CHECK_THAT(words_of(*opened.session, "tape-notes"),
                   Contains("\nbreaker 5+7, one pole\n") && Contains("\nbreaker 5+7, other pole\n"));
    }
}

TEST_CASE("a pair's tie is the same on every sheet, said at whichever of the two", "[cli][breaker]") {
    TemporaryFolder const folder;
    struct Said {
        std::string tie, label, note, directory;
    };
    for (auto const& [tie, label, note, directory] :
         {Said{"none", "14/3, 15 A", "K1 and K2 are not tied: turn both off before touching either (breaker 2+4).",
               "shares neutral with 4: turn both off"},
          Said{"handle tie", "14/3, 15 A", "K1 and K2 go off together: handle tie, breaker 2+4.",
               "off together with 4"},
          Said{"two-pole breaker", "14/3, 2P 15 A", "K1 and K2 go off together: two-pole breaker 2+4.",
               "off together with 4"}}) {
        CAPTURE(tie);
        write_file(folder / "job.toml", job_with("tie = \"" + tie + "\"\n"));
        auto const opened = open_job(folder / "job.toml");
        REQUIRE(opened.session);
        CHECK_THAT(words_of(*opened.session, "labels"), Contains("\n" + label + "\n"));
        auto notes = words_of(*opened.session, "tape-notes");
        std::ranges::replace(notes, '\n', ' '); // long lines are parted
        CHECK_THAT(notes, Contains(note));
        CHECK_THAT(words_of(*opened.session, "directory"), Contains(directory));
        for (auto const* circuit : {"north wall", "south wall"}) // each its own pole
            CHECK_THAT(line_with(call({"balance", folder / "job.toml"}).out, circuit),
                       Contains("15 A") && !Contains("2P"));
    }
}
