// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "cli/session.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>

namespace fuzz {

std::string text_of(std::uint8_t const* data, std::size_t size);

// The job opened as a command opens it, with fonts that are kept from one input to the next; nothing when it is not
// understood, and then its mistakes hold what they promise.
std::optional<legwork::Session> opened(std::string bytes);
std::shared_ptr<legwork::Fonts const> fonts();

// What a command shows.
std::string shown_by(std::function<void(legwork::Streams&)> const& command);

// The same number for the same bytes: what else an input decides hangs on it.
unsigned number_of(std::string_view bytes);

} // namespace fuzz
