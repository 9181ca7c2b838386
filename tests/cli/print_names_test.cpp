// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What is judged is what is printed: names that are cut on the form that was asked for.

#include "calls.h"
#include "cli/session.h"
#include "output/files.h"
#include "source_folder.h"
#include "temporary_folder.h"

#include "catch.h"
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdio>
#include <utility>

using namespace legwork;
using nlohmann::json;

namespace {

std::string job_with(std::string const& name, std::string const& more = "") {
    return R"([job]
name = "Workshop"
code = "CE 2024"
[[panel]]
name   = "Main"
spaces = 4
supply = "120/240"
main   = "60 A"
[[circuit]]
mark    = "K1"
name    = ")" +
           name + R"("
room    = "Loft"
breaker = "15 A"
cable   = "14/2"
space   = 1
)" + more;
}

constexpr auto kFitsLetter = "Receptacles along the workbench, north wall";
constexpr auto kFitsNowhere = "Donaudampfschifffahrtsgesellschaftskapitänsmützenständerlampe"; // nowhere to part it
constexpr auto kCard = R"(sheet  = "directory"
title  = "Door card, 110 x 150 mm"
width  = 110
height = 150
margin = 5
)";
constexpr auto kStrips = R"(sheet  = "labels"
title  = "Strips of 30 x 13 mm"
width  = 210
height = 297
margin = 10
columns      = 5
rows         = 15
label_width  = 30
label_height = 13
left         = 20
top          = 30
)";
constexpr auto kNarrowNotes = R"(sheet  = "tape-notes"
title  = "Notes, 70 x 200 mm"
width  = 70
height = 200
margin = 5
)";

struct Scene {
    TemporaryFolder folder;
    explicit Scene(std::string const& job) {
        write_file(folder / "job.toml", job);
        write_file(folder / "card.toml", kCard);
        write_file(folder / "strips.toml", kStrips);
        write_file(folder / "narrow.toml", kNarrowNotes);
    }
    Called print(std::vector<std::string> words) const {
        words.insert(words.begin(), {"print", folder / "job.toml", "--out", folder / "out"});
        auto called = call(words);
        for (auto at = called.out.find("\n    "); at != std::string::npos; at = called.out.find("\n    ", at))
            called.out.replace(at, 5, " "); // long findings are parted
        return called;
    }
    // The forms that names are found too long for.
    std::vector<std::string> cut_on(std::vector<std::string> words) const {
        words.emplace_back("--json");
        std::vector<std::string> forms;
        auto const told = json::parse(print(words).out);
        for (auto const& f : told["findings"]) {
            CHECK(f["rule"] == "dir-name-too-long");
            auto const message = f["message"].get<std::string>();
            auto const from = message.find('(') + 1;
            forms.push_back(message.substr(from, message.find(')') - from));
        }
        std::ranges::sort(forms);
        return forms;
    }
    std::string check() const { return call({"check", folder / "job.toml", "--rule", "dir-name-too-long"}).out; }
};
using Forms = std::vector<std::string>;

} // namespace

TEST_CASE("print: a name that the form cuts is told, with the form", "[cli][print][names]") {
    Scene const scene(job_with(kFitsLetter));
    auto const called = scene.print({"--sheet", "directory", "--form", scene.folder / "card.toml"});
    CAPTURE(called.out, called.err);
    CHECK(called.status == 0); // a warning
    CHECK_THAT(called.out,
               Contains("warning: K1: the name is too long for its line of the directory (Door card, 110 x 150 mm)") &&
                   Contains("[dir-name-too-long]") && Contains("0 errors, 1 warning"));
    CHECK(scene.cut_on({"--sheet", "directory", "--form", scene.folder / "card.toml"}) ==
          Forms{"Door card, 110 x 150 mm"});

    // On the default form it fits, and that is what check judges.
    auto const whole = scene.print({"--sheet", "directory"});
    CHECK_THAT(whole.out, !Contains("dir-name-too-long") && Contains("0 errors, 0 warnings"));
    CHECK(scene.cut_on({"--sheet", "directory"}).empty());
    CHECK_THAT(scene.check(), Contains("0 of"));
}

TEST_CASE("print: each form that cuts a name tells it once", "[cli][print][names]") {
    Scene const scene(job_with(kFitsNowhere));
    CHECK_THAT(scene.check(), Contains("(US letter, 215.9 x 279.4 mm)"));
    auto const forms = scene.cut_on({"--form", scene.folder / "card.toml", "--form", scene.folder / "strips.toml"});
    CHECK(std::ranges::count(forms, "Door card, 110 x 150 mm") == 1);
    CHECK(std::ranges::count(forms, "US letter, 215.9 x 279.4 mm") >= 1); // the title of its box's tape note
    CHECK(std::ranges::count(forms, "Strips of 30 x 13 mm") >= 1);
}

TEST_CASE("print: sheets that are not printed are not judged", "[cli][print][names]") {
    Scene const scene(job_with(kFitsNowhere));
    CHECK(scene.cut_on({"--sheet", "load"}).empty());
    CHECK(std::ranges::count(scene.cut_on({"--sheet", "labels"}), "US letter, 215.9 x 279.4 mm") == 0);
    CHECK_THAT(scene.print({"--sheet", "load"}).out, Contains("0 errors, 0 warnings"));
    CHECK_THAT(scene.check(), Contains("dir-name-too-long")); // check always judges the default directory

    // What the person lives with there does not become a finding here.
    write_file(scene.folder / "job.toml", job_with(kFitsNowhere, R"([[accept]]
rule    = "dir-name-too-long"
circuit = "K1"
why     = "known to all"
by      = "R. Doe"
)"));
    for (auto const* sheet : {"load", "directory"})
        CHECK_THAT(scene.print({"--sheet", sheet}).out, Contains("0 errors, 0 warnings"));
}

TEST_CASE("print: labels and tape notes cut nothing in silence", "[cli][print][names]") {
    Scene const scene(job_with(kFitsLetter));
    CHECK(scene.cut_on({"--sheet", "labels"}).empty());
    auto const labels = scene.print({"--sheet", "labels", "--form", scene.folder / "strips.toml"});
    CHECK_THAT(labels.out,
               Contains("K1: the name is too long for the labels of its cable") && Contains("(Strips of 30 x 13 mm)"));
    CHECK(scene.cut_on({"--sheet", "tape-notes"}).empty());
    Scene const endless(job_with(kFitsNowhere));
    auto const notes = endless.print({"--sheet", "tape-notes", "--form", endless.folder / "narrow.toml"});
    CHECK_THAT(notes.out, Contains("K1: what stands of its wires is too long for its tape notes") &&
                              Contains("(Notes, 70 x 200 mm)"));
}

TEST_CASE("print: a form too small to be read is refused, and a head that is cut is told", "[cli][print][names]") {
    Scene const scene(job_with(kFitsLetter));
    auto const own = [&](int width, int height) {
        write_file(scene.folder / "own.toml",
                   fmt::format("sheet = \"directory\"\ntitle = \"own\"\nwidth = {}\nheight = {}\n"
                               "margin = 5\n",
                               width, height));
        return scene.print({"--sheet", "directory", "--form", scene.folder / "own.toml"});
    };
    auto const small = own(90, 60);
    CHECK(small.status == 2);
    REQUIRE_THAT(small.err, Contains("own.toml: error: the sheet directory of panel ") && Contains(" stands ") &&
                                Contains("a page of "));
    auto const narrow = own(100, 297);
    CHECK(narrow.status < 2);
    CHECK_THAT(narrow.err, Contains("directory on the form own: its head or foot has room for no more than \""));
    auto const good = own(210, 297);
    CHECK(good.status < 2);
    CHECK(good.err == "");
    // What it says does, and a step less either way does not.
    int width = 0, height = 0;
    REQUIRE(std::sscanf(small.err.c_str() + small.err.find("a page of "), "a page of %d x %d mm does", &width,
                        &height) == 2);
    CHECK(own(width, height).status < 2);
    for (auto const& [w, h] : {std::pair(width - 10, height), std::pair(width, height - 10)})
        if (w >= 90 && h >= 60) CHECK(own(w, h).status == 2);
}

TEST_CASE("check, balance and load read no typeface for a job of usual names", "[cli][names]") {
    auto const fonts_read = [](std::string const& file) {
        auto const opened = open_job(file);
        REQUIRE(opened.session);
        return opened.session->fonts->are_read();
    };
    for (auto const* example : {"boathouse", "bungalow", "orchard-shed"})
        CHECK_FALSE(fonts_read(in_sources("examples/") + example + ".toml"));
    Scene const scene(job_with("Ω meter"));
    CHECK(fonts_read(scene.folder / "job.toml"));
}
