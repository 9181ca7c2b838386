// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "child.h"

#include <chrono>
#include <cstdlib>
#include <fcntl.h>
#include <filesystem>
#include <stdexcept>
#include <sys/resource.h>
#include <sys/time.h>
#include <sys/wait.h>
#include <unistd.h>

namespace legwork::bench {

namespace fs = std::filesystem;

namespace {
double seconds(timeval t) { return static_cast<double>(t.tv_sec) + static_cast<double>(t.tv_usec) * 1e-6; }
double seconds(rusage const& used) { return seconds(used.ru_utime) + seconds(used.ru_stime); }
} // namespace

double seconds_of_children() {
    rusage used{};
    getrusage(RUSAGE_CHILDREN, &used);
    return seconds(used);
}

Ran run(std::function<int()> const& work) {
    auto const start = std::chrono::steady_clock::now();
    pid_t const child = fork();
    if (child < 0) throw std::runtime_error("cannot fork");
    if (child == 0) _exit(work());
    int status = 0;
    rusage used{};
    if (wait4(child, &status, 0, &used) != child) throw std::runtime_error("cannot wait for a child process");
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, seconds(used), static_cast<double>(used.ru_maxrss) / 1024.0,
            std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count()};
}

Ran run(std::vector<std::string> const& words) {
    std::vector<char*> arguments;
    for (auto const& w : words) arguments.push_back(const_cast<char*>(w.c_str()));
    arguments.push_back(nullptr);
    return run([&] {
        int const nowhere = open("/dev/null", O_WRONLY);
        dup2(nowhere, STDOUT_FILENO);
        dup2(nowhere, STDERR_FILENO);
        execvp(arguments[0], arguments.data());
        return 127;
    });
}

Folder::Folder() {
    path_ = (fs::temp_directory_path() / "legwork-bench-XXXXXX").string();
    if (!mkdtemp(path_.data())) throw std::runtime_error("no temporary folder");
}

Folder::~Folder() {
    std::error_code ignored;
    fs::remove_all(path_, ignored);
}

} // namespace legwork::bench
