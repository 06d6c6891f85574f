// SPDX-License-Identifier: MIT
// A check while it is typed: counts either as what is new since the check before or as running totals, and what they amount to. The
// form shows the one beside the other.
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/records.h"

namespace desktop {

enum class CountsAre { New, InAll };

struct CheckField {
    QString name;  // as refusals call it: "Rooted", "Lost (rot)", "Withdrawn"
    core::LossCauseId cause;
    enum class Kind { Rooted, Lost, Withdrawn } kind{Kind::Rooted};
    QString typed;
};

struct CheckDraft {
    core::BatchRecord record;  // without the check that is edited
    core::Check check;         // id unset: new
    std::vector<CheckField> fields;
    CountsAre countsAre{CountsAre::New};

    /// A draft for a new look, or for changing one of the record's checks.
    [[nodiscard]] static CheckDraft of(const core::BatchRecord& record, const core::Shelves& shelves,
                                       const core::Check* edited, core::Date day);

    /// What had happened before the draft's day.
    [[nodiscard]] int before(const CheckField& field) const;
    /// New since the check before; nothing where what was typed is no count, or less than there was before.
    [[nodiscard]] std::optional<int> newCount(const CheckField& field) const;
    /// A sentence where newCount() is empty, else empty.
    [[nodiscard]] QString fault(const CheckField& field) const;
    /// The other way to say it: "12 in all" beside what is new, "+3" beside a total.
    [[nodiscard]] QString otherWay(const CheckField& field) const;
    /// Turns what was typed from the one way into the other.
    void say(CountsAre how);
    /// "After this look: 12 rooted, 3 lost, 9 undecided." Contract: no faults.
    [[nodiscard]] QString inWords() const;
    /// Contract: no faults.
    [[nodiscard]] core::Check result() const;
};

}  // namespace desktop
