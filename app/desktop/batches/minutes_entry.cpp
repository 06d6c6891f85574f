// SPDX-License-Identifier: MIT
#include "app/desktop/batches/minutes_entry.h"

#include <QCoreApplication>

#include "app/desktop/mix/mix_field.h"
#include "core/units/number_entry.h"

namespace desktop {

std::optional<double> minutesFrom(const QString& typed, core::Refusals& faults) {
    if (typed.trimmed().isEmpty()) return {};
    const std::optional<double> minutes = core::numberFrom(typed.toStdString());
    if (!minutes)
        faults.push_back(
            {"Minutes",
             typed.toStdString(),
             {},
             QCoreApplication::translate("desktop::MinutesEntry",
                                         "Minutes is \u201c%1\u201d; a number is allowed, such as 45, or none.")
                 .arg(typed.trimmed())
                 .toStdString()});
    return minutes;
}

QString minutesShown(const std::optional<double>& minutes) {
    return minutes ? typedText(*minutes) : QString();
}

}  // namespace desktop
