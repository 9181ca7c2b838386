// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The type of a cable against where it runs, and how deep it is buried.
#include "codebook/cable_places.h"
#include "reckon/say.h"
#include "rules/wire/list.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
constexpr auto told = Gravity::second; // depth of burial, a cable between buildings

std::string_view words_of(WirePlace where) {
    switch (where) {
    case WirePlace::damp: return "in a damp place";
    case WirePlace::wet: return "in a wet place";
    case WirePlace::outdoors: return "outdoors";
    case WirePlace::buried: return "in the ground";
    case WirePlace::dry:
    case WirePlace::unsaid: break;
    }
    return "in a dry place";
}

std::string_view words_of(CableType type) {
    switch (type) {
    case CableType::indoor: return "the sheathed cable for dry rooms";
    case CableType::armoured: return "armoured cable for dry rooms";
    case CableType::metal_clad: return "metal-clad cable";
    case CableType::uf:
    case CableType::nmwu:
    case CableType::teck: break;
    }
    return type_name(type);
}

Circuit const* first_of(Run const& run) { return run.carries.empty() ? nullptr : run.carries.front(); }

bool in_conduit(Run const& run) { return first_of(run) && first_of(run)->wiring == Wiring::conduit; }

// Cable of a power circuit: wires in conduit have no sheath to judge.
bool is_power(Run const& run) {
    CableKind const* kind = run.piece.kind;
    return kind && kind->power && !(first_of(run) && first_of(run)->on_dc());
}

// Sheathed cable is of copper and up to 2 AWG; larger, and aluminium, comes in kinds that G/N does not tell apart.
bool is_told(Run const& run) {
    CableKind const& kind = *run.piece.kind;
    bool const copper = !first_of(run) || first_of(run)->metal == Metal::copper;
    return kind.type != CableType::indoor || (copper && *kind.gauge <= Gauge::awg2);
}

Where about(Run const& run, std::string key) {
    if (run.carries.empty()) return {"", {run.mark}, "kind"};
    return legwork::about(run.carries, std::move(key));
}

std::string who(Run const& run) {
    std::vector<std::string> marks;
    for (Circuit const* c : run.carries) marks.push_back(c->mark);
    auto name = marks.empty() || !run.of_circuit ? run.mark : listed(marks);
    return run.segment > 0 ? fmt::format("{} from {}", name, run.from.called) : name;
}

std::string way_out(Case const& c, Run const& run) {
    auto const kind = power_cable(run.piece.called);
    auto const plain = run.piece.called.substr(0, run.piece.called.find(' '));
    auto fix = fmt::format("Pull \"{} {}\", or wires for wet places in conduit (wiring = \"conduit\")",
                           kind ? plain : "12/2", cable_places(c.book).wet_type);
    return run.piece.where_guessed ? fix + "; if it stays in a dry wall up to its box, write where = \"dry\"" : fix;
}

Finding wrong_type(Case const& c, Run const& run, MayRun may, CablePlaceRow const* row) {
    bool const sure = may == MayRun::no && !run.piece.where_guessed;
    auto f = finding(c, wire_place, sure ? Gravity::usual : Gravity::doubtful, about(run, "cable"));
    f.reference.source = row ? row->source : Source::memory;
    auto const runs = fmt::format("{}: {} runs {}{}", who(run), run.piece.called, words_of(run.piece.where),
                                  run.piece.where_guessed ? ", as its name says" : "");
    if (!row)
        f.message = fmt::format("{}, and {} is no type of the {}", runs, type_name(run.piece.kind->type),
                                c.book.family == Family::nec ? "NEC" : "CE Code");
    else if (!is_told(run))
        f.message = fmt::format("{}; whether it may is not told by its size: say its type", runs);
    else if (may == MayRun::ask)
        f.message =
            fmt::format("{}; {} may only where its sheath is marked for that", runs, words_of(run.piece.kind->type));
    else
        f.message = fmt::format("{}, and is {}", runs, words_of(run.piece.kind->type));
    f.fix = way_out(c, run);
    return f;
}

// Of a run in a place that is said or guessed, and not dry.
std::optional<Finding> type_fault(Case const& c, Run const& run) {
    auto const* row = cable_place_row(c.book, run.piece.kind->type);
    auto const may = row ? may_run(*row, run.piece.where) : MayRun::ask;
    if (may == MayRun::yes) return std::nullopt;
    if (!is_told(run)) // larger wire is seldom of the indoor kind, so a name alone asks nothing
        return run.piece.where_guessed ? std::nullopt : std::optional(wrong_type(c, run, MayRun::ask, row));
    return wrong_type(c, run, may, row);
}

std::string depth(Figure const& mm) { return fmt::format("{} mm ({} in)", mm.value, (mm.value * 10 + 127) / 254); }

Finding burial(Case const& c, Run const& run) {
    auto const& t = cable_places(c.book).burial;
    auto f = finding(c, wire_place, told, about(run, "cable"), "wire-place/burial");
    f.reference.source = in_conduit(run) ? t.conduit.source : t.cable.source;
    f.message = fmt::format("{} is buried: cable lies {} deep or more, plastic conduit {}, deeper where cars drive",
                            who(run), depth(t.cable), depth(t.conduit));
    if (t.circuit)
        f.message += fmt::format("; a 120 V circuit of 20 A or less behind a GFCI breaker {}", depth(*t.circuit));
    f.fix = "Have the ground marked for pipes before you dig, leave the trench open for the inspector, and lay warning "
            "tape above the cable";
    return f;
}

// The building that it leads to, where that is another one than it comes from.
std::string const* other_building(Run const& run) {
    Circuit const* c = first_of(run);
    if (!run.of_circuit || !c || !c->panel || c->existing) return nullptr;
    std::string const& to = run.to.panel ? run.to.panel->building : c->building;
    return to.empty() || to == c->panel->building ? nullptr : &to;
}

Finding between(Case const& c, Run const& run, std::string const& building) {
    auto f = finding(c, wire_place, told, about(run, "cable"), "wire-place/building");
    f.message = fmt::format("{}: its {} leads to \"{}\", and nothing says where it runs, so its type was not judged",
                            who(run), run.piece.called, building);
    f.fix = fmt::format("Write where = \"buried\", \"outdoors\" or \"dry\"; in the open and in the ground it is {} or "
                        "wires in conduit",
                        cable_places(c.book).wet_type);
    return f;
}

void judge_run(Case const& c, Run const& run, Inspection& seen) {
    auto const where = run.piece.where;
    if (where == WirePlace::unsaid) {
        if (auto const* building = other_building(run);
            building && !in_conduit(run) && is_told(run) && run.piece.kind->type == CableType::indoor)
            seen.looked(), seen.found(between(c, run, *building));
        return;
    }
    if (in_conduit(run) && where != WirePlace::buried) return;
    seen.looked();
    if (!in_conduit(run) && where != WirePlace::dry) seen.found(type_fault(c, run));
    if (where == WirePlace::buried) seen.found(burial(c, run));
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Run const& run : c.building.runs)
        if (is_power(run)) judge_run(c, run, seen);
    return seen.verdict();
}
} // namespace

constinit Rule const wire_place{
    .id = "wire-place",
    .asks = "A cable is of a type that is made for the place that it runs through.",
    .why =
        "The paper in the cable of dry rooms draws water along its whole length, its sheath cracks in the sun, and a "
        "spade goes through it. What fails then is a dock, a wet lawn or a metal post with 120 V on it.",
    .remedy =
        "Outdoors, in wet places and in the ground run cable made for it, \"12/3 UF\" in the United States, \"12/3 "
        "NMWU\" or \"12/3 TECK\" in Canada, or wires marked for wet places in conduit, deep enough.",
    .gravity = {.nec = {Grade::error, Grade::note},
                .ce = {Grade::warning, Grade::note},
                .doubt = "a name alone says where the cable runs, or nothing says its type"},
    .judge = judge,
};

} // namespace legwork
