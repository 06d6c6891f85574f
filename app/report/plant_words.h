// SPDX-License-Identifier: MIT
// What is printed of a plant and what one's own records say of it, in the words that the window and the command line share.
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "core/planning/plant_facts.h"

namespace report {

struct PlantFactLine {
    QString what;    // "days to root"
    QString figure;  // "14 to 28, when roots were seen"
    QString source;  // how it is known, or how much is behind it

    bool operator==(const PlantFactLine&) const = default;
};

struct PlantWords {
    QString heading;                     // "rosemary, Lamiaceae"; of a form, which; or that the table doesn't have it
    std::vector<PlantFactLine> printed;  // none where the table doesn't have it
    QStringList citations;               // "KREM: ..." for each source named
    std::vector<PlantFactLine> own;
    QStringList plannedBy;
};

[[nodiscard]] PlantWords plantWords(const core::PlantFacts& facts);
/// "read in KREM", "from memory of DIRR", "common practice, no source", "unknown".
[[nodiscard]] QString howKnownText(const core::ReferenceRange& range);

}  // namespace report
