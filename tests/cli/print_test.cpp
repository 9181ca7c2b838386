// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "calls.h"
#include "cli/command.h"
#include "output/files.h"
#include "source_folder.h"
#include "temporary_folder.h"

#include "catch.h"
#include <nlohmann/json.hpp>

#include <filesystem>
#include <set>

using nlohmann::json;
namespace fs = std::filesystem;

namespace {

std::set<std::string> names(TemporaryFolder const& folder, std::string const& below) {
    auto const all = folder.names(below);
    return {all.begin(), all.end()};
}

} // namespace

TEST_CASE("print leaves every sheet as PDF and SVG, and says what it wrote", "[cli][print]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", small_job());
    auto const called = call({"print", folder / "job.toml", "--out", folder / "a/b"});
    CAPTURE(called.out, called.err);
    REQUIRE(called.status == 0);
    auto const written = names(folder, "a/b");
    for (auto const* name : {"directory-Main.pdf", "directory-Main-1.svg", "labels.pdf", "labels-1.svg",
                             "tape-notes.pdf", "tape-notes-1.svg", "load-Main.pdf", "load-Main-1.svg"}) {
        REQUIRE(written.contains(name));
        REQUIRE_THAT(called.out, Contains(std::string("b/") + name));
    }
    REQUIRE(contents(folder / "a/b/labels.pdf").starts_with("%PDF-"));
    REQUIRE_THAT(contents(folder / "a/b/labels-1.svg"), Contains("<svg"));

    // The JSON lists the same files, and the same job gives the same bytes.
    auto const told = json::parse(call({"print", folder / "job.toml", "--out", folder / "c", "--json"}).out);
    std::set<std::string> listed;
    for (auto const& f : told["files"]) listed.insert(fs::path(f["path"].get<std::string>()).filename());
    REQUIRE(listed == written);
    for (auto const& name : written) REQUIRE(contents(folder / ("a/b/" + name)) == contents(folder / ("c/" + name)));
}

TEST_CASE("sheets, forms and formats are chosen", "[cli][print]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", small_job());
    REQUIRE(
        call({"print", folder / "job.toml", "--out", folder / "p", "--sheet", "directory", "--format", "png"}).status ==
        0);
    REQUIRE(names(folder, "p") == std::set<std::string>{"directory-Main-1.png"});
    REQUIRE(contents(folder / "p/directory-Main-1.png").starts_with("\x89PNG"));

    std::string other;
    auto const forms = json::parse(call({"forms", "--json"}).out);
    for (auto const& f : forms["forms"])
        if (f["sheet"] == "directory" && f["name"] != "directory-letter") other = f["name"];
    REQUIRE_FALSE(other.empty());
    REQUIRE(
        call({"print", folder / "job.toml", "--out", folder / "a", "--sheet", "directory", "--form", other}).status ==
        0);
    // A form of one's own, by path.
    fs::copy_file(in_sources("templates/" + other + ".toml"), folder / "mine.toml");
    REQUIRE(call({"print", folder / "job.toml", "--out", folder / "b", "--sheet", "directory", "--form",
                  folder / "mine.toml"})
                .status == 0);
    REQUIRE(contents(folder / "a/directory-Main-1.svg") == contents(folder / "b/directory-Main-1.svg"));

    legwork::write_file(folder / "broken.toml", "sheet = 7\n");
    for (auto const& form : {std::string("mine"), folder / "broken.toml", folder / "none.toml"}) {
        CAPTURE(form);
        auto const refused = call({"print", folder / "job.toml", "--out", folder / "x", "--form", form});
        REQUIRE(refused.status == 2);
        REQUIRE_FALSE(fs::exists(folder / "x"));
    }
    REQUIRE(call({"print", folder / "job.toml", "--out", folder / "x", "--sheet", "labels", "--form", other}).status ==
            2);
    REQUIRE(call({"print", folder / "job.toml", "--out", folder / "x", "--form", other, "--form", other}).status == 2);
}

TEST_CASE("a sheet on which nothing of the job stands is told", "[cli][print]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "van.toml", R"([job]
name = "Van"
code = "NEC 2023"
[[panel]]
name   = "Van"
spaces = 4
supply = "12 V DC"
)");
    auto const called = call({"print", folder / "van.toml", "--out", folder / "out", "--sheet", "load"});
    REQUIRE(called.status == 0);
    REQUIRE_THAT(called.err, Contains("nothing in this job stands on the sheet \"load\""));
    REQUIRE_FALSE(fs::exists(folder / "out"));
    REQUIRE(call({"print", folder / "van.toml", "--out", folder / "out"}).err.empty()); // all sheets: those there are
}

TEST_CASE("a job with an error finding is printed as a draft, exit 1", "[cli][print]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", faulty_job());
    auto const called = call({"print", folder / "job.toml", "--out", folder / "out"});
    REQUIRE(called.status == 1);
    REQUIRE_THAT(called.out, Contains("DRAFT"));
    REQUIRE(fs::exists(folder / "out/labels.pdf"));
}

TEST_CASE("panels whose names reduce to the same are told apart, on any disk", "[cli][print]") {
    TemporaryFolder const folder;
    auto job = small_job();
    job.replace(job.find("[[panel]]"), 9, R"([[panel]]
name   = "main"
spaces = 4
supply = "120/240"
main   = "30 A"

[[panel]])");
    for (auto at = job.find("[[circuit]]"); at != std::string::npos; at = job.find("[[circuit]]", at + 1))
        job.insert(at + 11, "\npanel = \"Main\"");
    legwork::write_file(folder / "job.toml", job);
    auto const called =
        call({"print", folder / "job.toml", "--out", folder / "out", "--sheet", "directory", "--format", "pdf"});
    CAPTURE(called.out, called.err);
    REQUIRE(names(folder, "out") == std::set<std::string>{"directory-main.pdf", "directory-Main-2.pdf"});
}

TEST_CASE("pages of an earlier, longer print are named", "[cli][print]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", small_job());
    legwork::write_file(folder / "out/directory-Main-2.svg", "old");
    auto const called = call({"print", folder / "job.toml", "--out", folder / "out"});
    REQUIRE(called.status == 0);
    REQUIRE_THAT(called.err, Contains("directory-Main-2.svg is from an earlier print"));
    REQUIRE(contents(folder / "out/directory-Main-2.svg") == "old");
}

TEST_CASE("what cannot be written exits 3, in words and in JSON", "[cli][print]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", small_job());
    legwork::write_file(folder / "plain", "");
    auto const called = call({"print", folder / "job.toml", "--out", folder / "plain"});
    REQUIRE(called.status == legwork::exit_not_written);
    REQUIRE_THAT(called.err, Contains("plain"));
    auto const told = call({"print", folder / "job.toml", "--out", folder / "plain", "--json"});
    REQUIRE(told.status == legwork::exit_not_written);
    REQUIRE(json::parse(told.out)["job"].is_null());
    REQUIRE(json::parse(told.out)["problems"].size() == 1);
}
