// SPDX-License-Identifier: MIT
// The questions of `mix`, each from its options to its answer. For mix_command.cpp.
#pragma once

#include "app/console/question_options.h"

namespace console {

// All throw WrongArgument.
void answerNutrient(const QuestionOptions& options, const AnswerWriter& writer);
void answerReading(const QuestionOptions& options, const AnswerWriter& writer);
void answerElements(const QuestionOptions& options, const AnswerWriter& writer);
void answerDilution(const QuestionOptions& options, const AnswerWriter& writer);
void answerTopUp(const QuestionOptions& options, const AnswerWriter& writer);
void answerPh(const QuestionOptions& options, const AnswerWriter& writer);
void answerTitration(const QuestionOptions& options, const AnswerWriter& writer);
void answerMedium(const QuestionOptions& options, const AnswerWriter& writer);

}  // namespace console
