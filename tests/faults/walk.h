// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One scene played over and over, each time with something else going wrong.
#pragma once

#include "judge.h"
#include "scene.h"
#include "temporary_folder.h"

#include <span>
#include <string>
#include <vector>

namespace faults {

class Walk {
public:
    // On a disk that cannot do all.
    explicit Walk(Scene scene, Lacks lacks = {}) : scene_(std::move(scene)), lacks_(std::move(lacks)) {}

    // Lays the scene out, plays it with this fault, judges what stands then, and what stands after the next run. False
    // when there was no such call.
    bool step(Fault fault);

    Complaints const& complaints() const { return complaints_; }
    std::string report() const; // a line of figures, and every complaint

private:
    Scene scene_;
    Lacks lacks_;
    TemporaryFolder folder_;
    std::vector<Folder> judged_; // what the next run made of these is known
    Complaints complaints_;
    unsigned runs_ = 0, failures_ = 0, kills_ = 0;
};

// Every call of every kind refused, with the errors that the system has for it; and from there on.
void walk_refusals(Walk& walk);
// Every read and write short, every one interrupted.
void walk_short(Walk& walk);
// Every file and folder unreadable that the run looks into, wherever: fonts, forms, the machine's.
void walk_reading(Walk& walk);
// Killed after every call; in the long walk before every call as well.
void walk_kills(Walk& walk);

// Whether the environment asks for the long walk (LEGWORK_FAULTS=all): every error at every call, and all calls that
// there are, those that read fonts and forms among them, instead of those on the files of the scene.
bool is_long_walk();

} // namespace faults
