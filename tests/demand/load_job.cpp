// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "load_job.h"
#include "in_english.h"
#include "source_folder.h"

#include "balance/balance.h"
#include "building/resolve.h"
#include "codebook/stock/cables.h"
#include "codebook/stock/receptacles.h"
#include "codebook/stock/uses.h"
#include "job/read.h"

#include "catch.h"
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <fstream>
#include <iterator>

namespace made {

std::string bytes_of(std::string const& path) {
    std::ifstream file(in_sources(path), std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

typed::Job job_of(std::string const& bytes) {
    auto const guess = [](typed::Circuit const& c) { return guess_use(c.name, c.room, c.poles, c.outlets); };
    auto read = read_job(bytes, {editions(), use_names(), named_cable_kinds(), receptacle_names(), guess});
    std::string problems;
    for (Problem const& p : read.problems) problems += fmt::format("{}: {}\n", p.place.line, p.message);
    INFO(problems);
    REQUIRE(read.job);
    return std::move(*read.job);
}

typed::Job home(std::string const& code, std::string const& rest, std::string const& panel) {
    return job_of(
        fmt::format("[job]\ncode = \"{}\"\n[[panel]]\nname = \"Main\"\nspaces = 42\n{}\n{}\n", code, panel, rest));
}

std::string circuit(std::string const& mark, std::string const& use, std::string const& load, int poles,
                    std::string const& more) {
    return fmt::format("[[circuit]]\nmark = \"{}\"\n{}{}{}{}\n", mark,
                       use.empty() ? "" : fmt::format("use = \"{}\"\n", use),
                       load.empty() ? "" : fmt::format("load = \"{}\"\n", load),
                       poles == 1 ? "" : fmt::format("poles = {}\n", poles), more);
}

std::string notes(PanelLoad const& p) {
    return p.load ? fmt::format("{}", fmt::join(in_english(p.load->notes), "\n")) : "no load: " + p.why;
}

LoadStep const& step(LoadSteps const& steps, std::string const& words) {
    CAPTURE(words);
    auto const at = std::ranges::find_if(
        steps, [&](LoadStep const& s) { return in_english(s.item).find(words) != std::string::npos; });
    REQUIRE(at != steps.end());
    return *at;
}

namespace {
PanelLoad load_of(Building const& building, Panel const* panel, std::optional<LoadMethod> method) {
    REQUIRE(panel);
    auto load = panel_load(building, as_filed(building), *code_book(building.code), *panel, method);
    load.panel = nullptr; // it goes with the building
    return load;
}
} // namespace

PanelLoad panel_load_of(typed::Job const& job, std::string const& panel, std::optional<LoadMethod> method) {
    auto const building = resolve(job);
    return load_of(building, panel_named(building, panel), method);
}

PanelLoad service_load(typed::Job const& job, std::optional<LoadMethod> method) {
    auto const building = resolve(job);
    return load_of(building, service_panel(building), method);
}

std::string counted(LoadSteps const& steps) {
    std::string all;
    for (LoadStep const& s : steps)
        if (s.kind == LoadStep::Kind::counted)
            all += fmt::format("{}{} {}", all.empty() ? "" : "; ", s.va, in_english(s.item));
    return all;
}

std::string counted(PanelLoad const& p) { return p.load ? counted(p.load->steps) : "no load: " + p.why; }

} // namespace made
