// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/hard_homes.h"

#include "balance/oracle/homes.h"
#include "job/job.h"

#include <string>

namespace legwork::oracle {

namespace {
// Adds the panel of another job, its names ending differently. Situations are told apart by their place.
void add(typed::Job& all, typed::Job one, std::string const& end) {
    one.panels[0].name += end;
    for (typed::Circuit& c : one.circuits) {
        c.mark += end;
        c.panel += end;
        if (!c.multiwire.empty()) c.multiwire += end;
    }
    if (all.panels.empty()) {
        all.code = "NEC 2023";
        all.situations = one.situations;
        for (typed::Situation& s : all.situations) s.by_mark.clear();
    }
    for (std::size_t s = 0; s < one.situations.size(); ++s)
        for (auto const& [mark, share] : one.situations[s].by_mark) all.situations[s].by_mark[mark + end] = share;
    all.panels.push_back(one.panels[0]);
    all.circuits.insert(all.circuits.end(), one.circuits.begin(), one.circuits.end());
}

// Shortens the wires of two circuits of three, or of one of two: every fifth to eighth space is within reach.
void shorten(typed::Job& job, std::size_t of) {
    for (std::size_t i = 0; i < job.circuits.size(); ++i) {
        typed::Circuit& c = job.circuits[i];
        c.fixed = false;
        if (i % of == 0) continue;
        for (int s = 1 + static_cast<int>(i % 7); s <= job.panels[0].spaces; s += 5 + static_cast<int>(i % 4))
            c.reach_spaces.push_back(s);
    }
}
} // namespace

typed::Job hard_homes(int panels) {
    typed::Job all;
    for (int n = 0; n < panels; ++n) add(all, random_home(3, {84, 8, 0, 0, 8, 1900}), "-" + std::to_string(n));
    return all;
}

typed::Job short_wires() {
    typed::Job all, one = random_home(5, {84, 8, 6, 10, 3, 1900});
    shorten(one, 3);
    add(all, one, "");
    return all;
}

typed::Job full_job() {
    typed::Job all;
    for (int n = 0; n < 20; ++n) {
        typed::Job one = random_home(static_cast<std::uint64_t>(n + 1), {24, 3, 2, 2, 2, 1900});
        shorten(one, 2);
        for (std::size_t i = 1; i < one.circuits.size(); i += 4)
            if (one.circuits[i].multiwire.empty()) one.circuits[i].space.reset();
        add(all, one, "-" + std::to_string(n));
    }
    return all;
}

} // namespace legwork::oracle
