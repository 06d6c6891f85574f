// SPDX-License-Identifier: MIT
// What the answers of the calculators have in common, as text and for machines: amounts, workings, remarks, cautions.
#pragma once

#include <ostream>
#include <string>

#include "app/console/json_text.h"
#include "app/console/question_options.h"
#include "core/mixing/mix_notes.h"

namespace console {

inline constexpr QuestionOption scaleOption{"--scale", "G", "smallest step of the scale in g (0.1)"};
inline constexpr QuestionOption syringeOption{"--syringe", "ML", "smallest step of the syringe in mL (0.1)"};
inline constexpr QuestionOption jugOption{"--jug", "L", "smallest step of the jug in L (0.1)"};

/// Of the three options, as far as the command has them.
[[nodiscard]] core::MeasuringTools toolsFrom(const QuestionOptions& options);

[[nodiscard]] Json amountJson(const core::MeasuredAmount& amount);
[[nodiscard]] Json workingJson(const core::Working& working);
/// {"workings": [], "remarks": [], "cautions": []}
[[nodiscard]] Json notesJson(const core::MixNotes& notes);

/// "7.0 g", in the decimals of the tool and the locale's sign; and as worked out: "7.04 g".
[[nodiscard]] std::string measuredOf(const core::MeasuredAmount& amount);
[[nodiscard]] std::string exactOf(const core::MeasuredAmount& amount);
/// Three digits that count, as the locale writes them.
[[nodiscard]] std::string amountOf(double value);
void printWorking(const core::Working& working, std::ostream& out);
void printNotes(const core::MixNotes& notes, std::ostream& out);

}  // namespace console
