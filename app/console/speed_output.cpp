// SPDX-License-Identifier: MIT
#include "app/console/speed_output.h"

#include "app/console/text_table.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"

namespace console {

namespace {

Json reasonJson(const std::string& whyNot) {
    return whyNot.empty() ? Json() : Json(whyNot);
}

std::string withLimits(const std::string& figure, const std::optional<core::Limits>& limits, double times,
                       int decimals) {
    if (!limits) return figure;
    return filled(tr("%1 (%2 to %3)"), {figure, plot::decimalText(times * limits->low, decimals).toStdString(),
                                        plot::decimalText(times * limits->high, decimals).toStdString()});
}

}  // namespace

Json speedJson(const core::RootingSpeed& speed) {
    Json fits = Json::array();
    for (const core::FittedSpeed& fit : speed.fits)
        fits.push_back({{"shape", fit.shape},
                        {"rooting_share", figure(fit.rootingShare)},
                        {"rooting_share_limits", limits(fit.rootingShareLimits)},
                        {"median_day", figure(fit.medianDay)},
                        {"median_day_limits", limits(fit.medianDayLimits)},
                        {"by_batch", fit.isByBatch},
                        {"akaike", figure(fit.akaike)}});
    return {{"fits", std::move(fits)}, {"why_not", reasonJson(speed.whyNot)}};
}

Json speedJson(const core::SpeedDifference& speed) {
    const std::optional<double> none;
    const bool isThere = speed.ratio.has_value();
    return {{"shape", isThere ? Json(speed.shape) : Json()},
            {"ratio", figure(speed.ratio)},
            {"as_counted", isThere ? limits(speed.asCounted) : Json()},
            {"p_as_counted", figure(isThere ? std::optional(speed.asCountedP) : none)},
            {"by_batch", limits(speed.byBatch)},
            {"p_by_batch", figure(speed.byBatchP)},
            {"why_not", reasonJson(speed.whyNot)}};
}

void printSpeeds(const core::Comparison& comparison, std::ostream& out) {
    TextTable table({{tr("who roots and how fast"), TextTable::Align::Left},
                     {tr("roots in the end, of 100"), TextTable::Align::Left},
                     {tr("median day of those"), TextTable::Align::Left},
                     {tr("curve"), TextTable::Align::Left}});
    for (const core::Arm& arm : comparison.arms) {
        if (arm.speed.fits.empty()) {
            table.addRow({arm.name, "–", "–", arm.speed.whyNot});
            continue;
        }
        const core::FittedSpeed& fit = arm.speed.fits.front();
        table.addRow(
            {arm.name,
             withLimits(plot::decimalText(100 * fit.rootingShare, 0).toStdString(), fit.rootingShareLimits, 100, 0),
             withLimits(plot::decimalText(fit.medianDay, 1).toStdString(), fit.medianDayLimits, 1, 1),
             filled(fit.isByBatch ? tr("%1, intervals with spread") : tr("%1, intervals as counted"), {fit.shape})});
    }
    table.printTo(out);
}

std::string speedText(const core::SpeedDifference& speed) {
    if (!speed.ratio) return speed.whyNot.empty() ? tr("not worked out") : speed.whyNot;
    std::string text =
        filled(tr("%1 as counted, %2 (%3)"), {plot::ratioText(speed.ratio, speed.asCounted).toStdString(),
                                              plot::pText(speed.asCountedP).toStdString(), speed.shape});
    if (speed.byBatch && speed.byBatchP)
        text += filled(tr("; %1 with spread, %2"), {plot::ratioText(speed.ratio, *speed.byBatch).toStdString(),
                                                    plot::pText(*speed.byBatchP).toStdString()});
    return text;
}

}  // namespace console
