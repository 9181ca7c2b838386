// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "toml/text.h"

#include "catch.h"
#include <fmt/format.h>

using namespace legwork;

namespace {

// A tree in short: {"a": 1, "b": ["x", 2.5]}.
std::string shown(TomlValue const& v);
std::string shown(TomlTable const& table) {
    std::string text;
    for (auto const& e : table) text += fmt::format("{}\"{}\": {}", text.empty() ? "" : ", ", e.key, shown(e.value));
    return "{" + text + "}";
}
std::string shown(TomlValue const& v) {
    if (auto const* b = std::get_if<bool>(&v.is)) return *b ? "true" : "false";
    if (auto const* i = std::get_if<std::int64_t>(&v.is)) return std::to_string(*i);
    if (auto const* d = std::get_if<double>(&v.is)) return fmt::format("{:g}", *d);
    if (auto const* s = std::get_if<std::string>(&v.is)) return "<" + *s + ">";
    if (auto const* d = std::get_if<TomlDate>(&v.is)) return fmt::format("{}-{}-{}", d->year, d->month, d->day);
    if (std::holds_alternative<TomlTime>(v.is)) return "time";
    if (auto const* t = std::get_if<TomlTable>(&v.is)) return shown(*t);
    std::string text;
    for (auto const& one : std::get<TomlArray>(v.is)) text += (text.empty() ? "" : ", ") + shown(one);
    return "[" + text + "]";
}

struct Outcome {
    std::optional<TomlTable> root;
    std::vector<Problem> problems;
};
Outcome outcome(std::string_view bytes) {
    SourceText const source(bytes);
    Complaints out(source);
    auto root = parse_toml(bytes, out);
    return {std::move(root), out.in_file_order()};
}

} // namespace

TEST_CASE("a key and its value have places in characters", "[job][toml]") {
    std::string const bytes =
        "\xEF\xBB\xBF# remark\r\n\"\xC3\xBC\xC3\xBC\" = 1 # one\r\n\r\n[[circuit]] # first\r\nmark = \"K1\"\r\n";
    SourceText const source(bytes);
    Complaints out(source);
    auto const root = parse_toml(bytes, out);
    REQUIRE(root);
    auto const place = source.place((*root)[0].value.begin);
    REQUIRE(place.line == 2);
    REQUIRE(place.column == 8);
    auto const& circuit = std::get<TomlArray>(find(*root, "circuit")->is).at(0);
    REQUIRE(source.place(circuit.begin).line == 4);
    REQUIRE(bytes.substr(circuit.begin, circuit.end - circuit.begin) == "[[circuit]]");
}

TEST_CASE("a value's bytes are its own text, comments or not", "[job][toml]") {
    std::string const bytes = "a=1# one\nb = [ # two\n 1, # three\n 'x' ] # four\nc = { d = \"\"\"e\nf\"\"\" }#\n";
    auto const root = outcome(bytes).root;
    REQUIRE(root);
    auto const text = [&](std::string_view key) {
        auto const* v = find(*root, key);
        return bytes.substr(v->begin, v->end - v->begin);
    };
    REQUIRE(text("a") == "1");
    REQUIRE(text("b") == "[ # two\n 1, # three\n 'x' ]");
    REQUIRE(text("c") == "{ d = \"\"\"e\nf\"\"\" }");
}

TEST_CASE("the examples of the TOML standard read as it says", "[job][toml]") {
    // Source: TOML v1.0.0 (toml.io), the example of the section named; from memory.
    auto const [section, bytes, tree] = GENERATE(table<char const*, char const*, char const*>({
        {"Comment", "# This is a full-line comment\nkey = \"value\"  # This is a comment\nanother = \"# no\"\n",
         "{\"key\": <value>, \"another\": <# no>}"},
        {"Keys, bare", "key = 1\nbare_key = 2\nbare-key = 3\n1234 = 4\n",
         "{\"key\": 1, \"bare_key\": 2, \"bare-key\": 3, \"1234\": 4}"},
        {"Keys, quoted",
         "\"127.0.0.1\" = 1\n\"character encoding\" = 2\n\"\xCA\x8E\xC7\x9D\xCA\x9E\" = 3\n'key2' = 4\n'quoted "
         "\"value\"' = 5\n\"\" = 6\n",
         "{\"127.0.0.1\": 1, \"character encoding\": 2, \"\xCA\x8E\xC7\x9D\xCA\x9E\": 3, \"key2\": 4, \"quoted "
         "\"value\"\": 5, \"\": 6}"},
        {"Keys, dotted", "physical.color = \"orange\"\nphysical.shape = \"round\"\nsite.\"google.com\" = true\n",
         "{\"physical\": {\"color\": <orange>, \"shape\": <round>}, \"site\": {\"google.com\": true}}"},
        {"Keys, blanks around the dot",
         "fruit.name = \"banana\"\nfruit. color = \"yellow\"\nfruit . flavor = \"banana\"\n",
         "{\"fruit\": {\"name\": <banana>, \"color\": <yellow>, \"flavor\": <banana>}}"},
        {"Keys, digits", "3.14159 = \"pi\"\n", "{\"3\": {\"14159\": <pi>}}"},
        {"Keys, out of order", "apple.type = 1\norange.type = 2\napple.skin = 3\n",
         "{\"apple\": {\"type\": 1, \"skin\": 3}, \"orange\": {\"type\": 2}}"},
        {"String, basic", "str = \"I'm a string. \\\"You can quote me\\\". Name\\tJos\\u00E9\\nLocation\\tSF.\"\n",
         "{\"str\": <I'm a string. \"You can quote me\". Name\tJos\xC3\xA9\nLocation\tSF.>}"},
        {"String, several lines", "str1 = \"\"\"\nRoses are red\nViolets are blue\"\"\"\n",
         "{\"str1\": <Roses are red\nViolets are blue>}"},
        {"String, line ending backslash",
         "str2 = \"\"\"\nThe quick brown \\\n\n\n  fox jumps over \\\n    the lazy dog.\"\"\"\n",
         "{\"str2\": <The quick brown fox jumps over the lazy dog.>}"},
        {"String, line ending backslash with blanks",
         "str3 = \"\"\"\\\n       The quick brown \\   \n       fox.\\\n       \"\"\"\n",
         "{\"str3\": <The quick brown fox.>}"},
        {"String, quotes within", "str4 = \"\"\"Here are two quotation marks: \"\". Simple enough.\"\"\"\n",
         "{\"str4\": <Here are two quotation marks: \"\". Simple enough.>}"},
        {"String, three quotes", "str5 = \"\"\"Here are three quotation marks: \"\"\\\".\"\"\"\n",
         "{\"str5\": <Here are three quotation marks: \"\"\".>}"},
        {"String, quotes at the ends", "str7 = \"\"\"\"This,\" she said, \"is just a pointless statement.\"\"\"\"\n",
         "{\"str7\": <\"This,\" she said, \"is just a pointless statement.\">}"},
        {"String, literal", "winpath  = 'C:\\Users\\nodejs\\templates'\nregex = '<\\i\\c*\\s*>'\n",
         "{\"winpath\": <C:\\Users\\nodejs\\templates>, \"regex\": <<\\i\\c*\\s*>>}"},
        {"String, literal of several lines",
         "regex2 = '''I [dw]on't need \\d{2} apples'''\nlines  = '''\nThe first newline is\ntrimmed.\n'''\n",
         "{\"regex2\": <I [dw]on't need \\d{2} apples>, \"lines\": <The first newline is\ntrimmed.\n>}"},
        {"String, apostrophes at the ends", "str = ''''That,' she said, 'is still pointless.''''\n",
         "{\"str\": <'That,' she said, 'is still pointless.'>}"},
        {"Integer", "a = +99\nb = 42\nc = 0\nd = -17\ne = 1_000\nf = 5_349_221\ng = 1_2_3_4_5\n",
         "{\"a\": 99, \"b\": 42, \"c\": 0, \"d\": -17, \"e\": 1000, \"f\": 5349221, \"g\": 12345}"},
        {"Integer, other bases", "a = 0xDEADBEEF\nb = 0xdead_beef\nc = 0o01234567\nd = 0o755\ne = 0b11010110\n",
         "{\"a\": 3735928559, \"b\": 3735928559, \"c\": 342391, \"d\": 493, \"e\": 214}"},
        {"Integer, 64 bits", "a = 9223372036854775807\nb = -9223372036854775808\n",
         "{\"a\": 9223372036854775807, \"b\": -9223372036854775808}"},
        {"Float",
         "a = +1.0\nb = 3.1415\nc = -0.01\nd = 5e+22\ne = 1e06\nf = -2E-2\ng = 6.626e-34\nh = 224_617.445_991_228\n",
         "{\"a\": 1, \"b\": 3.1415, \"c\": -0.01, \"d\": 5e+22, \"e\": 1e+06, \"f\": -0.02, \"g\": 6.626e-34, \"h\": "
         "224617}"},
        {"Float, special", "a = inf\nb = -inf\nc = nan\n", "{\"a\": inf, \"b\": -inf, \"c\": nan}"},
        {"Date-Time",
         "a = 1979-05-27T07:32:00Z\nb = 1979-05-27T00:32:00-07:00\nc = 1979-05-27T00:32:00.999999-07:00\nd = "
         "1979-05-27 07:32:00Z\n",
         "{\"a\": time, \"b\": time, \"c\": time, \"d\": time}"},
        {"Date-Time, local", "a = 1979-05-27T07:32:00\nb = 1979-05-27\nc = 07:32:00\nd = 00:32:00.999999\n",
         "{\"a\": time, \"b\": 1979-5-27, \"c\": time, \"d\": time}"},
        {"Array",
         "a = [ 1, 2, 3 ]\nb = [ [ 1, 2 ], [\"a\", \"b\"] ]\nc = [ 0.1, 1 ]\nd = [\n  1,\n  2, # this is ok\n]\n",
         "{\"a\": [1, 2, 3], \"b\": [[1, 2], [<a>, <b>]], \"c\": [0.1, 1], \"d\": [1, 2]}"},
        {"Table", "[table-1]\nkey1 = 1\n\n[dog.\"tater.man\"]\ntype.name = \"pug\"\n",
         "{\"table-1\": {\"key1\": 1}, \"dog\": {\"tater.man\": {\"type\": {\"name\": <pug>}}}}"},
        {"Table, blanks in the header", "[ d.e.f ]\n[ g .  h  . i ]\n[ j . \"\xCA\x9E\" . 'l' ]\n",
         "{\"d\": {\"e\": {\"f\": {}}}, \"g\": {\"h\": {\"i\": {}}}, \"j\": {\"\xCA\x9E\": {\"l\": {}}}}"},
        {"Table, defined after its child", "[x.y.z.w]\n[x]\na = 1\n",
         "{\"x\": {\"y\": {\"z\": {\"w\": {}}}, \"a\": 1}}"},
        {"Inline Table",
         "name = { first = \"Tom\", last = \"P\" }\npoint = { x = 1, y = 2 }\nanimal = { type.name = \"pug\" }\nempty "
         "= {}\n",
         "{\"name\": {\"first\": <Tom>, \"last\": <P>}, \"point\": {\"x\": 1, \"y\": 2}, \"animal\": {\"type\": "
         "{\"name\": <pug>}}, \"empty\": {}}"},
        {"Array of Tables",
         "[[products]]\nname = \"Hammer\"\n\n[[products]]  # empty table\n\n[[products]]\nname = \"Nail\"\n",
         "{\"products\": [{\"name\": <Hammer>}, {}, {\"name\": <Nail>}]}"},
        {"Array of Tables, nested",
         "[[fruits]]\nname = \"apple\"\n[fruits.physical]\ncolor = \"red\"\n[[fruits.varieties]]\nname = "
         "\"a\"\n[[fruits.varieties]]\nname = \"b\"\n[[fruits]]\nname = \"banana\"\n",
         "{\"fruits\": [{\"name\": <apple>, \"physical\": {\"color\": <red>}, \"varieties\": [{\"name\": <a>}, "
         "{\"name\": <b>}]}, {\"name\": <banana>}]}"},
        {"empty", "", "{}"},
        {"no final newline", "a = 1", "{\"a\": 1}"},
        {"CRLF", "a = 1\r\nb = \"\"\"x\r\ny\"\"\"\r\n", "{\"a\": 1, \"b\": <x\r\ny>}"},
    }));
    CAPTURE(section, bytes);
    auto const read = outcome(bytes);
    if (!read.problems.empty()) FAIL(render(read.problems.front(), "example"));
    REQUIRE(shown(*read.root) == tree);
}

TEST_CASE("what the TOML standard calls invalid is refused in its place", "[job][toml]") {
    // Source: TOML v1.0.0 (toml.io), the lines it marks INVALID; from memory. Then mistakes people make.
    auto const [bytes, line, column, message] = GENERATE(table<char const*, int, int, char const*>({
        {"key = # INVALID\n", 1, 7, "value is missing"},
        {"first = \"Tom\" last = \"P\"\n", 1, 15, "behind the value"},
        {"= \"no key name\"\n", 1, 1, "key is expected"},
        {"name = \"Tom\"\nname = \"P\"\n", 2, 1, "second time"},
        {"spelling = 1\n\"spelling\" = 2\n", 2, 1, "second time"},
        {"fruit.apple = 1\nfruit.apple.smooth = true\n", 2, 1, "second time"},
        {"str5 = \"\"\"three quotation marks: \"\"\".\"\"\"\n", 1, 37, "behind the value"},
        {"a = .7\n", 1, 5, "no value"},
        {"a = 7.\n", 1, 5, "no value"},
        {"a = 3.e+20\n", 1, 5, "no value"},
        {"a = 007\n", 1, 5, "no value"},
        {"a = 1__0\n", 1, 5, "no value"},
        {"a = 0xG\n", 1, 5, "no value"},
        {"a = +0x1\n", 1, 5, "no value"},
        {"[fruit]\napple = 1\n[fruit]\norange = 1\n", 3, 1, "second time"},
        {"[fruit]\napple = 1\n[fruit.apple]\nx = 1\n", 3, 1, "second time"},
        {"[product]\ntype = { name = \"Nail\" }\ntype.edible = false\n", 3, 1, "second time"},
        {"[product]\ntype.name = \"Nail\"\ntype = { edible = false }\n", 3, 1, "second time"},
        {"[fruit.physical]\ncolor = \"red\"\n[[fruit]]\nname = \"apple\"\n", 3, 1, "second time"},
        {"fruits = []\n[[fruits]]\n", 2, 1, "second time"},
        {"a = { x = 1,\n y = 2 }\n", 1, 13, "one line"},
        {"a = { x = 1, }\n", 1, 14, "comma"},
        {"a = [ 1 2 ]\n", 1, 9, "comma"},
        {"a = [ 1,, 2 ]\n", 1, 9, "value is missing"},
        {"a = \"x\ny\"\n", 1, 5, "not closed"},
        {"a = \"\\q\"\n", 1, 6, "backslash"},
        {"a = \"\\uD800\"\n", 1, 6, "no character"},
        {"a = \"\\u12\"\n", 1, 6, "4 and 8 digits"},
        {"a = '''x\n", 1, 5, "not closed"},
        {"[a\nb = 1\n", 1, 3, "header"},
        {"[[a]\nb = 1\n", 1, 4, "header"},
        {"[a] b = 1\n", 1, 5, "behind the value"},
        {"[]\n", 1, 2, "key is expected"},
        {"a = 9223372036854775808\n", 1, 5, "too large"},
        {"a = -9223372036854775809\n", 1, 5, "too large"},
        {"a = 0xFFFFFFFFFFFFFFFFF\n", 1, 5, "too large"},
        {"a = 2026-02-30\n", 1, 5, "no date"},
        {"a = 2026-5-2\n", 1, 5, "no value"},
        {"a = 25:00:00\n", 1, 5, "no value"},
        {"a = True\n", 1, 5, "no value"},
        {"a = yes\n", 1, 5, "no value"},
        {"breaker = 20 A\n", 1, 14, "behind the value"},
        {"a = K1\n", 1, 5, "no value"},
        {"a 1\n", 1, 3, "has no value"},
        {"a = \xE2\x80\x9Cx\xE2\x80\x9D\n", 1, 5, "curly"},
        {"a = \"\x01\"\n", 1, 6, "control character"},
        {"a = 1\rb = 2\n", 1, 6, "control character"},
        {"\xC3\xBC = 1\n", 1, 1, "key is expected"},
        {"a = \"\xC3\xBC\xFF\"\n", 1, 7, "no UTF-8"},
        {"a = \"\xC0\xAF\"\n", 1, 6, "no UTF-8"},
        {"\xFF\xFE"
         "a",
         1, 1, "UTF-16"},
        {"a = [1, 2\n", 1, 5, "not closed"},
        {"a = [\n1,\n", 1, 5, "not closed"},
        {"a.b = 1\n[a.b.c]\n", 2, 1, "second time"},
        {"\"\"\"a\"\"\" = 1\n", 1, 1, "several lines"},
    }));
    CAPTURE(bytes);
    auto const read = outcome(bytes);
    REQUIRE_FALSE(read.root);
    REQUIRE(read.problems.size() == 1);
    auto const& p = read.problems.front();
    CHECK_THAT(p.message, Contains(message));
    CHECK(p.fix != "");
    CHECK(p.place.line == line);
    CHECK(p.place.column == column);
}
