// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork new FILE: the commented starter job.

#include "cli/call/rows.h"
#include "cli/call/shared_rows.h"
#include "cli/files/share.h"
#include "cli/problems.h"
#include "cli/text/words.h"
#include "output/files.h"
#include "units/failure.h"
#include "units/shell.h"

#include <fmt/format.h>

#include <filesystem>
#include <system_error>

namespace legwork {

namespace fs = std::filesystem;

namespace {

// As a part of a URL.
std::string escaped(std::string const& path) {
    std::string url;
    for (char const c : path) {
        bool const plain = (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') ||
                           std::string_view("/-._~").find(c) != std::string_view::npos;
        url += plain ? std::string(1, c) : fmt::format("%{:02X}", static_cast<unsigned char>(c));
    }
    return url;
}

// The starter begins by naming the schema for editors. Where it is installed its place is said in full, so that it is
// found wherever the job lies.
std::string with_schema(std::string starter, fs::path const& share) {
    constexpr std::string_view head = "#:schema ";
    constexpr std::string_view name = "legwork-job.schema.json";
    auto const schema = share / name;
    std::error_code failed;
    if (starter.starts_with(std::string(head) + std::string(name)) && fs::is_regular_file(schema, failed))
        starter.replace(head.size(), name.size(), "file://" + escaped(schema.string()));
    return starter;
}

constexpr std::size_t kLargestStarter = std::size_t{64} * 1024;

struct NewOptions {
    std::string file;
};

constexpr OptionRow<NewOptions> kOptions[] = {
    {{.name = "FILE",
      .help = "the job file to make; one that is there is never touched",
      .completes = new_files,
      .required = true},
     &NewOptions::file},
};

int run(NewOptions const& options, Streams& streams) {
    auto const templates = share_folder("templates");
    auto const starter = templates + "/starter.toml";
    std::string why;
    auto const read = read_file(starter, kLargestStarter, why);
    if (!read) throw Failure(fmt::format("cannot read {}: {}", starter, why));
    auto const bytes = with_schema(*read, fs::path(templates).parent_path());
    if (options.file == "-") {
        streams.out << bytes;
        return exit_done;
    }
    if (!write_new_file(options.file, bytes))
        throw Failure(fmt::format("{} is there already and was left as it is; give another name", options.file));
    streams.out << fmt::format("wrote {}\nChange it to what your building has, then: legwork check {}\n",
                               shown_file(options.file), shell_file(options.file));
    return exit_done;
}

} // namespace

extern Command const new_command{"new", "a commented starter job", "", options_of<kOptions>, run_with<kOptions, run>};

} // namespace legwork
