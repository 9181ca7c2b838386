// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/say.h"

#include "codebook/cite.h"

namespace legwork {

Finding finding(Case const& c, std::string_view rule, Severity severity, Where where, std::string_view topic) {
    Finding f;
    f.rule = rule;
    f.severity = severity;
    f.where = std::move(where);
    f.reference = cite(c.book, topic.empty() ? rule : topic);
    return f;
}

Where about(Circuit const& c, std::string key) { return {c.panel, {c.mark}, std::move(key)}; }

Where about(Pair const& p, std::string key) {
    return {p.first->panel == p.second->panel ? p.first->panel : "", {p.first->mark, p.second->mark}, std::move(key)};
}

} // namespace legwork
