// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/program.h"
#include "output/files.h"

#include <algorithm>
#include <csignal>
#include <cstdlib>
#include <exception>
#include <iostream>
#include <sstream>
#include <string_view>

#include <fcntl.h>
#include <sys/ioctl.h>
#include <unistd.h>

namespace {

bool may_color(int descriptor) {
    char const* const refused = std::getenv("NO_COLOR");
    char const* const terminal = std::getenv("TERM");
    bool const dumb = terminal && std::string_view(terminal) == "dumb";
    return ::isatty(descriptor) == 1 && !dumb && (!refused || *refused == '\0');
}

// As wide as the terminal, as far as tables stand and lines are read well; what goes elsewhere is the same everywhere.
std::size_t line_width() {
    constexpr int least = 60, most = 120, unknown = 80, elsewhere = 100;
    if (::isatty(STDOUT_FILENO) != 1) return elsewhere;
    winsize size{};
    int columns = ::ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 ? size.ws_col : 0;
    char const* const said = std::getenv("COLUMNS");
    if (columns <= 0 && said) columns = std::atoi(said);
    return static_cast<std::size_t>(std::clamp(columns > 0 ? columns : unknown, least, most));
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
    legwork::Streams streams{out, std::cerr, may_color(STDOUT_FILENO), may_color(STDERR_FILENO), line_width()};
    try {
        auto const status = legwork::run_program({words + (count > 0 ? 1 : 0), words + count}, streams);
        legwork::write_all(STDOUT_FILENO, out.str(), "standard output");
        return status;
    } catch (std::exception const& e) {
        std::cerr << "legwork: " << e.what() << '\n';
        return legwork::exit_not_written;
    }
}
