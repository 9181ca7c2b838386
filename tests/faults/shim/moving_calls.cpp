// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Calls that open files and move bytes, taken before the C library's own.

#include "meet.h"

#include <cstdarg>
#include <cstdio>

#include <sys/mman.h>
#include <sys/uio.h>
#include <unistd.h>

using namespace faults;

namespace {

int opened(char const* call, int at, char const* name, int flags, mode_t mode) {
    auto const kind = (flags & O_TMPFILE) == O_TMPFILE ? Kind::nameless : Kind::open;
    return through(kind, call, path(name, at), -1,
                   [&] { return behind<int(int, char const*, int, ...)>("openat64")(at, name, flags, mode); });
}

mode_t mode_of(int flags, va_list rest) {
    return (flags & O_CREAT) != 0 || (flags & O_TMPFILE) == O_TMPFILE ? va_arg(rest, mode_t) : 0;
}

FILE* stream(char const* call, char const* name, char const* how) {
    return through(Kind::open, call, path(name), static_cast<FILE*>(nullptr),
                   [&] { return behind<FILE*(char const*, char const*)>("fopen64")(name, how); });
}

// `real(size)`, for a part of the bytes where they shall come short.
template <class Real>
ssize_t moved(Kind kind, char const* call, int descriptor, std::size_t size, Real const& real) {
    auto const way = meet(kind, call, file(descriptor));
    if (way == Way::refused) return errno = refusal(), -1;
    auto const result = real(way == Way::halved && size > 1 ? size / 2 : size);
    if (way == Way::last) die();
    return result;
}

void* mapped(char const* call, void* where, std::size_t size, int protection, int flags, int descriptor, off_t from) {
    auto const real = [&] {
        return behind<void*(void*, std::size_t, int, int, int, off_t)>("mmap")(where, size, protection, flags,
                                                                               descriptor, from);
    };
    return descriptor < 0 ? real() : through(Kind::map, call, file(descriptor), MAP_FAILED, real);
}

} // namespace

#define MODE_FROM(flags)                                                                                               \
    va_list rest;                                                                                                      \
    va_start(rest, flags);                                                                                             \
    auto const mode = mode_of(flags, rest);                                                                            \
    va_end(rest)

extern "C" {

int open(char const* name, int flags, ...) {
    MODE_FROM(flags);
    return opened("open", AT_FDCWD, name, flags, mode);
}
int open64(char const* name, int flags, ...) {
    MODE_FROM(flags);
    return opened("open", AT_FDCWD, name, flags, mode);
}
int openat(int at, char const* name, int flags, ...) {
    MODE_FROM(flags);
    return opened("openat", at, name, flags, mode);
}
int openat64(int at, char const* name, int flags, ...) {
    MODE_FROM(flags);
    return opened("openat", at, name, flags, mode);
}
int creat(char const* name, mode_t mode) { return opened("creat", AT_FDCWD, name, O_CREAT | O_WRONLY | O_TRUNC, mode); }
int creat64(char const* name, mode_t mode) {
    return opened("creat", AT_FDCWD, name, O_CREAT | O_WRONLY | O_TRUNC, mode);
}
// Names that hardened libraries call.
int __open_2(char const* name, int flags) { return opened("open", AT_FDCWD, name, flags, 0); }
int __open64_2(char const* name, int flags) { return opened("open", AT_FDCWD, name, flags, 0); }
int __openat_2(int at, char const* name, int flags) { return opened("openat", at, name, flags, 0); }
int __openat64_2(int at, char const* name, int flags) { return opened("openat", at, name, flags, 0); }

FILE* fopen(char const* name, char const* how) { return stream("fopen", name, how); }
FILE* fopen64(char const* name, char const* how) { return stream("fopen", name, how); }

ssize_t read(int descriptor, void* to, std::size_t size) {
    return moved(Kind::read, "read", descriptor, size, [&](std::size_t part) {
        return behind<ssize_t(int, void*, std::size_t)>("read")(descriptor, to, part);
    });
}
ssize_t __read_chk(int descriptor, void* to, std::size_t size, std::size_t) { return read(descriptor, to, size); }
ssize_t pread(int descriptor, void* to, std::size_t size, off_t from) {
    return moved(Kind::read, "pread", descriptor, size, [&](std::size_t part) {
        return behind<ssize_t(int, void*, std::size_t, off_t)>("pread")(descriptor, to, part, from);
    });
}
ssize_t pread64(int descriptor, void* to, std::size_t size, off_t from) { return pread(descriptor, to, size, from); }
ssize_t readv(int descriptor, iovec const* parts, int count) {
    return through(Kind::read, "readv", file(descriptor), ssize_t{-1},
                   [&] { return behind<ssize_t(int, iovec const*, int)>("readv")(descriptor, parts, count); });
}

ssize_t write(int descriptor, void const* from, std::size_t size) {
    return moved(Kind::write, "write", descriptor, size, [&](std::size_t part) {
        return behind<ssize_t(int, void const*, std::size_t)>("write")(descriptor, from, part);
    });
}
ssize_t pwrite(int descriptor, void const* from, std::size_t size, off_t to) {
    return moved(Kind::write, "pwrite", descriptor, size, [&](std::size_t part) {
        return behind<ssize_t(int, void const*, std::size_t, off_t)>("pwrite")(descriptor, from, part, to);
    });
}
ssize_t pwrite64(int descriptor, void const* from, std::size_t size, off_t to) {
    return pwrite(descriptor, from, size, to);
}
ssize_t writev(int descriptor, iovec const* parts, int count) {
    return through(Kind::write, "writev", file(descriptor), ssize_t{-1},
                   [&] { return behind<ssize_t(int, iovec const*, int)>("writev")(descriptor, parts, count); });
}

int fsync(int descriptor) {
    return through(Kind::flush, "fsync", file(descriptor), -1, [&] { return behind<int(int)>("fsync")(descriptor); });
}
int fdatasync(int descriptor) {
    return through(Kind::flush, "fdatasync", file(descriptor), -1,
                   [&] { return behind<int(int)>("fdatasync")(descriptor); });
}

int close(int descriptor) {
    auto const way = meet(Kind::close, "close", file(descriptor));
    auto const result = behind<int(int)>("close")(descriptor);
    if (way == Way::last) die();
    return way == Way::refused ? (errno = refusal(), -1) : result;
}

void* mmap(void* where, std::size_t size, int protection, int flags, int descriptor, off_t from) noexcept {
    return mapped("mmap", where, size, protection, flags, descriptor, from);
}
void* mmap64(void* where, std::size_t size, int protection, int flags, int descriptor, off_t from) noexcept {
    return mapped("mmap", where, size, protection, flags, descriptor, from);
}

int ftruncate(int descriptor, off_t size) noexcept {
    return through(Kind::cut, "ftruncate", file(descriptor), -1,
                   [&] { return behind<int(int, off_t)>("ftruncate")(descriptor, size); });
}
int ftruncate64(int descriptor, off_t size) noexcept { return ftruncate(descriptor, size); }

} // extern "C"
