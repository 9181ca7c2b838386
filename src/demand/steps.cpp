// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "demand/steps.h"

#include "codebook/cite.h"
#include "words/say.h"

#include <algorithm>
#include <numeric>

namespace legwork {

namespace {
constexpr std::size_t kMostTerms = 6; // more are hard to follow on one line
} // namespace

Phrase as_sum(std::vector<std::int64_t> const& terms) {
    auto const sum = std::accumulate(terms.begin(), terms.end(), std::int64_t{0});
    if (terms.size() < 2) return {};
    if (terms.size() > kMostTerms)
        return say("load/sum-of", figure(static_cast<std::int64_t>(terms.size())), figure(sum));
    Phrases figures;
    for (auto const va : terms) figures.push_back(figure(va));
    return say("load/equals-va", joined("load/plus", figures), figure(sum));
}

Phrase as_share(std::int64_t va, std::int64_t percent) {
    return say("load/share", figure(va), figure(percent), figure(share_of(va, percent)));
}

Phrase as_banded(std::int64_t va, DemandBands bands) {
    Phrases parts;
    std::int64_t from = 0;
    for (DemandBand const& b : bands) {
        auto const to = b.up_to_va == 0 ? va : std::min(va, b.up_to_va);
        if (to <= from) break;
        auto const part = from == 0 ? say("load/va", figure(to)) : say("load/slice", figure(to), figure(from));
        parts.push_back(b.percent == 100 ? part : say("load/at-percent", part, figure(b.percent)));
        from = to;
    }
    auto const counts = banded(va, bands);
    return counts == va ? Phrase() : say("load/equals-va", joined("load/plus", parts), figure(counts));
}

Phrase one_by_one(Phrases words) {
    std::erase_if(words, [](Phrase const& w) { return w.empty(); });
    return joined("list/comma", words);
}

std::int64_t banded(std::int64_t va, DemandBands bands) {
    std::int64_t counted = 0, from = 0;
    for (DemandBand const& b : bands) {
        auto const to = b.up_to_va == 0 ? va : std::min(va, b.up_to_va);
        if (to > from) counted += share_of(to - from, b.percent);
        from = std::max(from, to);
    }
    return counted;
}

std::int64_t StepList::add(LoadStep::Kind kind, Phrase item, std::string_view topic, Phrase arithmetic, std::int64_t va,
                           std::vector<std::string> circuits, Source source) {
    auto reference = cite(*book_, "load-service/" + std::string(topic));
    if (source == Source::memory && reference.source != Source::unread) reference.source = source;
    if ((source == Source::noted || source == Source::practice) && reference.source == Source::seen)
        reference.source = source;
    steps_.push_back(
        {kind, std::move(item), topic, std::move(reference), std::move(arithmetic), va, std::move(circuits)});
    return va;
}

std::int64_t StepList::slices(Phrase const& of, std::string_view topic, std::int64_t va, DemandBands bands) {
    std::int64_t total = 0, from = 0;
    for (DemandBand const& b : bands) {
        bool const last = b.up_to_va == 0;
        auto const to = last ? va : std::min(va, b.up_to_va);
        if (to <= from) break;
        auto const part = to - from;
        auto const words = from == 0  ? say("load/first-slice", of, figure(last ? va : b.up_to_va))
                           : to == va ? say("load/rest", of)
                                      : say("load/next-slice", of, figure(from), figure(to));
        auto const slice = from > 0 ? say("load/minus", figure(to), figure(from), figure(part)) : Phrase();
        total += counted(words, topic, one_by_one({slice, as_share(part, b.percent)}), share_of(part, b.percent), {},
                         b.source);
        from = to;
    }
    return total;
}

std::int64_t StepList::total() const {
    std::int64_t sum = 0;
    for (LoadStep const& s : steps_)
        if (s.kind == LoadStep::Kind::counted) sum += s.va;
    return sum;
}

LoadStep const* grown_step(LoadCalculation const& before, LoadCalculation const& after) {
    // What is already taken of each old step: one of another wording may stand for the same line.
    auto const old_va = [&](LoadStep const& s) {
        std::int64_t same_words = -1, of_topic = 0;
        for (LoadStep const& b : before.steps) {
            if (b.kind != LoadStep::Kind::counted || b.topic != s.topic) continue;
            if (b.item == s.item) same_words = b.va;
            if (std::ranges::none_of(after.steps, [&](LoadStep const& a) { return a.item == b.item; }))
                of_topic += b.va;
        }
        return same_words >= 0 ? same_words : of_topic;
    };
    LoadStep const* most = nullptr;
    std::int64_t growth = 0;
    for (LoadStep const& s : after.steps) {
        if (s.kind != LoadStep::Kind::counted) continue;
        if (auto const more = s.va - old_va(s); more > growth) most = &s, growth = more;
    }
    return most;
}

std::int64_t sure_va(LoadCalculation const& load) {
    std::int64_t sum = 0;
    for (LoadStep const& s : load.steps) {
        bool const sure = !s.argued && !only_warns(s.reference.source) && s.reference.source != Source::unread;
        if (s.kind == LoadStep::Kind::counted && sure) sum += s.va;
        // Of an item a share may count: what is guessed is taken off whole, rather than too little.
        if (sure) sum -= s.guessed_va;
    }
    return sum;
}

} // namespace legwork
