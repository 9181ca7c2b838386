// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/cite.h"

#include "codebook/sections.h"

#include <algorithm>
#include <cassert>

namespace legwork {

std::span<Topic const> topics() { return kTopics; }
bool has_citation(std::string_view topic) { return topic_number(topic).has_value(); }

Section const& section_of(CodeBook const& book, std::string_view topic) {
    return book.sections.of_topic[topic_number(topic).value()];
}

Reference cite(CodeBook const& book, std::string_view topic) {
    auto number = topic_number(topic);
    assert(number && "a topic that topics.h does not have");
    if (!number) number = topic_number(topic.substr(0, topic.find('/')));
    if (!number) return {std::string(book.edition), {}, Source::practice};
    Section const& found = book.sections.of_topic[*number];
    return {std::string(book.edition), std::string(found.where), found.source, found.numbers};
}

Source source_of(std::span<CodeBook const* const> books, std::string_view topic) {
    auto least = Source::unread;
    for (CodeBook const* book : books) {
        auto const& says = section_of(*book, topic);
        if (!says.is_unread()) least = std::max(least, says.source);
    }
    return least;
}

} // namespace legwork
