// SPDX-License-Identifier: MIT
// What a question of the trade's arithmetic leads to, in the words that the window, the mixing card and the command line share: what to
// measure out, what rounding does to it, how it was worked out, what to mind.
#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "app/report/sheet.h"
#include "core/mixing/kept_mix.h"
#include "core/mixing/mix_notes.h"
#include "core/units/display_units.h"

namespace report {

/// One thing to measure out.
struct MixAmount {
    QString what{};       // "part A"
    QString take{};       // as a scale or syringe measures it: "7.2 g"
    QString workedOut{};  // "7.22 g"

    bool operator==(const MixAmount&) const = default;
};

struct MixAnswer {
    std::optional<core::MixKind> kind{};  // how it is kept; absent: nothing to keep
    QString title{};                      // "Nutrient for 20 L at EC 1 mS/cm"
    std::vector<MixAmount> amounts{};
    QStringList results{};        // what the amounts as measured come to
    std::vector<Table> tables{};  // to compare with: bands of the stages
    core::MixNotes notes{};
    QString sumsIn{};                // where the grower's units are not those of the sums
    std::optional<double> litres{};  // of water or solution that goes into a tub with it
};

/// "7.0 g", in the decimals of the tool and the locale's sign; litres in the grower's unit. And as worked out: "7.04 g".
[[nodiscard]] QString takeText(const core::MeasuredAmount& amount, const core::DisplayUnits& units = {});
[[nodiscard]] QString workedOutText(const core::MeasuredAmount& amount, const core::DisplayUnits& units = {});
/// "1.2 mS/cm", "20 L", three digits that count, in the grower's unit.
[[nodiscard]] QString mixEcText(double ec, const core::DisplayUnits& units);
[[nodiscard]] QString mixVolumeText(double litres, const core::DisplayUnits& units);

/// Remarks of core, each a sentence.
[[nodiscard]] QStringList remarksOf(const MixAnswer& answer);
/// "acids: Acid goes into water ... (laboratory safety rules, from memory)"
[[nodiscard]] QStringList cautionsOf(const MixAnswer& answer);
/// "formula\nwith the numbers in\nSource: whose it is"
[[nodiscard]] QStringList workingsOf(const MixAnswer& answer);
/// What is kept with a session or a care: the title, amounts and workings a line each, the names of the cautions. Contract: answer.kind.
[[nodiscard]] core::KeptMix keptMix(const MixAnswer& answer);

}  // namespace report
