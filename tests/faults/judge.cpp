// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "judge.h"

#include <algorithm>
#include <cerrno>
#include <csignal>
#include <cstring>
#include <filesystem>
#include <set>

namespace faults {

namespace fs = std::filesystem;

namespace {

bool holds(std::string const& text, std::string const& part) { return text.find(part) != std::string::npos; }

bool ended_by_itself(Ran const& ran) { return ran.status != -SIGKILL; }

bool stands(Folder const& folder, std::string const& name, Standing const& file) {
    auto const at = folder.find(name);
    return at != folder.end() && at->second == file;
}

// Under which names these bytes may stand: a kept file has moved from another.
Complaints against(Scene const& scene, std::string const& name, Standing const& file) {
    bool bytes = false;
    for (auto const* folder : {&scene.before, &scene.after})
        for (auto const& [other, wanted] : *folder) {
            if (other != name && !(is_kept(name) && scene.keeps)) continue;
            if (wanted == file) return {};
            bytes = bytes || wanted.bytes == file.bytes;
        }
    if (bytes) return {name + " has another owner, mode or note"};
    return {name + " is neither old nor new (" + std::to_string(file.bytes.size()) + " bytes)"};
}

std::string difference(Folder const& now, Folder const& wanted) {
    std::string text;
    for (auto const& [name, file] : now)
        if (!wanted.contains(name))
            text += " " + name + " is too many;";
        else if (wanted.at(name) != file)
            text +=
                " " + name + (wanted.at(name).bytes == file.bytes ? " has another owner, mode or note;" : " differs;");
    for (auto const& [name, file] : wanted)
        if (!now.contains(name)) text += " " + name + " is missing;";
    return text;
}

void judge_files(Scene const& scene, Fault const& fault, Ran const& ran, Folder const& now, Complaints& found) {
    bool const cleans_up = fault.kind != Kind::unlink && !(fault.kind == Kind::any && fault.act == Act::fail_on);
    bool const may_stray = !ended_by_itself(ran) || !cleans_up;
    for (auto const& [name, file] : now) {
        if (is_stray(name)) {
            if (!may_stray) found.push_back("a draft is left: " + name);
        } else if (!scene.before.contains(name) && !scene.after.contains(name)) {
            found.push_back(name + " is nobody's");
        } else {
            std::ranges::move(against(scene, name, file), std::back_inserter(found));
        }
    }
    for (auto const& [name, file] : scene.before) {
        if (!is_kept(name) && !now.contains(name)) found.push_back(name + " is gone");
        if (scene.keeps && !has_text(now, file.bytes)) found.push_back("the text of " + name + " is lost");
    }
}

// The files that a run was to write and did not.
std::set<std::string> not_written(Scene const& scene, Folder const& now) {
    std::set<std::string> names;
    for (auto const& [name, file] : scene.after)
        if (!stands(scene.before, name, file) && !stands(now, name, file)) names.insert(name);
    return names;
}

bool names_a_file(Scene const& scene, Ran const& ran) {
    auto const base = [](std::string const& path) { return fs::path(path).filename().string(); };
    auto const met = base(ran.path);
    return holds(ran.err, "standard output") || holds(ran.err, "the folder ") || holds(ran.err, "typeface") ||
           (!met.empty() && holds(ran.err, met)) ||
           std::ranges::any_of(scene.before, [&](auto const& e) { return holds(ran.err, base(e.first)); }) ||
           std::ranges::any_of(scene.after, [&](auto const& e) { return holds(ran.err, base(e.first)); });
}

bool tells_cause(int error, std::string const& said) {
    if (error == 0 || holds(said, std::strerror(error))) return true;
    // The drawing libraries open typefaces themselves and keep the reason.
    if (holds(said, "typeface") && holds(said, "could not be read")) return true;
    // What the system's words mean where a file is to be given to its owner.
    return error == EPERM && (holds(said, "belongs to another user") || holds(said, "its group"));
}

void judge_message(Scene const& scene, Fault const& fault, Ran const& ran, Folder const& now, Complaints& found) {
    auto const said = ", says: " + ran.err;
    if (!tells_cause(fault.error, ran.err))
        found.push_back("the cause is not told (" + std::string(std::strerror(fault.error)) + ")" + said);
    if (now == scene.after && !holds(ran.err, "standard output") && !holds(ran.err, "written"))
        found.push_back("all is written, and that is not told" + said);
    if (!names_a_file(scene, ran)) found.push_back("no file is named" + said);
}

// What an undisturbed run tells of (pages of an older print), or else that it could not be looked for, and why.
bool tells_as_much(Scene const& scene, Fault const& fault, Ran const& ran) {
    if (holds(ran.err, scene.good.err)) return true;
    return fault.error != 0 && tells_cause(fault.error, ran.err) && names_a_file(scene, ran);
}

void judge_failed(Scene const& scene, Ran const& ran, Folder const& now, Complaints& found) {
    if (scene.keeps) return; // one file, whose text tells whether it is old
    auto const missing = not_written(scene, now);
    if (missing.size() == not_written(scene, scene.before).size()) return; // all are old
    for (auto const& name : missing)
        if (!holds(ran.err, name))
            found.push_back(name + " stayed as it was beside new ones, and is not named: " + ran.err);
}

void judge_status(Scene const& scene, Fault const& fault, Ran const& ran, Folder const& now, Complaints& found) {
    if (ran.status == 0) {
        if (auto const unlike = difference(now, scene.after); !unlike.empty())
            found.push_back("exit status 0, but" + unlike);
        if (ran.out != scene.good.out) found.push_back("exit status 0, but it prints otherwise: " + ran.out);
        if (!tells_as_much(scene, fault, ran))
            found.push_back("exit status 0, but it keeps silent on: " + scene.good.err);
        return;
    }
    if (ran.status != 2 && ran.status != 3) {
        found.push_back("it ends with " + std::to_string(ran.status) + " " + ran.err);
        return;
    }
    if (ran.status == 2)
        if (auto const unlike = difference(now, scene.before); !unlike.empty())
            found.push_back("exit status 2, but" + unlike);
    judge_message(scene, fault, ran, now, found);
    judge_failed(scene, ran, now, found);
}

} // namespace

Complaints judged(Scene const& scene, Fault const& fault, Ran const& ran, Folder const& now) {
    Complaints found;
    judge_files(scene, fault, ran, now, found);
    if (ended_by_itself(ran) || !ran.reached) judge_status(scene, fault, ran, now, found);
    return found;
}

Complaints judged_next(Scene const& scene, std::string const& folder) {
    Complaints found;
    // A job that was made must not be made again.
    bool const made = scene.words.front() == "new" && fs::exists(folder + "/" + scene.words.back());
    auto const ran = run(folder, made ? std::vector<std::string>{"new", "other.toml"} : scene.words);
    if (made) fs::remove(folder + "/other.toml");
    if (ran.status != 0) found.push_back("the next run fails: " + ran.err);
    if (auto const unlike = difference(standing_in(folder), scene.after); !unlike.empty())
        found.push_back("after the next run" + unlike);
    return found;
}

bool has_text(Folder const& folder, std::string const& text) {
    return std::ranges::any_of(folder, [&](auto const& e) { return !is_stray(e.first) && e.second.bytes == text; });
}

std::string listed(Complaints const& complaints) {
    std::string text;
    for (auto const& c : complaints) text += (text.empty() ? "" : "\n") + c;
    return text;
}

} // namespace faults
