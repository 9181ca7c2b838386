// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One page of memory that a test shares with the program it runs: what shall go wrong at which system call, and, for
// reading afterwards, whether that call was reached. It outlives a kill.
#pragma once

#include <array>
#include <atomic>
#include <cstddef>

namespace faults {

// Calls that are counted together.
enum class Kind : unsigned {
    open,      // open, openat, creat, fopen
    nameless,  // open with O_TMPFILE
    read,      // read, pread, readv
    write,     // write, pwrite, writev
    flush,     // fsync, fdatasync
    rename,    // rename, renameat, and renameat2 without flags
    claim,     // renameat2 that replaces nothing
    exchange,  // renameat2 that exchanges
    link,      // link, linkat
    unlink,    // unlink, unlinkat, remove
    close,     // close
    map,       // mmap of a file
    cut,       // ftruncate
    mode,      // fchmod, chmod
    owner,     // fchown, chown
    attribute, // everything of extended attributes, access lists among them
    lock,      // flock
    look,      // stat and its like, access
    folder,    // mkdir, opendir, readdir
    resolve,   // realpath
    any        // no kind: all of the above
};

constexpr std::array<char const*, 20> kKindNames{
    "open",  "nameless", "read", "write", "flush", "rename",    "claim", "exchange", "link",   "unlink",
    "close", "map",      "cut",  "mode",  "owner", "attribute", "lock",  "look",     "folder", "resolve"};
static_assert(kKindNames.size() == static_cast<std::size_t>(Kind::any));

enum class Act : unsigned {
    count,       // nothing goes wrong
    fail,        // the n-th call is refused with `error` and not made; a close is made all the same, as the system does
    fail_on,     // so is every later one: a disk that stays full, a file system without links
    shorten,     // the n-th read or write moves half of what it was asked to
    kill_before, // the process is killed instead of the n-th call
    kill_after,  // and after it
    stop,        // the process stops itself before the n-th call; its parent sends SIGCONT
    stop_on      // and before every later one
};

struct Board {
    static constexpr std::size_t kLongest = 1024;

    Act act;
    Kind kind;
    unsigned nth; // from 1
    int error;
    // Only calls on files below this folder are counted, and those on the standard descriptors; empty: all calls.
    std::array<char, kLongest> folder;
    // The errno with which every call of a kind is refused, counted or not; 0: made. A disk that can do less.
    std::array<int, static_cast<std::size_t>(Kind::any)> always;

    // Counted while main() runs and in its own thread, so that the same run counts the same.
    std::atomic<unsigned> seen, reached;
    std::array<char, 32> call; // the call that was reached last, and the file it was on
    std::array<char, kLongest> path;
};

constexpr char const* kBoardVariable = "LEGWORK_FAULT_BOARD"; // holds the number of the page's descriptor

} // namespace faults
