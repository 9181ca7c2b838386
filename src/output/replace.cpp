// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The order of steps is the promise: the new bytes are on the disk under a name of their own, then the old bytes under
// theirs, then one exchange swaps the file. Each step alone leaves a whole file under the person's name.

#include "output/replace.h"

#include "output/draft.h"
#include "output/files.h"
#include "output/kept.h"
#include "output/names.h"
#include "output/sweep.h"
#include "units/failure.h"

#include <chrono>
#include <thread>

#include <fcntl.h>
#include <sys/file.h>

namespace legwork {

namespace fs = std::filesystem;

namespace {

constexpr std::chrono::seconds kTurn{10};

fs::path real_path(std::string const& path) {
    std::error_code failed;
    auto file = fs::canonical(path, failed);
    if (failed) throw Failure(cannot("write", path, failed.value()));
    return file;
}

// A lock that the system does not give is no reason to write nothing: it only spares two runs their second try.
void wait_for_turn(Descriptor const& file, std::string const& path) {
    auto const until = std::chrono::steady_clock::now() + kTurn;
    while (::flock(file.number(), LOCK_EX | LOCK_NB) != 0) {
        if (errno != EWOULDBLOCK && errno != EINTR) return;
        if (std::chrono::steady_clock::now() > until)
            throw Failure("cannot write " + path + ": another program holds a lock on it; run this again later");
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
}

// The file as it stands under its name once it is our turn. Opening it for writing asks whether we may.
Descriptor opened_in_turn(fs::path const& file, std::string const& path) {
    for (;;) {
        Descriptor opened(::open(file.c_str(), O_RDWR | O_CLOEXEC | O_NOCTTY | O_NONBLOCK));
        if (!opened.open()) throw Failure(cannot("write", path, errno));
        struct stat held {
        }, there{};
        if (::fstat(opened.number(), &held) != 0) throw Failure(cannot("write", path, errno));
        if (!S_ISREG(held.st_mode)) throw Failure("cannot write " + path + ": it is not an ordinary file");
        wait_for_turn(opened, path);
        if (::lstat(file.c_str(), &there) != 0) throw Failure(cannot("write", path, errno));
        if (held.st_ino == there.st_ino && held.st_dev == there.st_dev) return opened;
    }
}

void refuse_second_names(Descriptor const& file, std::string const& path) {
    struct stat held {};
    if (::fstat(file.number(), &held) != 0) throw Failure(cannot("write", path, errno));
    if (held.st_nlink > 1)
        throw Failure("cannot write " + path + ": the file has " + std::to_string(held.st_nlink) +
                      " names (hard links), and the others would keep the old text; put a copy in its place first");
}

// A text that came out of an exchange, and whose run was killed before it had looked at it. It may stand beside
// already; if not, it gets a name that can be seen.
void settle(Stray const& stray, fs::path const& file, std::string const& path) {
    std::string why;
    struct stat facts {};
    if (::fstat(stray.file.number(), &facts) != 0) throw Failure(cannot("read", stray.path.string(), errno));
    auto const text = read_file(stray.path.string(), static_cast<std::size_t>(facts.st_size), why);
    if (!text) throw Failure("cannot read " + stray.path.string() + ": " + why);
    for (auto const& known : {before_path(file), file})
        if (stands(known) && holds(known, *text, known.string())) return void(::unlink(stray.path.c_str()));
    int error = 0;
    auto const seen = move_aside(stray.path, file, error);
    throw Failure("an earlier run was killed while it wrote " + path +
                  ", perhaps as somebody saved it: the text that "
                  "it left now stands in " +
                  seen.string() + "; take what you want of each, then run this again");
}

void settle_all(Folder const& folder, fs::path const& file, std::string const& path) {
    auto const target = cut_target(file.filename().string());
    each_stray(folder, [&](Stray const& s) {
        if (!s.is_draft && s.name.target == target) settle(s, file, path);
    });
}

class Replacement {
public:
    Replacement(std::string const& path, std::string_view old_bytes, std::string_view new_bytes)
        : path_(path),
          old_bytes_(old_bytes),
          new_bytes_(new_bytes),
          file_(real_path(path)),
          folder_(file_.parent_path()) {}

    ReplacedFile run() {
        sweep(folder_);
        auto const old = opened_in_turn(file_, path_);
        settle_all(folder_, file_, path_);
        refuse_second_names(old, path_);
        // Nobody else may read it before it has the mode and lists of the old one.
        Draft next(folder_, file_.filename().string(), path_, 0600);
        next.write(new_bytes_);
        next.keep(old.number());
        next.flush();
        KeptCopy kept(folder_, file_, path_);
        kept.draft(old_bytes_, old.number());
        if (!holds(file_, old_bytes_, path_)) return not_done();
        ::fsync(old.number()); // it becomes the kept one; a copy of its text is on the disk already
        kept.put();
        next.take_name();
        int const error = exchange_names(next.name(), file_);
        if (error == 0) return exchanged(next, kept);
        if (!has_no_exchange(error)) throw Failure(cannot("write", path_, error));
        return renamed(next, kept);
    }

private:
    ReplacedFile not_done() const { return {false, file_.string(), ""}; }

    ReplacedFile done(KeptCopy& kept) const {
        kept.stay();
        folder_.flush_written(path_);
        return {true, file_.string(), before_path(file_).string()};
    }

    // Without an exchange: a save from here to the rename is lost.
    ReplacedFile renamed(Draft& next, KeptCopy& kept) const {
        if (!holds(file_, old_bytes_, path_)) return not_done();
        next.put_over();
        return done(kept);
    }

    ReplacedFile exchanged(Draft const& next, KeptCopy& kept) const {
        bool is_the_old_one = false;
        std::string unreadable;
        try {
            is_the_old_one = holds(next.name(), old_bytes_, path_);
        } catch (Failure const& e) {
            unreadable = e.what();
        }
        if (is_the_old_one) {
            // The file itself rather than its copy: who has it open still writes into what is kept.
            if (::rename(next.name().c_str(), before_path(file_).c_str()) != 0) ::unlink(next.name().c_str());
            return done(kept);
        }
        exchange_back(next, kept);
        if (!unreadable.empty()) throw Failure(unreadable);
        return not_done();
    }

    // Returns only when everything is as it was and `next` stands under its own name again.
    void exchange_back(Draft const& next, KeptCopy& kept) const {
        int const error = exchange_names(next.name(), file_);
        if (error == 0 && next.stands_at(next.name()) && next.still_holds(new_bytes_)) return;
        kept.stay();
        int unmoved = 0;
        auto const aside = move_aside(next.name(), file_, unmoved);
        if (error == 0)
            throw Failure(path_ + " was saved twice by somebody else while legwork wrote: the earlier text stands in " +
                          path_ + ", the later one in " + aside.string() + ", the one before both in " +
                          before_path(file_).string() + "; take what you want of each, then run this again");
        throw Failure(path_ + " was saved by somebody else while legwork wrote, and could not be put back (" +
                      reason(error) + "): that text stands in " + aside.string() + ", legwork's in " + path_ +
                      ", the one before both in " + before_path(file_).string());
    }

    std::string path_;
    std::string_view old_bytes_, new_bytes_;
    fs::path file_;
    Folder folder_;
};

} // namespace

ReplacedFile replace_file(std::string const& path, std::string_view old_bytes, std::string_view new_bytes) {
    return Replacement(path, old_bytes, new_bytes).run();
}

void clear_after_kills(std::string const& path) {
    auto const file = real_path(path);
    Folder const folder(file.parent_path());
    sweep(folder);
    settle_all(folder, file, path);
}

} // namespace legwork
