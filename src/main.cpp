// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/program.h"
#include "output/files.h"

#include <csignal>
#include <cstdlib>
#include <exception>
#include <iostream>
#include <sstream>

#include <fcntl.h>
#include <unistd.h>

namespace {

bool may_color(int descriptor) {
    char const* const refused = std::getenv("NO_COLOR");
    return ::isatty(descriptor) == 1 && (!refused || *refused == '\0');
}

// A caller may have closed the standard descriptors; a file opened later must not take their place and be written to as
// if it were one. What cannot be written to then fails as it should.
void hold_standard_descriptors() {
    for (int const descriptor : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO})
        if (::fcntl(descriptor, F_GETFD) < 0 && ::open("/dev/null", O_RDONLY) != descriptor) std::abort();
}

} // namespace

int main(int count, char** words) {
    hold_standard_descriptors();
    // A file that would grow past the limit of the shell (ulimit -f) is then an error of the call that writes: told,
    // and nothing half written, instead of an end in the middle.
    std::signal(SIGXFSZ, SIG_IGN);
    // Results are written at once at the end, by a call that tells when they could not be.
    std::ostringstream out;
    legwork::Streams streams{out, std::cerr, may_color(STDOUT_FILENO), may_color(STDERR_FILENO)};
    try {
        auto const status = legwork::run_program({words + (count > 0 ? 1 : 0), words + count}, streams);
        legwork::write_all(STDOUT_FILENO, out.str(), "standard output");
        return status;
    } catch (std::exception const& e) {
        std::cerr << "legwork: " << e.what() << '\n';
        return legwork::exit_not_written;
    }
}
