// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "draw/draw.h"

#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// The bundled typefaces, read when the first text is measured or drawn: most jobs are judged without.
class LateFonts : public TextWidth {
public:
    // `at_hand`: read already; null where they are to be read from the share folder.
    explicit LateFonts(std::shared_ptr<Fonts const> at_hand = nullptr) : fonts_(std::move(at_hand)) {}

    // These throw Failure when they cannot be read.
    Fonts const& fonts() const;
    Mm width(std::string_view words, Mm x_height, Weight weight) const override;
    std::vector<std::string> missing(std::string_view words) const override;

    bool are_read() const { return fonts_ != nullptr; }

private:
    mutable std::shared_ptr<Fonts const> fonts_;
};

} // namespace legwork
