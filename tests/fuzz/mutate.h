// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Changes to a file of ours such as a person's slip, a bad copy or an odd building would make. libFuzzer changes bytes,
// which seldom leave TOML; these leave it TOML, and often a job that is understood.
#pragma once

#include "fuzz/known_keys.h"

#include <span>
#include <string>
#include <string_view>

namespace fuzz {

// One to a few changes; `keys` are those that such a file knows.
std::string mutated(std::string_view text, std::span<KnownKey const> keys, Dice& dice);

// Some tables or lines of `other` among those of `text`.
std::string spliced(std::string_view text, std::string_view other, Dice& dice);

} // namespace fuzz
