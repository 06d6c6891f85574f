// SPDX-License-Identifier: MIT
#include "app/plot/number_text.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QRegularExpression>
#include <algorithm>
#include <cmath>

namespace plot {
namespace {

struct NumberText {
    Q_DECLARE_TR_FUNCTIONS(NumberText)
};

constexpr char16_t kMinus = u'\u2212';

QLocale ungrouped() {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale;
}

QString percentSigned(const QString& number) {
    //: a percentage; keep the narrow no-break space where the language sets one before the sign
    return NumberText::tr("%1\u202f%").arg(number);
}

int wholePercent(double share) {
    return static_cast<int>(std::lround(100 * share));
}

QDate qDate(core::Date date) {
    return {static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
            static_cast<int>(static_cast<unsigned>(date.day()))};
}

QString signedPoints(int points) {
    if (points == 0) return countText(0);
    return (points > 0 ? u'+' : QChar(kMinus)) + countText(std::abs(points));
}

}  // namespace

QString countText(int count) {
    const QString digits = ungrouped().toString(std::abs(qint64{count}));
    return count < 0 ? QChar(kMinus) + digits : digits;
}

QString decimalText(double value, int decimals) {
    if (std::isinf(value)) return value > 0 ? QStringLiteral("∞") : QChar(kMinus) + QStringLiteral("∞");
    const QString digits = ungrouped().toString(std::abs(value), 'f', decimals);
    const bool isNothing = ungrouped().toDouble(digits) == 0.0;
    return value < 0 && !isNothing ? QChar(kMinus) + digits : digits;
}

QString amountText(double value) {
    if (value == 0 || std::isinf(value)) return decimalText(value, 0);
    const int above = static_cast<int>(std::floor(std::log10(std::abs(value)))) + 1;
    const double unit = std::pow(10, above - 3);
    const double rounded = std::round(value / unit) * unit;
    QString text = decimalText(rounded, std::clamp(3 - above, 0, 12));
    const QString point = ungrouped().decimalPoint();
    if (!text.contains(point)) return text;
    while (text.endsWith(u'0')) text.chop(1);
    if (text.endsWith(point)) text.chop(point.size());
    return text;
}

QString shareText(double share) {
    const int percent = wholePercent(share);
    // "0 %" and "100 %" are kept for none and all.
    if (percent == 0 && share > 0) return percentSigned(QStringLiteral("<") + countText(1));
    if (percent == 100 && share < 1) return percentSigned(QStringLiteral(">") + countText(99));
    return percentSigned(countText(percent));
}

QString percentText(double rate, int part, int whole) {
    return NumberText::tr("%1 (%2 of %3)", "75 % (18 of 24)").arg(shareText(rate), countText(part), countText(whole));
}

QString percentText(int part, int whole) {
    if (whole <= 0) return NumberText::tr("nothing to count");
    return percentText(static_cast<double>(part) / whole, part, whole);
}

QString limitsText(const core::Limits& limits) {
    return percentSigned(NumberText::tr("%1 to %2", "an interval")
                             .arg(countText(wholePercent(limits.low)), countText(wholePercent(limits.high))));
}

QString levelText(double level) {
    const double percent = 100 * level;
    const bool isWhole = std::abs(percent - std::round(percent)) < 0.05;  // shown with one decimal otherwise
    return percentSigned(decimalText(percent, isWhole ? 0 : 1));
}

QString pointsText(double difference) {
    return signedPoints(wholePercent(difference));
}

QString pointsText(double difference, const core::Limits& limits) {
    return NumberText::tr("%1 (%2 to %3)", "a difference and its interval")
        .arg(pointsText(difference), pointsText(limits.low), pointsText(limits.high));
}

QString differenceText(double difference) {
    const int points = wholePercent(difference);
    if (points == 0) return NumberText::tr("as many");
    return points > 0 ? NumberText::tr("%1 more of 100").arg(countText(points))
                      : NumberText::tr("%1 fewer of 100").arg(countText(-points));
}

QString differenceLimitsText(const core::Limits& limits) {
    const int low = wholePercent(limits.low), high = wholePercent(limits.high);
    if (low >= 0) return NumberText::tr("%1 to %2 more").arg(countText(low), countText(high));
    if (high <= 0) return NumberText::tr("%1 to %2 fewer").arg(countText(-high), countText(-low));
    return NumberText::tr("%1 fewer to %2 more").arg(countText(-low), countText(high));
}

namespace {

// Two decimals where they say something: of 0.00 to 665.81 the one says too little and the other too much.
QString factorText(double factor) {
    constexpr double beyondSense = 10'000;
    if (std::isfinite(factor) && factor > beyondSense) return NumberText::tr("> %1").arg(decimalText(beyondSense, 0));
    if (factor == 0 || factor >= 100) return amountText(factor);
    if (factor < 0.001) return NumberText::tr("< %1").arg(decimalText(0.001, 3));
    return decimalText(factor, factor < 0.1 ? 3 : 2);
}

}  // namespace

QString ratioText(const std::optional<double>& ratio) {
    return ratio ? factorText(*ratio) : QStringLiteral("–");
}

QString ratioText(const std::optional<double>& ratio, const core::Limits& limits) {
    return NumberText::tr("%1 (%2 to %3)", "a ratio and its interval")
        .arg(ratioText(ratio), factorText(limits.low), factorText(limits.high));
}

QString pText(double p) {
    if (p < 0.001) return NumberText::tr("p < %1").arg(decimalText(0.001, 3));
    return NumberText::tr("p = %1").arg(decimalText(p, p < 0.1 ? 3 : 2));
}

QString chanceText(double probability) {
    const int inHundred = wholePercent(probability);
    if (inHundred >= 100) return NumberText::tr("more than 99 in 100");
    if (inHundred <= 0) return NumberText::tr("fewer than 1 in 100");
    return NumberText::tr("%1 in 100").arg(countText(inHundred));
}

QString dateText(core::Date date) {
    static const QRegularExpression weekday(QStringLiteral("^d{3,4}[,.]?\\s*|,?\\s*\\bd{3,4}$"));
    QString format = QLocale().dateFormat(QLocale::LongFormat);
    return QLocale().toString(qDate(date), format.remove(weekday));
}

QString shortDateText(core::Date date) {
    static const QRegularExpression shortYear(QStringLiteral("(?<!y)yy(?!y)"));
    QString format = QLocale().dateFormat(QLocale::ShortFormat);
    return QLocale().toString(qDate(date), format.replace(shortYear, QStringLiteral("yyyy")));
}

QString dayText(double day) {
    return NumberText::tr("day %1").arg(countText(static_cast<int>(std::lround(day))));
}

QString dayRangeText(const core::DayRange& range) {
    const int after = static_cast<int>(std::lround(range.after)), by = static_cast<int>(std::lround(range.by));
    if (std::isinf(range.by)) return NumberText::tr("after day %1").arg(countText(after));
    if (after <= 0) return NumberText::tr("by day %1").arg(countText(by));
    if (after + 1 >= by) return dayText(by);
    return NumberText::tr("day %1 to %2").arg(countText(after + 1), countText(by));
}

QString dayRangeText(const std::optional<core::DayRange>& range) {
    return range ? dayRangeText(*range) : NumberText::tr("not reached");
}

// The singular has a sentence of its own: English then reads well without a translation file too.
QString cuttingsText(int count) {
    return count == 1 ? NumberText::tr("1 cutting") : NumberText::tr("%n cuttings", nullptr, count);
}

QString batchesText(int count) {
    return count == 1 ? NumberText::tr("1 batch") : NumberText::tr("%n batches", nullptr, count);
}

QString stationsText(int count) {
    return count == 1 ? NumberText::tr("1 station") : NumberText::tr("%n stations", nullptr, count);
}

QString plantsText(int count) {
    return count == 1 ? NumberText::tr("1 plant") : NumberText::tr("%n plants", nullptr, count);
}

QString checksText(int count) {
    return count == 1 ? NumberText::tr("1 check") : NumberText::tr("%n checks", nullptr, count);
}

QString daysText(int count) {
    return count == 1 ? NumberText::tr("1 day") : NumberText::tr("%n days", nullptr, count);
}

}  // namespace plot
