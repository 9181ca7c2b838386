// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A child process, timed and weighed.
#pragma once

#include <functional>
#include <string>
#include <vector>

namespace legwork::bench {

struct Ran {
    int status = -1;     // exit status; -1 when it did not run or was killed
    double seconds = 0;  // of the processor, so that a busy machine does not count
    double peak_mib = 0; // largest resident size
    double elapsed = 0;  // by the clock on the wall: only for what looks at it itself
};

// Runs a program with its output thrown away. The peak includes what this process held at the fork, so weigh before
// doing anything large here.
Ran run(std::vector<std::string> const& words);
// Runs a function in a child process of its own, whose exit status it returns.
Ran run(std::function<int()> const& work);

// Processor seconds of all children that have ended so far.
double seconds_of_children();

// A folder that is removed with everything in it.
class Folder {
public:
    Folder();
    ~Folder();
    Folder(Folder const&) = delete;
    Folder& operator=(Folder const&) = delete;
    std::string const& path() const { return path_; }

private:
    std::string path_;
};

} // namespace legwork::bench
