// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The folder output/: what happens to finished bytes, so that a person never finds half a file or loses a word.
//
//     files.h     what legwork made: written anew, all of a batch or nothing
//     replace.h   what a person wrote: exchanged with the new text, the old one kept beside it
//
// Both work alike: a draft (draft.h) in the same folder, on the disk whole before it gets its name in one step
// (names.h), and drafts of runs that were killed swept away (sweep.h).
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

struct FileToWrite {
    std::string path;
    std::string_view bytes;
};

// Writes all of the files or, when anything fails before the last moment, none: all drafts are on the disk before the
// first is put in its place, each at once. What fails then is told with which files are new and which are not. Parents
// are made; an ordinary file is replaced and keeps its owner, mode, access list and attributes (or is refused); a
// link is replaced, never followed; anything else is refused. So is whatever is the file `never`, by any name: a hard
// link, a disk that does not tell capitals from small letters. Throws Failure with the path and the reason.
void write_files(std::vector<FileToWrite> const& files, std::string const& never = "");
void write_file(std::string const& path, std::string_view bytes); // one

// As write_file, but never over something that is there already: false then, and nothing is touched.
bool write_new_file(std::string const& path, std::string_view bytes);

// The whole file, "-" for standard input; nothing when it cannot be read (`why` then says so). Reads no more than
// `limit` + 1 bytes, so that one byte too many tells a file over the limit.
std::optional<std::string> read_file(std::string const& path, std::size_t limit, std::string& why);

// Everything, to an open descriptor (standard output). Throws Failure with `name` and the system's reason.
void write_all(int descriptor, std::string_view bytes, std::string const& name);

// "Main" -> "Main", "Sub panel, north" -> "Sub-panel-north", "Été" -> "Ete": letters, digits and "-" only, accents of
// Latin letters dropped; nothing left -> "panel".
std::string file_stem(std::string_view panel_name);

} // namespace legwork
