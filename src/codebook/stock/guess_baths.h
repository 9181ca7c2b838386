// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit's name and room propose of the bathrooms that it serves, as guess_use does of its use.
#pragma once

#include <string_view>

namespace legwork {

// "Baths", "both bathrooms", "hall bath and master bath": more than one.
bool serves_several_baths(std::string_view name, std::string_view room);

} // namespace legwork
