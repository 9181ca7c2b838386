// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A folder of its own for one test, gone afterwards.
#pragma once

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>
#include <vector>

class TemporaryFolder {
public:
    TemporaryFolder() : path_((std::filesystem::temp_directory_path() / "legwork test XXXXXX").string()) {
        if (!::mkdtemp(path_.data())) throw std::runtime_error("no temporary folder");
    }
    ~TemporaryFolder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    TemporaryFolder(TemporaryFolder const&) = delete;
    TemporaryFolder& operator=(TemporaryFolder const&) = delete;

    std::string const& path() const { return path_; }
    std::string operator/(std::string const& name) const { return path_ + "/" + name; }
    // What it holds, hidden files too, in alphabetical order.
    std::vector<std::string> names(std::string const& below = ".") const {
        std::vector<std::string> all;
        for (auto const& entry : std::filesystem::directory_iterator(path_ + "/" + below))
            all.push_back(entry.path().filename());
        std::ranges::sort(all);
        return all;
    }

private:
    std::string path_;
};

inline std::string contents(std::string const& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}
