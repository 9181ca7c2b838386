// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/files/form_file.h"

#include "cli/files/share.h"
#include "output/files.h"
#include "sheet/sheets.h"
#include "toml/near.h"
#include "units/failure.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

namespace legwork {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t kLargestForm = std::size_t{64} * 1024;
constexpr std::string_view kStarter = "starter"; // the one file of templates/ that is a job, not a form

std::vector<fs::path> form_files() {
    std::vector<fs::path> files;
    std::error_code failed;
    auto const folder = share_folder("templates");
    for (fs::directory_iterator at(folder, failed), end; !failed && at != end; at.increment(failed))
        if (at->path().extension() == ".toml" && at->path().stem() != kStarter) files.push_back(at->path());
    if (failed) throw Failure(fmt::format("cannot read the forms in {}: {}", folder, failed.message()));
    std::ranges::sort(files);
    return files;
}

OpenedForm refused(std::string file, std::string message, std::string fix) {
    return {std::nullopt, one_problem(std::move(file), std::move(message), std::move(fix))};
}

OpenedForm open_file(fs::path const& path) {
    std::string why;
    auto const bytes = read_file(path.string(), kLargestForm, why);
    if (!bytes)
        return refused(path.string(), "cannot read the form: " + why, "legwork forms lists the forms there are");
    if (bytes->size() > kLargestForm)
        return refused(path.string(), "it is too large to be a form", "legwork forms lists the forms there are");
    auto read = read_form(*bytes, path.stem().string());
    return {std::move(read.form), {path.string(), std::move(read.problems)}};
}

Form shipped(fs::path const& path) {
    auto opened = open_file(path);
    if (opened.form) return *opened.form;
    auto const why = opened.problems.problems.empty() ? "it is not a form" : opened.problems.problems.front().message;
    throw Failure(fmt::format("the form {} that comes with legwork is broken: {}", path.string(), why));
}

} // namespace

std::vector<Form> installed_forms() {
    std::vector<Form> forms;
    for (auto const& path : form_files()) forms.push_back(shipped(path));
    std::ranges::stable_sort(forms, {}, &Form::sheet);
    return forms;
}

Form default_form(std::string const& sheet) {
    auto const* kind = sheet_kind(sheet);
    if (!kind) throw Failure("there is no sheet " + sheet);
    return shipped(fs::path(share_folder("templates")) / (std::string(kind->default_form) + ".toml"));
}

bool is_default(Form const& form) {
    auto const* kind = sheet_kind(form.sheet);
    return kind && kind->default_form == form.name;
}

OpenedForm open_form(std::string const& name_or_file) {
    auto const files = form_files();
    auto const named = std::ranges::find_if(files, [&](fs::path const& f) { return f.stem() == name_or_file; });
    if (named != files.end()) return {shipped(*named), {}};
    if (name_or_file.find('/') != std::string::npos || name_or_file.ends_with(".toml")) {
        auto own = open_file(name_or_file);
        if (own.form) own.form->file = name_or_file;
        return own;
    }
    std::vector<std::string> names;
    for (auto const& f : files) names.push_back(f.stem().string());
    return refused(
        "", fmt::format("there is no form \"{}\"", name_or_file),
        did_you_mean(name_or_file, names, "legwork forms lists the forms there are; a file of your own ends in .toml"));
}

} // namespace legwork
