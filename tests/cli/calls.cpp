// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "calls.h"

#include "cli/program.h"
#include "output/files.h"
#include "temporary_folder.h"

#include <csignal>
#include <sstream>
#include <thread>

#include <fcntl.h>
#include <pty.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

Called call(std::vector<std::string> const& words, bool color, std::size_t width) {
    std::ostringstream out, err;
    legwork::Streams streams{out, err, color, color, width};
    auto const status = legwork::run_program(words, streams);
    return {status, out.str(), err.str()};
}

namespace {

[[noreturn]] void become_program(std::vector<std::string> const& words, std::vector<std::string> const& variables) {
    for (auto const& v : variables) ::putenv(const_cast<char*>(v.c_str()));
    std::string program = LEGWORK_PROGRAM;
    std::vector<char*> arguments{program.data()};
    for (auto const& w : words) arguments.push_back(const_cast<char*>(w.c_str()));
    arguments.push_back(nullptr);
    ::execv(program.c_str(), arguments.data());
    ::_exit(99);
}

int status_of(pid_t child) {
    int status = 0;
    while (::waitpid(child, &status, 0) < 0 && errno == EINTR) {
    }
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

void redirect(int descriptor, std::string const& path, int flags) {
    int const opened = ::open(path.c_str(), flags, 0600);
    if (opened < 0 || ::dup2(opened, descriptor) < 0) ::_exit(98);
}

} // namespace

Called run_process_within(unsigned long bytes, std::vector<std::string> const& words) {
    rlimit old{};
    ::getrlimit(RLIMIT_FSIZE, &old);
    rlimit const limit{bytes, old.rlim_max};
    ::setrlimit(RLIMIT_FSIZE, &limit); // the child has it from here
    auto called = run_process(words);
    ::setrlimit(RLIMIT_FSIZE, &old);
    return called;
}

Called run_process(std::vector<std::string> const& words, std::string const& input, std::string const& out_to,
                   std::vector<std::string> const& variables) {
    TemporaryFolder const folder;
    legwork::write_file(folder / "in", input);
    auto const child = ::fork();
    if (child == 0) {
        redirect(STDIN_FILENO, folder / "in", O_RDONLY);
        redirect(STDOUT_FILENO, out_to.empty() ? folder / "out" : out_to, O_WRONLY | O_CREAT);
        redirect(STDERR_FILENO, folder / "err", O_WRONLY | O_CREAT);
        become_program(words, variables);
    }
    auto const status = status_of(child);
    return {status, out_to.empty() ? contents(folder / "out") : "", contents(folder / "err")};
}

void kill_process(std::vector<std::string> const& words, std::chrono::nanoseconds after) {
    auto const child = ::fork();
    if (child == 0) {
        for (int const descriptor : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO})
            redirect(descriptor, "/dev/null", O_RDWR);
        become_program(words, {});
    }
    std::this_thread::sleep_for(after);
    ::kill(child, SIGKILL);
    status_of(child);
}

Called run_on_terminal(std::vector<std::string> const& words, std::vector<std::string> const& variables,
                       unsigned short columns) {
    int terminal = -1;
    winsize const size{24, columns, 0, 0};
    auto const child = ::forkpty(&terminal, nullptr, nullptr, &size);
    if (child == 0) become_program(words, variables);
    Called called;
    char piece[4096];
    for (;;) { // ends with EIO when the program is gone
        auto const got = ::read(terminal, piece, sizeof piece);
        if (got < 0 && errno == EINTR) continue;
        if (got <= 0) break;
        called.out.append(piece, static_cast<std::size_t>(got));
    }
    ::close(terminal);
    called.status = status_of(child);
    return called;
}

std::string small_job() {
    return R"([job]
name = "Ridge hut"
code = "NEC 2023"

[[panel]]
name   = "Main"
spaces = 8
supply = "120/240"
main   = "60 A"

[[circuit]]
mark      = "A1"
name      = "North wall receptacles"
room      = "Bunk room"
use       = "receptacles"
breaker   = "20 A"
load      = "900 VA"   # measured at the old hut
cable     = "12/3"
length    = "6 m"
multiwire = "A"
tie       = "two-pole breaker"

[[circuit]]
mark      = "A2"
name      = "South wall receptacles"
room      = "Bunk room"
use       = "receptacles"
breaker   = "20 A"
load      = "700 VA"
multiwire = "A"

[[circuit]]
mark    = "WH"
name    = "Water heater, porch closet"
use     = "water heater"
breaker = "20 A"
poles   = 2
load    = "3 kW"
cable   = "12/2"
length  = "4 m"

[[circuit]]
mark    = "L1"
name    = "Lights, bunk room and porch"
use     = "lighting"
breaker = "15 A"
load    = "200 VA"
cable   = "14/2"
length  = "5 m"
)";
}

std::string faulty_job() {
    auto job = small_job();
    auto const at = job.find("\"15 A\"");
    return job.replace(at, 6, "\"20 A\"");
}
