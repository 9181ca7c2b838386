// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/files.h"

#include "output/descriptor.h"
#include "units/failure.h"

#include <fcntl.h>
#include <unistd.h>

namespace legwork {

std::optional<std::string> read_file(std::string const& path, std::size_t limit, std::string& why) {
    bool const standard_input = path == "-";
    Descriptor const opened(standard_input ? -1 : ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NOCTTY));
    if (!standard_input && !opened.open()) return why = reason(errno), std::nullopt;
    int const from = standard_input ? STDIN_FILENO : opened.number();
    std::string bytes(limit + 1, '\0');
    std::size_t have = 0;
    while (have < bytes.size()) {
        auto const got = ::read(from, bytes.data() + have, bytes.size() - have);
        if (got < 0 && errno == EINTR) continue;
        if (got < 0) return why = reason(errno), std::nullopt;
        if (got == 0) break;
        have += static_cast<std::size_t>(got);
    }
    bytes.resize(have);
    return bytes;
}

void write_all(int descriptor, std::string_view bytes, std::string const& name) {
    while (!bytes.empty()) {
        auto const put = ::write(descriptor, bytes.data(), bytes.size());
        if (put < 0 && errno == EINTR) continue;
        if (put < 0) throw Failure(cannot("write", name, errno));
        bytes.remove_prefix(static_cast<std::size_t>(put));
    }
}

} // namespace legwork
