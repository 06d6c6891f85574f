// SPDX-License-Identifier: MIT
#include "tests/desktop/whole/pseudo_language.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace whole {

namespace {

const QString small = QStringLiteral("áƀçðéƒğĥíĵķļɱñöþɋŕšţüṽŵẋýž");
const QString large = QStringLiteral("ÁɃÇÐÉƑĞĤÍĴĶĻṂÑÖÞɊŔŠŢÜṼŴẊÝŽ");

QChar accented(QChar letter) {
    if (letter >= QLatin1Char('a') && letter <= QLatin1Char('z')) return small[letter.unicode() - u'a'];
    if (letter >= QLatin1Char('A') && letter <= QLatin1Char('Z')) return large[letter.unicode() - u'A'];
    return letter;
}

/// What a translator has to leave as it is: %1, %L1, %n, tags, entities.
const QRegularExpression& kept() {
    static const QRegularExpression pattern(QStringLiteral("%L?\\d+|%n|%%|<[^>]*>|&[a-z]+;|&#\\d+;"));
    return pattern;
}

QString accentedAll(const QString& text) {
    QString result;
    for (const QChar letter : text) result += accented(letter);
    return result;
}

/// Two fifths of the letters, as words that can be wrapped where the source could be; of signs that are no letters, so that words end there.
QString filling(const QString& source) {
    const qsizetype wanted = (source.size() * 2 + 4) / 5;
    const bool hasSpaces = source.contains(QLatin1Char(' '));
    QString words;
    while (words.size() < wanted) words += hasSpaces && words.size() % 7 == 0 ? QLatin1Char(' ') : QChar(u'¤');
    return words;
}

}  // namespace

PseudoLanguage::PseudoLanguage() {
    QCoreApplication::installTranslator(this);
}

PseudoLanguage::~PseudoLanguage() {
    QCoreApplication::removeTranslator(this);
}

QString PseudoLanguage::translate(const char* context, const char* sourceText, const char*, int) const {
    // The names of keys are read back by their English words.
    if (qstrcmp(context, "QShortcut") == 0) return {};
    return inPseudo(QString::fromUtf8(sourceText));
}

QString inPseudo(const QString& source) {
    QString result;
    qsizetype from = 0;
    for (auto each = kept().globalMatch(source); each.hasNext();) {
        const QRegularExpressionMatch match = each.next();
        result += accentedAll(source.mid(from, match.capturedStart() - from)) + match.captured();
        from = match.capturedEnd();
    }
    result += accentedAll(source.mid(from));
    return result + filling(source);
}

QStringList plainWords(const QString& text) {
    static const QRegularExpression word(QStringLiteral("(?<![\\p{L}\\d])[A-Za-z]{2,}(?![\\p{L}\\d])"));
    QStringList words;
    for (auto each = word.globalMatch(text); each.hasNext();) words << each.next().captured();
    return words;
}

}  // namespace whole
