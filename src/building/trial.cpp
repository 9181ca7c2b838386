// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "building/trial.h"

#include "building/resolve.h"

namespace legwork {

Building with_sizes(Building const& building, std::span<Sizes const> sizes) {
    auto job = *building.said;
    for (Sizes const& size : sizes) {
        if (size.circuit >= job.circuits.size()) continue; // a feeder that stands in no [[circuit]]
        typed::Circuit& c = job.circuits[size.circuit];
        if (size.breaker) c.breaker = size.breaker;
        if (c.run.size() < size.cables.size()) c.run.resize(size.cables.size());
        for (std::size_t i = 0; i < size.cables.size(); ++i)
            if (!size.cables[i].empty()) c.run[i].kind = size.cables[i];
    }
    return resolve(job);
}

Building with_circuit(Building const& building, Circuit const& more) {
    auto job = *building.said;
    typed::Circuit& c = job.circuits.emplace_back();
    c.mark = more.mark;
    c.name = more.name;
    c.panel = more.panel ? more.panel->name : std::string();
    c.use = more.use ? std::string(more.use->name) : std::string();
    c.breaker = more.breaker;
    c.poles = more.poles;
    c.tie = more.tie;
    c.load = more.load;
    c.mca = more.mca;
    c.continuous = more.continuous;
    c.motor = more.motor;
    c.interlocked = more.interlocked;
    return resolve(job);
}

} // namespace legwork
