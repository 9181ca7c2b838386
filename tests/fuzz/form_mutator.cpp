// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "fuzz/mutate.h"
#include "fuzz/mutator.h"

std::string fuzz::changed(std::string_view text, Dice& dice) { return mutated(text, form_keys(), dice); }
