// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "system_calls.h"

#include <cerrno>
#include <cstdarg>
#include <cstdio>
#include <map>

#include <fcntl.h>
#include <sys/syscall.h>
#include <unistd.h>

namespace {

BeforeCalls::Before hook;
std::map<std::string, int> counts;
bool inside = false;

// False: the call fails, and errno is set.
bool goes_on(SystemCall call) {
    if (!hook || inside) return true;
    call.number = counts[call.name]++;
    inside = true;
    int const error = hook(call);
    inside = false;
    if (error != 0) errno = error;
    return error == 0;
}

int made(long result) { return static_cast<int>(result); }

} // namespace

bool SystemCall::is_exchange() const { return name == "renameat2" && (flags & RENAME_EXCHANGE) != 0; }

BeforeCalls::BeforeCalls(Before before) {
    counts.clear();
    hook = std::move(before);
}
BeforeCalls::~BeforeCalls() { hook = nullptr; }

BeforeCalls::Before fail(std::string const& name, int number, int error) {
    return [=](SystemCall const& call) { return call.name == name && call.number == number ? error : 0; };
}

// The program's own definitions come before the library's.
extern "C" {

int open(char const* path, int flags, ...) {
    va_list more;
    va_start(more, flags);
    mode_t const mode = (flags & (O_CREAT | O_TMPFILE)) != 0 ? va_arg(more, mode_t) : 0;
    va_end(more);
    if (!goes_on({"open", path, "", static_cast<unsigned>(flags), 0})) return -1;
    return made(::syscall(SYS_openat, AT_FDCWD, path, flags, mode));
}

int fsync(int file) {
    if (!goes_on({"fsync", "", "", 0, 0})) return -1;
    return made(::syscall(SYS_fsync, file));
}

int linkat(int from_folder, char const* from, int to_folder, char const* to, int flags) noexcept {
    if (!goes_on({"linkat", from, to, 0, 0})) return -1;
    return made(::syscall(SYS_linkat, from_folder, from, to_folder, to, flags));
}

int rename(char const* from, char const* to) noexcept {
    if (!goes_on({"rename", from, to, 0, 0})) return -1;
    return made(::syscall(SYS_renameat2, AT_FDCWD, from, AT_FDCWD, to, 0));
}

int renameat2(int from_folder, char const* from, int to_folder, char const* to, unsigned flags) noexcept {
    if (!goes_on({"renameat2", from, to, flags, 0})) return -1;
    return made(::syscall(SYS_renameat2, from_folder, from, to_folder, to, flags));
}

int unlink(char const* path) noexcept {
    if (!goes_on({"unlink", path, "", 0, 0})) return -1;
    return made(::syscall(SYS_unlinkat, AT_FDCWD, path, 0));
}
}
