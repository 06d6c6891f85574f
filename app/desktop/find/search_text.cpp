// SPDX-License-Identifier: MIT
#include "app/desktop/find/search_text.h"

#include <algorithm>

namespace desktop {

namespace {

bool isLeftOut(QChar letter) {
    constexpr char16_t passedOver[] = u"\u00D7'\"\u2018\u2019\u201C\u201D";
    return letter.category() == QChar::Mark_NonSpacing || QStringView(passedOver).contains(letter);
}

/// Codes are nearly all of what is asked about, and nothing in them is left out.
bool isPlain(const QString& text) {
    return std::ranges::all_of(text, [](QChar letter) { return letter.unicode() < 128 && letter.isLetterOrNumber(); });
}

}  // namespace

QString searchText(const QString& text) {
    if (isPlain(text)) return text.toLower();
    QString plain;
    plain.reserve(text.size());
    for (const QChar letter : text.normalized(QString::NormalizationForm_KD))
        if (!isLeftOut(letter)) plain.append(letter);
    plain.replace(QChar(u'\u00DF'), QStringLiteral("ss"));  // Qt folds letter by letter and leaves a sharp s as it is
    return plain.simplified().toCaseFolded();
}

QStringList searchWords(const QString& typed) {
    QStringList words = searchText(typed).split(u' ', Qt::SkipEmptyParts);
    if (words.size() > 1) words.removeAll(QStringLiteral("x"));
    return words;
}

}  // namespace desktop
