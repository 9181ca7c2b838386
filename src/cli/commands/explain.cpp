// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork explain RULE: what a rule asks, why, its usual remedy, how grave it is and where the codes say so; a table of
// the code book; the keys of the job file.

#include "cli/call/rows.h"
#include "cli/call/shared_rows.h"
#include "cli/json/json.h"
#include "cli/keys/keys.h"
#include "cli/text/text.h"
#include "cli/text/words.h"
#include "cli/vocabulary.h"
#include "codebook/cite.h"
#include "codebook/sections.h"
#include "codebook/tables/tables.h"
#include "rules/check.h"
#include "toml/near.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

constexpr std::size_t kIndent = 12;

struct ExplainOptions {
    std::string rule;
    std::optional<std::string> table, keys; // empty: all of them are listed
    bool schema = false, json = false;
};

constexpr OptionRow<ExplainOptions> kOptions[] = {
    {{.name = "RULE",
      .help = "a rule's id, as check prints it in [ ]",
      .unsaid = "every rule",
      .completes = rules_by_name},
     &ExplainOptions::rule},
    {{.name = "--table",
      .value = "NAME",
      .help = "instead of a rule: a table of the code book, with sources; the names of all without a name",
      .more = "By edition, each row with how it was come by; a row from memory says so.",
      .excludes = "RULE",
      .completes = tables_by_name},
     &ExplainOptions::table},
    {{.name = "--keys",
      .value = "TABLE",
      .help = "instead of a rule: the keys of a table of the job file, or of a form; the names of all without a name",
      .more = "Each key with what it takes, what holds where it is not said, and an example; legwork-job(5) has all.",
      .excludes = "RULE",
      .completes = key_tables_by_name},
     &ExplainOptions::keys},
    {{.name = "--schema",
      .help = "instead of a rule: the JSON Schema of the job file, for editors",
      .more = "Draft 2020-12; the starter names the one that is installed, for editors with a TOML language server.",
      .excludes = "RULE"},
     &ExplainOptions::schema},
    {json_row, &ExplainOptions::json},
};

int unknown(std::string_view thing, std::string const& said, std::vector<std::string> const& known,
            std::string_view otherwise, ExplainOptions const& options, Streams& streams) {
    tell_problems(
        one_problem("", fmt::format("there is no {} \"{}\"", thing, said), did_you_mean(said, known, otherwise)),
        options.json, streams);
    return exit_not_understood;
}

void line(Streams& streams, std::string_view head, std::string const& text) {
    if (!text.empty())
        streams.out << fmt::format("{:<{}}", head, kIndent) << in_lines(text, streams.width, kIndent, kIndent) << '\n';
}

std::string gravity_line(Rule const& r) {
    if (!r.is_checked()) return "";
    auto const nec = words(r.gravity, Family::nec), ce = words(r.gravity, Family::ce);
    auto const told = nec == ce ? nec : fmt::format("NEC: {}. CE Code: {}", nec, ce);
    return r.gravity.doubt.empty() ? told : fmt::format("{}. At most a warning where {}", told, r.gravity.doubt);
}

std::string acceptance_line(Rule const& r) {
    auto const a = r.accept;
    if (a.of == Acceptance::Of::none) return fmt::format("never, by anybody. {}", a.why);
    std::string words = "by an [[accept]] of the job, with who and why";
    return a.of == Acceptance::Of::some ? fmt::format("{}. {}", words, a.why) : words;
}

struct SectionsOf {
    std::vector<std::string> all; // "NEC 2017, 2020: 210.4(B)", a star behind what is from memory
    bool starred = false;
};
SectionsOf sections(Topic const& topic) {
    SectionsOf found;
    auto& all = found.all;
    for (auto const family : {Family::nec, Family::ce}) {
        auto const books = books_of(family);
        for (std::size_t i = 0; i < books.size();) {
            auto const& says = section_of(*books[i], topic.name);
            std::vector<std::string> same;
            for (; i < books.size() && section_of(*books[i], topic.name) == says; ++i)
                same.emplace_back(books[i]->edition);
            found.starred |= says.speaks() && says.source == Source::memory;
            if (says.is_unread()) all.push_back(fmt::format("{}: not read yet", short_editions(same)));
            if (says.speaks())
                all.push_back(fmt::format("{}: {}{}", short_editions(same),
                                          section_words(cite(*code_book(same.front()), topic.name)),
                                          says.source == Source::memory ? " *" : ""));
        }
    }
    return found;
}

// "tied singles"
std::string aspect_words(std::string_view aspect) {
    std::string words(aspect);
    std::ranges::replace(words, '-', ' ');
    return words;
}

// The rule's own row, then those of its aspects, each under its name.
void tell_sections(Rule const& r, Streams& streams) {
    bool any = false, memory = false;
    for (Topic const& t : topics()) {
        if (t.rule() != r.id) continue;
        auto const [all, starred] = sections(t);
        if (all.empty()) continue;
        memory |= starred;
        auto const named = t.aspect().empty() ? std::string() : aspect_words(t.aspect()) + ": ";
        line(streams, any ? "" : "  codes", named + joined(all, "; "));
        any = true;
    }
    if (memory) line(streams, "", "* what it says is from memory: look it up");
    if (!any) line(streams, "  codes", "common practice: no section speaks of it");
}

void tell(Rule const& r, Streams& streams) {
    streams.out << r.id << (r.is_checked() ? "" : " (not checked yet)") << "\n\n";
    line(streams, "  asks", std::string(r.asks));
    line(streams, "  why", std::string(r.why));
    line(streams, "  remedy", std::string(r.remedy));
    line(streams, "  gravity", gravity_line(r));
    if (r.is_checked()) line(streams, "  accepted", acceptance_line(r));
    tell_sections(r, streams);
    if (!r.is_checked())
        streams.out << '\n'
                    << in_lines("legwork does not check this yet: that it finds nothing means nothing.", streams.width,
                                0)
                    << '\n';
}

int tell_table(ExplainOptions const& options, Streams& streams) {
    if (options.table->empty()) return options.json ? write_table_names_json(streams) : list_tables(streams), exit_done;
    auto const* table = code_table(*options.table);
    if (!table) {
        std::vector<std::string> names;
        for (CodeTable const& t : code_tables()) names.emplace_back(t.name);
        return unknown("table", *options.table, names, "legwork explain --table lists the tables", options, streams);
    }
    return options.json ? write_table_json(*table, streams) : print_table(*table, streams), exit_done;
}

int tell_keys(ExplainOptions const& options, Streams& streams) {
    if (options.keys->empty())
        return options.json ? write_key_tables_json(streams) : list_key_tables(streams), exit_done;
    auto const* table = key_table(*options.keys);
    if (!table)
        return unknown("table of keys", *options.keys, key_table_names(), "legwork explain --keys lists the tables",
                       options, streams);
    return options.json ? write_keys_json(*table, streams) : print_keys(*table, streams), exit_done;
}

int list_rules(ExplainOptions const& options, Streams& streams) {
    if (options.json) return write_rules_json(rules(), streams), exit_done;
    for (Rule const* r : rules())
        streams.out << fmt::format(
            "{:<24}{}\n", r->id,
            in_lines(fmt::format("{}{}", r->asks, r->is_checked() ? "" : " (not checked yet)"), streams.width, 24, 24));
    streams.out << '\n'
                << in_lines(
                       "legwork explain RULE tells more of one; legwork explain --table lists the tables behind them.",
                       streams.width, 0)
                << '\n';
    return exit_done;
}

int run(ExplainOptions const& options, Streams& streams) {
    if (options.schema) return write_job_schema(streams), exit_done;
    if (options.keys) return tell_keys(options, streams);
    if (options.table) return tell_table(options, streams);
    if (options.rule.empty()) return list_rules(options, streams);
    auto const* rule = rule_named(options.rule);
    if (!rule)
        return unknown("rule", options.rule, rule_names(), "legwork explain, with nothing after it, lists the rules",
                       options, streams);
    if (options.json)
        write_rule_json(*rule, streams);
    else
        tell(*rule, streams);
    return exit_done;
}

} // namespace

extern Command const explain_command{
    "explain", "what a rule asks, why, its usual remedy; or a table of the code book; or the keys of the job file",
    "With how grave it is under each family of codes, whether it may be accepted, and the "
    "sections of each edition. Rules to "
    "come are explained too and say that they are not checked yet.",
    options_of<kOptions>, run_with<kOptions, run>};

} // namespace legwork
