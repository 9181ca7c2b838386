// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Stands before some calls of the system in this program, so that a test can make one fail, or let somebody else act in
// the very moment before it.
#pragma once

#include <functional>
#include <string>
#include <vector>

struct SystemCall {
    std::string name;         // "open", "fsync", "linkat", "rename", "renameat2", "unlink"
    std::string path, to;     // as far as it has them
    unsigned flags = 0;       // of open and renameat2
    int number = 0;           // how many of this name came before it
    bool is_exchange() const; // of two names
};

// While one lives, each of these calls is shown to `before`, which returns 0 to let it go on or the error that it fails
// with. What `before` itself does is not shown to it.
class BeforeCalls {
public:
    using Before = std::function<int(SystemCall const&)>;
    explicit BeforeCalls(Before before);
    ~BeforeCalls();
    BeforeCalls(BeforeCalls const&) = delete;
    BeforeCalls& operator=(BeforeCalls const&) = delete;
};

// The error for the `number`th of that name, 0 for all others.
BeforeCalls::Before fail(std::string const& name, int number, int error);
