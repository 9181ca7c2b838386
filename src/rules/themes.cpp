// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/themes.h"

#include "rules/dc/list.h"
#include "rules/directory/list.h"
#include "rules/job/list.h"
#include "rules/later/list.h"
#include "rules/load/list.h"
#include "rules/multiwire/list.h"
#include "rules/need/list.h"
#include "rules/panel/list.h"
#include "rules/protection/list.h"
#include "rules/tape/list.h"
#include "rules/wire/list.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
constexpr std::array kMultiwire{LEGWORK_MULTIWIRE_RULES(LEGWORK_ADDRESS)};
constexpr std::array kWire{LEGWORK_WIRE_RULES(LEGWORK_ADDRESS)};
constexpr std::array kPanel{LEGWORK_PANEL_RULES(LEGWORK_ADDRESS)};
constexpr std::array kDirectory{LEGWORK_DIRECTORY_RULES(LEGWORK_ADDRESS)};
constexpr std::array kTape{LEGWORK_TAPE_RULES(LEGWORK_ADDRESS)};
constexpr std::array kGroundFault{LEGWORK_GROUND_FAULT_RULES(LEGWORK_ADDRESS)};
constexpr std::array kArcFault{LEGWORK_ARC_FAULT_RULES(LEGWORK_ADDRESS)};
constexpr std::array kNeed{LEGWORK_NEED_RULES(LEGWORK_ADDRESS)};
constexpr std::array kLoad{LEGWORK_LOAD_RULES(LEGWORK_ADDRESS)};
constexpr std::array kJob{LEGWORK_JOB_RULES(LEGWORK_ADDRESS)};
constexpr std::array kBox{LEGWORK_BOX_RULES(LEGWORK_ADDRESS)};
constexpr std::array kRun{LEGWORK_RUN_RULES(LEGWORK_ADDRESS)};
constexpr std::array kDc{LEGWORK_DC_RULES(LEGWORK_ADDRESS)};

constexpr std::array kThemes{
    Theme{"Multiwire pairs", kMultiwire},
    Theme{"Wires, breakers and receptacles", kWire},
    Theme{"Panels", kPanel},
    Theme{"Names in the directory", kDirectory},
    Theme{"Colours and tape", kTape},
    Theme{"Ground-fault protection", kGroundFault},
    Theme{"Arc-fault protection", kArcFault},
    Theme{"Circuits that must be there", kNeed},
    Theme{"Load of the service", kLoad},
    Theme{"The job file: taken for granted, not known", kJob},
    Theme{"Boxes", kBox},
    Theme{"Holes and supports of cables", kRun},
    Theme{"Direct current", kDc},
};
} // namespace

std::span<Theme const> themes() { return kThemes; }

std::string_view theme_of(std::string_view rule) {
    auto const at = std::ranges::find_if(
        kThemes, [&](Theme const& t) { return std::ranges::find(t.rules, rule, &Rule::id) != t.rules.end(); });
    return at == kThemes.end() ? "Other" : at->words;
}

} // namespace legwork
