// SPDX-License-Identifier: MIT
// A language that nobody speaks: every source text with an accent on each letter and longer by two fifths, as translations are. What is seen
// without accents never went through tr(); what no longer fits was measured for English.
#pragma once

#include <QTranslator>

namespace whole {

class PseudoLanguage : public QTranslator {
  public:
    PseudoLanguage();
    ~PseudoLanguage() override;  // English again

    [[nodiscard]] QString translate(const char* context, const char* sourceText, const char* disambiguation,
                                    int n) const override;
    [[nodiscard]] bool isEmpty() const override { return false; }
};

/// Placeholders, tags, entities and mnemonics stay what they are.
[[nodiscard]] QString inPseudo(const QString& source);
/// Words of two letters or more without a single accent, that stand in a text that a person reads.
[[nodiscard]] QStringList plainWords(const QString& text);

}  // namespace whole
