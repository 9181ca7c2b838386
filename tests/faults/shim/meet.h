// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What becomes of one system call. Inside the program under test.
#pragma once

#include "board.h"

#include <cerrno>

#include <dlfcn.h>
#include <fcntl.h>

namespace faults {

// The file that a call is on: a path (below the folder open as `at`, when relative) or a descriptor; two for a rename.
struct On {
    int at = AT_FDCWD;
    char const* path = nullptr;
    int descriptor = -1;
    int to_at = AT_FDCWD;
    char const* to = nullptr;
};
inline On file(int descriptor) { return {.descriptor = descriptor}; }
inline On path(char const* name, int at = AT_FDCWD) { return {.at = at, .path = name}; }

enum class Way { made, refused, halved, last }; // `last`: made, and then the process dies

// Counts the call and says what becomes of it. Does not return where the process dies before it.
Way meet(Kind kind, char const* call, On const& on);
int refusal(); // the errno of the last refused call
[[noreturn]] void die();

// The function that would have been called without us.
template <class Function>
Function* behind(char const* name) {
    return reinterpret_cast<Function*>(::dlsym(RTLD_NEXT, name));
}

// Makes the call `real`, or gives `refused`.
template <class Result, class Real>
Result through(Kind kind, char const* call, On const& on, Result refused, Real const& real) {
    auto const way = meet(kind, call, on);
    if (way == Way::refused) return errno = refusal(), refused;
    auto const result = real();
    if (way == Way::last) die();
    return result;
}

} // namespace faults
