// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/oracle/random.h"

#include "job/job.h"
#include "units/text.h"

#include <sstream>

namespace legwork::oracle {

namespace {
void list(std::ostringstream& out, char const* key, std::vector<int> const& values) {
    if (values.empty()) return;
    out << key << " = [";
    for (std::size_t i = 0; i < values.size(); ++i) out << (i ? ", " : "") << values[i];
    out << "]\n";
}

char const* kind(SupplyKind k) {
    switch (k) {
    case SupplyKind::wye_120_208: return "120/208";
    case SupplyKind::bridged_120: return "120 on both legs";
    case SupplyKind::one_leg_120: return "120 on one leg";
    default: return "120/240";
    }
}

void panel(std::ostringstream& out, typed::Panel const& p) {
    out << "[[panel]]\nname = \"" << p.name << "\"\nspaces = " << p.spaces << "\n";
    if (p.supply) out << "supply = \"" << kind(p.supply->kind) << "\"\n";
    if (p.feeder) out << "feeder = \"" << p.feeder->panel << "/" << p.feeder->mark << "\"\n";
    if (p.numbering == Numbering::down) out << "numbering = \"down\"\n";
    if (p.bus_legs == BusLegs::by_column) out << "legs = \"by column\"\n";
    if (p.bus_legs == BusLegs::listed) {
        out << "legs = [";
        for (std::size_t i = 0; i < p.row_legs.size(); ++i) out << (i ? ", \"" : "\"") << letter(p.row_legs[i]) << '"';
        out << "]\n";
    }
    list(out, "blocked", p.blocked);
    list(out, "dead", p.dead);
    list(out, "tandem", p.tandem);
}

std::string thousandths(std::int64_t count) {
    auto const rest = std::to_string(1000 + count % 1000).substr(1);
    return std::to_string(count / 1000) + (count % 1000 ? "." + rest : "");
}

void circuit(std::ostringstream& out, typed::Circuit const& c) {
    out << "[[circuit]]\nmark = \"" << c.mark << "\"\npanel = \"" << c.panel << "\"\n";
    if (!c.use.empty()) out << "use = \"" << c.use << "\"\n";
    if (c.poles == 2) out << "poles = 2\n";
    if (c.load) out << "load = \"" << thousandths(c.load->count) << " VA\"\n";
    if (c.measured) out << "measured = \"" << thousandths(c.measured->count) << " A\"\n";
    if (!c.multiwire.empty()) {
        out << "multiwire = \"" << c.multiwire << "\"\n";
        out << "tie = \""
            << (c.tie == Tie::none         ? "none"
                : c.tie == Tie::handle_tie ? "handle tie"
                                           : "two-pole breaker")
            << "\"\n";
    }
    if (c.space && c.space->half)
        out << "space = \"" << text(*c.space) << "\"\n";
    else if (c.space)
        out << "space = " << c.space->space << "\n";
    if (!c.reach_side.empty()) out << "reach = \"" << c.reach_side << "\"\n";
    list(out, "reach", c.reach_spaces);
    if (c.off) out << "off = true\n";
    if (c.fixed) out << "fixed = true\n";
}

std::string share(std::int64_t millionths) {
    if (millionths >= 1'000'000) return "1.0";
    return "0." + std::to_string(1'000'000 + millionths).substr(1);
}

void situation(std::ostringstream& out, typed::Situation const& s) {
    out << "[[situation]]\nname = \"" << s.name << "\"\nother = " << share(s.other) << "\nshare = {";
    char const* between = " ";
    for (auto const* shares : {&s.by_use, &s.by_mark})
        for (auto const& [key, value] : *shares) {
            out << between << key << " = " << share(value);
            between = ", ";
        }
    out << " }\n";
}
} // namespace

std::string as_toml(typed::Job const& job) {
    std::ostringstream out;
    out << "[job]\ncode = \"" << job.code << "\"\n";
    for (typed::Panel const& p : job.panels) panel(out, p);
    for (typed::Circuit const& c : job.circuits) circuit(out, c);
    for (typed::Situation const& s : job.situations) situation(out, s);
    return out.str();
}

} // namespace legwork::oracle
