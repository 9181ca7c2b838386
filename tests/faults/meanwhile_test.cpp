// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Somebody saves the file in an editor while legwork is at work, at each of its calls in turn: what was typed is never
// lost. Source: the ways in which editors save (beside and renamed; in place; in place with the words coming late).

#include "judge.h"
#include "temporary_folder.h"

#include "catch.h"

#include <algorithm>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <optional>

#include <fcntl.h>
#include <unistd.h>

using namespace faults;
namespace fs = std::filesystem;

namespace {

enum class Saved { beside, in_place, late };

// Saves `text` as `file`; a late one has the file cut to nothing at first, and writes when it is done with.
class Editor {
public:
    Editor(std::string const& file, std::string text, Saved how) : text_(std::move(text)) {
        if (how == Saved::beside) {
            std::ofstream(file + "~") << text_;
            fs::rename(file + "~", file);
        } else {
            open_ = ::open(file.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0644);
            if (how == Saved::in_place) finish();
        }
    }
    ~Editor() { finish(); }
    Editor(Editor const&) = delete;
    Editor& operator=(Editor const&) = delete;

private:
    void finish() {
        if (open_ < 0) return;
        if (::write(open_, text_.data(), text_.size()) != static_cast<ssize_t>(text_.size())) FAIL("no editor");
        ::close(open_);
        open_ = -1;
    }

    std::string text_;
    int open_ = -1;
};

struct Meeting {
    bool reached = false;
    std::string held; // what the job was just before it was saved
    Ran ran;
    Folder now;
};

// Plays the scene and saves the job before the n-th call.
Meeting saved_before(Scene const& scene, std::string const& folder, unsigned nth, std::string const& text, Saved how) {
    lay_out(folder, scene.before);
    Meeting met;
    {
        Running running(folder, scene.words, {.act = Act::stop, .nth = nth});
        std::optional<Editor> editor;
        if (running.stops()) {
            met.held = contents(folder + "/job.toml");
            editor.emplace(folder + "/job.toml", text, how);
            running.go_on();
        }
        met.ran = running.end();
    }
    met.reached = met.ran.reached;
    met.now = standing_in(folder);
    return met;
}

bool has_stray(Folder const& folder) {
    return std::ranges::any_of(folder, [](auto const& e) { return is_stray(e.first); });
}

std::string typed() { return job_text() + "\n# the roof is new\n"; }

std::string job_in(Folder const& folder) {
    auto const at = folder.find("job.toml");
    return at == folder.end() ? "" : at->second.bytes;
}

void check_meeting(Scene const& scene, Meeting const& met, Saved how) {
    CHECK(has_text(met.now, typed()));
    CHECK_FALSE(has_stray(met.now));
    auto const job = job_in(met.now), new_job = job_in(scene.after);
    if (met.ran.status == 3) {
        CHECK(job == typed());
        CHECK_THAT(met.ran.err, Contains("meanwhile") || Contains("is there already"));
    } else if (met.ran.status == 0) {
        // Done means that the job had it, at the latest when it was saved over.
        CHECK((!scene.keeps || job != typed() || met.held == new_job));
    } else { // read while it was cut to nothing
        CHECK((met.ran.status == 2 && how == Saved::late && job == typed()));
    }
}

void check_next(Scene const& scene, std::string const& folder) {
    auto const next = run(folder, scene.words);
    CHECK((next.status == 0 || scene.words.front() == "new"));
    CHECK(has_text(standing_in(folder), typed()));
    CHECK_FALSE(has_stray(standing_in(folder)));
}

void keeps_what_is_typed(Scene const& scene) {
    auto const how = GENERATE(Saved::beside, Saved::in_place, Saved::late);
    TemporaryFolder const folder;
    std::vector<Folder> seen; // what a next run makes of these is known
    unsigned nth = 1;
    for (;; ++nth) {
        auto const met = saved_before(scene, folder.path(), nth, typed(), how);
        CAPTURE(scene.name, nth, how, met.ran.call, met.ran.path, met.ran.status, met.ran.err);
        if (!met.reached) break;
        check_meeting(scene, met, how);
        if (std::ranges::find(seen, met.now) != seen.end()) continue;
        check_next(scene, folder.path());
        seen.push_back(met.now);
    }
    REQUIRE(nth > 8); // there were calls to meet
}

// Saves the job in the last moment, before the exchange, and kills the run so many calls later. False: it ended before.
bool killed_after_save(Scene const& scene, std::string const& folder, Saved how, unsigned calls) {
    lay_out(folder, scene.before);
    Running running(folder, scene.words, {.act = Act::stop_on});
    while (running.stops() && running.call() != "exchange") running.go_on();
    Editor const editor(folder + "/job.toml", typed(), how);
    for (; calls > 0; --calls) {
        running.go_on();
        if (!running.stops()) return false;
    }
    running.kill();
    CHECK(running.end().status == -SIGKILL);
    return true;
}

void keeps_what_is_typed_through_kills(Scene const& scene) {
    auto const how = GENERATE(Saved::beside, Saved::in_place, Saved::late);
    TemporaryFolder const folder;
    unsigned calls = 0;
    for (; killed_after_save(scene, folder.path(), how, calls); ++calls) {
        CAPTURE(scene.name, how, calls);
        // The next run may ask to look at what was left; the one after has nothing more to ask.
        auto next = run(folder.path(), scene.words);
        if (next.status == 3) next = run(folder.path(), scene.words);
        CHECK(next.status == 0);
        CHECK(has_text(standing_in(folder.path()), typed()));
        CHECK_FALSE(has_stray(standing_in(folder.path())));
    }
    REQUIRE(calls > 3);
}

} // namespace

TEST_CASE("balance --write: what is saved meanwhile stands in the job, or beside it", "[faults][meanwhile]") {
    keeps_what_is_typed(balance_write());
}

TEST_CASE("check --propose --write: what is saved meanwhile stands in the job, or beside it", "[faults][meanwhile]") {
    keeps_what_is_typed(propose_write());
}

TEST_CASE("what is saved in the last moment is not lost by a kill either", "[faults][meanwhile]") {
    keeps_what_is_typed_through_kills(balance_write());
}

TEST_CASE("new: a file that comes up meanwhile is left as it is", "[faults][meanwhile]") {
    keeps_what_is_typed(new_job());
}

TEST_CASE("print: all sheets are of the job as it was read, however it is saved meanwhile", "[faults][meanwhile]") {
    auto const scene = print_anew();
    auto text = job_text();
    text.replace(text.find("Ridge hut"), 9, "Other hut");
    auto changed = scene.before;
    changed["job.toml"].bytes = text;
    TemporaryFolder const folder;
    lay_out(folder.path(), changed);
    REQUIRE(run(folder.path(), scene.words).status == 0);
    auto other = standing_in(folder.path());
    REQUIRE(other != scene.after);
    other.erase("job.toml");
    auto first = scene.after;
    first.erase("job.toml");
    unsigned nth = 1, of_first = 0;
    for (;; ++nth) {
        auto met = saved_before(scene, folder.path(), nth, text, Saved::beside);
        CAPTURE(nth, met.ran.call, met.ran.path, met.ran.err);
        if (!met.reached) break;
        CHECK(met.ran.status == 0);
        CHECK(job_in(met.now) == text);
        met.now.erase("job.toml");
        CHECK((met.now == first || met.now == other));
        of_first += met.now == first ? 1 : 0;
    }
    REQUIRE(of_first > 8);
}
