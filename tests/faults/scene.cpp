// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "scene.h"

#include "temporary_folder.h"

#include <stdexcept>

namespace faults {

namespace {

// Two circuits lack their sizes, none has a space; no error finding.
std::string job_of(std::string const& date) {
    return R"(job = { name = "Ridge hut", code = "NEC 2023", date = )" + date + R"( }
panel = [{ name = "Main", spaces = 8, supply = "120/240", main = "60 A", fed_from = "Meter pole" }]

[[circuit]]
mark    = "A1"
name    = "Lights, both rooms"
breaker = "15 A"
load    = "240 VA"   # measured at the old hut
cable   = "14/2"
length  = "6 m"

[[circuit]]
mark   = "A2"
name   = "Outlets, bunk room"
use    = "receptacles"
load   = "900 VA"
length = "8 m"

[[circuit]]
mark   = "WH"
name   = "Water heater, back closet"
poles  = 2
load   = "4500 W"
length = "3 m"
)";
}

std::vector<std::string> print_to(std::string const& folder) {
    return {"print", "job.toml", "--sheet", "directory", "--sheet", "load", "--out", folder};
}

using Words = std::vector<std::string>;

// Plays the scene once, undisturbed.
Scene played(std::string name, Words words, Folder const& before, bool keeps = false) {
    Scene scene;
    scene.name = std::move(name);
    scene.words = std::move(words);
    scene.keeps = keeps;
    TemporaryFolder const folder;
    lay_out(folder.path(), before);
    scene.before = standing_in(folder.path());
    scene.good = run(folder.path(), scene.words);
    if (scene.good.status != 0) throw std::runtime_error(scene.name + " fails undisturbed: " + scene.good.err);
    scene.after = standing_in(folder.path());
    if (scene.after == scene.before) throw std::runtime_error(scene.name + " does nothing");
    return scene;
}

Scene writing(std::string name, Words words) {
    return played(std::move(name), std::move(words),
                  {{"job.toml", somebodys(job_text())}, {"job.before.toml", somebodys("# last year's list\n")}}, true);
}

} // namespace

std::string job_text() { return job_of("2026-05-02"); }

Scene balance_write() { return writing("balance --write", {"balance", "job.toml", "--write"}); }
Scene propose_write() { return writing("check --propose --write", {"check", "job.toml", "--propose", "--write"}); }

Scene print_over_older() {
    auto before = played("an older print", print_to("."), {{"job.toml", somebodys(job_of("2025-11-30"))}}).after;
    for (auto& [name, file] : before) file = somebodys(file.bytes);
    before["job.toml"] = somebodys(job_text());
    for (auto const* name : {"directory-Main-2.svg", "directory-Main-3.svg"}) before[name] = somebodys("<svg/>\n");
    before["directory-Barn-1.svg"] = before["directory-Main-1.svg"];
    auto scene = played("print over an older one", print_to("."), before);
    for (auto const& [name, file] : before)
        if (name.find("-Main") != std::string::npos && name.find("directory-Main-") != 0 &&
            scene.after.at(name) == file)
            throw std::runtime_error(name + " looks as on the older print");
    for (auto const* old : {"Main-2", "Main-3", "Barn-1"})
        if (scene.good.err.find(old) == std::string::npos) throw std::runtime_error("an old page is not told");
    return scene;
}

Scene print_anew() { return played("print anew", print_to("wall/sheets"), {{"job.toml", somebodys(job_text())}}); }

Scene new_job() { return played("new", {"new", "job.toml"}, {{"note.txt", somebodys("roof, ladder\n")}}); }

std::vector<Scene> scenes() { return {balance_write(), propose_write(), print_over_older(), print_anew(), new_job()}; }

} // namespace faults
