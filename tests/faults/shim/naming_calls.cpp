// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Calls on names and on what belongs to a file beside its bytes, taken before the C library's own.

#include "meet.h"

#include <cstdio>
#include <cstdlib>

#include <dirent.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/xattr.h>
#include <unistd.h>

using namespace faults;

namespace {

On from_to(int from_at, char const* from, int to_at, char const* to) {
    return {.at = from_at, .path = from, .to_at = to_at, .to = to};
}

int renamed(char const* call, int from_at, char const* from, int to_at, char const* to, unsigned flags) {
    auto const kind = flags == 0 ? Kind::rename : (flags & RENAME_EXCHANGE) != 0 ? Kind::exchange : Kind::claim;
    return through(kind, kind == Kind::exchange ? "exchange" : call, from_to(from_at, from, to_at, to), -1, [&] {
        return behind<int(int, char const*, int, char const*, unsigned)>("renameat2")(from_at, from, to_at, to, flags);
    });
}

int linked(char const* call, int from_at, char const* from, int to_at, char const* to, int flags) {
    return through(Kind::link, call, from_to(from_at, from, to_at, to), -1, [&] {
        return behind<int(int, char const*, int, char const*, int)>("linkat")(from_at, from, to_at, to, flags);
    });
}

int unlinked(char const* call, int at, char const* name, int flags) {
    return through(Kind::unlink, call, path(name, at), -1,
                   [&] { return behind<int(int, char const*, int)>("unlinkat")(at, name, flags); });
}

// An int or a size, -1 where it is refused.
template <class Real>
auto noted(Kind kind, char const* call, On const& on, Real const& real) {
    return through(kind, kind == Kind::exchange ? "exchange" : call, on, static_cast<decltype(real())>(-1), real);
}

} // namespace

extern "C" {

int rename(char const* from, char const* to) noexcept { return renamed("rename", AT_FDCWD, from, AT_FDCWD, to, 0); }
int renameat(int from_at, char const* from, int to_at, char const* to) noexcept {
    return renamed("renameat", from_at, from, to_at, to, 0);
}
int renameat2(int from_at, char const* from, int to_at, char const* to, unsigned flags) noexcept {
    return renamed("renameat2", from_at, from, to_at, to, flags);
}
int link(char const* from, char const* to) noexcept { return linked("link", AT_FDCWD, from, AT_FDCWD, to, 0); }
int linkat(int from_at, char const* from, int to_at, char const* to, int flags) noexcept {
    return linked("linkat", from_at, from, to_at, to, flags);
}
int unlink(char const* name) noexcept { return unlinked("unlink", AT_FDCWD, name, 0); }
int unlinkat(int at, char const* name, int flags) noexcept { return unlinked("unlinkat", at, name, flags); }
int remove(char const* name) noexcept {
    return through(Kind::unlink, "remove", path(name), -1, [&] { return behind<int(char const*)>("remove")(name); });
}

int fchmod(int descriptor, mode_t mode) noexcept {
    return noted(Kind::mode, "fchmod", file(descriptor),
                 [&] { return behind<int(int, mode_t)>("fchmod")(descriptor, mode); });
}
int chmod(char const* name, mode_t mode) noexcept {
    return noted(Kind::mode, "chmod", path(name),
                 [&] { return behind<int(char const*, mode_t)>("chmod")(name, mode); });
}
int fchown(int descriptor, uid_t user, gid_t group) noexcept {
    return noted(Kind::owner, "fchown", file(descriptor),
                 [&] { return behind<int(int, uid_t, gid_t)>("fchown")(descriptor, user, group); });
}
int chown(char const* name, uid_t user, gid_t group) noexcept {
    return noted(Kind::owner, "chown", path(name),
                 [&] { return behind<int(char const*, uid_t, gid_t)>("chown")(name, user, group); });
}

int fsetxattr(int descriptor, char const* key, void const* from, std::size_t size, int flags) noexcept {
    return noted(Kind::attribute, "fsetxattr", file(descriptor), [&] {
        return behind<int(int, char const*, void const*, std::size_t, int)>("fsetxattr")(descriptor, key, from, size,
                                                                                         flags);
    });
}
ssize_t fgetxattr(int descriptor, char const* key, void* to, std::size_t size) noexcept {
    return noted(Kind::attribute, "fgetxattr", file(descriptor), [&] {
        return behind<ssize_t(int, char const*, void*, std::size_t)>("fgetxattr")(descriptor, key, to, size);
    });
}
ssize_t flistxattr(int descriptor, char* to, std::size_t size) noexcept {
    return noted(Kind::attribute, "flistxattr", file(descriptor),
                 [&] { return behind<ssize_t(int, char*, std::size_t)>("flistxattr")(descriptor, to, size); });
}
int fremovexattr(int descriptor, char const* key) noexcept {
    return noted(Kind::attribute, "fremovexattr", file(descriptor),
                 [&] { return behind<int(int, char const*)>("fremovexattr")(descriptor, key); });
}
int setxattr(char const* name, char const* key, void const* from, std::size_t size, int flags) noexcept {
    return noted(Kind::attribute, "setxattr", path(name), [&] {
        return behind<int(char const*, char const*, void const*, std::size_t, int)>("setxattr")(name, key, from, size,
                                                                                                flags);
    });
}
ssize_t getxattr(char const* name, char const* key, void* to, std::size_t size) noexcept {
    return noted(Kind::attribute, "getxattr", path(name), [&] {
        return behind<ssize_t(char const*, char const*, void*, std::size_t)>("getxattr")(name, key, to, size);
    });
}
ssize_t listxattr(char const* name, char* to, std::size_t size) noexcept {
    return noted(Kind::attribute, "listxattr", path(name),
                 [&] { return behind<ssize_t(char const*, char*, std::size_t)>("listxattr")(name, to, size); });
}

int flock(int descriptor, int operation) noexcept {
    return noted(Kind::lock, "flock", file(descriptor),
                 [&] { return behind<int(int, int)>("flock")(descriptor, operation); });
}

int stat(char const* name, struct stat* to) noexcept {
    return noted(Kind::look, "stat", path(name),
                 [&] { return behind<int(char const*, struct stat*)>("stat")(name, to); });
}
int lstat(char const* name, struct stat* to) noexcept {
    return noted(Kind::look, "lstat", path(name),
                 [&] { return behind<int(char const*, struct stat*)>("lstat")(name, to); });
}
int fstat(int descriptor, struct stat* to) noexcept {
    return noted(Kind::look, "fstat", file(descriptor),
                 [&] { return behind<int(int, struct stat*)>("fstat")(descriptor, to); });
}
int fstatat(int at, char const* name, struct stat* to, int flags) noexcept {
    return noted(Kind::look, "fstatat", name[0] ? path(name, at) : file(at),
                 [&] { return behind<int(int, char const*, struct stat*, int)>("fstatat")(at, name, to, flags); });
}
int stat64(char const* name, struct stat64* to) noexcept {
    return noted(Kind::look, "stat", path(name),
                 [&] { return behind<int(char const*, struct stat64*)>("stat64")(name, to); });
}
int lstat64(char const* name, struct stat64* to) noexcept {
    return noted(Kind::look, "lstat", path(name),
                 [&] { return behind<int(char const*, struct stat64*)>("lstat64")(name, to); });
}
int fstat64(int descriptor, struct stat64* to) noexcept {
    return noted(Kind::look, "fstat", file(descriptor),
                 [&] { return behind<int(int, struct stat64*)>("fstat64")(descriptor, to); });
}
int access(char const* name, int how) noexcept {
    return noted(Kind::look, "access", path(name), [&] { return behind<int(char const*, int)>("access")(name, how); });
}
int faccessat(int at, char const* name, int how, int flags) noexcept {
    return noted(Kind::look, "faccessat", path(name, at),
                 [&] { return behind<int(int, char const*, int, int)>("faccessat")(at, name, how, flags); });
}

int mkdir(char const* name, mode_t mode) noexcept {
    return noted(Kind::folder, "mkdir", path(name),
                 [&] { return behind<int(char const*, mode_t)>("mkdir")(name, mode); });
}
DIR* opendir(char const* name) {
    return through(Kind::folder, "opendir", path(name), static_cast<DIR*>(nullptr),
                   [&] { return behind<DIR*(char const*)>("opendir")(name); });
}
dirent* readdir(DIR* folder) {
    return through(Kind::folder, "readdir", file(::dirfd(folder)), static_cast<dirent*>(nullptr),
                   [&] { return behind<dirent*(DIR*)>("readdir")(folder); });
}
dirent64* readdir64(DIR* folder) {
    return through(Kind::folder, "readdir", file(::dirfd(folder)), static_cast<dirent64*>(nullptr),
                   [&] { return behind<dirent64*(DIR*)>("readdir64")(folder); });
}
char* realpath(char const* name, char* to) noexcept {
    return through(Kind::resolve, "realpath", path(name), static_cast<char*>(nullptr),
                   [&] { return behind<char*(char const*, char*)>("realpath")(name, to); });
}

} // extern "C"
