// SPDX-License-Identifier: MIT
#include "app/desktop/find/search_text.h"

namespace desktop {

namespace {

bool isLeftOut(QChar letter) {
    constexpr char16_t passedOver[] = u"\u00D7'\"\u2018\u2019\u201C\u201D";
    return letter.category() == QChar::Mark_NonSpacing || QStringView(passedOver).contains(letter);
}

}  // namespace

QString searchText(const QString& text) {
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
