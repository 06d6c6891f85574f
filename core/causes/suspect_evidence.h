// SPDX-License-Identifier: MIT
// A candidate weighed: how likely its likelihood ratio makes it, what those that share it say for it and against it. Only for suspects.cpp.
#pragma once

#include "core/causes/suspect_search.h"

namespace core {

/// `shareOfKind`: of the weight of its kind, its part among the candidates of that kind.
[[nodiscard]] Suspect weighed(const SuspectSearch& search, Candidate candidate, double shareOfKind);

/// Nearly the same batches share both: eight in ten of those that share either.
[[nodiscard]] bool areTogether(const Suspect& a, const Suspect& b);

/// "about 8 to 1 for it, against luck alone"
[[nodiscard]] std::string oddsInWords(double odds);

/// Weight of a kind before looking, all its candidates together, where luck alone weighs 1. What was measured or counted, and is known to harm
/// cuttings, weighs most; a coincidence of place or day least. Common practice, no source.
[[nodiscard]] double weightOf(SuspectKind kind);

}  // namespace core
