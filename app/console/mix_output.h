// SPDX-License-Identifier: MIT
// What the answers of the calculators have in common, as text and for machines: amounts, workings, remarks, cautions.
#pragma once

#include <ostream>
#include <string>

#include "app/console/json_text.h"
#include "app/console/question_options.h"
#include "app/report/mix_answer.h"

namespace console {

inline constexpr QuestionOption scaleOption{"--scale", "G", "smallest step of the scale in g (0.1)"};
inline constexpr QuestionOption syringeOption{"--syringe", "ML", "smallest step of the syringe in mL (0.1)"};
inline constexpr QuestionOption jugOption{"--jug", "L", "smallest step of the jug in L (0.1)"};

inline constexpr QuestionOption cardOption{"--card", "FILE.pdf",
                                           "print it as a mixing card; an older file is replaced"};
inline constexpr QuestionOption paperOption{"--paper", "A4|Letter", "of the card (A4)"};

/// Of the three options, as far as the command has them.
[[nodiscard]] core::MeasuringTools toolsFrom(const QuestionOptions& options);

[[nodiscard]] Json amountJson(const core::MeasuredAmount& amount);
[[nodiscard]] Json workingJson(const core::Working& working);
/// {"workings": [], "remarks": [], "cautions": []}
[[nodiscard]] Json notesJson(const core::MixNotes& notes);

void printWorking(const core::Working& working, std::ostream& out);
void printTable(const report::Table& table, std::ostream& out);
/// As text or as `json`, and on a mixing card where --card asks for one. Throws WrongArgument when it can't be a card's name or paper.
void say(const report::MixAnswer& answer, Json json, const QuestionOptions& options, const AnswerWriter& writer);

}  // namespace console
