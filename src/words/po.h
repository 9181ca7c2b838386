// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// PO files, as far as the project writes them: entries of msgctxt, msgid and msgstr, each on lines of its own in
// quotes. No plural forms.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

struct PoEntry {
    std::string context, english, translation; // of what is not translated, or fuzzy, the translation is empty
    std::vector<std::string> flags;            // "python-brace-format"
    int line = 0;                              // where it begins
};

struct PoFile {
    std::vector<PoEntry> entries;   // in the file's order, without the head
    std::string head;               // what stands under the empty msgid
    std::vector<std::string> wrong; // "line 12: ..."; empty for a good file
};

PoFile read_po(std::string_view bytes);

} // namespace legwork
