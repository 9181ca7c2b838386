// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Small jobs whose circuits lack sizes.
#pragma once

#include "job/job.h"
#include "propose/propose.h"

#include <string>
#include <vector>

namespace legwork::testing {

inline constexpr char const* kEditions[] = {"CE 2018", "CE 2021", "CE 2024", "NEC 2017", "NEC 2020", "NEC 2023"};

// One circuit of panel "Main" without breaker and cable, 10 m to go.
typed::Circuit bare(std::string use, std::optional<VoltAmperes> load, int poles = 1);
typed::Job job_of(std::vector<typed::Circuit> circuits, SupplyKind kind = SupplyKind::split_120_240);
// Each circuit on the space that the job says, none for those without.
Plan as_typed(typed::Job const& job);

// "20 A 12/2", "20 A", "12/2" of the one circuit, or "?" where nothing is proposed.
std::string sized(typed::Job const& job, std::string_view edition);
std::string sized(typed::Circuit circuit, std::string_view edition);
Proposal proposed(typed::Job const& job, std::string_view edition);
std::vector<Proposal> all_proposed(typed::Job const& job, std::string_view edition);
std::string steps_of(Proposal const& p); // a line each, with its reference

} // namespace legwork::testing
