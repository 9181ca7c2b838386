// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How many outlets a branch circuit whose load is not known may have.
#pragma once

#include "codebook/code_book.h"

namespace legwork {

struct OutletCount {
    Amps breaker; // up to this rating
    int most;     // a duplex receptacle, a light: one outlet each
    Source source;
};

// Null where the code sets no number, or it was not read.
inline OutletCount const* outlet_count(CodeBook const& book) { return book.outlet_count.get(); }

} // namespace legwork
