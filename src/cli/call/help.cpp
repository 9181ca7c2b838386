// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/call/help.h"

#include "cli/call/parser.h"
#include "cli/call/usage.h"
#include "cli/text/words.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

constexpr std::string_view kAbout =
    "Spreads the circuits of a small building over the two legs of its panel, checks them against the electrical "
    "code, and prints wire labels, tape notes and the panel directory.";
constexpr std::string_view kExits = "Exit status: 0 done; 1 done, but an error finding stands; 2 the job or the call "
                                    "could not be understood; 3 a file could not be written.";

struct HelpLine {
    std::string head, words;
};

// "--by circuit|theme", "-h, --help"
std::string option_head(Option const& o) {
    std::string head(short_name(o));
    head += fmt::format("{}{}", head.empty() ? "" : ", ", o.name);
    auto const value = value_words(o);
    if (value.empty()) return head;
    return o.kind == Kind::word_or_none ? fmt::format("{} [{}]", head, value) : fmt::format("{} {}", head, value);
}

void list(std::string& told, std::string_view heading, std::vector<HelpLine> const& lines, std::size_t width) {
    constexpr std::size_t widest = 26; // heads that are longer have a line of their own
    std::size_t column = 0;
    for (HelpLine const& l : lines)
        if (l.head.size() <= widest) column = std::max(column, l.head.size() + 4);
    told += fmt::format("\n{}\n", heading);
    for (HelpLine const& l : lines) {
        bool const alone = l.head.size() > widest;
        told += alone ? fmt::format("  {}\n{:{}}", l.head, "", column) : fmt::format("  {:<{}}", l.head, column - 2);
        told += in_lines(l.words, width, column, column) + '\n';
    }
}

std::vector<HelpLine> lines_of(std::vector<Option> const& options, bool positional) {
    std::vector<HelpLine> lines;
    for (Option const& o : options) {
        if (o.is_positional() != positional) continue;
        auto const company = company_words(o);
        lines.push_back({option_head(o), help_words(o) + (company.empty() ? "" : ". " + company)});
    }
    return lines;
}

std::string usage_line(Command const& command, std::vector<Option> const& options) {
    auto line = fmt::format("legwork {} [OPTION]...", command.name);
    for (Option const& o : options)
        if (o.is_positional()) line += o.required ? fmt::format(" {}", o.name) : fmt::format(" [{}]", o.name);
    return line;
}

} // namespace

std::string program_help(std::size_t width) {
    auto told = in_lines(kAbout, width, 0) + "\n\nlegwork COMMAND [OPTION]... [JOB]\n";
    std::vector<HelpLine> lines;
    for (Command const* c : commands()) lines.push_back({std::string(c->name), std::string(c->summary)});
    list(told, "Commands", lines, width);
    list(told, "Options", lines_of({kHelpOption, kVersionOption}, false), width);
    return told + '\n' + in_lines(fmt::format("legwork help COMMAND tells more of one. {}", kExits), width, 0) + '\n';
}

std::string command_help(Command const& command, std::size_t width) {
    auto const options = with_help(command.options());
    auto told = in_lines(fmt::format("legwork {}: {}", command.name, command.summary), width, 4) + "\n\n" +
                usage_line(command, options) + '\n';
    if (auto const lines = lines_of(options, true); !lines.empty()) list(told, "Arguments", lines, width);
    list(told, "Options", lines_of(options, false), width);
    if (!command.note.empty()) told += '\n' + in_lines(command.note, width, 0) + '\n';
    return told;
}

} // namespace legwork
