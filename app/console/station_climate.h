// SPDX-License-Identifier: MIT
// The climate of one station over a span, in figures: what strikebook-cli climate LOG --station NAME answers.
#pragma once

#include <ostream>

#include "app/console/question_options.h"

namespace console {

/// Days are those of the place; without them all that there is. With a batch: since it was stuck, beside the bands of its stages; else beside
/// those of cuttings before roots, in general. 1 where there is no such station or batch; throws WrongArgument.
[[nodiscard]] int answerStationClimate(const std::string& file, const QuestionOptions& options, bool isJson,
                                       const Surroundings& surroundings, std::ostream& out, std::ostream& err);

}  // namespace console
