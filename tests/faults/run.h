// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One run of the built program in which something goes wrong.
#pragma once

#include "shim/board.h"

#include <functional>
#include <map>
#include <string>
#include <vector>

#include <sys/types.h>

namespace faults {

// What a disk cannot do at all, and how it says so.
using Lacks = std::map<Kind, int>;

// What shall go wrong, and at which call; from 1.
struct Fault {
    Act act = Act::count;
    Kind kind = Kind::any;
    unsigned nth = 1;
    int error = 0;
    bool everywhere = false; // else only calls on files below the folder of the run, and those on 0, 1 and 2
    Lacks lacks = {};
};

struct Ran {
    int status = 0; // the exit status; -SIGKILL and so on when a signal ended it
    std::string out, err;
    unsigned seen = 0; // calls of the kind that there were
    bool reached = false;
    std::string call, path; // the call at which it went wrong, and the file it was on
};

// The program at work in a folder of its own, its words relative to that.
class Running {
public:
    // `in_child` is done in the new process, just before it becomes the program. A run of more than a minute is ended.
    Running(std::string const& folder, std::vector<std::string> const& words, Fault const& fault,
            std::function<void()> const& in_child = {});
    ~Running();
    Running(Running const&) = delete;
    Running& operator=(Running const&) = delete;

    bool stops();             // waits; false: it ended
    std::string call() const; // before which it stopped
    void go_on();
    void kill();
    void let_run() const; // until it ended, or does nothing any more: it waits for somebody
    Ran end();            // waits

private:
    bool wait();

    pid_t process_ = -1;
    int status_ = 0, board_file_ = -1, out_[2]{-1, -1}, err_[2]{-1, -1};
    bool ended_ = false;
    Board* board_ = nullptr;
};

Ran run(std::string const& folder, std::vector<std::string> const& words, Fault const& fault = {},
        std::function<void()> const& in_child = {});

// "rename 2, EIO (rename of job.before.toml)"
std::string told(Fault const& fault, Ran const& ran);

} // namespace faults
