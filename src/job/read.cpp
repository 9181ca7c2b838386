// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "job/read.h"
#include "job/keys/keys.h"
#include "job/reading.h"

#include <algorithm>
#include <fmt/format.h>

namespace legwork {

namespace {

// The tables of one kind; complains at the first of too many and leaves the others unread.
Tables take_tables(TableReader& file, std::string_view key) {
    auto tables = file.tables(key);
    auto const most = static_cast<std::size_t>(find(kJobFileKeys, key)->most);
    if (tables.size() > most) {
        tables[most].complain("", fmt::format("there are {} tables [[{}]], {} at most", tables.size(), key, most),
                              "split the job: one file for one building");
        tables.erase(tables.begin() + static_cast<std::ptrdiff_t>(most), tables.end());
    }
    return tables;
}

void take_all_tables(Reading& r, TableReader& file) {
    r.supplies = take_tables(file, "supply");
    r.panels = take_tables(file, "panel");
    r.circuits = take_tables(file, "circuit");
    r.situations = take_tables(file, "situation");
    r.cables = take_tables(file, "cable");
    r.boxes = take_tables(file, "box");
    r.accepts = take_tables(file, "accept");
    r.job.supplies.resize(r.supplies.size());
    r.job.panels.resize(r.panels.size());
    r.job.circuits.resize(r.circuits.size());
    r.job.situations.resize(r.situations.size());
    r.job.cables.resize(r.cables.size());
    r.job.boxes.resize(r.boxes.size());
    r.job.accepts.resize(r.accepts.size());
}

void read_all(Reading& r, TableReader& file) {
    take_all_tables(r, file);
    take_names(r);
    read_heads(r, file);
    file.finish();
    read_supplies(r);
    read_panels(r);
    read_circuits(r);
    resolve_panels(r);
    check_feeders(r);
    match_pairs(r);
    check_spaces(r);
    read_situations(r);
    read_cables(r);
    read_boxes(r);
    read_accepts(r);
}

} // namespace

bool contains(std::vector<std::string> const& list, std::string_view word) {
    return std::ranges::find(list, word) != list.end();
}

typed::Circuit* Reading::circuit(std::string_view mark) {
    auto const found = std::ranges::find(job.circuits, mark, &typed::Circuit::mark);
    return found == job.circuits.end() ? nullptr : &*found;
}

bool Reading::is_circuit(TableReader& from, std::string_view mark, std::size_t at) {
    if (contains(marks, mark)) return true;
    auto const is_cable = contains(cable_marks, mark);
    out.add(at,
            is_cable ? fmt::format("{}: {} is a cable, not a circuit", from.what(), mark)
                     : fmt::format("{}: there is no circuit {}", from.what(), quoted(mark)),
            is_cable || out.full() ? "name a circuit by its mark"
                                   : did_you_mean(mark, marks, "give the mark of a circuit of this file"));
    return false;
}

void record(Reading& r, Subject thing, std::string const& id, TableReader const& t) {
    auto const& source = r.out.source();
    r.places.set(thing, id, "", source.place(t.at()));
    for (auto const& e : t.entries()) r.places.set(thing, id, e.key, source.place(e.at));
}

ReadJob read_job(std::string_view bytes, Vocabulary const& words) {
    SourceText const source(bytes);
    Complaints out(source);
    auto const root = parse_toml(bytes, out);
    if (!root) return {std::nullopt, {}, out.in_file_order()};
    TableReader file(*root, 0, kJobFileKeys, out);
    Reading r{words, out};
    read_all(r, file);
    if (!out.empty()) return {std::nullopt, std::move(r.places), out.in_file_order()};
    return {std::move(r.job), std::move(r.places), {}};
}

} // namespace legwork
