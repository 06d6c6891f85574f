// SPDX-License-Identifier: MIT
// The writing of a session, and of what is made with it, within an action: shared by stickSession(), stickTrialSession() and planTrial().
#pragma once

#include "db/actions/session_actions.h"

namespace db {

/// Asks core's rules of the session, its batches and all that is made with it, and writes what is sound; the caller refuses when anything
/// is not. Fills in the draft's ids, codes and days.
[[nodiscard]] core::Refusals writeSession(Logbook& logbook, Writer& writer, SessionDraft& draft, core::Date today);

/// Things made on the spot, after core's rules: those without an id get one. The caller refuses when anything is not sound.
[[nodiscard]] core::Refusals writeMade(Logbook& logbook, Writer& writer, core::Shelves& made);

/// "session of 2026-03-14, 2 batches"
[[nodiscard]] std::string wordsForSession(const core::Session& session, std::size_t batches);

}  // namespace db
