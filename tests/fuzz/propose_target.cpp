// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// check --propose --write: the file as written is the job with what was proposed.
#include "fuzz/opened.h"
#include "fuzz/promises.h"
#include "fuzz/rewrite.h"

#include "cli/json/json.h"
#include "cli/text/text.h"
#include "job/write_sizes.h"
#include "propose/propose.h"

using namespace legwork;

namespace {

void show(Session const& s, std::vector<Proposal> const& proposed) {
    fuzz::promise_json(fuzz::shown_by([&](Streams& to) { write_proposals_json(s.building, proposed, {}, to); }));
    fuzz::shown_by([&](Streams& to) { list_proposals(s, proposed, {}, to); });
}

std::vector<Edit> edits(Session const& s, std::vector<Proposal> const& proposed) {
    std::vector<SizesToWrite> sizes;
    for (Proposal const& p : proposed)
        if (p.breaker || p.has_cable()) sizes.push_back({p.circuit, p.breaker, p.cables});
    return edits_for(s.bytes, sizes);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
    auto const s = fuzz::opened(fuzz::text_of(data, size));
    if (!s) return 0;
    auto const proposed = proposals(s->building, s->plan, *s->book);
    show(*s, proposed);
    auto const written = fuzz::rewritten(*s, edits(*s, proposed), *with_proposals(s->building, proposed).said);
    auto const again = proposals(written.building, written.plan, *written.book);
    fuzz::promise(edits(written, again).empty(), "a second write changes nothing", written.bytes);
    return 0;
}
