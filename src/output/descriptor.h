// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// An open file of the system, and how its refusals are told. For output/ only.
#pragma once

#include <cerrno>
#include <string>
#include <utility>

#include <unistd.h>

namespace legwork {

class Descriptor {
public:
    explicit Descriptor(int number = -1) : number_(number) {}
    ~Descriptor() { close(); }
    Descriptor(Descriptor const&) = delete;
    Descriptor& operator=(Descriptor const&) = delete;
    Descriptor(Descriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
    Descriptor& operator=(Descriptor&& other) noexcept {
        std::swap(number_, other.number_);
        return *this;
    }

    bool open() const { return number_ >= 0; }
    int number() const { return number_; }
    // False when the system refuses (errno says why). Closing twice is harmless.
    bool close() { return number_ < 0 || ::close(std::exchange(number_, -1)) == 0 || errno == EINTR; }

private:
    int number_;
};

std::string reason(int error);                                                  // "No space left on device"
std::string cannot(std::string const& act, std::string const& path, int error); // "cannot write X: reason"

} // namespace legwork
