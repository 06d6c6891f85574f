// SPDX-License-Identifier: MIT
#include "app/plot/mark_keys.h"

#include <QCoreApplication>
#include <algorithm>

namespace plot {

namespace {

struct MarkWords {
    Q_DECLARE_TR_FUNCTIONS(MarkKeys)
};

MarkKey keyOf(char letter, std::optional<core::Outcome> outcome, const QString& name) {
    return {.letter = QLatin1Char(letter), .mark = {.outcome = outcome, .cause = {}}, .name = name};
}

bool isLetterTaken(std::span<const MarkKey> keys, QChar letter) {
    return std::ranges::any_of(keys, [letter](const MarkKey& key) { return key.letter == letter; });
}

/// The first free letter of the name, then of the alphabet.
QChar freeLetter(std::span<const MarkKey> keys, const QString& name) {
    for (const QChar letter : name.toUpper() + QStringLiteral("ABCDEFGHIJKLMNOPQRSTUVWXYZ"))
        if (letter >= QLatin1Char('A') && letter <= QLatin1Char('Z') && !isLetterTaken(keys, letter)) return letter;
    return {};
}

}  // namespace

std::vector<MarkKey> markKeysFor(std::span<const core::LossCause> causes) {
    const std::vector<MarkKey> last{keyOf('L', core::Outcome::Lost, MarkWords::tr("lost, cause not known")),
                                    keyOf('W', core::Outcome::Withdrawn, MarkWords::tr("withdrawn")),
                                    keyOf('U', std::nullopt, MarkWords::tr("undecided"))};
    std::vector<MarkKey> keys{keyOf('R', core::Outcome::Rooted, MarkWords::tr("rooted"))};
    keys.insert(keys.end(), last.begin(), last.end());
    const auto add = [&keys](const core::LossCause& cause, QChar letter) {
        keys.push_back({.letter = letter,
                        .mark = {.outcome = core::Outcome::Lost, .cause = cause.id},
                        .name = QString::fromStdString(cause.name)});
    };
    // Those that can keep their letter first: nobody's habit is broken for a name without one.
    std::vector<const core::LossCause*> rest;
    for (const core::LossCause& cause : causes) {
        if (cause.isRetired) continue;
        const QChar own = QChar(QLatin1Char(cause.key)).toUpper();
        if (cause.key == '\0' || isLetterTaken(keys, own))
            rest.push_back(&cause);
        else
            add(cause, own);
    }
    for (const core::LossCause* cause : rest) add(*cause, freeLetter(keys, QString::fromStdString(cause->name)));
    std::vector<MarkKey> ordered{keys.front()};
    for (const core::LossCause& cause : causes)
        for (const MarkKey& key : keys)
            if (key.mark.cause.isSet() && key.mark.cause == cause.id) ordered.push_back(key);
    ordered.insert(ordered.end(), last.begin(), last.end());
    return ordered;
}

std::optional<Mark> markFor(std::span<const MarkKey> keys, QChar letter) {
    const auto key = std::ranges::find(keys, letter.toUpper(), &MarkKey::letter);
    if (letter.isNull() || key == keys.end()) return std::nullopt;
    return key->mark;
}

QChar letterFor(std::span<const MarkKey> keys, const Mark& mark) {
    const auto key = std::ranges::find(keys, mark, &MarkKey::mark);
    return key == keys.end() || key->letter.isNull() ? QChar(QLatin1Char('L')) : key->letter;
}

}  // namespace plot
