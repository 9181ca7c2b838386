// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Any bytes give a job or problems: never an exception, a crash or a hang (the sanitizer build runs this too).
#include "job/made_text.h"
#include "units/utf8.h"

#include "catch.h"
#include <random>

using namespace legwork;

namespace {

// Holds for every text whatever.
void judge(std::string const& bytes) {
    auto const read = read_job(bytes, made::words());
    if (read.job.has_value() != read.problems.empty()) FAIL("neither job nor problems, or both: " << bytes);
    if (read.problems.size() > 201) FAIL("too many problems: " << bytes);
    for (auto const& p : read.problems) {
        auto const shown = render(p, "job.toml");
        if (p.message.empty() || p.fix.empty() || p.place.line < 1 || p.place.column < 1 || first_bad_utf8(shown))
            FAIL("an incomplete problem: " << shown << "\nin: " << bytes);
    }
}

std::string realistic() { return made::file("examples/boathouse.toml"); }

class Dice {
public:
    explicit Dice(unsigned seed) : engine_(seed) {}
    std::size_t below(std::size_t n) { return n == 0 ? 0 : engine_() % n; }

private:
    std::mt19937 engine_;
};

// Pieces that mean something to a job file or to TOML, to be thrown in anywhere.
std::vector<std::string> const& pieces() {
    static std::vector<std::string> const list{"\"",
                                               "'",
                                               "\"\"\"",
                                               "'''",
                                               "[",
                                               "]",
                                               "[[",
                                               "]]",
                                               "{",
                                               "}",
                                               "=",
                                               ",",
                                               ".",
                                               "#",
                                               "\n",
                                               "\r\n",
                                               "\r",
                                               "\\",
                                               "\\u",
                                               "\xEF\xBB\xBF",
                                               "\xC3",
                                               "\xFF",
                                               std::string(1, '\0'),
                                               "nan",
                                               "-inf",
                                               "99999999999999999999",
                                               "0x",
                                               "1e999",
                                               "true",
                                               "2026-02-30",
                                               "\"?\"",
                                               "\"7b\"",
                                               "space = 7\n",
                                               "mark = \"K1\"\n",
                                               "[[circuit]]\n",
                                               "[[panel]]\n",
                                               "multiwire = \"K\"\n",
                                               "poles = 2\n",
                                               "feeder = \"Main/K1\"\n",
                                               "segments = [{}]\n",
                                               "share = { K1 = 2 }\n",
                                               "legs = [\"A\"]\n",
                                               "[job]\n",
                                               "[dwelling]\n",
                                               "area = \"64 m2\"\n",
                                               "basement = \"40 m2\"\n",
                                               "small_appliance_circuits = 2\n",
                                               "laundry_circuits = 1\n",
                                               "thermostats = 5\n",
                                               "together = [[\"heating\", \"K1\"]]\n",
                                               "peak = { amps = \"62 A\", days = 365 }\n",
                                               "energy_management = { limit = \"40 A\", circuits = [\"K1\"] }\n",
                                               "interlocked = true\n",
                                               "[[]]",
                                               "supplies = []\n",
                                               "\xE2\x80\xAE",
                                               "\xE2\x80\x9C"};
    return list;
}

std::string mutated(std::string text, Dice& dice) {
    for (std::size_t changes = 1 + dice.below(4); changes > 0; --changes) {
        auto const at = dice.below(text.size() + 1);
        switch (dice.below(5)) {
        case 0: text.insert(at, pieces()[dice.below(pieces().size())]); break;
        case 1: text.erase(at, 1 + dice.below(30)); break;
        case 2: text.insert(at, text.substr(dice.below(text.size() + 1), dice.below(200))); break;
        case 3:
            if (at < text.size()) text[at] = static_cast<char>(dice.below(256));
            break;
        default: text.replace(at, dice.below(12), pieces()[dice.below(pieces().size())]);
        }
    }
    return text;
}

} // namespace

TEST_CASE("a job cut off at any byte is a job or a list of problems", "[job][total]") {
    auto text = realistic();
    text.resize(std::min<std::size_t>(text.size(), 2500));
    for (std::size_t size = 0; size <= text.size(); ++size) judge(text.substr(0, size));
}

TEST_CASE("a job with anything thrown in is a job or a list of problems", "[job][total]") {
    Dice dice(20260502);
    auto const whole = realistic();
    auto const text = whole.substr(0, 3000);
    for (int round = 0; round < 1500; ++round) judge(mutated(text, dice));
    for (int round = 0; round < 60; ++round) judge(mutated(whole, dice));
}

TEST_CASE("random bytes are a list of problems", "[job][total]") {
    Dice dice(7);
    for (int round = 0; round < 3000; ++round) {
        std::string bytes;
        for (std::size_t i = dice.below(80); i > 0; --i)
            bytes += dice.below(3) == 0 ? pieces()[dice.below(pieces().size())]
                                        : std::string(1, static_cast<char>(dice.below(256)));
        judge(bytes);
    }
}

TEST_CASE("lines of a job in any order are a job or a list of problems", "[job][total]") {
    Dice dice(3);
    std::vector<std::string> lines;
    std::string line;
    for (char const c : realistic()) {
        line += c;
        if (c != '\n') continue;
        lines.push_back(line);
        line.clear();
    }
    for (int round = 0; round < 400; ++round) {
        std::string bytes;
        for (int i = 0; i < 60; ++i) bytes += lines[dice.below(lines.size())];
        judge(bytes);
    }
}
