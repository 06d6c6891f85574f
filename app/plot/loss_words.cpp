// SPDX-License-Identifier: MIT
#include "app/plot/loss_words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

#include "app/plot/arm_words.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

struct LossWords {
    Q_DECLARE_TR_FUNCTIONS(LossWords)
};

QString monthIn(std::chrono::year_month month, const QString& form) {
    const QDate first(static_cast<int>(month.year()), static_cast<int>(static_cast<unsigned>(month.month())), 1);
    return QLocale().toString(first, form);
}

}  // namespace

QString lossCauseText(core::LossCauseId cause, const std::string& name) {
    return cause.isSet() ? textOf(name) : LossWords::tr("cause not known");
}

QString lossStationText(const core::StationOfLosses& station) {
    return station.station.isSet() ? textOf(station.name) : LossWords::tr("station not recorded");
}

QString nothingLostText(const core::Losses& losses) {
    if (losses.stood == 0) return LossWords::tr("No cuttings stood in this time.");
    return LossWords::tr("Nothing was found lost: %1 stood, in %2.", "cuttings, batches")
        .arg(cuttingsText(losses.stood), batchesText(losses.batches));
}

QString monthText(std::chrono::year_month month) {
    return monthIn(month, LossWords::tr("MMMM yyyy", "form of a month, as QLocale takes it"));
}

QString shortMonthText(std::chrono::year_month month) {
    return monthIn(month, LossWords::tr("MMM yy", "short form of a month, as QLocale takes it"));
}

QString lossRateText(const core::LossCount& count) {
    return percentText(count.lost, count.stood);
}

}  // namespace plot
