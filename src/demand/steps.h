// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How the steps of a calculation are written down. Only demand's own files include this.
#pragma once

#include "codebook/demand_factors.h"
#include "demand/load.h"

#include <span>

namespace legwork {

// Half a VA and more counts as one.
constexpr std::int64_t share_of(std::int64_t va, std::int64_t percent) { return (va * percent + 50) / 100; }

// "a + b = c VA"; of one term "c VA"; of many "sum of the n lines = c VA".
Phrase as_sum(std::vector<std::int64_t> const& terms);
// "6000 VA × 35 % = 2100 VA"
Phrase as_share(std::int64_t va, std::int64_t percent);
// "3000 VA + (9000 − 3000) VA × 35 % = 5100 VA"; empty when all of it counts.
Phrase as_banded(std::int64_t va, DemandBands bands);
// "A, B, C" of those that say something.
Phrase one_by_one(Phrases words);
// The part of a load that counts, slice by slice.
std::int64_t banded(std::int64_t va, DemandBands bands);

class StepList {
public:
    explicit StepList(CodeBook const& book) : book_(&book) {}

    // The figure of each is returned. `topic` of topics.h without its "load-service/"; the source is that of the
    // figures that went in, when worse than the topic's.
    std::int64_t item(Phrase item, std::string_view topic, Phrase arithmetic, std::int64_t va,
                      std::vector<std::string> circuits = {}, Source source = Source::seen) {
        return add(LoadStep::Kind::item, std::move(item), topic, std::move(arithmetic), va, std::move(circuits),
                   source);
    }
    std::int64_t subtotal(Phrase item, std::string_view topic, Phrase arithmetic, std::int64_t va) {
        return add(LoadStep::Kind::subtotal, std::move(item), topic, std::move(arithmetic), va, {}, Source::seen);
    }
    std::int64_t counted(Phrase item, std::string_view topic, Phrase arithmetic, std::int64_t va,
                         std::vector<std::string> circuits = {}, Source source = Source::seen) {
        return add(LoadStep::Kind::counted, std::move(item), topic, std::move(arithmetic), va, std::move(circuits),
                   source);
    }
    // A counted step for each slice that the load reaches; returns what counts of it.
    std::int64_t slices(Phrase const& of, std::string_view topic, std::int64_t va, DemandBands bands);

    LoadSteps const& steps() const { return steps_; }
    std::int64_t total() const; // of the counted
    void last_is_argued() { steps_.back().argued = true; }
    void last_is_guessed(std::int64_t va) { steps_.back().guessed_va = va; }

private:
    std::int64_t add(LoadStep::Kind kind, Phrase item, std::string_view topic, Phrase arithmetic, std::int64_t va,
                     std::vector<std::string> circuits, Source source);

    CodeBook const* book_;
    LoadSteps steps_;
};

} // namespace legwork
