// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where in the file each thing stands, made while reading; rules name things, never lines.
#pragma once

#include "job/terms.h"
#include "toml/problem.h"

#include <map>
#include <string>
#include <tuple>

namespace legwork {

class Places {
public:
    // `id` is the mark or name of the thing (of an [[accept]], its number from 0); an empty key is the table itself.
    void set(Subject thing, std::string id, std::string key, Place place) {
        at_[{thing, std::move(id), std::move(key)}] = place;
    }
    // The key's place, else its table's, else {0, 0}.
    Place find(Subject thing, std::string const& id, std::string const& key) const {
        if (auto const p = at_.find({thing, id, key}); p != at_.end()) return p->second;
        if (auto const p = at_.find({thing, id, ""}); p != at_.end()) return p->second;
        return {};
    }

private:
    std::map<std::tuple<Subject, std::string, std::string>, Place> at_;
};

} // namespace legwork
