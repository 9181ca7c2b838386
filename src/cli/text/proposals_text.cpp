// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/text/text.h"

#include "cli/text/words.h"
#include "reckon/say.h"
#include "sheet/common.h"
#include "toml/problem.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

std::string sizes(Proposal const& p) {
    std::vector<std::string> words;
    if (p.breaker) words.push_back(text(*p.breaker) + " breaker");
    for (std::size_t i = 0; i < p.cables.size(); ++i)
        if (!p.cables[i].empty())
            words.push_back(i == 0 ? p.cables[i] : fmt::format("{} in piece {}", p.cables[i], i + 1));
    return words.empty() ? "nothing proposed" : joined(words);
}

void list_one(Session const& s, Proposal const& p, Streams& streams) {
    auto const* circuit = circuit_named(s.building, p.circuit);
    auto const name = !circuit || circuit->name.empty() ? "" : ", " + fit_to_print(circuit->name);
    streams.out << in_lines(fmt::format("{}{}: {}", p.circuit, name, sizes(p)), streams.width, 4) << '\n';
    for (Step const& step : p.steps) {
        auto const& r = step.reference;
        auto const section = r.edition.empty() ? std::string() : fmt::format(" ({})", reference_words(r));
        streams.out << "    " << in_lines(fit_to_print(step.says + section), streams.width, 6, 4) << '\n';
    }
    if (!p.find_out.empty())
        streams.out << "    "
                    << in_lines("Find out or put right first: " + as_sentence(p.find_out), streams.width, 6, 4) << '\n';
    streams.out << '\n';
}

} // namespace

void list_proposals(Session const& s, std::vector<Proposal> const& proposed, Rewrite const& saved, Streams& streams) {
    for (Proposal const& p : proposed) list_one(s, p, streams);
    bool const any = std::ranges::any_of(proposed, [](Proposal const& p) { return p.breaker || p.has_cable(); });
    if (proposed.empty())
        streams.out << in_lines("Nothing to propose: every circuit has its breaker and its cable.", streams.width, 4)
                    << '\n';
    else if (!saved.before.empty())
        streams.out << fmt::format("wrote {} ({})\nthe old file is {}\n", fit_to_print(saved.file),
                                   counted(saved.changes, "value"), fit_to_print(saved.before));
    else if (saved.asked)
        streams.out << "Nothing to write: no size could be proposed.\n";
    else if (any)
        streams.out << "The file is unchanged; --write puts these sizes into it.\n";
    streams.out << in_lines(english().words(caution()), streams.width, 0) << '\n';
}

} // namespace legwork
