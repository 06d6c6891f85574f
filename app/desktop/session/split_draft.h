// SPDX-License-Identifier: MIT
// A count about to be divided over arms by chance: what was chosen so far, and who goes where. The seed is drawn once and can't be drawn
// again for the same question: drawing until one likes the answer is not chance.
#pragma once

#include <QStringList>

#include "app/desktop/session/session_model.h"

namespace desktop {

struct SplitDraft {
    SplitQuestion question;
    SessionColumn factor{SessionColumn::Station};
    QStringList arms;
    QString trialName;
    QString horizonDay;  // as typed

    [[nodiscard]] QString faultInArms() const;
    [[nodiscard]] QString faultInHorizon() const;
    /// Contract: faultInArms() is empty.
    [[nodiscard]] core::Allocation allocation() const;
    /// Contract: no faults.
    [[nodiscard]] SplitByChance result() const;
};

}  // namespace desktop
