// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The manual page legwork-job(5), from the rows of the keys.
#include "cli/keys/keys.h"
#include "sheet/form_keys.h"

#include <fmt/format.h>

namespace legwork {

namespace {

std::string roff(std::string_view text) {
    std::string escaped;
    for (char const c : text) {
        if (c == '\\')
            escaped += "\\e";
        else if (c == '-')
            escaped += "\\-";
        else if (c == '"')
            escaped += "\\(dq";
        else if (c == '\'')
            escaped += "\\(aq";
        else
            escaped += c;
    }
    return escaped;
}

// "dwelling.peak: peak = { ... }"
std::string section(KeyTable const& table) {
    auto const header = table_header(table);
    auto const dot = table.name.rfind('.');
    if (&table == &kFormTable) return "form files";
    return dot == std::string_view::npos ? header : fmt::format("{} of {}", header, table.name.substr(0, dot));
}

std::string key_lines(Key const& key) {
    return fmt::format(".TP\n.B {} = {}\n{}.\n.br\nTakes {}.\n", roff(key.name), roff(key.example), roff(key.help),
                       roff(takes_in_words(key)));
}

constexpr std::string_view kHead = R"(.\" SPDX-FileCopyrightText: legwork contributors
.\" SPDX-License-Identifier: MIT
.\" Made from the rows of the keys: tests/cli/keys_test.cpp.
.TH LEGWORK\-JOB 5 "" "legwork" "File Formats"
.SH NAME
legwork\-job \- the job file of legwork, and its form files
.SH DESCRIPTION
A job file lists the circuits of one small building. It is TOML: a table of one kind that there is once begins with its name in
single brackets, one that there may be several of in double brackets. Quantities carry their unit. A key that is not known is an
error, with the keys that there are. The same is told by
.BR "legwork explain \-\-keys" ,
and for editors by
.BR "legwork explain \-\-schema" .
)";

constexpr std::string_view kFoot = R"(.SH SEE ALSO
.BR legwork (1)
)";

} // namespace

std::string job_page() {
    std::string page(kHead);
    for (KeyTable const* table : key_tables()) {
        page += fmt::format(".SH \"{}\"\n{}.\n", roff(section(*table)), roff(table->help));
        for (Key const& key : table->keys) page += key_lines(key);
        if (table->each) page += fmt::format("Each key takes {}.\n", roff(kind_in_words(*table->each)));
    }
    return page + std::string(kFoot);
}

} // namespace legwork
