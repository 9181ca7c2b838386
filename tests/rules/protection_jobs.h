// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One circuit in its room, for the rules that judge by place and use.
#pragma once

#include "job/job.h"
#include "made_job.h"

namespace made {

// One pole, 20 A: what it is for, where, and the receptacles on it.
inline Make at(std::string use, std::string room, std::vector<std::string> types = {}) {
    return one_pole("K1").use(std::move(use)).called("", std::move(room)).outlets(std::move(types));
}
inline Make at_240(std::string use, std::string room, std::vector<std::string> types = {}) {
    return two_pole("K1").breaker(30_A).use(std::move(use)).called("", std::move(room)).outlets(std::move(types));
}
inline typed::Job home(std::vector<typed::Circuit> circuits) {
    typed::Job made = job(std::move(circuits));
    made.dwelling = typed::Dwelling{};
    return made;
}

// What a rule says of one circuit in a dwelling: "E", "W", "N" or "-".
inline std::string letter(std::string_view rule, typed::Job const& job, std::string_view edition) {
    auto const all = found(rule, job, edition);
    std::string letters;
    for (Finding const& f : all)
        letters += f.severity == Severity::error ? 'E' : f.severity == Severity::warning ? 'W' : 'N';
    return letters.empty() ? "-" : letters;
}
inline std::string letter(std::string_view rule, typed::Circuit c, std::string_view edition) {
    return letter(rule, home({std::move(c)}), edition);
}
// The same over several editions, in this order.
inline std::string nec(std::string_view rule, typed::Circuit const& c) {
    return letter(rule, c, "NEC 2017") + letter(rule, c, "NEC 2020") + letter(rule, c, "NEC 2023");
}
inline std::string ce(std::string_view rule, typed::Circuit const& c) {
    return letter(rule, c, "CE 2018") + letter(rule, c, "CE 2021") + letter(rule, c, "CE 2024");
}

} // namespace made
