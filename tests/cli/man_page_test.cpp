// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The man page and the README against the commands' rows.

#include "calls.h"
#include "cli/call/help.h"
#include "cli/call/parser.h"
#include "output/files.h"
#include "source_folder.h"
#include "temporary_folder.h"

#include "catch.h"

#include <filesystem>

namespace {

// What stands between two headings, put in anew.
std::string with_section(std::string page, std::string const& heading, std::string const& next,
                         std::string const& text) {
    auto const begin = page.find(heading) + heading.size(), end = page.find(next);
    REQUIRE(begin < end);
    return page.replace(begin, end - begin, text);
}

} // namespace

TEST_CASE("commands and options of the man page are what the commands' rows say", "[documents]") {
    auto const path = in_sources("src/cli/legwork.1");
    auto const page = contents(path);
    auto made = with_section(page, "\n.SH SYNOPSIS\n", ".SH DESCRIPTION", legwork::man_synopsis());
    made = with_section(made, "\n.SH COMMANDS\n", ".SH EXIT STATUS", legwork::man_commands());
    auto const beside = path + ".new"; // look at both, then move it over the page
    if (made != page)
        legwork::write_file(beside, made);
    else
        std::filesystem::remove(beside);
    REQUIRE(made == page);
}

TEST_CASE("help and the man page tell every option of every command", "[documents]") {
    auto const page = legwork::man_commands();
    for (auto const* command : legwork::commands()) {
        auto const help = call({"help", std::string(command->name)});
        REQUIRE(help.status == 0);
        REQUIRE(help.out == call({std::string(command->name), "--help"}).out);
        for (auto const& option : command->options()) {
            CAPTURE(command->name, option.name);
            REQUIRE_FALSE(option.help.empty());
            REQUIRE_THAT(help.out, Contains(std::string(option.name)));
            if (!option.is_positional())
                REQUIRE_THAT(page, Contains("\\fB\\-\\-" + std::string(option.name.substr(2))));
        }
    }
    REQUIRE(call({"help"}).out == call({"--help"}).out);
}

TEST_CASE("the README names every command", "[documents]") {
    auto const readme = contents(in_sources("README.md"));
    for (auto const* command : legwork::commands())
        REQUIRE_THAT(readme, Contains("`legwork " + std::string(command->name)));
}
