// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "po_faults.h"

#include "words/po.h"
#include "words/rows.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace legwork::words_test {

namespace {

std::set<std::string> names_in(std::string_view pattern) {
    std::set<std::string> names;
    for (auto at = blank_in(pattern, 0); at.begin != pattern.npos; at = blank_in(pattern, at.end))
        names.emplace(at.name);
    return names;
}

std::string quoted_for_po(std::string_view text) {
    std::string quoted = "\"";
    for (char const c : text) {
        if (c == '"' || c == '\\') quoted += '\\';
        quoted += c;
    }
    return quoted + '"';
}

} // namespace

std::vector<std::string> faults_of(std::string_view po, std::vector<std::string_view> const& whole) {
    auto const file = read_po(po);
    auto faults = file.wrong;
    auto const add = [&](std::string_view id, std::string_view what) {
        faults.push_back(fmt::format("{}: {}", id, what));
    };
    for (PoEntry const& e : file.entries) {
        auto const row = row_number(e.context);
        if (row == kRows.size()) {
            add(e.context, "no row has this id");
            continue;
        }
        auto const english = kRows[row].english;
        if (english != e.english) add(e.context, "the English has changed");
        if (!e.translation.empty() && names_in(e.translation) != names_in(english)) add(e.context, "other arguments");
        bool const flagged = std::ranges::count(e.flags, "python-brace-format") > 0;
        if (flagged == names_in(english).empty()) add(e.context, "the flag python-brace-format");
    }
    for (Row const& row : kRows) {
        if (std::ranges::none_of(whole, [&](auto begin) { return row.id.starts_with(begin); })) continue;
        auto const at = std::ranges::find(file.entries, row.id, &PoEntry::context);
        if (at == file.entries.end() || at->translation.empty()) add(row.id, "not translated");
    }
    return faults;
}

std::string pot() {
    std::string all = "# SPDX-FileCopyrightText: legwork contributors\n"
                      "# SPDX-License-Identifier: MIT\n"
                      "msgid \"\"\n"
                      "msgstr \"\"\n"
                      "\"Project-Id-Version: legwork\\n\"\n"
                      "\"MIME-Version: 1.0\\n\"\n"
                      "\"Content-Type: text/plain; charset=UTF-8\\n\"\n"
                      "\"Content-Transfer-Encoding: 8bit\\n\"\n";
    for (Row const& row : kRows) {
        all += '\n';
        if (!row.note.empty()) all += fmt::format("#. {}\n", row.note);
        if (arguments_of(row.english) > 0) all += "#, python-brace-format\n";
        all += fmt::format("msgctxt {}\nmsgid {}\nmsgstr \"\"\n", quoted_for_po(row.id), quoted_for_po(row.english));
    }
    return all;
}

} // namespace legwork::words_test
