// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Random buildings to be reckoned: every edition, every use, dwellings and others, sub-panels below sub-panels.
#pragma once

#include "job/job.h"

#include <rapidcheck.h>

#include <iostream>
#include <string>

namespace made {

using namespace legwork;

bool chance(int of); // one in so many
// Its mark is K and this number, which is in its load too: no two of one figure, so that nothing hangs on which of two
// equal motors is taken.
typed::Circuit any_circuit(int n, std::string const& panel);
typed::Job any_job();
std::string told(typed::Job const& job); // what a load hangs on, to be shown when a test fails

// The property holds for so many cases, the same ones every time.
template <class Property>
bool always(int cases, std::uint64_t seed, Property&& property) {
    rc::detail::TestParams params;
    params.seed = seed;
    params.maxSuccess = cases;
    auto const result = rc::detail::checkTestable(std::forward<Property>(property), rc::detail::TestMetadata{}, params);
    if (!result.template is<rc::detail::SuccessResult>()) rc::detail::printResultMessage(result, std::cerr);
    return result.template is<rc::detail::SuccessResult>();
}

} // namespace made
