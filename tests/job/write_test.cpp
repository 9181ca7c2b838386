// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "job/made_text.h"
#include "job/write.h"

#include "catch.h"
#include <map>
#include <rapidcheck.h>
#include <sstream>
#include <toml.hpp>

using namespace legwork;

namespace {

struct Example {
    char const* shape;
    std::string before;
    std::vector<Edit> edits;
    std::string after;
};

} // namespace

TEST_CASE("an edit changes the value and nothing else", "[job][write]") {
    std::vector<Example> const examples{
        {"a value that is there",
         "[[circuit]]\nmark = \"A\"\nspace = 3 # stays\n",
         {{"A", "space", "7"}},
         "[[circuit]]\nmark = \"A\"\nspace = 7 # stays\n"},
        {"a value of another kind",
         "[[circuit]]\nmark = \"A\"\nspace =   3\n",
         {{"A", "space", "\"7b\""}},
         "[[circuit]]\nmark = \"A\"\nspace =   \"7b\"\n"},
        {"a key that is not there",
         "[[circuit]]\nmark = \"A\"\nload = \"1 VA\"\n\n[[circuit]]\nmark = \"B\"\n",
         {{"A", "space", "7"}},
         "[[circuit]]\nmark = \"A\"\nload = \"1 VA\"\nspace = 7\n\n[[circuit]]\nmark = \"B\"\n"},
        {"equals signs in a column",
         "[[circuit]]\nmark    = \"A\"\nbreaker = \"15 A\"\n",
         {{"A", "space", "7"}},
         "[[circuit]]\nmark    = \"A\"\nbreaker = \"15 A\"\nspace   = 7\n"},
        {"no blanks around the equals sign",
         "[[circuit]]\nmark=\"A\"\n",
         {{"A", "space", "7"}},
         "[[circuit]]\nmark=\"A\"\nspace=7\n"},
        {"tabs",
         "[[circuit]]\n\tmark\t=\t\"A\"\t# x\n",
         {{"A", "space", "7"}},
         "[[circuit]]\n\tmark\t=\t\"A\"\t# x\n\tspace\t=\t7\n"},
        {"CRLF",
         "[[circuit]]\r\nmark = \"A\"\r\nx = 1\r\n",
         {{"A", "space", "7"}},
         "[[circuit]]\r\nmark = \"A\"\r\nx = 1\r\nspace = 7\r\n"},
        {"no final newline",
         "[[circuit]]\nmark = \"A\"",
         {{"A", "space", "7"}},
         "[[circuit]]\nmark = \"A\"\nspace = 7"},
        {"no final newline, CRLF, a remark",
         "[[circuit]]\r\nmark = \"A\" # x",
         {{"A", "space", "7"}},
         "[[circuit]]\r\nmark = \"A\" # x\r\nspace = 7"},
        {"inline tables",
         "circuit = [{ mark = \"A\" }, {mark=\"B\",space=1}]\n",
         {{"A", "space", "7"}, {"B", "space", "9"}},
         "circuit = [{ mark = \"A\", space = 7 }, {mark=\"B\",space=9}]\n"},
        {"inline tables over lines",
         "circuit = [ # all\n  { mark = \"A\", outlets = [\n    \"5-20R\", # one\n  ] }, # a\n]\n",
         {{"A", "space", "7"}},
         "circuit = [ # all\n  { mark = \"A\", outlets = [\n    \"5-20R\", # one\n  ], space = 7 }, # a\n]\n"},
        {"quoted keys",
         "[[\"circuit\"]]\n'mark' = 'A'\n\"sp\\u0061ce\" = 3\n",
         {{"A", "space", "7"}},
         "[[\"circuit\"]]\n'mark' = 'A'\n\"sp\\u0061ce\" = 7\n"},
        {"texts that look like the file",
         "[[circuit]]\nnote = \"\"\"\\\n[[circuit]]\\\nmark = 'A'\\\nspace = 3\\\n\"\"\"\nmark = \"A\" # mark = \"B\" "
         "space = 4\n",
         {{"A", "space", "7"}},
         "[[circuit]]\nnote = \"\"\"\\\n[[circuit]]\\\nmark = 'A'\\\nspace = 3\\\n\"\"\"\nmark = \"A\" # mark = \"B\" "
         "space = 4\nspace = 7\n"},
        {"tables of its own behind",
         "[[circuit]]\nmark = \"A\"\n\n[[circuit.segments]]\nkind = \"12/3\"\n[job]\nx = 1\n",
         {{"A", "space", "7"}},
         "[[circuit]]\nmark = \"A\"\nspace = 7\n\n[[circuit.segments]]\nkind = \"12/3\"\n[job]\nx = 1\n"},
        {"a last value of several lines",
         "[[circuit]]\nmark = \"A\"\noutlets = [\n  \"5-20R\",\n] # end\n# remark\n",
         {{"A", "space", "7"}},
         "[[circuit]]\nmark = \"A\"\noutlets = [\n  \"5-20R\",\n] # end\nspace = 7\n# remark\n"},
        {"a byte order mark",
         "\xEF\xBB\xBF[[circuit]]\nmark = \"A\"\n",
         {{"A", "space", "7"}},
         "\xEF\xBB\xBF[[circuit]]\nmark = \"A\"\nspace = 7\n"},
        {"two keys of one circuit",
         "[[circuit]]\nmark = \"A\"\n",
         {{"A", "breaker", "\"15 A\""}, {"A", "cable", "\"14/2\""}},
         "[[circuit]]\nmark = \"A\"\nbreaker = \"15 A\"\ncable = \"14/2\"\n"},
        {"a question",
         "[[circuit]]\nmark = \"A\"\nbreaker = \"?\" # go and look\n",
         {{"A", "breaker", "\"15 A\""}},
         "[[circuit]]\nmark = \"A\"\nbreaker = \"15 A\" # go and look\n"},
        {"segments in a line",
         "[[circuit]]\nmark = \"A\"\nsegments = [{ kind = \"?\", length = \"1 m\" }, {length=\"2 m\"}, {}] # x\n",
         {{"A", "kind", "\"12/2\"", 0}, {"A", "kind", "\"14/2\"", 1}, {"A", "kind", "\"14/3\"", 2}},
         "[[circuit]]\nmark = \"A\"\nsegments = [{ kind = \"12/2\", length = \"1 m\" }, {length=\"2 m\", "
         "kind=\"14/2\"}, { kind = \"14/3\" }] # x\n"},
        {"segments under headers",
         "[[circuit]]\nmark = \"A\"\n[[circuit.segments]] # first\n\tlength\t= \"1 m\"\n[[circuit.segments]] # bare\n"
         "[job]\nx = 1\n",
         {{"A", "kind", "\"12/2\"", 0}, {"A", "kind", "\"14/2\"", 1}},
         "[[circuit]]\nmark = \"A\"\n[[circuit.segments]] # first\n\tlength\t= \"1 m\"\n\tkind\t= \"12/2\"\n"
         "[[circuit.segments]] # bare\nkind = \"14/2\"\n[job]\nx = 1\n"},
        {"a last header with nothing behind it, CRLF",
         "[[circuit]]\r\nmark = \"A\"\r\n[[circuit.segments]]",
         {{"A", "kind", "\"12/2\"", 0}},
         "[[circuit]]\r\nmark = \"A\"\r\n[[circuit.segments]]\r\nkind = \"12/2\""},
        {"no edit", "# x\n", {}, "# x\n"},
    };
    for (auto const& e : examples) {
        INFO(e.shape);
        auto const edited = edit_job(e.before, e.edits);
        CHECK(edited.why == "");
        CHECK(edited.bytes == e.after);
    }
}

TEST_CASE("an edit that cannot be made says why and gives no bytes", "[job][write]") {
    std::string const job = "[[circuit]]\nmark = \"A\"\n[[circuit.segments]]\nkind = \"12/3\"\n";
    auto const why = [&](std::vector<Edit> const& edits) {
        auto const edited = edit_job(job, edits);
        CHECK(edited.bytes.empty());
        return edited.why;
    };
    CHECK_THAT(why({{"B", "space", "7"}}), Contains("no circuit \"B\""));
    CHECK_THAT(why({{"A", "space", "7"}, {"A", "space", "9"}}), Contains("twice"));
    CHECK_THAT(why({{"A", "segments", "[]"}}), Contains("tables of its own"));
    CHECK_THAT(why({{"A", "kind", "\"12/2\"", 1}}), Contains("no segment 2 of circuit \"A\""));
    CHECK_THAT(edit_job("[[circuit]]\nmark = \"A\"\n", {{"A", "kind", "1", 0}}).why, Contains("no segment 1"));
    for (auto const* value : {"", "7 # x", "7\n", "7\nmark = 1", "x", "\"", "7, y = 1", " 7", "[\n1]"}) {
        INFO(value);
        CHECK_THAT(why({{"A", "space", value}}), Contains("cannot be written"));
    }
    CHECK_THAT(why({{"A", "mark", "\"B\""}}), Contains("cannot be written"));
    CHECK_THAT(why({{"A", "a b", "1"}}), Contains("cannot be written"));
    CHECK_THAT(edit_job("[[circuit]\n", {}).why, Contains("not valid"));
    CHECK_THAT(edit_job("circuit = 5\n", {{"A", "space", "7"}}).why, Contains("no circuit"));
}

TEST_CASE("a file that an edit would make larger than a job may be is refused with that reason", "[job][write]") {
    constexpr std::size_t largest = std::size_t{1} << 20; // README, Limits
    std::string const table = "[[circuit]]\nmark = \"A\"\n", line = "space = 7\n";
    auto const filled = [&](std::size_t size) {
        return "#" + std::string(size - table.size() - 2, '-') + "\n" + table;
    };
    CHECK(edit_job(filled(largest - line.size()), {{"A", "space", "7"}}).bytes.size() == largest);
    for (auto const size : {largest - line.size() + 1, largest}) {
        auto const edited = edit_job(filled(size), {{"A", "space", "7"}});
        CHECK(edited.bytes.empty());
        CHECK_THAT(edited.why, Contains("could not be read any more") && Contains("1048576 at most"));
    }
}

namespace {

// Writes the same circuits in one of the shapes that TOML allows.
class Writer {
public:
    static rc::Gen<std::string> job(int circuits) {
        return rc::gen::exec([circuits] {
            Writer w;
            w.crlf_ = *rc::gen::arbitrary<bool>();
            w.inline_ = *rc::gen::inRange(0, 3) == 0;
            w.indent_ = *rc::gen::element<std::string>("", "  ", "\t");
            w.equals_ = *rc::gen::element<std::string>("=", " = ", "\t=\t", "   = ");
            return w.whole(circuits);
        });
    }

private:
    std::string whole(int circuits) {
        std::string text = *rc::gen::element<std::string>("", "# first\n", "\xEF\xBB\xBF");
        if (inline_)
            text += "circuit = [\n";
        else
            text += "[job]\ncode = \"CE 2024\"\n";
        for (int i = 0; i < circuits; ++i) text += circuit(i);
        if (inline_) text += "]\n[job]\ncode = \"CE 2024\"\n";
        if (!inline_ && *rc::gen::arbitrary<bool>()) text.pop_back(); // no final newline
        if (crlf_) {
            std::string with;
            for (char const c : text) with += c == '\n' ? std::string("\r\n") : std::string(1, c);
            return with;
        }
        return text;
    }

    std::string circuit(int i) {
        std::vector<std::string> pairs{key("mark") + equals_ + text_of("C" + std::to_string(i))};
        if (*rc::gen::arbitrary<bool>())
            pairs.push_back(key("space") + equals_ + *rc::gen::element<std::string>("3", "\"7b\"", "0x0F", "'12'"));
        for (auto const* size : {"breaker", "cable"})
            if (*rc::gen::arbitrary<bool>())
                pairs.push_back(
                    key(size) + equals_ +
                    *rc::gen::element<std::string>("\"?\"", "'?'", "\"\"\"?\"\"\"", "\"\\u003F\"", "\"20 A\""));
        if (*rc::gen::arbitrary<bool>())
            pairs.push_back(key("name") + equals_ + text_of("[[circuit]] mark = \"C0\" # \xC3\xA9"));
        if (*rc::gen::arbitrary<bool>())
            pairs.push_back("note" + equals_ +
                            (inline_ ? "'space = 3'" : "'''\nspace = 3\n[[circuit]]\nmark = \"C1\"'''"));
        if (*rc::gen::arbitrary<bool>()) pairs.push_back("outlets" + equals_ + "[ \"5-20R\", # \"]\n  '5-15R' ]");
        if (*rc::gen::arbitrary<bool>()) pairs.push_back("a.b" + equals_ + "1.50");
        auto const turn = *rc::gen::inRange<std::size_t>(0, pairs.size());
        std::rotate(pairs.begin(), pairs.begin() + static_cast<std::ptrdiff_t>(turn), pairs.end());
        return inline_ ? in_line(pairs) : in_lines(pairs);
    }

    std::string in_line(std::vector<std::string> const& pairs) {
        std::string text = "  {";
        for (std::size_t i = 0; i < pairs.size(); ++i) text += (i ? ", " : " ") + pairs[i];
        return text + *rc::gen::element<std::string>(" },\n", "}, # mark = \"C1\"\n", "\t},\n");
    }

    std::string in_lines(std::vector<std::string> const& pairs) {
        std::string text =
            *rc::gen::element<std::string>("[[circuit]]\n", "\n[[ circuit ]] # a\n", "[[\"circuit\"]]\n");
        for (auto const& p : pairs)
            text += indent_ + p + *rc::gen::element<std::string>("\n", " # space = 9\n", "\n\n# mark = 1\n");
        if (*rc::gen::inRange(0, 4) == 0) text += "[[circuit.segments]]\nkind = \"12/3\"\nspace = 5\n";
        return text;
    }

    static std::string key(std::string const& name) {
        return *rc::gen::element<std::string>(std::string(name), "\"" + name + "\"", "'" + name + "'");
    }

    static std::string text_of(std::string const& words) {
        std::string escaped;
        for (char const c : words) escaped += c == '"' ? std::string("\\\"") : std::string(1, c);
        return *rc::gen::element<std::string>("\"" + escaped + "\"", "'" + words + "'", "'''" + words + "'''",
                                              "\"\"\"" + escaped + "\"\"\"");
    }

    bool crlf_ = false, inline_ = false;
    std::string indent_, equals_;
};

// Without the comments, which version 4 of the library keeps and compares.
#if defined(TOML11_VERSION_MAJOR) && TOML11_VERSION_MAJOR >= 4
struct Bare : toml::type_config {
    using comment_type = toml::discard_comments;
};
using Read = toml::basic_value<Bare>;
Read read_toml(std::istream& stream, char const* name) { return toml::parse<Bare>(stream, name); }
#else
using Read = toml::value;
Read read_toml(std::istream& stream, char const* name) { return toml::parse(stream, name); }
#endif

Read parsed(std::string const& bytes) {
    std::istringstream stream(bytes);
    return read_toml(stream, "edited");
}

// Bytes at the front and at the back that two texts have in common, without counting any twice.
std::size_t common(std::string const& a, std::string const& b) {
    std::size_t front = 0, back = 0;
    auto const least = std::min(a.size(), b.size());
    while (front < least && a[front] == b[front]) ++front;
    while (back < least - front && a[a.size() - 1 - back] == b[b.size() - 1 - back]) ++back;
    return front + back;
}

} // namespace

TEST_CASE("in any shape an edit changes one value, as the library reads it", "[job][write]") {
    // Read before and after by toml11 itself, past the door that the editor uses.
    REQUIRE(rc::check([] {
        int const circuits = *rc::gen::inRange(1, 4);
        auto const before = *Writer::job(circuits);
        auto const target = static_cast<std::size_t>(*rc::gen::inRange(0, circuits));
        auto const key = *rc::gen::element<std::string>("space", "breaker", "cable");
        auto const value = *rc::gen::element<std::string>("7", "\"11a\"", "[1, 2]", "\"20 A\"", "\"1/0/3\"");
        RC_LOG() << before << "\n---\n";
        auto const edited = edit_job(before, {{"C" + std::to_string(target), key, value}});
        RC_ASSERT(edited.why == "");
        auto wanted = parsed(before);
        auto& table = wanted.as_table().at("circuit").as_array().at(target).as_table();
        std::size_t const gone = table.count(key) ? 8 : 0; // the longest value that may give way
        std::istringstream stream("v = " + value);
        table[key] = read_toml(stream, "value").as_table().at("v");
        RC_ASSERT(parsed(edited.bytes) == wanted);
        RC_ASSERT(common(before, edited.bytes) + gone >= before.size());
    }));
}

TEST_CASE("many edits at once leave each circuit with its own", "[job][write]") {
    REQUIRE(rc::check([] {
        auto const before = *Writer::job(5);
        std::vector<Edit> edits;
        for (int i = 4; i >= 0; --i)
            for (auto const* key : {"space", "breaker", "cable"})
                edits.push_back({"C" + std::to_string(i), key, std::to_string(20 + i)});
        auto const edited = edit_job(before, edits);
        RC_ASSERT(edited.why == "");
        auto const read = parsed(edited.bytes);
        for (std::size_t i = 0; i < 5; ++i)
            for (auto const* key : {"space", "breaker", "cable"})
                RC_ASSERT(read.at("circuit").as_array().at(i).at(key).as_integer() ==
                          static_cast<std::int64_t>(20 + i));
        // And the way back gives the very same bytes when every circuit had a space already.
        auto const again = edit_job(edited.bytes, edits);
        RC_ASSERT(again.bytes == edited.bytes);
    }));
}

TEST_CASE("any bytes can be asked to be edited", "[job][write]") {
    REQUIRE(rc::check([](std::string const& bytes, std::string const& mark, std::string const& value) {
        auto const edited = edit_job(bytes, {{mark, "space", value}});
        RC_ASSERT(edited.bytes.empty() != edited.why.empty());
    }));
}
