// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/unread.h"

#include "codebook/cite.h"
#include "codebook/sections.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
// Rules that use the table of a topic besides their own in all that they judge.
struct TopicNeeded {
    std::string_view rule, topic;
};
constexpr std::array kNeeds{
    TopicNeeded{"mw-disconnect", "mw-disconnect/tied-singles"},
    TopicNeeded{"need-kitchen", "need-kitchen-share"},
    TopicNeeded{"need-dedicated", "need-kitchen-share"},
};

bool needs(std::string_view rule, std::string_view topic) {
    return topic == rule ||
           std::ranges::any_of(kNeeds, [&](TopicNeeded const& n) { return n.rule == rule && n.topic == topic; });
}

// By a section that was not read, or by a number whose section was not: then there is none to name.
bool by_unread(Finding const& f) {
    auto const& r = f.reference;
    return r.source == Source::unread || (r.section.empty() && r.source != Source::practice);
}

struct UnreadTopics {
    bool all = false;                 // nothing can be judged
    std::vector<std::string> aspects; // "tied singles"; else by these nothing can
};
UnreadTopics unread_of(CodeBook const& book, std::string_view rule) {
    UnreadTopics found;
    for (Topic const& t : topics()) {
        bool const aspect = t.rule() == rule && !t.aspect().empty(), needed = needs(rule, t.name);
        if (!(aspect || needed) || !section_of(book, t.name).is_unread()) continue;
        found.all |= needed;
        if (!aspect) continue;
        found.aspects.emplace_back(t.aspect());
        std::ranges::replace(found.aspects.back(), '-', ' ');
    }
    return found;
}

Finding note(Rule const& rule, Case const& c, UnreadTopics const& unread) {
    Finding f;
    f.rule = rule.id;
    f.severity = Severity::note;
    f.reference = {std::string(c.book.edition), {}, Source::unread};
    f.message =
        unread.all ? fmt::format("{}: not read yet what it asks of this, so not checked: {}", c.book.edition, rule.asks)
                   : fmt::format("{}: not read yet what it asks of {}, so not checked; the rest of this is: {}",
                                 c.book.edition, listed(unread.aspects), rule.asks);
    f.fix = fmt::format("Look it up in {}; an older edition as `code` shows what that one asks", c.book.edition);
    return f;
}
} // namespace

Verdict as_far_as_read(Rule const& rule, Case const& c, std::function<Verdict()> const& judge) {
    auto const unread = unread_of(c.book, rule.id);
    if (!unread.all && unread.aspects.empty()) return judge();
    Inspection seen;
    seen.unread(note(rule, c, unread));
    if (unread.all) return seen.verdict();
    auto const rest = judge();
    auto found = rest.findings();
    std::erase_if(found, by_unread);
    seen.looked(rest.looked_at());
    seen.found(std::move(found));
    return seen.verdict();
}

} // namespace legwork
