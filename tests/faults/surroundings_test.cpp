// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Surroundings that must not matter, and standard descriptors that lead nowhere.

#include "judge.h"
#include "temporary_folder.h"

#include "catch.h"

#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <functional>

#include <fcntl.h>
#include <locale.h>

#include <unistd.h>

using namespace faults;
namespace fs = std::filesystem;

namespace {

// Everything as it always is: no byte of a file, no letter of what is printed differs.
void check_as_ever(Scene const& scene, std::function<void()> const& in_child) {
    TemporaryFolder const folder;
    lay_out(folder.path(), scene.before);
    auto const ran = run(folder.path(), scene.words, {}, in_child);
    CAPTURE(scene.name);
    CHECK(ran.status == 0);
    CHECK(ran.out == scene.good.out);
    CHECK(ran.err == scene.good.err);
    CHECK(standing_in(folder.path()) == scene.after);
}

// Makes a locale in a folder; false where its source is not installed.
bool made_locale(std::string const& folder, std::string const& name) {
    auto const command = "localedef -i " + name + " -f UTF-8 '" + folder + "/" + name + ".UTF-8' >/dev/null 2>&1";
    [[maybe_unused]] auto const status = std::system(command.c_str()); // warns of what it found, too
    return fs::exists(folder + "/" + name + ".UTF-8/LC_CTYPE");
}

bool has_locale(std::string const& name) {
    auto const found = ::newlocale(LC_ALL_MASK, name.c_str(), nullptr);
    if (found) ::freelocale(found);
    return found != nullptr;
}

} // namespace

TEST_CASE("no home, no environment at all, odd variables: all as ever", "[faults][surroundings]") {
    auto const in_child = GENERATE(
        as<void (*)()>(), [] { ::unsetenv("HOME"); }, [] { ::setenv("HOME", "/nowhere", 1); }, [] { ::clearenv(); },
        [] {
            ::setenv("TMPDIR", "/nowhere", 1);
            ::setenv("XDG_CACHE_HOME", "/dev/null", 1);
            ::setenv("FONTCONFIG_FILE", "/nowhere", 1);
            ::setenv("TERM", "dumb", 1);
            ::setenv("TZ", "Pacific/Kiritimati", 1);
        });
    for (auto const& scene : scenes()) check_as_ever(scene, in_child);
}

TEST_CASE("whatever the locale: all as ever", "[faults][surroundings]") {
    // Turkish has another capital of i, German a comma in its numbers.
    auto const* const name = GENERATE("tr_TR", "de_DE", "C");
    TemporaryFolder const folder;
    std::string const full = name == std::string("C") ? "C" : name + std::string(".UTF-8");
    bool const made = full != "C" && made_locale(folder.path(), name);
    if (full != "C" && !made && !has_locale(full)) {
        WARN("there is no locale " << full << " here and none could be made (Debian's package locales): not tried");
        return;
    }
    for (auto const& scene : scenes())
        check_as_ever(scene, [&] {
            if (made) ::setenv("LOCPATH", folder.path().c_str(), 1);
            ::setenv("LC_ALL", full.c_str(), 1);
        });
}

TEST_CASE("closed standard descriptors: the files are as ever, and what could not be printed is no success",
          "[faults][surroundings]") {
    int const closed = GENERATE(range(1, 8)); // a bit for each
    bool const no_out = (closed & 2) != 0, no_err = (closed & 4) != 0;
    for (auto const& scene : scenes()) {
        TemporaryFolder const folder;
        lay_out(folder.path(), scene.before);
        auto const ran = run(folder.path(), scene.words, {}, [closed] {
            for (int descriptor = 0; descriptor < 3; ++descriptor)
                if ((closed >> descriptor & 1) != 0) ::close(descriptor);
        });
        CAPTURE(scene.name, closed, ran.err);
        CHECK(ran.status == (no_out ? 3 : 0));
        CHECK(standing_in(folder.path()) == scene.after);
        if (no_out && !no_err) CHECK_THAT(ran.err, Contains("standard output: Bad file descriptor"));
    }
}

TEST_CASE("nobody reads standard output (legwork ... | head -1): the files are as ever", "[faults][surroundings]") {
    bool const ignored = GENERATE(false, true); // SIGPIPE, as a shell or as some programs have it
    for (auto const& scene : scenes()) {
        TemporaryFolder const folder;
        lay_out(folder.path(), scene.before);
        auto const ran = run(folder.path(), scene.words, {}, [ignored] {
            int ends[2];
            if (::pipe(ends) != 0 || ::dup2(ends[1], 1) < 0) ::_exit(97);
            ::close(ends[0]);
            ::close(ends[1]);
            ::signal(SIGPIPE, ignored ? SIG_IGN : SIG_DFL);
        });
        CAPTURE(scene.name, ignored, ran.err);
        CHECK((ran.status == 3 || (ran.status == -SIGPIPE && !ignored)));
        if (ran.status == 3) CHECK_THAT(ran.err, Contains("standard output: Broken pipe"));
        CHECK(standing_in(folder.path()) == scene.after);
    }
}

TEST_CASE("a full disk behind standard output: the files are as ever, exit status 3", "[faults][surroundings]") {
    for (auto const& scene : scenes()) {
        TemporaryFolder const folder;
        lay_out(folder.path(), scene.before);
        auto const ran = run(folder.path(), scene.words, {}, [] {
            if (::dup2(::open("/dev/full", O_WRONLY | O_CLOEXEC), 1) < 0) ::_exit(97);
        });
        CAPTURE(scene.name, ran.err);
        CHECK(ran.status == 3);
        CHECK_THAT(ran.err, Contains("standard output: No space left on device"));
        CHECK(standing_in(folder.path()) == scene.after);
    }
}
