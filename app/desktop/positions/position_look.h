// SPDX-License-Identifier: MIT
// A look hole by hole while it is made: marks over what the checks of the batches say, and the checks that come of them. No widgets.
//
// A mark adds to the counts of the look's day. Two things keep a cutting from being counted twice. What a check of that very day counts
// without saying where is filled up first: its counts grow only once there are more marks. What earlier checks count without saying where
// is given its hole by marks that say so (`wasCounted`); they change no count.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

#include "app/desktop/positions/mark_keys.h"
#include "core/records.h"
#include "core/result.h"

namespace desktop {

struct LookMark {
    Mark mark;
    bool wasCounted{};  // by an earlier check, which didn't say where

    bool operator==(const LookMark&) const = default;
};

using LookMarks = std::map<core::Position, LookMark>;

/// What the batches come to after the look; `new...` are the counts of the look's day.
struct LookSums {
    int rooted{}, newRooted{};
    int lost{}, newLost{};
    int withdrawn{}, newWithdrawn{};
    int undecided{};
};

/// Cuttings that checks count without saying where, of one kind.
struct Unplaced {
    Mark mark;
    int count{};
};

class PositionLook {
  public:
    PositionLook() = default;
    PositionLook(std::vector<core::BatchRecord> batches, core::Date day);

    void setDay(core::Date day) { day_ = day; }
    [[nodiscard]] core::Date day() const { return day_; }
    /// For the check of every batch that is looked at; in place of what the check of one batch says, after what those of several say.
    void setNote(std::optional<std::string> note) { note_ = std::move(note); }
    /// Batches without a mark were looked at too. One batch alone always is.
    void setLooksAtAll(bool looksAtAll) { looksAtAll_ = looksAtAll; }
    void setMarks(LookMarks marks) { marks_ = std::move(marks); }
    [[nodiscard]] const LookMarks& marks() const { return marks_; }

    /// A cutting of these batches that no check of another day has decided.
    [[nodiscard]] bool canMark(core::Position position) const;
    /// What is known of it now, this look included.
    [[nodiscard]] Mark markAt(core::Position position) const;
    /// Marks those that can be. A mark of what was counted before goes as far as there is something without its hole; false when it did
    /// not go all the way.
    bool mark(std::span<const core::Position> positions, const LookMark& mark);

    [[nodiscard]] const std::vector<core::BatchRecord>& batches() const { return batches_; }
    /// The batches as they would be.
    [[nodiscard]] std::vector<core::BatchRecord> outcome() const;
    /// Positions decided on the look's day or marked now: open to change.
    [[nodiscard]] std::set<core::Position> decidedNow() const;
    /// The checks to keep: one of the day for each batch looked at, and earlier ones that were given holes.
    [[nodiscard]] std::vector<core::Check> checks() const;
    /// What core's rules say of them, with the batch's code where there are several.
    [[nodiscard]] core::Refusals faults(const core::Shelves& shelves, core::Date today) const;
    [[nodiscard]] LookSums sums() const;
    /// What earlier checks count without saying where, less the marks that say so.
    [[nodiscard]] std::vector<Unplaced> unplacedBefore() const;
    /// The note of the day's check, where one batch is looked at and has one.
    [[nodiscard]] std::string noteKept() const;

  private:
    [[nodiscard]] const core::BatchRecord* batchAt(core::Position position) const;
    [[nodiscard]] const core::Check* checkOf(const core::BatchRecord& record) const;
    /// What the check of the day says of a position after the look; `said` is what it says before.
    [[nodiscard]] std::optional<core::Finding> findingNow(const core::BatchRecord& record, core::Position position,
                                                          const core::Finding* said) const;
    [[nodiscard]] core::Check checkFor(const core::BatchRecord& record) const;
    [[nodiscard]] core::BatchRecord outcomeOf(const core::BatchRecord& record) const;
    [[nodiscard]] core::Refusals faultsInPlaces() const;
    [[nodiscard]] bool isLookedAt(const core::BatchRecord& record) const;
    [[nodiscard]] int roomBefore(const core::BatchRecord& record, const Mark& mark) const;

    std::vector<core::BatchRecord> batches_;
    std::map<core::Position, std::size_t> batchOf_;
    core::Date day_{};
    LookMarks marks_;
    std::optional<std::string> note_;
    bool looksAtAll_{};
};

}  // namespace desktop
