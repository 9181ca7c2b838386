// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Changes a file that a person wrote, without ever being able to lose a word of it.
#pragma once

#include <string>
#include <string_view>

namespace legwork {

struct ReplacedFile {
    bool done = false; // false: the file no longer holds `old_bytes` (somebody saved it meanwhile); nothing was changed
    std::string file;  // the file itself, links followed
    std::string before; // where the old bytes stand now
};

// Puts `new_bytes` in the place of `old_bytes`. The old file stays beside it: "shed.toml" as "shed.before.toml", the
// one before that moves on to "shed.before-2.toml", and so on; none is ever dropped, none is made for a text that the
// newest of them holds already. "shed" becomes "shed.before". At any moment, a kill or a power cut included, the file
// holds the old or the new bytes whole, and once it holds the new ones the old ones stand beside. When anything fails,
// all names are again as they were.
//
// The file is exchanged with the new one in one step, and what came out is looked at: a text that somebody saved in the
// last moment is exchanged back. When that meets yet another save, all texts are kept ("shed.meanwhile.toml") and the
// Failure says where each stands. Where the system or the file system has no exchange of names (before Linux 3.15; some
// network disks and memory sticks), a save between the last look and the rename, some microseconds, is lost; the same
// goes for an editor that writes into the file itself within the moment of an exchange back.
//
// Owner, group, mode, access lists and extended attributes are kept. Throws Failure with the reason: the system's, or
// that the file has several names (hard links: they would part), or would change hands.
ReplacedFile replace_file(std::string const& path, std::string_view old_bytes, std::string_view new_bytes);

// What runs that were killed left beside the file. Throws Failure when there is a text that nobody has seen (saved by
// somebody in the moment of the exchange): it then stands under a name of its own, which the Failure tells.
void clear_after_kills(std::string const& path);

} // namespace legwork
