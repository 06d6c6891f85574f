// SPDX-License-Identifier: MIT
#include <QStringList>
#include <algorithm>

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
    const auto sought = std::find_if(answer.associations.begin(), answer.associations.end(),
                                     [](const core::Association& each) { return !each.isPlant; });
    // Plants are only allowed for; where nothing else differs, one of them has to serve.
    const auto shown = sought == answer.associations.end() ? answer.associations.begin() : sought;
    const core::Association& first = *shown;
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
    numbers[QStringLiteral("limits_how")] =
        first.isPlant
            ? QStringLiteral("%1 standard errors either side on the scale of log odds")
            : QStringLiteral("where the penalised likelihood, at its best over all others, has fallen by half of %1^2");
    putCount(numbers, QStringLiteral("place_r"), static_cast<int>(shown - answer.associations.begin()) + 2);
    put(numbers, QStringLiteral("odds_ratio"), first.oddsRatio, 2);
    putLimits(numbers, first.asCounted, 2);
    numbers[QStringLiteral("with_spread")] = first.withSpread ? withSpreadInWords(*first.withSpread) : QString();
    putLevel(numbers, level);
    numbers[QStringLiteral("limits_how")] = numbers[QStringLiteral("limits_how")].arg(numbers[QStringLiteral("z")]);
    numbers[QStringLiteral("y_r")] = listForR(rooted);
    numbers[QStringLiteral("n_r")] = listForR(assessed);
    numbers[QStringLiteral("x_r")] = columnsForR.join(QStringLiteral(",\n    "));
    return {std::move(note)};
}

}  // namespace report
