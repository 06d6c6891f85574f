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

/// "14": the nearest 14th that is not on the other side of today. A month that has no 31st is stepped over.
std::optional<core::Date> nearestWithDay(int days, core::Date today, DayLean lean) {
    std::chrono::year_month in = today.year() / today.month();
    for (int step = 0; step < 12; ++step) {
        const core::Date date = in / day{static_cast<unsigned>(days)};
        if (date.ok() && (lean == DayLean::Back ? date <= today : date >= today)) return date;
        in += std::chrono::months{lean == DayLean::Back ? -1 : 1};
    }
    return {};
}

/// "14.3": this year's, or that of the year beside it when this year's lies on the other side of today. Eight years on finds a 29 February.
std::optional<core::Date> nearestWithMonth(int months, int days, core::Date today, DayLean lean) {
    for (int step = 0; step < 9; ++step) {
        const core::Date date =
            dateOf(static_cast<int>(today.year()) + (lean == DayLean::Back ? -step : step), months, days);
        if (date.ok() && (lean == DayLean::Back ? date <= today : date >= today)) return date;
    }
    return {};
}

std::optional<core::Date> dateFromParts(const std::vector<int>& parts, core::Date today, const QLocale& locale,
                                        DayLean lean) {
    if (parts.size() == 1) return nearestWithDay(parts[0], today, lean);
    const bool swapped = monthComesFirst(locale);
    const int days = swapped ? parts[1] : parts[0];
    const int months = swapped ? parts[0] : parts[1];
    if (parts.size() == 2) return nearestWithMonth(months, days, today, lean);
    const core::Date date = dateOf(parts[2] < 100 ? 2000 + parts[2] : parts[2], months, days);
    return date.ok() ? std::optional(date) : std::nullopt;
}

/// "3": so many days away.
std::optional<core::Date> daysAway(const QString& typed, core::Date today, int direction) {
    const std::optional<int> days = core::countFrom(typed.toStdString());
    return days && *days <= 36500 ? std::optional(core::addDays(today, direction * *days)) : std::nullopt;
}

}  // namespace

std::optional<core::Date> dateFrom(const QString& typed, core::Date today, const QLocale& locale, DayLean lean) {
    const QString text = typed.trimmed().toLower();
    if (text == "t") return today;
    if (text == "y") return core::addDays(today, -1);
    if (text.startsWith('-') || text.startsWith(QChar(0x2212))) return daysAway(text.mid(1), today, -1);
    if (text.startsWith('+') && lean == DayLean::Ahead) return daysAway(text.mid(1), today, 1);
    if (const std::optional<core::Date> date = core::dateFromIso(text.toStdString())) return date;

    static const QRegularExpression dayAndMore(
        QStringLiteral("^(\\d{1,2})(?:[./ ](\\d{1,2})(?:[./ ](\\d{2}|\\d{4}))?[.]?)?[.]?$"));
    const QRegularExpressionMatch match = dayAndMore.match(text);
    if (!match.hasMatch()) return {};
    std::vector<int> parts;
    for (int group = 1; group <= match.lastCapturedIndex(); ++group) parts.push_back(match.captured(group).toInt());
    return dateFromParts(parts, today, locale, lean);
}

}  // namespace desktop
