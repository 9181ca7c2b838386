// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "fuzz/rewrite.h"

#include "fuzz/opened.h"
#include "fuzz/promises.h"
#include "job/circuit_table.h"
#include "job/job.h"

#include <algorithm>
#include <set>

namespace fuzz {

using namespace legwork;

namespace {

struct Cut {
    std::size_t begin, end;
    friend auto operator<=>(Cut const&, Cut const&) = default;
};

TomlTable tree(std::string_view bytes) {
    SourceText const source(bytes);
    Complaints out(source);
    auto root = parse_toml(bytes, out);
    promise(root.has_value(), "what was written is TOML", bytes);
    return std::move(*root);
}

// The table that an edit changes.
TomlValue const& target(TomlTable& root, Edit const& e) {
    auto const* circuit = circuit_value(root, e.mark);
    if (circuit && e.segment)
        circuit = &std::get<TomlArray>(find(std::get<TomlTable>(circuit->is), "segments")->is).at(*e.segment);
    promise(circuit, "what is edited is there", e.mark);
    return *circuit;
}

TomlEntry const* entry(TomlTable& root, Edit const& e) {
    auto const& table = std::get<TomlTable>(target(root, e).is);
    auto const found = std::ranges::find(table, e.key, &TomlEntry::key);
    return found == table.end() ? nullptr : &*found;
}

// A key that was put in: the line it has to itself, or in an inline table all from the comma.
Cut inserted(std::string_view bytes, TomlEntry const& e, bool braces) {
    if (braces) {
        auto const before = bytes.find_last_not_of(" \t", e.at - 1);
        return bytes[before] == ',' ? Cut{before, e.value.end} : Cut{e.at - 1, e.value.end + 1};
    }
    auto const begin = bytes.rfind('\n', e.at) + 1; // of the first line: npos + 1
    auto const end = std::min(bytes.find('\n', e.value.end), bytes.size() - 1) + 1;
    auto const alone = bytes.substr(begin, e.at - begin).find_first_not_of(" \t") == std::string_view::npos &&
                       bytes.substr(e.value.end, end - e.value.end).find_first_not_of("\r\n") == std::string_view::npos;
    promise(alone, "a key that is put in has a line of its own", bytes.substr(begin, end - begin));
    return {begin, end};
}

std::string without(std::string_view bytes, std::set<Cut> const& cuts) {
    std::string left;
    std::size_t at = 0;
    for (Cut const& c : cuts) {
        promise(c.begin >= at, "edits do not overlap", bytes);
        left += bytes.substr(at, c.begin - at);
        at = c.end;
    }
    return left += bytes.substr(at);
}

void promise_rest_is_same(std::string_view before, std::string_view after, std::vector<Edit> const& edits) {
    auto was = tree(before), is = tree(after);
    std::set<Cut> from_before, from_after;
    for (Edit const& e : edits) {
        auto const *old = entry(was, e), *now = entry(is, e);
        promise(now && after.substr(now->value.begin, now->value.end - now->value.begin) == e.value,
                "the value stands there as it was to be written", e.value);
        if (old) from_before.insert({old->value.begin, old->value.end});
        from_after.insert(old ? Cut{now->value.begin, now->value.end}
                              : inserted(after, *now, after[target(is, e).begin] == '{'));
    }
    auto const left = without(before, from_before), same = without(after, from_after);
    bool const line_ended = !before.ends_with('\n') && (same == left + '\n' || same == left + "\r\n");
    promise(same == left || line_ended, "every byte outside the edited values is the same", after);
}

// Questions that were answered, of both of a pair.
typed::Job answered(typed::Job job, std::vector<Edit> const& edits) {
    for (Edit const& e : edits)
        for (typed::Circuit& c : job.circuits) {
            auto const* other = partner(job, c);
            if (c.mark == e.mark || (other && other->mark == e.mark)) std::erase(c.asked, e.segment ? "cable" : e.key);
        }
    return job;
}

} // namespace

Session rewritten(Session const& before, std::vector<Edit> const& edits, typed::Job const& wanted) {
    auto const edited = edit_job(before.bytes, edits);
    promise(edited.why.empty(), "what was found can be written", edited.why);
    promise_rest_is_same(before.bytes, edited.bytes, edits);
    auto now = opened(edited.bytes);
    promise(now.has_value(), "the file as written is understood", edited.bytes);
    promise(answered(*now->building.said, edits) == answered(wanted, edits), "the file as written means what was found",
            edited.bytes);
    return std::move(*now);
}

} // namespace fuzz
