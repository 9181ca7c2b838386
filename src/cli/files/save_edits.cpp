// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/files/save_edits.h"

#include "cli/text/words.h"
#include "job/write_sizes.h"
#include "output/replace.h"
#include "units/failure.h"

#include <fmt/format.h>

#include <filesystem>

namespace legwork {

std::vector<Edit> spaces_to_save(Building const& building, Plan const& plan) {
    std::vector<Edit> edits;
    for (PanelPlan const& panel : plan.panels)
        for (Placement const& p : panel.placements) {
            auto const* c = circuit_named(building, p.circuit);
            if (!c || p.slots.empty() || c->space == p.slots.front()) continue;
            auto const at = p.slots.front();
            edits.push_back({p.circuit, "space", at.half ? '"' + text(at) + '"' : text(at)});
        }
    return edits;
}

Rewrite save_edits(Session const& session, std::vector<Edit> const& edits, std::string_view what) {
    Rewrite saved;
    saved.asked = true;
    if (edits.empty()) {
        clear_after_kills(session.file); // the run that wrote these edits may have been killed at its last step
        return saved;
    }
    auto const edited = edit_job(session.bytes, edits);
    if (!edited.why.empty())
        throw Failure(fmt::format("cannot put the {} into {}: {}", what, session.file, edited.why));
    // Judged before it is written: what cannot be read again is not put in anybody's file.
    auto reopened = open_job(session.file, edited.bytes, session.seconds);
    if (!reopened.session)
        throw Failure(fmt::format("the changed job would not be readable, so {} was left as it is", session.file));
    auto const replaced = replace_file(session.file, session.bytes, edited.bytes);
    if (!replaced.done)
        throw Failure(fmt::format("{} was changed by somebody else meanwhile and was left as it is; run this again",
                                  session.file));
    saved.changes = static_cast<int>(edits.size());
    saved.file = session.file;
    // Told as the person typed the file, unless a link led elsewhere.
    namespace fs = std::filesystem;
    bool const linked = fs::path(replaced.file).filename() != fs::path(session.file).filename();
    saved.before = linked ? replaced.before
                          : fs::path(session.file).replace_filename(fs::path(replaced.before).filename()).string();
    saved.now = std::move(reopened.session);
    return saved;
}

Rewrite save_spaces(Session const& session, Plan const& plan) {
    return save_edits(session, spaces_to_save(session.building, plan), "spaces");
}

Rewrite save_sizes(Session const& session, std::vector<Proposal> const& proposed) {
    std::vector<SizesToWrite> sizes;
    for (Proposal const& p : proposed)
        if (p.breaker || p.has_cable()) sizes.push_back({p.circuit, p.breaker, p.cables});
    return save_edits(session, edits_for(session.bytes, sizes), "sizes");
}

} // namespace legwork
