// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/attributes.h"

#include "output/descriptor.h"
#include "units/failure.h"

#include <optional>
#include <string_view>
#include <vector>

#include <sys/stat.h>
#include <sys/xattr.h>

namespace legwork {

namespace {

constexpr auto kAccessList = "system.posix_acl_access";
constexpr mode_t kAccess = 0777; // set-id and sticky bits mean nothing on what we write

struct stat facts(int file, std::string const& shown) {
    struct stat there {};
    if (::fstat(file, &there) != 0) throw Failure(cannot("write", shown, errno));
    return there;
}

void keep_owner(int to, int from, std::string const& shown) {
    auto const old = facts(from, shown);
    auto const now = facts(to, shown);
    if (now.st_uid != old.st_uid && ::fchown(to, old.st_uid, static_cast<gid_t>(-1)) != 0)
        throw Failure(cannot("write", shown, errno) + " (it belongs to another user, uid " +
                      std::to_string(old.st_uid) +
                      ", and would change hands; let them run this, or work on a copy of your own)");
    if (now.st_gid != old.st_gid && ::fchown(to, static_cast<uid_t>(-1), old.st_gid) != 0)
        throw Failure(cannot("write", shown, errno) + " (its group, gid " + std::to_string(old.st_gid) +
                      ", cannot be kept unless you are in it; give it one of yours, or work on a copy)");
}

bool has_no_attributes(int error) { return error == ENOTSUP || error == ENOSYS; }

[[noreturn]] void refuse(std::string const& name, std::string const& shown, int error) {
    throw Failure(cannot("write", shown, error) + " (its attribute " + name +
                  " cannot be kept; take it away, or work on a copy)");
}

std::vector<std::string> names(int file, std::string const& shown) {
    for (;;) {
        auto const size = ::flistxattr(file, nullptr, 0);
        if (size == 0 || (size < 0 && has_no_attributes(errno))) return {};
        std::string list(static_cast<std::size_t>(size < 0 ? 0 : size), '\0');
        auto const got = size < 0 ? size : ::flistxattr(file, list.data(), list.size());
        if (got < 0 && errno == ERANGE) continue; // grown meanwhile
        if (got < 0) throw Failure(cannot("read the attributes of", shown, errno));
        std::vector<std::string> all; // each ends in a zero
        std::string_view rest(list.data(), static_cast<std::size_t>(got));
        for (; !rest.empty(); rest.remove_prefix(all.back().size() + 1)) all.emplace_back(rest.data());
        return all;
    }
}

// Nothing when there is no such attribute, or when it cannot be read (errno says why).
std::optional<std::string> value(int file, std::string const& name) {
    for (;;) {
        auto const size = ::fgetxattr(file, name.c_str(), nullptr, 0);
        if (size < 0) return std::nullopt;
        std::string bytes(static_cast<std::size_t>(size), '\0');
        auto const got = ::fgetxattr(file, name.c_str(), bytes.data(), bytes.size());
        if (got < 0 && errno == ERANGE) continue;
        if (got < 0) return std::nullopt;
        bytes.resize(static_cast<std::size_t>(got));
        return bytes;
    }
}

bool is_of_old_bytes(std::string_view name) { return name == "security.ima" || name == "security.evm"; }

// Others are the system's or the file system's to give. So is one of the user's that a new file has from the start.
bool has_to_be_kept(std::string const& name, int to) {
    return name.starts_with("system.") || (name.starts_with("user.") && !value(to, name));
}

void keep_one(int to, int from, std::string const& name, std::string const& shown) {
    auto const old = value(from, name);
    if (!old && errno == ENODATA) return; // gone meanwhile
    if (old && value(to, name) == old) return;
    if (old && ::fsetxattr(to, name.c_str(), old->data(), old->size(), 0) == 0) return;
    int const error = errno;
    if (has_to_be_kept(name, to)) refuse(name, shown, error);
}

// A folder may give each new file an access list that the old one does not have.
void drop_inherited_list(int to, int from, std::string const& shown) {
    if (!value(to, kAccessList) || value(from, kAccessList)) return;
    if (::fremovexattr(to, kAccessList) != 0) refuse(kAccessList, shown, errno);
}

void keep_mode(int to, int from, std::string const& shown) {
    auto const wanted = facts(from, shown).st_mode & kAccess;
    if ((facts(to, shown).st_mode & kAccess) == wanted) return;
    if (::fchmod(to, wanted) != 0) throw Failure(cannot("keep the mode of", shown, errno));
}

} // namespace

void keep_attributes(int to, int from, std::string const& shown) {
    keep_owner(to, from, shown);
    drop_inherited_list(to, from, shown);
    // Lists before the mode: where there is a list, the group's bits of the mode are its mask, and would open the file
    // to the group while there is none yet.
    for (auto const& name : names(from, shown))
        if (!is_of_old_bytes(name)) keep_one(to, from, name, shown);
    keep_mode(to, from, shown);
}

} // namespace legwork
