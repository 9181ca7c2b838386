// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The one file that knows the library which takes a command line apart.

#include "cli/call/parser.h"

#include "cli/call/split.h"
#include "toml/near.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <optional>

namespace legwork {

namespace {

std::string no_number(std::string const& said) { // no comparison refuses it
    return std::isnan(std::strtod(said.c_str(), nullptr)) ? said + " is no number" : std::string();
}

CLI::Option* add(CLI::App& parser, Option const& o) {
    std::string const name(o.name);
    if (o.kind == Kind::flag) return parser.add_flag(name);
    auto* const added = parser.add_option(name);
    if (o.required) added->required();
    if (o.kind == Kind::words) added->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
    if (o.kind == Kind::word_or_none && !o.is_positional()) added->expected(0, 1);
    if (o.one_of) added->check(CLI::IsMember(o.one_of()));
    if (o.kind == Kind::whole) added->check(CLI::Range(static_cast<int>(o.least), static_cast<int>(o.most)));
    if (o.kind == Kind::number) added->check(CLI::Range(o.least, o.most))->check(no_number);
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

// The library's own words, without its line about --help: the fix says that.
std::string first_line(std::string const& text) { return text.substr(0, text.find('\n')); }

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
    std::vector<std::pair<CLI::App*, Command const*>> parsers;
    for (Command const* c : commands()) {
        parsers.emplace_back(app.add_subcommand(std::string(c->name)), c);
        add_all(*parsers.back().first, c->options());
    }
    std::ranges::reverse(words); // as CLI11 takes a vector
    Understood u;
    std::string why;
    try {
        app.parse(words);
    } catch (CLI::CallForHelp const&) {
        u.help = true;
    } catch (CLI::CallForVersion const&) {
        u.version = true;
    } catch (CLI::ParseError const& e) {
        why = first_line(e.what());
    }
    auto const chosen = std::ranges::find_if(parsers, [](auto const& p) { return p.first->parsed(); });
    bool const whole = chosen == parsers.end();
    if (!whole) u.command = chosen->second;
    if (!why.empty()) {
        if (auto unknown = unknown_option(whole ? app : *chosen->first, u.command)) return std::move(*unknown);
        return refused(why, whole ? "legwork help lists the commands"
                                  : fmt::format("legwork help {} says what can be typed", u.command->name));
    }
    if (!whole) u.given = given_to(*chosen->first, u.command->options());
    return u;
}

} // namespace legwork
