// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/date_entry.h"

#include <QRegularExpression>
#include <QStringList>
#include <vector>

#include "core/units/number_entry.h"

namespace desktop {

namespace {

using std::chrono::day;
using std::chrono::month;
using std::chrono::year;

bool monthComesFirst(const QLocale& locale) {
    const QString format = locale.dateFormat(QLocale::ShortFormat);
    return format.indexOf('M') < format.indexOf('d');
}

core::Date dateOf(int years, int months, int days) {
    return core::Date{year{years}, month{static_cast<unsigned>(months)}, day{static_cast<unsigned>(days)}};
}

/// "14": the latest 14th that is not after today. A month that has no 31st is stepped over.
std::optional<core::Date> latestWithDay(int days, core::Date today) {
    std::chrono::year_month in = today.year() / today.month();
    for (int back = 0; back < 12; ++back, in -= std::chrono::months{1}) {
        const core::Date date = in / day{static_cast<unsigned>(days)};
        if (date.ok() && date <= today) return date;
    }
    return {};
}

/// "14.3": this year's, or the last one when this year's is still to come. Eight years back finds a 29 February.
std::optional<core::Date> latestWithMonth(int months, int days, core::Date today) {
    for (int back = 0; back < 9; ++back) {
        const core::Date date = dateOf(static_cast<int>(today.year()) - back, months, days);
        if (date.ok() && date <= today) return date;
    }
    return {};
}

std::optional<core::Date> dateFromParts(const std::vector<int>& parts, core::Date today, const QLocale& locale) {
    if (parts.size() == 1) return latestWithDay(parts[0], today);
    const bool swapped = monthComesFirst(locale);
    const int days = swapped ? parts[1] : parts[0];
    const int months = swapped ? parts[0] : parts[1];
    if (parts.size() == 2) return latestWithMonth(months, days, today);
    const core::Date date = dateOf(parts[2] < 100 ? 2000 + parts[2] : parts[2], months, days);
    return date.ok() ? std::optional(date) : std::nullopt;
}

}  // namespace

std::optional<core::Date> dateFrom(const QString& typed, core::Date today, const QLocale& locale) {
    const QString text = typed.trimmed().toLower();
    if (text == "t") return today;
    if (text == "y") return core::addDays(today, -1);
    if (text.startsWith('-') || text.startsWith(QChar(0x2212))) {
        const std::optional<int> days = core::countFrom(text.mid(1).toStdString());
        return days && *days <= 36500 ? std::optional(core::addDays(today, -*days)) : std::nullopt;
    }
    if (const std::optional<core::Date> date = core::dateFromIso(text.toStdString())) return date;

    static const QRegularExpression dayAndMore(
        QStringLiteral("^(\\d{1,2})(?:[./ ](\\d{1,2})(?:[./ ](\\d{2}|\\d{4}))?[.]?)?[.]?$"));
    const QRegularExpressionMatch match = dayAndMore.match(text);
    if (!match.hasMatch()) return {};
    std::vector<int> parts;
    for (int group = 1; group <= match.lastCapturedIndex(); ++group) parts.push_back(match.captured(group).toInt());
    return dateFromParts(parts, today, locale);
}

}  // namespace desktop
