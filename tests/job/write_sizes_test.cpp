// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "job/job.h"
#include "job/made_text.h"
#include "job/write_sizes.h"

#include "catch.h"
#include <rapidcheck.h>

#include <algorithm>

using namespace legwork;

namespace {
// "A.breaker="15 A" A.segments[1].kind="14/2""
std::string in_short(std::vector<Edit> const& edits) {
    std::string all;
    for (Edit const& e : edits) {
        all += all.empty() ? "" : " ";
        all +=
            e.mark + "." + (e.segment ? "segments[" + std::to_string(*e.segment) + "]." : "") + e.key + "=" + e.value;
    }
    return all;
}
std::string written(std::string const& circuits, std::vector<SizesToWrite> const& sizes) {
    return in_short(edits_for(made::job_with(circuits), sizes));
}
} // namespace

TEST_CASE("sizes go to the keys that a circuit has", "[job][write]") {
    REQUIRE(written("[[circuit]]\nmark = \"A\"\n", {{"A", 15_A, {"14/2"}}}) == "A.breaker=\"15 A\" A.cable=\"14/2\"");
    REQUIRE(written("[[circuit]]\nmark = \"A\"\nfuse = \"?\"\n", {{"A", 15_A, {}}}) == "A.fuse=\"15 A\"");
    REQUIRE(written("[[circuit]]\nmark = \"A\"\nsegments = [{ kind = \"12/2\" }, { length = \"3 m\" }]\n",
                    {{"A", {}, {"", "14/2"}}}) == "A.segments[1].kind=\"14/2\"");
    REQUIRE(written("[[circuit]]\nmark = \"A\"\n", {{"B", 15_A, {"14/2"}}}).empty());
    REQUIRE(edits_for("[", {{"A", 15_A, {}}}).empty());
}

TEST_CASE("the cable of a pair is written once, where something is said of it", "[job][write]") {
    auto const pair = [](std::string const& a, std::string const& b) {
        return written("[[circuit]]\nmark = \"A\"\nmultiwire = \"K\"\n" + a +
                           "[[circuit]]\nmark = \"B\"\nmultiwire = \"K\"\n" + b,
                       {{"A", {}, {"14/3"}}, {"B", {}, {"14/3"}}});
    };
    REQUIRE(pair("", "") == "A.cable=\"14/3\"");
    REQUIRE(pair("", "length = \"3 m\"\n") == "B.cable=\"14/3\"");
    REQUIRE(pair("length = \"3 m\"\n", "cable = \"?\"\n") == "B.cable=\"14/3\"");
    REQUIRE(pair("cable = \"?\"\n", "cable = \"?\"\n") == "A.cable=\"14/3\" B.cable=\"14/3\"");
    REQUIRE(pair("cable = \"?\"\n", "segments = [{}, {}]\n") == "A.cable=\"14/3\" B.segments[0].kind=\"14/3\"");
}

namespace {
std::string any_keys(bool dc) {
    std::string keys;
    auto const one = [&](std::string const& text) {
        if (*rc::gen::arbitrary<bool>()) keys += text;
    };
    one(dc ? "fuse = '?'\n" : "breaker = \"?\" # b\n");
    one("name = \"Lamp\"\n");
    if (*rc::gen::arbitrary<bool>()) {
        one("length\t= \"3 m\"\n");
        one("\"cable\" = \"?\"\n");
    } else {
        one(*rc::gen::element<std::string>("segments = [{ kind = \"?\", length = \"3 m\" }]\n", "segments = [{},\n]\n",
                                           "[[circuit.segments]]\nkind = \"?\"\n", "[[circuit.segments]] # x\n"));
    }
    return keys;
}
} // namespace

TEST_CASE("whatever shape a pair is in, the job reads back with the sizes written", "[job][write]") {
    REQUIRE(rc::check([] {
        bool const dc = *rc::gen::arbitrary<bool>(), pair = !dc && *rc::gen::arbitrary<bool>();
        std::string const group = pair ? "multiwire = \"K\"\n" : "";
        auto text = made::job_with("[[circuit]]\nmark = \"A\"\n" + group + any_keys(dc) +
                                   "[[circuit]]\nmark = \"B\"\n" + group + any_keys(dc));
        if (dc) text.replace(text.find("120/240"), 7, "12 V DC");
        if (*rc::gen::arbitrary<bool>()) text.pop_back();
        RC_LOG() << text << "\n---\n";
        auto const before = made::good(text);
        auto const edits = edits_for(text, {{"A", 20_A, {"12/3"}}, {"B", 20_A, {"12/3"}}});
        auto const edited = edit_job(text, edits);
        RC_LOG() << edited.bytes << edited.why;
        RC_ASSERT(edited.why.empty());
        auto after = made::good(edited.bytes);
        for (std::size_t i = 0; i < 2; ++i) {
            typed::Circuit const &was = before.circuits[i], &is = after.circuits[i];
            RC_ASSERT(is.breaker == 20_A);
            RC_ASSERT(is.run.front().kind == "12/3");
            RC_ASSERT(is.asked.empty());
            RC_ASSERT(is.name == was.name);
            RC_ASSERT((was.run.empty() || is.run.front().length == was.run.front().length));
            RC_ASSERT(is.run.size() == std::max<std::size_t>(1, was.run.size()));
        }
    }));
}
