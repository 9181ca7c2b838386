// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The test framework, version 2 or 3 as the system has it: the same names for what they call differently.
#pragma once

#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/catch_all.hpp>

using Catch::Approx;

inline auto Contains(std::string const& part) { return Catch::Matchers::ContainsSubstring(part); }
#else
#include <catch2/catch.hpp>

inline auto Contains(std::string const& part) { return Catch::Matchers::Contains(part); }
#endif
