// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Says: an edition's table and its section disagree
// Says: afci-needed
#include "codebook/editions/checked_edition.h"
#include "editions/made_up.h"

using namespace legwork;
constexpr CodeBook kBook = made_up::as_nec_2023("NEC 2999", nec_2023::kSections, how_read::unread);
constexpr CodeBook const* kChecked = checked<kBook>();
