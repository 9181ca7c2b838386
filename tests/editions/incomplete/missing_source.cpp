// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Says: no matching function for call to
// Says: Figure
#include "codebook/code_book.h"

using namespace legwork;
constexpr Figure kFigure{};
