// SPDX-License-Identifier: MIT
#include "app/desktop/readings/time_entry.h"

#include <QRegularExpression>

namespace desktop {

std::optional<int> minuteFrom(const QString& typed) {
    static const QRegularExpression hourAndMinute(QStringLiteral("^(\\d{1,2})(?:[:.h ]?(\\d{2}))?$"));
    const QRegularExpressionMatch match = hourAndMinute.match(typed.trimmed());
    if (!match.hasMatch()) return {};
    const int hour = match.captured(1).toInt(), minute = match.captured(2).toInt();
    if (hour > 23 || minute > 59) return {};
    return 60 * hour + minute;
}

QString hourText(int minute) {
    return QStringLiteral("%1:%2").arg(minute / 60).arg(minute % 60, 2, 10, QLatin1Char('0'));
}

}  // namespace desktop
