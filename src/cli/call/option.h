// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One word that may be typed after a command, said once: the parser, --help, the man page and the completions of the
// shells come of it.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

using Words = std::vector<std::string>;

// What was typed of an option; its values in the order of the line. A flag has none.
struct GivenOption {
    std::string_view name;
    Words values;
};
struct Given {
    std::vector<GivenOption> options;
    bool has(std::string_view name) const { return of(name) != nullptr; }
    Words const* of(std::string_view name) const { // null: not typed
        for (GivenOption const& o : options)
            if (o.name == name) return &o.values;
        return nullptr;
    }
};

// What completes a value: words (each with a line of help, which may be empty), and files of one kind.
struct Candidate {
    std::string word, help;
};
enum class Files { none, any, jobs, folders };
struct Candidates {
    std::vector<Candidate> words;
    Files files = Files::none;
};
// `typed` is the part of the line that is whole: what else stands on it, such as the job. May throw: nothing then.
using Completer = Candidates (*)(Given const& typed);

enum class Kind {
    flag,
    word,         // one value
    word_or_none, // a value or none
    words,        // repeatable
    whole,
    number, // a value between `least` and `most`
};

struct Option {
    std::string_view name;          // "--by"; "JOB" of what stands for itself
    std::string_view value = "";    // what help calls its value: "RULE"; empty where `one_of` lists them all
    std::string_view help = "";     // what it does, in half a line
    std::string_view unsaid = "";   // what holds when it is not typed: "worst first"
    std::string_view more = "";     // for the man page, after the help: sentences; commands in `backticks`
    std::string_view excludes = ""; // options that it does not go with: "--rule --min"
    std::string_view needs = "";    // the option that it belongs to
    Words (*one_of)() = nullptr;    // only these words; they complete it
    Completer completes = nullptr;
    double least = 0, most = 0;
    bool required = false;
    Kind kind = Kind::flag; // by the type of the field that it is put into
    bool is_positional() const { return !name.starts_with("-"); }
    bool takes_value() const { return kind != Kind::flag; }
};

} // namespace legwork
