// SPDX-License-Identifier: MIT
#include "app/report/losses_words.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/plot/number_text.h"
#include "app/plot/rare_text.h"

namespace report {
namespace {

struct LossesWords {
    Q_DECLARE_TR_FUNCTIONS(LossesWords)
};

QString listOf(const std::vector<std::string>& names) {
    QStringList list;
    for (const std::string& name : names) list << QString::fromStdString(name);
    return list.join(LossesWords::tr("; ", "between items of a list"));
}

}  // namespace

QString spanText(std::optional<core::Date> from, std::optional<core::Date> until) {
    if (from && until) return LossesWords::tr("%1 to %2", "days").arg(plot::dateText(*from), plot::dateText(*until));
    if (from) return LossesWords::tr("from %1 on", "day").arg(plot::dateText(*from));
    if (until) return LossesWords::tr("until %1", "day").arg(plot::dateText(*until));
    return LossesWords::tr("all records");
}

QString coveredText(const core::Losses& losses) {
    if (losses.stood == 0)
        return LossesWords::tr("No cuttings stood in this time (%1).").arg(spanText(losses.from, losses.until));
    return LossesWords::tr("%1 of the cuttings that stood were found lost, in %2 of %3; %4.",
                           "share with counts, number, batches, span")
        .arg(plot::percentText(losses.lost, losses.stood), plot::countText(losses.batchesWithLosses),
             plot::batchesText(losses.batches), spanText(losses.from, losses.until));
}

QString rootedText(const core::AgainstThePast& against) {
    return LossesWords::tr("%1 of %2 by %3", "rooted, of, day")
        .arg(plot::countText(against.rooted), plot::countText(against.of), plot::dayText(against.day));
}

QString unusualText(const LossesAnswer& answer, double falseAlarmRate) {
    const QString rate = plot::oneInText(falseAlarmRate);
    if (answer.unusual.empty())
        return LossesWords::tr(
                   "No batch of this time did so much worse than your earlier ones that luck alone would "
                   "bring it in fewer than %1 batches. Only a batch with earlier ones of the same plant by the same "
                   "method can be judged.")
            .arg(rate);
    return LossesWords::tr(
               "%1 did worse than your earlier ones of the same plant and method. So few, or fewer, come by "
               "luck alone in fewer than %2 batches (the rate is set in Settings).")
        .arg(plot::batchesText(static_cast<int>(answer.unusual.size())), rate);
}

QString chartName(const ChartChoice& choice, const core::Shelves& shelves) {
    const core::Plant* plant = core::find(shelves.plants, choice.plant);
    const core::Method* method = core::find(shelves.methods, choice.method);
    return LossesWords::tr("%1, %2 (%3)", "plant, method, batches")
        .arg(plant == nullptr ? LossesWords::tr("plant not recorded") : QString::fromStdString(core::fullName(*plant)),
             method == nullptr ? LossesWords::tr("method not recorded") : QString::fromStdString(method->name),
             plot::batchesText(choice.batches));
}

QString chartText(const BatchChart& chart, int batches) {
    QString words = QString::fromStdString(chart.chart.inWords);
    if (chart.turn) words += u' ' + QString::fromStdString(chart.turn->inWords);
    const auto shown = static_cast<int>(chart.chart.batches.size());
    if (shown < batches)
        return LossesWords::tr("%1 The newest %2 of %3 are shown, whatever the time chosen above.")
            .arg(words, plot::countText(shown), plot::batchesText(batches));
    return LossesWords::tr("%1 All of them are shown, whatever the time chosen above.").arg(words);
}

QString goesWithText(const core::GoesWith& answer) {
    QString words = QString::fromStdString(answer.inWords);
    if (!answer.cannotBeTold.empty())
        words +=
            u' ' +
            LossesWords::tr("Left out, since it can't be told from the rest: %1.").arg(listOf(answer.cannotBeTold));
    if (!answer.leftOut.empty())
        words += u' ' + LossesWords::tr("Not looked at, since too few batches have it or leave room for it: %1.")
                            .arg(listOf(answer.leftOut));
    return words;
}

QString kindText(core::SuspectKind kind) {
    switch (kind) {
        case core::SuspectKind::Condition:
            return LossesWords::tr("condition");
        case core::SuspectKind::LossCause:
            return LossesWords::tr("cause of loss");
        case core::SuspectKind::Lot:
            return LossesWords::tr("lot");
        case core::SuspectKind::Care:
            return LossesWords::tr("care");
        case core::SuspectKind::StockPlant:
            return LossesWords::tr("stock plant");
        case core::SuspectKind::Station:
            return LossesWords::tr("station");
        case core::SuspectKind::Session:
            return LossesWords::tr("session");
        case core::SuspectKind::Worker:
            return LossesWords::tr("worker");
        case core::SuspectKind::Month:
            return LossesWords::tr("month");
    }
    return {};
}

QString sharedText(const core::Suspect& suspect) {
    const QString shared = LossesWords::tr("Shared by %1 with %2.", "batches, cuttings")
                               .arg(plot::batchesText(suspect.batches), plot::cuttingsText(suspect.cuttings));
    if (suspect.others.assessed > 0) return shared;
    return shared + u' ' + LossesWords::tr("No other batch tells how those that share it did.");
}

QString againstText(const core::Suspects& suspects) {
    return suspects.againstPast ? QString::fromStdString(suspects.againstPast->inWords) : QString();
}

}  // namespace report
