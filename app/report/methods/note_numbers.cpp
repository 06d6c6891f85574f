// SPDX-License-Identifier: MIT
#include "app/report/methods/note_numbers.h"

#include <QLocale>
#include <QRegularExpression>
#include <QStringList>
#include <algorithm>
#include <cmath>

#include "app/plot/number_text.h"
#include "app/report/methods/method_note.h"
#include "stats/numeric/normal_quantile.h"

namespace report {
namespace {

constexpr std::size_t mostOnAPage = 400;

QString folded(const QStringList& items) {
    constexpr int lineWidth = 110;
    QString text = QStringLiteral("c(");
    qsizetype width = text.size();
    for (qsizetype i = 0; i < items.size(); ++i) {
        if (width + items[i].size() > lineWidth) {
            text += QStringLiteral("\n    ");
            width = 4;
        }
        const QString item = items[i] + (i + 1 < items.size() ? QStringLiteral(", ") : QStringLiteral(")"));
        text += item;
        width += item.size();
    }
    text.replace(QStringLiteral(", \n"), QStringLiteral(",\n"));
    return items.isEmpty() ? QStringLiteral("c()") : text;
}

}  // namespace

void put(Numbers& numbers, const QString& name, double value, int decimals) {
    constexpr double beyondReading = 1e6;
    numbers[name] = std::isfinite(value) && std::abs(value) >= beyondReading ? QLocale().toString(value, 'g', 3)
                                                                             : plot::decimalText(value, decimals);
    numbers[name + QStringLiteral("_r")] = fixedForR(value, decimals);
}

void putCount(Numbers& numbers, const QString& name, int count) {
    numbers[name] = QString::number(count);
}

void putLimits(Numbers& numbers, const core::Limits& limits, int decimals) {
    put(numbers, QStringLiteral("low"), limits.low, decimals);
    put(numbers, QStringLiteral("high"), limits.high, decimals);
}

void putP(Numbers& numbers, const QString& name, double p) {
    constexpr double smallest = 0.0001;
    numbers[name] = p < smallest ? QStringLiteral("p < %1").arg(plot::decimalText(smallest, 4))
                                 : QStringLiteral("p = %1").arg(plot::decimalText(p, 4));
    numbers[name + QStringLiteral("_r")] = fixedForR(p, 4);
}

void putLevel(Numbers& numbers, double level) {
    numbers[QStringLiteral("level")] = plot::levelText(level);
    numbers[QStringLiteral("level_r")] = forR(level);
    numbers[QStringLiteral("z")] = plot::decimalText(stats::normalQuantileOfLevel(level), 3);
    numbers[QStringLiteral("tail")] = plot::amountText((1 - level) / 2);
}

QString named(const std::string& name) {
    static const QRegularExpression marks(QStringLiteral("([\\\\`*_\\[\\]<>#|])"));
    return QString::fromStdString(name).replace(marks, QStringLiteral("\\\\1"));
}

int decimalsFor(double value) {
    const double size = std::abs(value);
    return size >= 100 || !std::isfinite(size) ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 4;
}

QString fixedForR(double value, int decimals) {
    return std::isfinite(value) ? QLocale::c().toString(value, 'f', decimals).remove(u',') : forR(value);
}

QString listForR(std::span<const double> values) {
    if (values.size() > mostOnAPage)
        return QStringLiteral("scan(\"the_%1_numbers_of_the_records.txt\")").arg(values.size());
    QStringList items;
    for (const double value : values) items << forR(value);
    return folded(items);
}

QString listForR(std::span<const int> values) {
    return listForR(std::vector<double>(values.begin(), values.end()));
}

std::vector<int> rootedOf(std::span<const core::BatchCount> batches) {
    std::vector<int> counts;
    for (const core::BatchCount& batch : batches) counts.push_back(batch.rooted);
    return counts;
}

std::vector<int> assessedOf(std::span<const core::BatchCount> batches) {
    std::vector<int> counts;
    for (const core::BatchCount& batch : batches) counts.push_back(batch.assessed);
    return counts;
}

QString countsInWords(std::span<const core::BatchCount> batches) {
    constexpr std::size_t most = 12;
    QStringList words;
    for (const core::BatchCount& batch : batches.first(std::min(most, batches.size())))
        words << QStringLiteral("%1 of %2").arg(batch.rooted).arg(batch.assessed);
    if (batches.size() > most) words << QStringLiteral("and %1 more").arg(batches.size() - most);
    return words.join(QStringLiteral(", "));
}

}  // namespace report
