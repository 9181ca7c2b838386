// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "source_folder.h"

std::string in_sources(std::string_view path) {
    std::string all = LEGWORK_SOURCES;
    if (!path.empty()) all += '/';
    return all.append(path);
}
