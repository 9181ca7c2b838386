// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Job files read as the program reads them, and the load of their service.
#pragma once

#include "job/job.h"
#include "reckon/service.h"

#include <string>

namespace made {

using namespace legwork;

std::string bytes_of(std::string const& path); // from the top of the project
typed::Job job_of(std::string const& bytes);   // fails the test when it is not understood

// A job of these lines below the panel, which is 42 spaces of this supply: "[dwelling]..." and circuits.
typed::Job home(std::string const& code, std::string const& rest, std::string const& panel = "supply = \"120/240\"");

// A circuit's table: one pole unless said; `more` are lines of its own.
std::string circuit(std::string const& mark, std::string const& use, std::string const& load, int poles = 1,
                    std::string const& more = "");

// All notes, one a line.
std::string notes(PanelLoad const& p);
// The step of these words in its item; fails the test when there is none.
LoadStep const& step(LoadSteps const& steps, std::string const& words);

PanelLoad panel_load_of(typed::Job const& job, std::string const& panel,
                        std::optional<LoadMethod> method = std::nullopt);
PanelLoad service_load(typed::Job const& job, std::optional<LoadMethod> method = std::nullopt);

// "4500 General lighting and receptacles; ..." of the counted steps.
std::string counted(PanelLoad const& p);
std::string counted(LoadSteps const& steps);

} // namespace made
