// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/draft.h"
#include "output/files.h"
#include "output/names.h"
#include "output/sweep.h"
#include "units/failure.h"

#include <list>
#include <map>
#include <memory>

#include <fcntl.h>
#include <sys/resource.h>

namespace legwork {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t kOtherDescriptors = 32; // of the program, beside one for each draft

// Drafts without a name are held by their descriptors alone: as many are asked for as the system allows.
void allow_descriptors(std::size_t drafts) {
    rlimit limit{};
    if (::getrlimit(RLIMIT_NOFILE, &limit) != 0 || limit.rlim_cur >= drafts + kOtherDescriptors) return;
    limit.rlim_cur = limit.rlim_max;
    ::setrlimit(RLIMIT_NOFILE, &limit);
}

void require_name(fs::path const& path) {
    if (path.empty()) throw Failure("cannot write a file without a name");
    if (!path.has_filename()) throw Failure("cannot write " + path.string() + ": that is the name of a folder");
}

bool is_same(struct stat const& one, struct stat const& other) {
    return one.st_ino == other.st_ino && one.st_dev == other.st_dev;
}

// By any name: the link by which it was named is spared as well as the file.
bool is_the_file(struct stat const& there, std::string const& never) {
    auto const named = never.empty() ? std::nullopt : looked_at(never);
    if (!named || is_same(there, *named)) return named.has_value();
    if (!S_ISLNK(named->st_mode)) return false;
    struct stat one {};
    if (::stat(never.c_str(), &one) == 0) return is_same(there, one);
    if (errno == ENOENT) return false;
    throw Failure(cannot("look at", never, errno));
}

class Batch {
public:
    explicit Batch(std::string never) : never_(std::move(never)) {}

    void check(FileToWrite const& file) const {
        require_name(file.path);
        auto const there = looked_at(file.path);
        if (!there) return;
        if (is_the_file(*there, never_))
            throw Failure("cannot write " + file.path + ": it is the job file itself; write to another folder");
        if (S_ISDIR(there->st_mode)) throw Failure(cannot("write", file.path, EISDIR));
        if (!S_ISREG(there->st_mode) && !S_ISLNK(there->st_mode))
            throw Failure("cannot write " + file.path + ": it is not an ordinary file");
    }

    void draft(FileToWrite const& file) {
        fs::path const target(file.path);
        Folder const& folder = folder_of(target);
        auto const there = looked_at(file.path);
        bool const keeps = there && S_ISREG(there->st_mode);
        Draft& made =
            drafts_.emplace_back(Entry{file.path, there.has_value(), nullptr}).draft_in(folder, keeps ? 0600 : 0666);
        made.write(file.bytes);
        if (keeps) keep_old(made, file.path);
        made.begin_flush();
    }

    void put() {
        // All of them before any has its name: a full disk is told while every old file still stands.
        for (Entry const& e : drafts_) e.draft->flush();
        for (auto at = drafts_.begin(); at != drafts_.end(); ++at) try {
                put(*at);
            } catch (Failure const& e) {
                throw Failure(std::string(e.what()) + how_far(at));
            }
        for (auto const& [path, folder] : folders_) folder.flush_written("everything");
    }

private:
    struct Entry {
        std::string path;
        bool replaces;
        std::unique_ptr<Draft> draft;

        Draft& draft_in(Folder const& folder, mode_t mode) {
            draft = std::make_unique<Draft>(folder, fs::path(path).filename().string(), path, mode);
            return *draft;
        }
    };
    using Entries = std::list<Entry>;

    Folder const& folder_of(fs::path const& target) {
        auto const path = target.parent_path();
        if (auto const at = folders_.find(path); at != folders_.end()) return at->second;
        make_folders(path);
        auto const& folder = folders_.emplace(path, path).first->second;
        sweep(folder);
        return folder;
    }

    static void keep_old(Draft& made, std::string const& path) {
        Descriptor const old(::open(path.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_NOCTTY | O_CLOEXEC));
        if (!old.open()) throw Failure(cannot("write", path, errno));
        made.keep(old.number());
    }

    static void put(Entry const& e) {
        // Somebody may have made the file since it was looked at: it is replaced as well.
        if (e.replaces || !e.draft->put_new()) e.draft->put_over();
    }

    // What a person has to know when the last moment went wrong midway.
    std::string how_far(Entries::const_iterator failed) const {
        std::string fresh, old, missing;
        auto const add = [](std::string& list, std::string const& words, std::string const& path) {
            list += (list.empty() ? words : ", ") + path;
        };
        for (auto at = drafts_.begin(); at != failed; ++at) add(fresh, "; new already: ", at->path);
        for (auto at = failed; at != drafts_.end(); ++at)
            at->replaces ? add(old, "; still the old ones: ", at->path) : add(missing, "; not there yet: ", at->path);
        return fresh + old + missing;
    }

    std::string never_;
    std::map<fs::path, Folder> folders_;
    Entries drafts_;
};

} // namespace

void write_files(std::vector<FileToWrite> const& files, std::string const& never) {
    Batch batch(never);
    for (FileToWrite const& f : files) batch.check(f);
    allow_descriptors(files.size());
    for (FileToWrite const& f : files) batch.draft(f);
    batch.put();
}

void write_file(std::string const& path, std::string_view bytes) { write_files({{path, bytes}}); }

bool write_new_file(std::string const& path, std::string_view bytes) {
    require_name(path);
    if (stands(path)) return false;
    fs::path const target(path);
    make_folders(target.parent_path());
    Folder const folder(target.parent_path());
    sweep(folder);
    Draft draft(folder, target.filename().string(), path, 0666);
    draft.write(bytes);
    draft.flush();
    if (!draft.put_new()) return false;
    folder.flush_written(path);
    return true;
}

} // namespace legwork
