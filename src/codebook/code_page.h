// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A table of an edition; or that its code has none; or that nobody has looked.
#pragma once

#include "codebook/source.h"
#include "units/failure.h"

namespace legwork {

// Only points at the table, which stands with the edition.
template <class Table>
class CodePage {
public:
    constexpr CodePage(Table const& table) : table_(&table) {}
    CodePage(Table const&&) = delete;
    constexpr CodePage(Silent) {}
    constexpr CodePage(Unread) : unread_(true) {}

    constexpr bool is_unread() const { return unread_; }
    constexpr Table const* get() const { return table_; } // null when silent or unread
    // For who has asked before whether it is read and there. A mistake of ours else: throws Failure.
    Table const& table() const {
        if (!table_) throw Failure("legwork asks a page of its code book that is not there; please report this");
        return *table_;
    }

private:
    Table const* table_ = nullptr;
    bool unread_ = false;
};

} // namespace legwork
