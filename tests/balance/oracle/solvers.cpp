// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/oracle/models.h"

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <unistd.h>

namespace legwork::oracle {

namespace {
namespace fs = std::filesystem;

class Folder {
public:
    Folder() {
        std::string pattern = (fs::temp_directory_path() / "legwork-mip-XXXXXX").string();
        if (!mkdtemp(pattern.data())) throw std::runtime_error("no temporary folder");
        path_ = pattern;
    }
    ~Folder() {
        std::error_code ignored;
        fs::remove_all(path_, ignored);
    }
    Folder(Folder const&) = delete;
    Folder& operator=(Folder const&) = delete;
    fs::path operator/(char const* name) const { return path_ / name; }
    std::string name() const { return path_.string(); }

private:
    fs::path path_;
};

std::string all_of(fs::path const& path) {
    std::ifstream in(path);
    return {std::istreambuf_iterator<char>(in), {}};
}

bool runs(std::string const& command) { return std::system(command.c_str()) == 0; } // NOLINT: a fixed command

struct Answer {
    std::string said, solution;
};
Answer run(std::string const& model, std::string const& command) {
    Folder const folder;
    std::ofstream(folder / "model.lp") << model;
    bool const done = runs("cd '" + folder.name() + "' && " + command + " > said.txt 2>&1");
    return {all_of(folder / "said.txt") + (done ? "" : "\nexit status not 0"), all_of(folder / "solution.txt")};
}

bool says(std::string const& text, char const* words) { return text.find(words) != std::string::npos; }

Solved optimal(std::string const& number, std::string output) {
    return {Solved::How::optimal, std::llround(std::strtod(number.c_str(), nullptr)), std::move(output)};
}
} // namespace

std::string missing_package(std::string const& solver) {
    if (runs("command -v " + solver + " > /dev/null 2>&1")) return "";
    return solver == "cbc" ? "coinor-cbc" : "glpk-utils";
}

Solved solve_with_glpsol(std::string const& model, int seconds) {
    auto const a = run(model, "glpsol --lp model.lp --tmlim " + std::to_string(seconds) + " -o solution.txt");
    std::string const both = a.said + a.solution;
    if (says(a.said, "HAS NO PRIMAL FEASIBLE") || says(a.said, "HAS NO INTEGER FEASIBLE"))
        return {Solved::How::infeasible, 0, both};
    if (says(a.said, "TIME LIMIT")) return {Solved::How::stopped, 0, both};
    auto const at = a.solution.find("Objective:  obj = ");
    if (!says(a.solution, "INTEGER OPTIMAL") || at == std::string::npos) return {Solved::How::failed, 0, both};
    return optimal(a.solution.substr(at + 18, 20), both);
}

Solved solve_with_cbc(std::string const& model, int seconds) {
    auto const a = run(model, "cbc model.lp -sec " + std::to_string(seconds) +
                                  " -ratioGap 0 -allowableGap 0.5 -solve -solution solution.txt");
    std::string const both = a.said + a.solution;
    auto const at = a.solution.find("objective value");
    if (a.solution.rfind("Infeasible", 0) == 0 || a.solution.rfind("Integer infeasible", 0) == 0)
        return {Solved::How::infeasible, 0, both};
    if (a.solution.rfind("Stopped", 0) == 0) return {Solved::How::stopped, 0, both};
    if (a.solution.rfind("Optimal", 0) != 0 || at == std::string::npos) return {Solved::How::failed, 0, both};
    return optimal(a.solution.substr(at + 15, 20), both);
}

} // namespace legwork::oracle
