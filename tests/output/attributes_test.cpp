// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/files.h"
#include "output/replace.h"
#include "temporary_folder.h"
#include "units/failure.h"

#include "catch.h"

#include <cstdint>
#include <filesystem>
#include <optional>

#include <sys/stat.h>
#include <sys/wait.h>
#include <sys/xattr.h>
#include <unistd.h>

using namespace legwork;
namespace fs = std::filesystem;

namespace {

constexpr auto kAccess = "system.posix_acl_access";
constexpr uid_t kSomebody = 12345;

// As the kernel takes it (linux/posix_acl_xattr.h): the version, then tag, permissions and id of each entry.
std::string access_list(std::uint16_t group, std::uint16_t mask) {
    std::string bytes("\x02\0\0\0", 4);
    auto const add = [&](std::uint16_t tag, std::uint16_t permissions, std::uint32_t id) {
        bytes.append(reinterpret_cast<char const*>(&tag), sizeof tag);
        bytes.append(reinterpret_cast<char const*>(&permissions), sizeof permissions);
        bytes.append(reinterpret_cast<char const*>(&id), sizeof id);
    };
    constexpr std::uint32_t nobody = 0xFFFFFFFF;
    add(0x01, 6, nobody);    // the owner
    add(0x02, 6, kSomebody); // somebody by name
    add(0x04, group, nobody);
    add(0x10, mask, nobody);
    add(0x20, 0, nobody); // all others
    return bytes;
}

std::optional<std::string> attribute(std::string const& path, char const* name) {
    char bytes[1024];
    auto const size = ::getxattr(path.c_str(), name, bytes, sizeof bytes);
    if (size < 0) return std::nullopt;
    return std::string(bytes, static_cast<std::size_t>(size));
}

// False where the file system knows no such thing: then there is nothing to keep.
bool set(std::string const& path, char const* name, std::string const& value) {
    if (::setxattr(path.c_str(), name, value.data(), value.size(), 0) == 0) return true;
    REQUIRE(errno == ENOTSUP);
    WARN("no " << name << " here");
    return false;
}

struct stat facts(std::string const& path) {
    struct stat there {};
    REQUIRE(::stat(path.c_str(), &there) == 0);
    return there;
}

void rewrite(std::string const& path, bool in_place) {
    if (in_place)
        REQUIRE(replace_file(path, "one", "two").done);
    else
        write_file(path, "two");
    REQUIRE(contents(path) == "two");
}

} // namespace

TEST_CASE("an access list is kept: its mask does not become the group's right", "[output][attributes]") {
    TemporaryFolder const folder;
    auto const path = folder / "shed.toml";
    write_file(path, "one");
    auto const list = access_list(4, 6); // the group may read, somebody by name may write
    if (!set(path, kAccess, list)) return;
    REQUIRE((facts(path).st_mode & 0777) == 0660); // what a copy of the mode alone would give the group
    auto const in_place = GENERATE(true, false);
    rewrite(path, in_place);
    REQUIRE(attribute(path, kAccess) == list);
    if (in_place) REQUIRE(attribute(folder / "shed.before.toml", kAccess) == list);
}

TEST_CASE("a folder's list for new files does not open an old one", "[output][attributes]") {
    TemporaryFolder const folder;
    auto const path = folder / "shed.toml";
    write_file(path, "one");
    ::chmod(path.c_str(), 0640);
    if (!set(folder.path(), "system.posix_acl_default", access_list(6, 6))) return;
    rewrite(path, GENERATE(true, false));
    REQUIRE_FALSE(attribute(path, kAccess));
    REQUIRE((facts(path).st_mode & 0777) == 0640);
}

TEST_CASE("attributes of the user's are kept", "[output][attributes]") {
    TemporaryFolder const folder;
    auto const path = folder / "shed.toml";
    write_file(path, "one");
    auto const long_one = std::string(900, 'x');
    if (!set(path, "user.origin", "the old hut") || !set(path, "user.long", long_one)) return;
    REQUIRE(set(path, "user.empty", ""));
    rewrite(path, GENERATE(true, false));
    REQUIRE(attribute(path, "user.origin") == "the old hut");
    REQUIRE(attribute(path, "user.long") == long_one);
    REQUIRE(attribute(path, "user.empty") == "");
}

TEST_CASE("another's file keeps its owner, or is refused with the reason", "[output][attributes]") {
    if (::geteuid() != 0) {
        WARN("only root can make another's file");
        return;
    }
    TemporaryFolder const folder;
    auto const path = folder / "shed.toml";
    write_file(path, "one");
    auto const in_place = GENERATE(true, false);
    auto const [owner, group, word] =
        GENERATE(table<uid_t, gid_t, std::string>({{1, kSomebody, "uid 1"}, {kSomebody, 1, "gid 1"}}));
    REQUIRE(::chown(path.c_str(), owner, group) == 0);
    ::chmod(path.c_str(), 0666);
    ::chmod(folder.path().c_str(), 0777);
    // As somebody who may write to the file and to the folder.
    auto const child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        if (::setgid(kSomebody) != 0 || ::setuid(kSomebody) != 0) ::_exit(9);
        try {
            in_place ? void(replace_file(path, "one", "two")) : write_file(path, "two");
        } catch (Failure const& e) {
            ::_exit(std::string(e.what()).find(word) != std::string::npos ? 7 : 8);
        }
        ::_exit(0);
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(WEXITSTATUS(status) == 7);
    REQUIRE(contents(path) == "one");
    REQUIRE(folder.names() == std::vector<std::string>{"shed.toml"});
    rewrite(path, in_place); // as root
    REQUIRE(facts(path).st_uid == owner);
    REQUIRE(facts(path).st_gid == group);
    REQUIRE((facts(path).st_mode & 0777) == 0666);
}

TEST_CASE("a file with several names is refused: they would part", "[output][attributes]") {
    TemporaryFolder const folder;
    write_file(folder / "shed.toml", "one");
    fs::create_hard_link(folder / "shed.toml", folder / "other.toml");
    REQUIRE_THROWS_WITH(replace_file(folder / "shed.toml", "one", "two"),
                        Contains("2 names (hard links)") && Contains("put a copy in its place"));
    REQUIRE(contents(folder / "shed.toml") == "one");
    REQUIRE(folder.names() == std::vector<std::string>{"other.toml", "shed.toml"});
    fs::copy_file(folder / "shed.toml", folder / "copy"); // the way out
    fs::rename(folder / "copy", folder / "shed.toml");
    REQUIRE(replace_file(folder / "shed.toml", "one", "two").done);
    REQUIRE(contents(folder / "other.toml") == "one");
}
