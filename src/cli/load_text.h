// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A load calculation for people, to `out`.
#pragma once

#include "cli/session.h"
#include "reckon/added_circuit.h"

namespace legwork {

void tell_load(Session const& session, PanelLoad const& load, Streams& streams);
// "Can I add this?": the answer first, then the calculation of the panel that decides.
void tell_more(Session const& session, AddedCircuit const& told, WithMore const& more, Streams& streams);

} // namespace legwork
