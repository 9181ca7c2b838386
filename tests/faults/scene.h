// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The commands that write, each with the folder it works in.
#pragma once

#include "folder.h"
#include "run.h"

#include <string>
#include <vector>

namespace faults {

struct Scene {
    std::string name;
    std::vector<std::string> words;
    Folder before, after; // an undisturbed run turns one into the other
    Ran good;             // that run
    bool keeps = false;   // every text of `before` still stands afterwards, under whatever name
};

Scene balance_write(); // a job of three circuits, with a file kept by an earlier run
Scene propose_write();
Scene print_over_older(); // into the folder of an older print, of which three pages are not printed any more
Scene print_anew();       // into folders that it makes
Scene new_job();

std::vector<Scene> scenes(); // all of them

std::string job_text(); // the job of every scene

} // namespace faults
