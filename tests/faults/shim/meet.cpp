// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "meet.h"

#include <csignal>
#include <cstdlib>
#include <cstring>

#include <sys/mman.h>
#include <sys/syscall.h>
#include <unistd.h>

// Our own calls go to the system directly, so that they are neither counted nor refused.

namespace faults {

namespace {

Board* board = nullptr;
bool counting = false;
int last_refusal = 0;

[[gnu::constructor]] void open_board() {
    char const* const number = std::getenv(kBoardVariable);
    if (!number) return;
    auto const descriptor = std::atoi(number);
    auto const page = ::syscall(SYS_mmap, nullptr, sizeof(Board), PROT_READ | PROT_WRITE, MAP_SHARED, descriptor, 0L);
    ::syscall(SYS_close, descriptor);
    if (page != -1) board = reinterpret_cast<Board*>(page);
}

using Text = std::array<char, Board::kLongest>;

void copy(char const* from, Text& to) {
    std::strncpy(to.data(), from, to.size() - 1);
    to.back() = '\0';
}

// What the system calls an open file, or the present folder.
Text name_of(int descriptor) {
    Text link{}, name{};
    copy("/proc/self/cwd", link);
    if (descriptor != AT_FDCWD) {
        char digits[12];
        auto* at = digits + sizeof digits;
        *--at = '\0';
        do *--at = static_cast<char>('0' + descriptor % 10);
        while ((descriptor /= 10) > 0);
        copy("/proc/self/fd/", link);
        std::strncat(link.data(), at, link.size() - std::strlen(link.data()) - 1);
    }
    ::syscall(SYS_readlink, link.data(), name.data(), name.size() - 1);
    return name;
}

Text name_of(int at, char const* path) {
    Text name{};
    if (path[0] == '/') return copy(path, name), name;
    name = name_of(at);
    std::strncat(name.data(), "/", name.size() - std::strlen(name.data()) - 1);
    std::strncat(name.data(), path, name.size() - std::strlen(name.data()) - 1);
    return name;
}

bool is_below(Text const& name) {
    auto const length = std::strlen(board->folder.data());
    return std::strncmp(name.data(), board->folder.data(), length) == 0 &&
           (length == 0 || name[length] == '\0' || name[length] == '/');
}

bool is_ours(On const& on, Text& name) {
    name = on.path ? name_of(on.at, on.path) : name_of(on.descriptor);
    if (on.descriptor >= 0 && on.descriptor <= STDERR_FILENO) return true;
    if (!on.to || is_below(name)) return is_below(name);
    name = name_of(on.to_at, on.to); // of a link or a rename the end that tells more
    return is_below(name);
}

void note(char const* call, Text const& name) {
    board->path = name;
    std::strncpy(board->call.data(), call, board->call.size() - 1);
    ++board->reached;
}

bool in_main_thread() { return ::syscall(SYS_gettid) == ::syscall(SYS_getpid); }

void send_self(int signal) { ::syscall(SYS_kill, ::syscall(SYS_getpid), signal); }

} // namespace

void die() {
    send_self(SIGKILL);
    ::syscall(SYS_exit_group, 99);
    std::abort();
}

int refusal() { return last_refusal; }

Way meet(Kind kind, char const* call, On const& on) {
    if (!board || !counting || !in_main_thread()) return Way::made;
    auto const lacking = board->always[static_cast<std::size_t>(kind)];
    if (lacking == 0 && board->kind != Kind::any && board->kind != kind) return Way::made;
    auto const before = errno;
    Text name{};
    bool const ours = is_ours(on, name);
    errno = before;
    if (!ours) return Way::made;
    if (lacking != 0) return last_refusal = lacking, Way::refused;
    auto const n = ++board->seen;
    bool const later = n > board->nth && (board->act == Act::fail_on || board->act == Act::stop_on);
    if ((n != board->nth && !later) || board->act == Act::count) return Way::made;
    last_refusal = board->error;
    if (!later || board->act == Act::stop_on) note(call, name);
    switch (board->act) {
    case Act::count: break;
    case Act::fail:
    case Act::fail_on: return Way::refused;
    case Act::shorten: return Way::halved;
    case Act::kill_before: die();
    case Act::kill_after: return Way::last;
    case Act::stop:
    case Act::stop_on: send_self(SIGSTOP); errno = before;
    }
    return Way::made;
}

} // namespace faults

// What the loader and the libraries do before and after main() is not the program's.
namespace {
int (*program_main)(int, char**, char**) = nullptr;

int counted_main(int count, char** words, char** environment) {
    faults::counting = true;
    auto const status = program_main(count, words, environment);
    faults::counting = false;
    return status;
}
} // namespace

extern "C" int __libc_start_main(int (*main)(int, char**, char**), int count, char** words, void (*init)(),
                                 void (*fini)(), void (*loader_fini)(), void* stack_end) {
    program_main = main;
    using Start = int(int (*)(int, char**, char**), int, char**, void (*)(), void (*)(), void (*)(), void*);
    return faults::behind<Start>("__libc_start_main")(counted_main, count, words, init, fini, loader_fini, stack_end);
}
