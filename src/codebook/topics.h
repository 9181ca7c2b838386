// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a code may be asked about: each rule's id, and "rule-id/aspect" where one rule needs more than one section.
// Every edition answers every topic that stands on a code (sections.h); a new topic is one row here and one in each
// edition.
#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

namespace legwork {

struct Topic {
    enum class Basis {
        code,    // what is asked hangs on what the edition says
        physics, // legs, poles, volts, conductors: true whatever a code says of it, so never `unread`
        custom,  // no code speaks of it
    };
    std::string_view name;
    Basis basis = Basis::code;

    constexpr std::string_view rule() const { return name.substr(0, name.find('/')); }
    constexpr std::string_view aspect() const { return name.substr(std::min(rule().size() + 1, name.size())); }
};

inline constexpr auto kTopics = [] {
    using enum Topic::Basis;
    return std::array{
        Topic{"mw-one-panel", physics},
        Topic{"mw-same-space", physics},
        Topic{"mw-in-phase-supply", physics},
        Topic{"mw-opposite-legs", physics},
        Topic{"mw-not-adjacent"},
        Topic{"mw-disconnect"},
        Topic{"mw-disconnect/two-pole"},
        Topic{"mw-disconnect/tied-singles"},
        Topic{"mw-disconnect/lighting"},
        Topic{"mw-line-to-line"},
        Topic{"mw-unequal", custom},
        Topic{"mw-conductors", physics},
        Topic{"mw-neutral-current"},
        Topic{"mw-one-pole-gfci", physics},
        Topic{"mw-pigtail"},
        Topic{"mw-grouping"},
        Topic{"mw-open-neutral", physics},
        Topic{"mw-unpaired", custom},
        Topic{"mw-keep-on", custom},

        Topic{"tape-white-as-hot"},
        Topic{"tape-white-as-hot/conduit"},
        Topic{"tape-white-as-hot/switch-loop"},
        Topic{"tape-as-neutral"},
        Topic{"tape-as-neutral/conduit"},
        Topic{"tape-as-neutral/large"},
        Topic{"tape-green"},

        Topic{"wire-breaker-fits"},
        Topic{"wire-breaker-fits/large"},
        Topic{"wire-breaker-fits/cable"},
        Topic{"wire-breaker-fits/heating"},
        Topic{"wire-breaker-fits/motor"},
        Topic{"wire-breaker-fits/welder"},
        Topic{"wire-breaker-fits/nameplate"},
        Topic{"wire-breaker-fits/aluminium"},
        Topic{"wire-breaker-fits/dwelling-feeder"},
        Topic{"wire-breaker-fits/kind", custom},
        Topic{"wire-load-fits"},
        Topic{"wire-load-fits/range"},
        Topic{"wire-load-fits/large-range"},
        Topic{"wire-load-fits/motor"},
        Topic{"wire-continuous"},
        Topic{"wire-continuous/feeder"},
        Topic{"wire-continuous/water-heater"},
        Topic{"wire-continuous/heating"},
        Topic{"wire-continuous/vehicle-charger"},
        Topic{"wire-continuous/presumed"},
        Topic{"wire-conductors", custom},
        Topic{"wire-conductors/four-wire"},
        Topic{"wire-breaker-size"},
        Topic{"wire-drop"},
        Topic{"wire-drop/feeder"},
        Topic{"wire-drop/total"},
        Topic{"wire-smaller-downstream"},
        Topic{"wire-outlet-count"},
        Topic{"wire-outlet", custom},
        Topic{"wire-outlet/amperes"},
        Topic{"wire-outlet/single"},
        Topic{"wire-outlet/no-ground"},

        Topic{"wire-branch"},
        Topic{"wire-branch/heavy-duty"},
        Topic{"wire-branch/small"},
        Topic{"wire-place"},
        Topic{"wire-place/burial"},
        Topic{"wire-place/building", custom},
        Topic{"wire-breaker-fits/dwelling-sheathed"},
        Topic{"wire-breaker-fits/tap"},

        Topic{"panel-bus"},
        Topic{"panel-240-on-120", custom},
        Topic{"panel-dead-space", custom},
        Topic{"panel-two-legs", custom},
        Topic{"panel-no-tandem"},
        Topic{"panel-circuits"},
        Topic{"panel-backfeed"},
        Topic{"panel-spare-spaces"},
        Topic{"panel-spare-spaces/left"},
        Topic{"panel-sign", custom},
        Topic{"panel-sign/service-disconnect"},
        Topic{"panel-sign/emergency-disconnect"},
        Topic{"panel-sign/feeder-emergency-disconnect"},
        Topic{"panel-sign/largest-main"},
        Topic{"panel-sign/fault-current"},
        Topic{"panel-sign/calculated-load"},
        Topic{"panel-sign/fed-from"},
        Topic{"panel-sign/outbuilding-disconnect"},
        Topic{"panel-sign/several-sources"},
        Topic{"panel-sign/generator-inlet"},
        Topic{"panel-sign/single-120-volt"},
        Topic{"panel-sign/interactive-source"},
        Topic{"panel-sign/far-source"},
        Topic{"panel-sign/continuous-load"},
        Topic{"panel-sign/ground-fault-tub"},
        Topic{"panel-hang"},
        Topic{"panel-208-heat", custom},
        Topic{"panel-feeder-wires", custom},
        Topic{"panel-not-joined", custom},
        Topic{"panel-sub-neutral"},
        Topic{"panel-neutral-terminals"},
        Topic{"panel-outbuilding"},
        Topic{"panel-no-room", custom},
        Topic{"panel-legs-uneven", custom},
        Topic{"panel-main-overloaded", physics},

        Topic{"dir-unnamed"},
        Topic{"dir-vague"},
        Topic{"dir-duplicate"},
        Topic{"dir-person"},
        Topic{"dir-name-too-long", custom},
        Topic{"dir-no-letter", custom},

        Topic{"need-kitchen"},
        Topic{"need-kitchen/split"},
        Topic{"need-laundry"},
        Topic{"need-laundry/utility"},
        Topic{"need-bath"},
        Topic{"need-garage"},
        Topic{"need-outdoor"},
        Topic{"need-kitchen-share"},
        Topic{"need-dedicated", custom},
        Topic{"need-dedicated/central-heating"},
        Topic{"need-dedicated/vehicle-charger"},
        Topic{"need-dedicated/refrigerator"},
        Topic{"need-dedicated/microwave"},
        Topic{"need-dedicated/central-vacuum"},
        Topic{"need-dedicated/heating"},
        Topic{"need-dedicated/cooking"},
        Topic{"need-dedicated/hydromassage"},
        Topic{"gfci-needed"},
        Topic{"gfci-needed/elsewhere"},
        Topic{"gfci-needed/bathroom"},
        Topic{"gfci-needed/garage"},
        Topic{"gfci-needed/outdoor"},
        Topic{"gfci-needed/crawl-space"},
        Topic{"gfci-needed/basement"},
        Topic{"gfci-needed/kitchen"},
        Topic{"gfci-needed/sink"},
        Topic{"gfci-needed/boathouse"},
        Topic{"gfci-needed/laundry"},
        Topic{"gfci-needed/outdoor-outlets"},
        Topic{"gfci-needed/appliance"},
        Topic{"gfci-needed/heated-floor"},
        Topic{"gfci-needed/heated-floor-covering"},
        Topic{"gfci-needed/crawl-space-lights"},
        Topic{"gfci-needed/vehicle-charger"},
        Topic{"gfci-needed/boat-hoist"},
        Topic{"gfci-needed/hot-tub"},
        Topic{"gfci-needed/pool-pump"},
        Topic{"gfci-needed/hydromassage"},
        Topic{"gfci-needed/heating-near-tub"},
        Topic{"afci-needed"},
        Topic{"need-neutral-at-switch"},

        Topic{"need-disconnect"},
        Topic{"need-disconnect/cooling"},
        Topic{"need-disconnect/pool"},
        Topic{"need-disconnect/motor"},

        Topic{"job-unknown", custom},
        Topic{"job-assumed", custom},
        Topic{"job-accept-unused", custom},
        Topic{"job-no-effect", custom},

        Topic{"dc-fuse"},
        Topic{"dc-fuse/small"},
        Topic{"dc-drop"},
        Topic{"dc-source", custom},
        Topic{"tape-dc"},

        // Of rules that are explained and not checked yet.
        Topic{"box-full"},
        Topic{"box-mixed"},
        Topic{"run-hole"},
        Topic{"run-support"},
        Topic{"run-bundle"},

        Topic{"load-service"},
        Topic{"load-service/floor-area"},
        Topic{"load-service/small-appliance"},
        Topic{"load-service/laundry"},
        Topic{"load-service/lighting-demand"},
        Topic{"load-service/fixed"},
        Topic{"load-service/appliance"},
        Topic{"load-service/dryer"},
        Topic{"load-service/cooking"},
        Topic{"load-service/heat"},
        Topic{"load-service/central-heat"},
        Topic{"load-service/cooling"},
        Topic{"load-service/never-together"},
        Topic{"load-service/motor"},
        Topic{"load-service/vehicle"},
        Topic{"load-service/in-full"},
        Topic{"load-service/managed"},
        Topic{"load-service/neutral"},
        Topic{"load-service/neutral-wye"},
        Topic{"load-service/optional"},
        Topic{"load-service/optional-heat"},
        Topic{"load-service/existing"},
        Topic{"load-service/existing-heat"},
        Topic{"load-service/measured"},
        Topic{"load-service/minimum"},
        Topic{"load-service/continuous"},
        Topic{"load-service/presumed"},
        Topic{"load-service/listed"},
        Topic{"load-service/outlets"},
        Topic{"load-service/volts"},
        Topic{"load-service/half-amps"},
        Topic{"load-service/size"},
        Topic{"load-service/wire"},
        Topic{"load-service/dwelling-wire"},
    };
}();

// Its number in the order above; nothing when there is none of that name.
constexpr std::optional<std::size_t> topic_number(std::string_view name) {
    auto const at = std::ranges::find(kTopics, name, &Topic::name);
    if (at == kTopics.end()) return std::nullopt;
    return static_cast<std::size_t>(at - kTopics.begin());
}

} // namespace legwork
