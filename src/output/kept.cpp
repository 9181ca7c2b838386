// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/kept.h"

#include "output/files.h"
#include "output/names.h"
#include "units/failure.h"

namespace legwork {

namespace fs = std::filesystem;

namespace {

fs::path beside(fs::path const& file, std::string const& word, int n) {
    return file.parent_path() /
           (file.stem().string() + "." + word + (n > 1 ? "-" + std::to_string(n) : "") + file.extension().string());
}

// One that cannot be read is another text: it moves on and is kept as well.
bool is_kept_already(fs::path const& before, std::string_view bytes) {
    auto const there = looked_at(before);
    if (!there || !S_ISREG(there->st_mode)) return false;
    std::string why;
    return read_file(before.string(), bytes.size(), why) == bytes;
}

} // namespace

fs::path before_path(fs::path const& file, int n) { return beside(file, "before", n); }

fs::path move_aside(fs::path const& text, fs::path const& file, int& error) {
    for (int n = 1;; ++n) {
        auto aside = beside(file, "meanwhile", n);
        error = move_to_free_name(text, aside);
        if (error == 0) return aside;
        if (error != EEXIST) return text;
    }
}

bool holds(fs::path const& file, std::string_view bytes, std::string const& shown) {
    std::string why;
    auto const now = read_file(file.string(), bytes.size(), why);
    if (!now) throw Failure("cannot read " + shown + " again: " + why);
    return *now == bytes;
}

KeptCopy::KeptCopy(Folder const& folder, fs::path file, std::string shown)
    : folder_(folder), file_(std::move(file)), shown_(std::move(shown)) {}

KeptCopy::~KeptCopy() {
    if (is_put_ && copy_->stands_at(before_path(file_))) ::unlink(before_path(file_).c_str());
    // The last that moved is the nearest to the file: backwards, each finds its old name free.
    for (; !moved_.empty(); moved_.pop_back()) move_to_free_name(moved_.back().second, moved_.back().first);
}

void KeptCopy::draft(std::string_view bytes, int old) {
    auto const before = before_path(file_);
    if (is_kept_already(before, bytes)) return;
    copy_.emplace(folder_, before.filename().string(), shown_, 0600);
    copy_->write(bytes);
    copy_->keep(old);
    copy_->flush();
}

void KeptCopy::make_way() {
    int free = 1;
    while (stands(before_path(file_, free))) ++free;
    for (int n = free; n > 1; --n) {
        auto const from = before_path(file_, n - 1), to = before_path(file_, n);
        if (int const error = move_to_free_name(from, to); error != 0)
            throw Failure(cannot("write", to.string(), error));
        moved_.emplace_back(from, to);
    }
}

void KeptCopy::put() {
    if (!copy_) return;
    make_way();
    is_put_ = copy_->put_new();
    if (!is_put_) throw Failure(cannot("write", before_path(file_).string(), EEXIST));
    folder_.flush();
}

} // namespace legwork
