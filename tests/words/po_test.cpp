// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a PO file is: the manual of GNU gettext, "The Format of PO Files".

#include "words/po.h"

#include "catch.h"

using namespace legwork;

namespace {
std::string wrong(std::string_view bytes) {
    auto const file = read_po(bytes);
    return file.wrong.empty() ? "" : file.wrong.front();
}
} // namespace

TEST_CASE("entries are read with their flags, over several lines, with what is escaped", "[words]") {
    auto const file = read_po("# a person's remark\n"
                              "msgid \"\"\n"
                              "msgstr \"\"\n"
                              "\"Language: fr\\n\"\n"
                              "\n"
                              "#. of the trade\n"
                              "#, python-brace-format, no-wrap\n"
                              "msgctxt \"a/b\"\n"
                              "msgid \"one \"\n"
                              "\"{two}\"\n"
                              "msgstr \"un\\t\\\"{two}\\\"\\\\\"\n"
                              "#~ msgid \"gone\"\n"
                              "#~ msgstr \"parti\"\n"
                              "\n"
                              "msgctxt \"c\"\n"
                              "msgid \"no blank line behind\"\n"
                              "msgstr \"\"\n"
                              "msgctxt \"d\"\n"
                              "msgid \"last\"\n"
                              "msgstr \"dernier\"");
    REQUIRE(file.wrong.empty());
    CHECK(file.head == "Language: fr\n");
    REQUIRE(file.entries.size() == 3);
    auto const& first = file.entries.front();
    CHECK(first.context == "a/b");
    CHECK(first.english == "one {two}");
    CHECK(first.translation == "un\t\"{two}\"\\");
    CHECK(first.flags == std::vector<std::string>{"python-brace-format", "no-wrap"});
    CHECK(first.line == 8);
    CHECK(file.entries[1].translation.empty());
    CHECK(file.entries[2].translation == "dernier");
}

TEST_CASE("a fuzzy translation is none", "[words]") {
    auto const file = read_po("#, fuzzy\nmsgctxt \"a\"\nmsgid \"one\"\nmsgstr \"deux\"\n");
    REQUIRE(file.entries.size() == 1);
    CHECK(file.entries.front().translation.empty());
}

TEST_CASE("what is no PO file is told with its line", "[words]") {
    CHECK(wrong("msgid \"a\"\nmsgstr \"b\"\n") == "line 2: msgctxt is missing");
    CHECK(wrong("msgctxt \"a\"\nmsgid \"a\"\n") == "line 2: msgstr is missing");
    CHECK(wrong("msgstr \"b\"\n") == "line 1: \"msgstr\" is not expected here");
    CHECK(wrong("msgctxt \"a\"\nmsgid \"a\"\nmsgid_plural \"as\"\n") ==
          "line 3: \"msgid_plural\" is not expected here");
    CHECK(wrong("\"b\"\n").starts_with("line 1: words in quotes"));
    CHECK(wrong("words\n").starts_with("line 1: a keyword"));
    for (auto const* quotes : {"\"a", "a\"", "\"a\" ", "\"a\"b\"", "\"\\x\"", "\"\\\""})
        CHECK(wrong("msgctxt \"a\"\nmsgid " + std::string(quotes) + "\nmsgstr \"b\"\n").starts_with("line 2: words"));
    std::string const one = "msgctxt \"a\"\nmsgid \"x\"\nmsgstr \"y\"\n";
    CHECK(wrong(one + "\n" + one) == "line 7: \"a\" stands twice");
}
