// SPDX-License-Identifier: MIT
// Labels in the few manners that pages use: a heading, quiet words, cautions. Colours come from the look and follow its changes.
#pragma once

#include <QLabel>
#include <QString>
#include <string>
#include <vector>

#include "core/result.h"

namespace desktop {

[[nodiscard]] QLabel* largeLabel(const QString& name, double times);
/// What the records say, in words.
[[nodiscard]] QLabel* answerLabel(const QString& name);
[[nodiscard]] QLabel* quietLabel(const QString& name);
[[nodiscard]] QLabel* quietLabelSaying(const QString& text);

/// A marked block of sentences; hidden while there are none.
[[nodiscard]] QLabel* cautionLabel(const QString& name);
void showCautions(QLabel& label, const std::vector<std::string>& cautions);

/// All sentences of a refusal, one after the other.
[[nodiscard]] QString sentencesOf(const core::Refusals& refusals);

}  // namespace desktop
