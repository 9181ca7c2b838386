// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The editions that are known, by family and year. Alone in this file, so that a test may bring a list of its own.
#include "codebook/editions/ce_2018/book.h"
#include "codebook/editions/ce_2021/book.h"
#include "codebook/editions/ce_2024/book.h"
#include "codebook/editions/checked_edition.h"
#include "codebook/editions/nec_2017/book.h"
#include "codebook/editions/nec_2020/book.h"
#include "codebook/editions/nec_2023/book.h"

namespace legwork {

std::span<CodeBook const* const> code_books() {
    static constexpr std::array kAll{
        checked<ce_2018::kBook>(),  checked<ce_2021::kBook>(),  checked<ce_2024::kBook>(),
        checked<nec_2017::kBook>(), checked<nec_2020::kBook>(), checked<nec_2023::kBook>(),
    };
    return kAll;
}

} // namespace legwork
