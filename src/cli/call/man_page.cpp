// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/call/help.h"

#include "cli/call/usage.h"
#include "cli/text/words.h"

#include <fmt/format.h>

namespace legwork {

namespace {

constexpr std::size_t kWidth = 115; // of the source

// Hyphens that may be pasted, and `commands` in bold.
std::string escaped(std::string_view text) {
    std::string out;
    bool bold = false;
    for (char const c : text) {
        if (c == '`')
            out += (bold = !bold) ? "\\fB" : "\\fR";
        else if (c == '-')
            out += "\\-";
        else if (c == '\\')
            out += "\\e";
        else
            out += c;
    }
    return out;
}

// A line of it that begins with a dot or a quote would be a command.
std::string paragraph(std::string_view text) {
    std::string out;
    auto const lines = in_lines(escaped(text), kWidth, 0) + '\n';
    for (std::size_t at = 0; at < lines.size();) {
        auto const end = lines.find('\n', at) + 1;
        if (lines[at] == '.' || lines[at] == '\'') out += "\\&";
        out += lines.substr(at, end - at);
        at = end;
    }
    return out;
}

std::string sentence(std::string words) {
    if (words.empty()) return words;
    if (words[0] >= 'a' && words[0] <= 'z') words[0] = static_cast<char>(words[0] - 32);
    return words.ends_with('.') || words.ends_with('?') ? words : words + '.';
}

// "\fB--rule\fR \fIRULE\fR": words to be typed in bold, what stands for something else in italics
std::string option_line(Option const& o) {
    if (o.is_positional()) return fmt::format("\\fI{}\\fR", o.name);
    auto line = fmt::format("\\fB{}\\fR", escaped(o.name));
    auto const value = value_words(o);
    if (value.empty()) return line;
    auto const shown = fmt::format("\\f{}{}\\fR", o.one_of ? 'B' : 'I', escaped(value));
    return line + (o.kind == Kind::word_or_none ? fmt::format(" [{}]", shown) : ' ' + shown);
}

std::string in_synopsis(Option const& o) {
    auto const line = o.required ? option_line(o) : fmt::format("[{}]", option_line(o));
    return o.kind == Kind::words ? line + "..." : line;
}

std::string joined_sentences(std::initializer_list<std::string> all) {
    std::vector<std::string> said;
    for (auto const& one : all)
        if (!one.empty()) said.push_back(one);
    return joined(said, " ");
}

std::string option_paragraph(Option const& o) {
    return fmt::format(".TP\n{}\n{}", option_line(o),
                       paragraph(joined_sentences({sentence(help_words(o)), std::string(o.more), company_words(o)})));
}

} // namespace

std::string man_synopsis() {
    std::string out;
    for (Command const* c : commands()) {
        if (!out.empty()) out += ".br\n";
        auto line = fmt::format("\\fBlegwork {}\\fR", c->name);
        for (bool const positional : {false, true})
            for (Option const& o : c->options())
                if (o.is_positional() == positional) line += ' ' + in_synopsis(o);
        out += line + '\n';
    }
    return out;
}

std::string man_commands() {
    std::string out;
    for (Command const* c : commands()) {
        out += fmt::format(".TP\n.B {}\n{}", c->name,
                           paragraph(joined_sentences({sentence(std::string(c->summary)), std::string(c->about)})));
        std::string of_options;
        for (Option const& o : c->options()) of_options += option_paragraph(o);
        if (!of_options.empty()) out += ".RS\n" + of_options + ".RE\n";
    }
    return out;
}

} // namespace legwork
