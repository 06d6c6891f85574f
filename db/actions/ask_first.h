// SPDX-License-Identifier: MIT
// The manner of every verb in this folder: core's rules are asked within the transaction, so that what they looked at is what is
// written over; a refusal takes everything back.
#pragma once

#include <functional>
#include <string>
#include <utility>

#include "core/result.h"
#include "db/logbook.h"
#include "db/writer.h"

namespace db {

/// Leaves act() with nothing written; caught below and nowhere else.
struct Refused {
    core::Refusals reasons;
};

/// `change` gives back the reasons why not, or writes and gives back none.
[[nodiscard]] inline core::Result<Changes> actUnlessRefused(Logbook& logbook, const std::string& words,
                                                            const std::function<core::Refusals(Writer&)>& change) {
    try {
        return logbook.act(words, [&](Writer& writer) {
            core::Refusals reasons = change(writer);
            if (!reasons.empty()) throw Refused{std::move(reasons)};
        });
    } catch (Refused& refused) {
        return core::refused(std::move(refused.reasons));
    }
}

/// What was to be changed isn't there; `what` as in "batch".
[[nodiscard]] inline core::Refusal notThere(const std::string& field, const std::string& what) {
    return {.field = field,
            .value = "a " + what + " that is gone",
            .allowed = "a " + what + " of this logbook",
            .sentence = field +
                        " is not in the logbook any more: it may have been deleted in another window. Choose another " +
                        what + "."};
}

/// Says of each refusal what it is about, where several things are written in one go.
inline void prefix(core::Refusals& refusals, const std::string& about) {
    for (core::Refusal& refusal : refusals) {
        refusal.field = about + ": " + refusal.field;
        refusal.sentence = about + ": " + refusal.sentence;
    }
}

inline void append(core::Refusals& to, core::Refusals from) {
    to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

}  // namespace db
