// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The one file that knows the library which takes a command line apart.

#include "cli/call/parser.h"

#include "cli/call/split.h"
#include "cli/text/words.h"
#include "toml/near.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <optional>

namespace legwork {

namespace {

// What is wrong with a value, empty for nothing; the library puts the option before it.
std::function<std::string(std::string const&)> fault_of_word(Words words) {
    return [words = std::move(words)](std::string const& said) {
        return std::ranges::count(words, said) > 0
                   ? std::string()
                   : fmt::format("there is no \"{}\": {}", said, did_you_mean(said, words, joined(words)));
    };
}

template <class T>
std::function<std::string(std::string const&)> fault_of_number(std::string_view thing, T least, T most) {
    return [=](std::string const& said) {
        T number{};
        bool const fits = CLI::detail::lexical_cast(said, number) && number >= least && number <= most; // nan is not
        return fits ? std::string() : fmt::format("\"{}\" is no {} from {} to {}", said, thing, least, most);
    };
}

CLI::Option* add(CLI::App& parser, Option const& o) {
    std::string const name(o.name);
    if (o.kind == Kind::flag) return parser.add_flag(name)->disable_flag_override();
    auto* const added = parser.add_option(name);
    if (o.required) added->required();
    if (o.kind == Kind::words) added->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    if (o.kind == Kind::word_or_none && !o.is_positional()) added->expected(0, 1);
    if (o.one_of) added->check(fault_of_word(o.one_of()));
    if (o.kind == Kind::whole)
        added->check(fault_of_number("whole number", static_cast<int>(o.least), static_cast<int>(o.most)));
    if (o.kind == Kind::number) added->check(fault_of_number("number", o.least, o.most));
    return added;
}

void add_all(CLI::App& parser, std::vector<Option> const& options) {
    for (Option const& o : options) add(parser, o);
    for (Option const& o : options) {
        auto* const added = parser.get_option(std::string(o.name));
        for (auto const& other : split(o.excludes)) added->excludes(parser.get_option(other));
        if (!o.needs.empty()) added->needs(parser.get_option(std::string(o.needs)));
    }
}

Words values_of(CLI::Option const& parsed, Kind kind) {
    if (kind == Kind::flag) return {};
    if (kind == Kind::whole) return {std::to_string(parsed.as<int>())};
    if (kind == Kind::number) return {fmt::format("{}", parsed.as<double>())};
    auto values = parsed.results();
    if (kind == Kind::word_or_none) std::erase(values, ""); // as the library has one that was not said
    return values;
}

Given given_to(CLI::App& parser, std::vector<Option> const& options) {
    Given given;
    for (Option const& o : options)
        if (auto const* const parsed = parser.get_option(std::string(o.name)); parsed->count() > 0)
            given.options.push_back({o.name, values_of(*parsed, o.kind)});
    return given;
}

Understood refused(std::string why, std::string fix) {
    Understood u;
    u.why = std::move(why);
    u.fix = std::move(fix);
    return u;
}

std::optional<Understood> unknown_command(std::vector<std::string> const& words) {
    if (words.empty() || words.front().starts_with("-") || command_named(words.front())) return std::nullopt;
    Words names;
    for (Command const* c : commands()) names.emplace_back(c->name);
    return refused(fmt::format("there is no command \"{}\"", words.front()),
                   did_you_mean(words.front(), names, "legwork help lists the commands"));
}

// The first word that looks like an option and is none of this command.
std::optional<Understood> unknown_option(CLI::App const& parser, Command const* command) {
    auto const left = parser.remaining();
    auto const found = std::ranges::find_if(
        left, [](std::string const& word) { return word.starts_with("-") && word != "-" && word != "--"; });
    if (found == left.end()) return std::nullopt;
    auto const word = found->substr(0, found->find('='));
    Words names{std::string(kHelpOption.name)};
    if (!command) names.emplace_back(kVersionOption.name);
    for (Option const& o : command ? command->options() : std::vector<Option>{})
        if (!o.is_positional()) names.emplace_back(o.name);
    auto const near = nearest(word, names);
    auto const help = command ? fmt::format("legwork help {}", command->name) : std::string("legwork help");
    return refused(fmt::format("no option {}{}", word, near.empty() ? "" : fmt::format(": did you mean {}?", near)),
                   help + " lists the options");
}

// The library's message begins with the option, of a flag without its dashes.
std::string wrong_count(std::string const& message, Command const* command) {
    auto name = message.substr(0, message.find_first_of(": "));
    if (!name.starts_with("-")) name.insert(0, "--");
    auto const all = command ? command->options() : std::vector<Option>{};
    auto const row = std::ranges::find(all, name, &Option::name);
    if (row == all.end()) return message;
    if (!row->takes_value()) return name + " takes no value";
    return fmt::format("{} takes one value{}", name, row->kind == Kind::words ? " each time" : ", once");
}

using Parsers = std::vector<std::pair<CLI::App*, Command const*>>;

// The command that was typed with its parser; of none, the whole program's.
std::pair<CLI::App*, Command const*> typed(CLI::App& app, Parsers const& parsers) {
    auto const found = std::ranges::find_if(parsers, [](auto const& p) { return p.first->parsed(); });
    return found == parsers.end() ? std::pair(&app, static_cast<Command const*>(nullptr)) : *found;
}

std::string words_for(CLI::ParseError const& e, CLI::App const& parser, Command const* command) {
    auto const left = parser.remaining();
    if (dynamic_cast<CLI::ExtrasError const*>(&e) && !left.empty())
        return fmt::format("\"{}\" is a word too many", left.front());
    std::string const message = e.what();
    if (dynamic_cast<CLI::ArgumentMismatch const*>(&e)) return wrong_count(message, command);
    return message.substr(0, message.find('\n')); // the next line is about --help, which the fix says
}

Understood refused(CLI::ParseError const& e, CLI::App const& parser, Command const* command) {
    if (auto unknown = unknown_option(parser, command)) return std::move(*unknown);
    if (!command) return refused("no command was typed", "legwork help lists the commands");
    return refused(words_for(e, parser, command), fmt::format("legwork help {} says what can be typed", command->name));
}

} // namespace

std::string_view short_name(Option const& option) {
    if (option.name == kHelpOption.name) return "-h";
    return option.name == kVersionOption.name ? "-V" : "";
}

Understood understand(std::vector<std::string> words) {
    if (auto unknown = unknown_command(words)) return std::move(*unknown);
    CLI::App app("", "legwork");
    app.set_version_flag("-V,--version", "");
    app.set_help_flag("-h,--help");
    app.require_subcommand(1);
    Parsers parsers;
    for (Command const* c : commands()) {
        parsers.emplace_back(app.add_subcommand(std::string(c->name)), c);
        add_all(*parsers.back().first, c->options());
    }
    std::ranges::reverse(words); // as CLI11 takes a vector
    Understood u;
    try {
        app.parse(words);
    } catch (CLI::CallForHelp const&) {
        u.help = true;
    } catch (CLI::CallForVersion const&) {
        u.version = true;
    } catch (CLI::ParseError const& e) {
        auto const [parser, command] = typed(app, parsers);
        return refused(e, *parser, command);
    }
    auto const [parser, command] = typed(app, parsers);
    u.command = command;
    // Who asks for help or the version gets it whatever else was typed; the library has judged none of that.
    if (command && !u.help && !u.version) u.given = given_to(*parser, command->options());
    return u;
}

} // namespace legwork
