// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The net itself: what is counted and refused, and that each broken promise is seen.

#include "judge.h"
#include "temporary_folder.h"

#include "catch.h"

#include <csignal>

using namespace faults;

namespace {

Ran played(Scene const& scene, Fault const& fault) {
    TemporaryFolder const folder;
    lay_out(folder.path(), scene.before);
    return run(folder.path(), scene.words, fault);
}

Ran failed(int status, std::string err) {
    Ran ran;
    ran.status = status;
    ran.err = std::move(err);
    ran.reached = true;
    return ran;
}

} // namespace

TEST_CASE("the same run makes the same calls, and more of them elsewhere than in its folder", "[faults][net]") {
    for (auto const& scene : scenes()) {
        auto const once = played(scene, {}), again = played(scene, {});
        CAPTURE(scene.name, once.seen);
        CHECK(once.seen == again.seen);
        CHECK(once.seen > 8);
        CHECK(played(scene, {.everywhere = true}).seen > once.seen);
    }
}

TEST_CASE("the call that was asked for goes wrong, in the way that was asked for", "[faults][net]") {
    auto const scene = new_job();
    auto const refused = played(scene, {.act = Act::fail, .kind = Kind::write, .nth = 1, .error = ENOSPC});
    CHECK(refused.reached);
    CHECK(refused.call == "write");
    CHECK(refused.status == 3);
    CHECK_THAT(refused.err, Contains("No space left on device"));
    auto const in_two = played(scene, {.act = Act::shorten, .kind = Kind::write, .nth = 1});
    CHECK(in_two.status == 0);
    CHECK(in_two.seen == played(scene, {.kind = Kind::write}).seen + 1);
    for (auto const act : {Act::kill_before, Act::kill_after})
        CHECK(played(scene, {.act = act, .kind = Kind::write, .nth = 1}).status == -SIGKILL);
    CHECK_FALSE(played(scene, {.act = Act::fail, .kind = Kind::write, .nth = 1000, .error = ENOSPC}).reached);
    CHECK(played(scene, {.act = Act::stop}).status == 0); // and goes on
}

TEST_CASE("each broken promise is seen", "[faults][net]") {
    auto const scene = balance_write();
    Fault const fault{.act = Act::fail, .kind = Kind::rename, .error = EIO};
    auto const told = failed(3, "legwork: error: cannot write job.toml: Input/output error");
    REQUIRE(judged(scene, fault, told, scene.before).empty());
    REQUIRE(judged(scene, fault, scene.good, scene.after).empty());

    auto const complaint = [&](Ran const& ran, Folder const& now) { return listed(judged(scene, fault, ran, now)); };
    CHECK_THAT(complaint(scene.good, scene.before), Contains("exit status 0, but") && Contains("job.toml differs"));
    CHECK_THAT(complaint(failed(3, "job.toml: it went wrong"), scene.before), Contains("the cause is not told"));
    CHECK_THAT(complaint(failed(3, "Input/output error"), scene.before), Contains("no file is named"));
    CHECK_THAT(complaint(told, scene.after), Contains("all is written, and that is not told"));
    CHECK_THAT(complaint(failed(2, told.err), scene.after), Contains("exit status 2, but"));
    CHECK_THAT(complaint(failed(-SIGSEGV, ""), scene.before), Contains("it ends with -11"));

    auto now = scene.before;
    now.at("job.toml").bytes.resize(100);
    CHECK_THAT(complaint(told, now),
               Contains("job.toml is neither old nor new") && Contains("text of job.toml is lost"));
    now = scene.before;
    now.at("job.toml").mode = 0666;
    CHECK_THAT(complaint(told, now), Contains("job.toml has another owner, mode or note"));
    now = scene.before;
    now.erase("job.before.toml");
    CHECK_THAT(complaint(told, now), Contains("the text of job.before.toml is lost"));
    now = scene.before;
    now.erase("job.toml");
    CHECK_THAT(complaint(failed(-SIGKILL, ""), now), Contains("job.toml is gone"));
    now = scene.before;
    now[".legwork-1-0"] = {};
    CHECK_THAT(complaint(told, now), Contains("a draft is left"));
    CHECK(complaint(failed(-SIGKILL, ""), now).empty());
    now = scene.before;
    now["job.tmp"] = {};
    CHECK_THAT(complaint(told, now), Contains("job.tmp is nobody's"));
}

TEST_CASE("sheets of two prints side by side have to be named", "[faults][net]") {
    auto const scene = print_over_older();
    auto now = scene.before;
    now.at("directory-Main.pdf") = scene.after.at("directory-Main.pdf");
    Fault const fault{.act = Act::fail, .kind = Kind::rename, .error = EIO};
    auto const found = judged(scene, fault, failed(3, "cannot write load-Main.pdf: Input/output error"), now);
    CHECK_THAT(listed(found), Contains("load-Main-1.svg stayed as it was beside new ones"));
    CHECK_THAT(listed(found), !Contains("load-Main.pdf stayed"));
}

TEST_CASE("a print that does not tell of old pages has to say why", "[faults][net]") {
    auto const scene = print_over_older();
    Fault const fault{.act = Act::fail, .kind = Kind::look, .error = EIO};
    auto silent = scene.good;
    silent.reached = true;
    silent.err = "";
    CHECK_THAT(listed(judged(scene, fault, silent, scene.after)), Contains("it keeps silent on"));
    silent.err = "directory-Main-2.svg could not be looked at: Input/output error";
    CHECK(judged(scene, fault, silent, scene.after).empty());
}

TEST_CASE("what a next run leaves is seen", "[faults][net]") {
    auto const scene = balance_write();
    TemporaryFolder const folder;
    lay_out(folder.path(), scene.before);
    CHECK(judged_next(scene, folder.path()).empty());
    auto before = scene.before;
    before["job.before-7.toml"] = somebodys("surplus");
    lay_out(folder.path(), before);
    CHECK_THAT(listed(judged_next(scene, folder.path())), Contains("job.before-7.toml is too many"));
}
