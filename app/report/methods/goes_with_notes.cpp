// SPDX-License-Identifier: MIT
#include <QStringList>

#include "app/report/methods/note_numbers.h"
#include "app/report/methods/notes.h"

namespace report {
namespace {

QString withSpreadInWords(const core::Limits& limits) {
    Numbers written;
    putLimits(written, limits, 2);
    return QStringLiteral("; with spread %1 to %2")
        .arg(written[QStringLiteral("low")], written[QStringLiteral("high")]);
}

}  // namespace

std::vector<MethodNote> notesOnGoesWith(const core::GoesWith& answer, double level) {
    if (answer.associations.empty() || answer.rows.empty()) return {};
    const core::Association& first = answer.associations.front();
    MethodNote note{QStringLiteral("goes_with_rooting"), {}};
    Numbers& numbers = note.numbers;
    std::vector<int> rooted, assessed;
    std::vector<std::vector<double>> columns(answer.associations.size());
    for (const core::FeaturedBatch& row : answer.rows) {
        rooted.push_back(row.rooted);
        assessed.push_back(row.assessed);
        for (std::size_t i = 0; i < columns.size(); ++i) columns[i].push_back(row.values[i]);
    }
    QStringList columnsForR;
    for (const std::vector<double>& column : columns) columnsForR << listForR(column);
    putCount(numbers, QStringLiteral("batches"), answer.batches);
    putCount(numbers, QStringLiteral("cuttings"), answer.cuttings);
    numbers[QStringLiteral("things")] = answer.associations.size() == 1
                                            ? QStringLiteral("one thing")
                                            : QStringLiteral("%1 things").arg(answer.associations.size());
    put(numbers, QStringLiteral("dispersion"), answer.dispersion, 2);
    numbers[QStringLiteral("name")] = named(first.name);
    put(numbers, QStringLiteral("odds_ratio"), first.oddsRatio, 2);
    putLimits(numbers, first.asCounted, 2);
    numbers[QStringLiteral("with_spread")] = first.withSpread ? withSpreadInWords(*first.withSpread) : QString();
    putLevel(numbers, level);
    numbers[QStringLiteral("y_r")] = listForR(rooted);
    numbers[QStringLiteral("n_r")] = listForR(assessed);
    numbers[QStringLiteral("x_r")] = columnsForR.join(QStringLiteral(",\n    "));
    return {std::move(note)};
}

}  // namespace report
