// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Around every sheet: head, bands, foot.
#pragma once

#include "words/row.h"

#include <array>

namespace legwork {

inline constexpr std::array kFrameRows{
    Row{"frame/changes-by-hand", "Changes by hand:"},
    Row{"frame/page", "page {number} of {pages}"},
    Row{"frame/revision", "rev. {revision}"},
    Row{"frame/checked-against", "checked against {code}"},
    Row{"frame/reprint", "Reprint: legwork print {file}"},
    Row{"frame/reprint-file", "FILE", "stands for the name of the job file"},
    Row{"frame/draft-one", "DRAFT: {n} error"},
    Row{"frame/draft", "DRAFT: {n} errors"},
    Row{"frame/draft-sizes", "DRAFT: sizes missing"},
    Row{"frame/proposed", "PROPOSED: spaces not saved"},
    Row{"frame/accepted", "Accepted: {fault}", "a footnote; nobody is named"},
    Row{"frame/accepted-by", "Accepted by {person}: {fault}", "a footnote"},
    Row{"frame/fault", "{rule} of {thing}", "gfci-needed of K1; the rule goes by its id"},
    Row{"frame/fault-why", "{rule} of {thing}: {reason}", "the reason in the words of who accepted it"},
    Row{"frame/caution",
        "A planning aid: the local code and the authority having jurisdiction decide. Work in a panel is for people "
        "licensed or permitted to do it. Switch off, lock out, prove dead on both legs before touching. In many panels "
        "the line side stays live with the main off."},
    Row{"frame/caution-dc",
        "A planning aid: the local code and the authority having jurisdiction decide. Work in a panel is for people "
        "licensed or permitted to do it. Disconnect battery and supply, prove dead before touching: up to its first "
        "fuse a battery is always live.",
        "of a block of fuses on direct current: it has no legs"},
};

} // namespace legwork
