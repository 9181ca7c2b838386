// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/finding.h"

namespace legwork {

std::string_view name(Severity s) {
    switch (s) {
    case Severity::error: return "error";
    case Severity::warning: return "warning";
    case Severity::note: break;
    }
    return "note";
}

} // namespace legwork
