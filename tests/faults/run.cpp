// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "run.h"

#include <csignal>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <new>
#include <stdexcept>

#include <fcntl.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace faults {

namespace fs = std::filesystem;

namespace {

constexpr unsigned kLongestRun = 60; // seconds, a net against hangs
constexpr int kBoardDescriptor = 3;  // of the program that runs

int in_memory(char const* name) {
    auto const made = ::memfd_create(name, 0);
    if (made < 0) throw std::runtime_error("no file in memory");
    return made;
}

Board* new_board(int file) {
    if (::ftruncate(file, sizeof(Board)) != 0) throw std::runtime_error("no page to share");
    auto* const page = ::mmap(nullptr, sizeof(Board), PROT_READ | PROT_WRITE, MAP_SHARED, file, 0);
    if (page == MAP_FAILED) throw std::runtime_error("no page to share");
    return new (page) Board{};
}

void set_order(Board& board, Fault const& fault, std::string const& folder) {
    board.act = fault.act;
    board.kind = fault.kind;
    board.nth = fault.nth;
    board.error = fault.error;
    for (auto const& [kind, error] : fault.lacks) board.always[static_cast<std::size_t>(kind)] = error;
    if (folder.size() >= board.folder.size()) throw std::runtime_error("the folder's name is too long");
    if (!fault.everywhere) std::strcpy(board.folder.data(), folder.c_str());
}

[[noreturn]] void become_program(std::vector<std::string> const& words) {
    std::string program = LEGWORK_PROGRAM;
    std::vector<char*> arguments{program.data()};
    for (auto const& w : words) arguments.push_back(const_cast<char*>(w.c_str()));
    arguments.push_back(nullptr);
    ::execv(program.c_str(), arguments.data());
    ::_exit(99);
}

std::string all_of(int pipe) {
    std::string text;
    char piece[4096];
    for (ssize_t got = 0; (got = ::read(pipe, piece, sizeof piece)) > 0;)
        text.append(piece, static_cast<std::size_t>(got));
    return text;
}

} // namespace

Running::Running(std::string const& folder, std::vector<std::string> const& words, Fault const& fault,
                 std::function<void()> const& in_child)
    : board_file_(in_memory("board")), board_(new_board(board_file_)) {
    // Far less is printed than a pipe holds, so that nobody has to read meanwhile.
    for (auto* const pipe : {out_, err_})
        if (::pipe2(pipe, O_CLOEXEC) != 0 || ::fcntl(pipe[0], F_SETFL, O_NONBLOCK) != 0)
            throw std::runtime_error("no pipe");
    set_order(*board_, fault, fs::canonical(folder).string());
    process_ = ::fork();
    if (process_ < 0) throw std::runtime_error("no process");
    if (process_ > 0) return;
    ::alarm(kLongestRun);
    ::umask(022);
    int const nothing = ::open("/dev/null", O_RDONLY | O_CLOEXEC);
    if (::chdir(folder.c_str()) != 0 || ::dup2(nothing, 0) < 0 || ::dup2(out_[1], 1) < 0 || ::dup2(err_[1], 2) < 0)
        ::_exit(98);
    // Nothing else that the caller of the tests had open: how many files may be open is a limit that is tried.
    if (::dup2(board_file_, kBoardDescriptor) < 0 || ::close_range(kBoardDescriptor + 1, ~0U, 0) != 0) ::_exit(98);
    ::setenv("LD_PRELOAD", LEGWORK_FAULT_SHIM, 1);
    ::setenv(kBoardVariable, std::to_string(kBoardDescriptor).c_str(), 1);
    if (in_child) in_child();
    become_program(words);
}

Running::~Running() {
    if (!ended_) {
        ::kill(process_, SIGKILL);
        while (!ended_) wait();
    }
    ::munmap(board_, sizeof(Board));
    for (int const file : {board_file_, out_[0], out_[1], err_[0], err_[1]}) ::close(file);
}

bool Running::wait() {
    while (::waitpid(process_, &status_, WUNTRACED) < 0)
        if (errno != EINTR) throw std::runtime_error("a process is lost");
    ended_ = !WIFSTOPPED(status_);
    return !ended_;
}

bool Running::stops() { return !ended_ && wait(); }

std::string Running::call() const { return board_->call.data(); }

void Running::go_on() { ::kill(process_, SIGCONT); }

void Running::kill() { ::kill(process_, SIGKILL); }

namespace {

bool has_ended(pid_t process) {
    siginfo_t seen{};
    return ::waitid(P_PID, static_cast<id_t>(process), &seen, WEXITED | WNOHANG | WNOWAIT) == 0 && seen.si_pid != 0;
}

bool sleeps(pid_t process) {
    std::ifstream facts("/proc/" + std::to_string(process) + "/stat"); // "4711 (legwork) S 1 ..."
    std::string number, name, state;
    facts >> number >> name >> state;
    return state == "S";
}

} // namespace

void Running::let_run() const {
    constexpr int enough = 40; // times in a row, a millisecond apart; a lock that is polled for is slept for, too
    for (int asleep = 0; asleep < enough && !has_ended(process_); ::usleep(1000))
        asleep = sleeps(process_) ? asleep + 1 : 0;
}

Ran Running::end() {
    while (stops()) go_on();
    auto const status = WIFEXITED(status_) ? WEXITSTATUS(status_) : -WTERMSIG(status_);
    return {.status = status,
            .out = all_of(out_[0]),
            .err = all_of(err_[0]),
            .seen = board_->seen,
            .reached = board_->reached > 0,
            .call = board_->call.data(),
            .path = board_->path.data()};
}

Ran run(std::string const& folder, std::vector<std::string> const& words, Fault const& fault,
        std::function<void()> const& in_child) {
    return Running(folder, words, fault, in_child).end();
}

std::string told(Fault const& fault, Ran const& ran) {
    static constexpr char const* acts[]{"undisturbed",   "refused",      "refused from here on", "short",
                                        "killed before", "killed after", "stopped before",       "stopped from"};
    auto const kind = fault.kind == Kind::any ? "call" : kKindNames[static_cast<std::size_t>(fault.kind)];
    auto text = std::string(kind) + " " + std::to_string(fault.nth) + " " + acts[static_cast<std::size_t>(fault.act)];
    if (fault.error != 0) text += std::string(", ") + ::strerrorname_np(fault.error);
    return text + " (" + ran.call + " of " + fs::path(ran.path).filename().string() + ")";
}

} // namespace faults
