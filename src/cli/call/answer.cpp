// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/call/answer.h"

#include "cli/call/parser.h"
#include "cli/call/shared_rows.h"
#include "cli/call/split.h"

#include <algorithm>

namespace legwork {

namespace {

// A line that is not done yet, by a command's rows.
class Line {
public:
    explicit Line(Command const& command) : options_(command.options()) {}

    void read(std::string const& word) {
        if (awaits_) return value(word);
        if (only_positional_ || !word.starts_with("-") || word == "-") return positional(word);
        if (word == "--") {
            only_positional_ = true;
            return;
        }
        auto const equals = word.find('=');
        Option const* option = named(word.substr(0, equals));
        if (!option) return;
        add(*option, equals == std::string::npos ? Words{} : Words{word.substr(equals + 1)});
        if (option->takes_value() && equals == std::string::npos) awaits_ = option;
    }

    Answer at(std::string const& part) const {
        if (awaits_ && !(awaits_->kind == Kind::word_or_none && part.starts_with("-"))) return {"", values(*awaits_)};
        if (!only_positional_ && part.starts_with("-") && part != "-") {
            auto const equals = part.find('=');
            if (equals == std::string::npos) return {"", dashed()};
            Option const* option = named(part.substr(0, equals));
            return {part.substr(0, equals + 1), option ? values(*option) : Candidates{}};
        }
        Option const* next = next_positional();
        return {"", next ? values(*next) : dashed()};
    }

private:
    Option const* named(std::string_view name) const {
        auto const found = std::ranges::find(options_, name, &Option::name);
        return found == options_.end() ? nullptr : &*found;
    }

    void add(Option const& option, Words values) { given_.options.push_back({option.name, std::move(values)}); }

    void value(std::string const& word) {
        bool const none = awaits_->kind == Kind::word_or_none && word.starts_with("-");
        awaits_ = nullptr;
        if (none) return read(word);
        given_.options.back().values = {word};
    }

    void positional(std::string const& word) {
        if (Option const* next = next_positional()) add(*next, {word});
    }

    bool excluded(Option const& option) const {
        return std::ranges::any_of(given_.options, [&](GivenOption const& g) {
            auto const there = split(option.excludes), here = split(named(g.name)->excludes);
            return std::ranges::count(there, g.name) + std::ranges::count(here, option.name) > 0;
        });
    }

    bool may_follow(Option const& option) const {
        return (option.kind == Kind::words || !given_.has(option.name)) && !excluded(option);
    }

    Option const* next_positional() const {
        for (Option const& o : options_)
            if (o.is_positional() && may_follow(o)) return &o;
        return nullptr;
    }

    Candidates dashed() const {
        Candidates all;
        for (Option const& o : options_)
            if (!o.is_positional() && may_follow(o)) all.words.push_back({std::string(o.name), std::string(o.help)});
        all.words.push_back({std::string(kHelpOption.name), std::string(kHelpOption.help)});
        return all;
    }

    Candidates values(Option const& option) const {
        if (option.completes) return option.completes(given_);
        Candidates all;
        for (auto const& word : option.one_of ? option.one_of() : Words{}) all.words.push_back({word, ""});
        return all;
    }

    std::vector<Option> options_;
    Given given_;
    Option const* awaits_ = nullptr; // the option whose value comes next
    bool only_positional_ = false;   // after --
};

Candidates first_words(std::string const& part) {
    if (!part.starts_with("-")) return commands_by_name({});
    Candidates all;
    for (Option const& o : {kHelpOption, kVersionOption})
        all.words.push_back({std::string(o.name), std::string(o.help)});
    return all;
}

} // namespace

Answer answer(Words const& whole, std::string const& part) {
    if (whole.empty()) return {"", first_words(part)};
    Command const* command = command_named(whole.front());
    if (!command) return {};
    Line line(*command);
    for (auto const& word : std::span(whole).subspan(1)) line.read(word);
    return line.at(part);
}

} // namespace legwork
