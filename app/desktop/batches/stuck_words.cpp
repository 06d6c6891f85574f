// SPDX-License-Identifier: MIT
#include "app/desktop/batches/stuck_words.h"

#include <QCoreApplication>

#include "app/plot/number_text.h"

namespace desktop {

namespace {

struct StuckWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::StuckWords)
};

QString withDetail(const QString& name, const QString& detail, const QString& isNothing) {
    if (detail.isEmpty() || detail == name || detail == isNothing) return name;
    return StuckWords::tr("%1 (%2)", "name of a treatment or medium, and what it is").arg(name, detail);
}

/// Its age is that of the day of sticking, since it was made or else since it was first used.
QString withLot(const QString& name, const core::Lot* lot, core::Date stuckOn) {
    if (lot == nullptr) return name;
    const QString called = QString::fromStdString(lot->name);
    const int days = core::daysBetween(lot->madeOn.value_or(lot->usedFrom), stuckOn);
    if (days == 0 && !lot->madeOn) return StuckWords::tr("%1; lot %2, new", "a treatment, a lot").arg(name, called);
    return (lot->madeOn ? StuckWords::tr("%1; lot %2, made %3 before", "a treatment, a lot, 43 days")
                        : StuckWords::tr("%1; lot %2, in use for %3", "a treatment, a lot, 43 days"))
        .arg(name, called, plot::daysText(days));
}

}  // namespace

QString treatmentText(const core::Batch& batch, const core::Shelves& shelves) {
    const core::Treatment* treatment = core::find(shelves.treatments, batch.treatment);
    if (treatment == nullptr) return {};
    const QString text = withDetail(QString::fromStdString(treatment->name),
                                    QString::fromStdString(core::description(*treatment)), QStringLiteral("none"));
    return withLot(text, core::lotInUse(shelves.lots, batch.treatment, batch.stuckOn), batch.stuckOn);
}

QString mediumText(const core::Batch& batch, const core::Shelves& shelves) {
    const core::Medium* medium = core::find(shelves.media, batch.medium);
    if (medium == nullptr) return {};
    const QString text =
        withDetail(QString::fromStdString(medium->name), QString::fromStdString(core::recipe(*medium)), {});
    return withLot(text, core::lotInUse(shelves.lots, batch.medium, batch.stuckOn), batch.stuckOn);
}

}  // namespace desktop
