// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "calculator.h"
#include "in_english.h"

#include <fmt/format.h>

#include <cmath>
#include <optional>
#include <sstream>

namespace made {

namespace {
// What a line of arithmetic says, done again: every "a op b op c = d" in it, with + − × ÷ % and brackets.
class Calculator {
public:
    explicit Calculator(std::string text) : text_(std::move(text)) {}
    // Nothing when it cannot be keyed in.
    std::optional<double> answer() {
        auto const value = sum();
        skip();
        return good_ && at_ == text_.size() ? std::optional(value) : std::nullopt;
    }

private:
    double sum() {
        double value = product();
        for (;;) {
            if (take("+"))
                value += product();
            else if (take("−"))
                value -= product();
            else
                return value;
        }
    }
    double product() {
        double value = factor();
        for (;;) {
            if (take("×"))
                value *= factor();
            else if (take("÷"))
                value /= factor();
            else
                return value;
        }
    }
    double factor() {
        if (take("(")) {
            auto const value = sum();
            good_ = take(")") && good_;
            units();
            return value;
        }
        skip();
        std::size_t used = 0;
        auto const rest = text_.substr(at_);
        if (rest.empty() || rest[0] < '0' || rest[0] > '9') return good_ = false, 0;
        double const value = std::stod(rest, &used);
        at_ += used;
        return take("%") ? value / 100 : (units(), value);
    }
    void units() {
        for (auto const* u : {"VA", "ft²", "m²", "outlets"})
            if (take(u)) return;
        skip();
        if (at_ < text_.size() && (text_[at_] == 'A' || text_[at_] == 'V')) ++at_;
    }
    void skip() {
        while (at_ < text_.size() && text_[at_] == ' ') ++at_;
    }
    bool take(std::string_view word) {
        skip();
        if (text_.compare(at_, word.size(), word) != 0) return false;
        at_ += word.size();
        return true;
    }
    std::string text_;
    std::size_t at_ = 0;
    bool good_ = true;
};

// "what both is: 3 + 4 = 7" is 3 + 4; a word in front of a figure goes.
std::string without_words(std::string left) {
    if (auto const words = left.find("area "); words != std::string::npos) left.erase(0, words + 5);
    if (auto const colon = left.rfind(": "); colon != std::string::npos) left.erase(0, colon + 2);
    if (auto const comma = left.rfind(", "); comma != std::string::npos) left.erase(0, comma + 2);
    return left;
}
} // namespace

std::string wrong_arithmetic(legwork::LoadStep const& step, int& lines) {
    std::istringstream parts(in_english(step.arithmetic));
    std::string last;
    for (std::string part; std::getline(parts, part, ',');) {
        auto const equals = part.find(" = ");
        if (equals == std::string::npos || part.find("figures") != std::string::npos) continue;
        auto left = without_words(part.substr(0, equals));
        auto right = part.substr(equals + 3);
        if (auto const colon = right.find(": "); colon != std::string::npos) { // "... = m²: n × VA = VA"
            left = right.substr(colon + 2, right.find(" = ") - colon - 2);
            right = right.substr(right.find(" = ") + 3);
        }
        if (right.find('(') != std::string::npos) continue; // feet and metres
        auto const value = Calculator(left).answer();
        if (!value) return fmt::format("\"{}\" cannot be keyed in", left);
        if (std::abs(*value - std::stod(right)) > 0.5001)
            return fmt::format("\"{}\" is {}, not {}", left, *value, right);
        last = right;
        ++lines;
    }
    return last.ends_with("VA") && std::stoll(last) != step.va ? fmt::format("ends in {}, not in {}", last, step.va)
                                                               : std::string();
}

} // namespace made
