// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A form file of anybody's, and a job printed on it.
#include "fuzz/opened.h"
#include "fuzz/pages.h"
#include "fuzz/promises.h"
#include "source_folder.h"

#include "output/files.h"

namespace {

legwork::Session printed_job() {
    std::string why;
    auto bytes = legwork::read_file(in_sources("examples/orchard-shed.toml"), legwork::kLargestJob, why);
    auto s = bytes ? fuzz::opened(*bytes) : std::nullopt;
    fuzz::promise(s.has_value(), "the example is there and can be read", why);
    return std::move(*s);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
    static auto const s = printed_job();
    auto const bytes = fuzz::text_of(data, size);
    auto const read = legwork::read_form(bytes, "mine");
    fuzz::promise(read.form.has_value() == read.problems.empty(), "either a form or mistakes");
    fuzz::promise_problems(read.problems, bytes);
    if (read.form) fuzz::draw_sheet(s, *legwork::sheet_kind(read.form->sheet), *read.form);
    return 0;
}
