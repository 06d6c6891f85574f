// SPDX-License-Identifier: MIT
#include "app/report/trial_words.h"

#include <QCoreApplication>

#include "app/plot/number_text.h"
#include "core/trial/trial_rules.h"

namespace report {

namespace {

struct TrialText {
    Q_DECLARE_TR_FUNCTIONS(Trial)
};

QString ofHundredText(double share) {
    const double points = 100 * share;
    return TrialText::tr("%1 of 100", "so many cuttings of a hundred")
        .arg(plot::decimalText(points, std::abs(points - std::round(points)) < 1e-9 ? 0 : 1));
}

QString yesOrNo(bool isSo) {
    return isSo ? TrialText::tr("yes") : TrialText::tr("no");
}

}  // namespace

QString factorWords(core::Factor factor) {
    switch (factor) {
        case core::Factor::Method:
            return TrialText::tr("method");
        case core::Factor::Treatment:
            return TrialText::tr("treatment");
        case core::Factor::Medium:
            return TrialText::tr("medium");
        case core::Factor::CuttingKind:
            return TrialText::tr("kind of cutting");
    }
    return {};
}

QString blockWords(core::BlockedBy blocks) {
    switch (blocks) {
        case core::BlockedBy::Nothing:
            return TrialText::tr("none");
        case core::BlockedBy::Plant:
            return TrialText::tr("plant");
        case core::BlockedBy::StockPlant:
            return TrialText::tr("stock plant");
        case core::BlockedBy::Session:
            return TrialText::tr("session");
        case core::BlockedBy::StationSide:
            return TrialText::tr("side of a station");
    }
    return {};
}

QString stageWords(core::TrialStage stage) {
    switch (stage) {
        case core::TrialStage::Named:
            return TrialText::tr("only named");
        case core::TrialStage::Planned:
            return TrialText::tr("planned");
        case core::TrialStage::Sticking:
            return TrialText::tr("being stuck");
        case core::TrialStage::Watched:
            return TrialText::tr("watched");
        case core::TrialStage::Decided:
            return TrialText::tr("past its horizon");
    }
    return {};
}

QString measureWords(const core::Trial& trial) {
    if (trial.measure == core::TrialMeasure::AsGoodAs)
        return trial.margin ? TrialText::tr("as good as, within %1").arg(ofHundredText(*trial.margin))
                            : TrialText::tr("as good as");
    return trial.margin ? TrialText::tr("more rooted; %1 more would matter").arg(ofHundredText(*trial.margin))
                        : TrialText::tr("more rooted");
}

QString armNumber(int arm) {
    return plot::countText(arm + 1);
}

QStringList armWords(const core::Trial& trial, const core::Shelves& shelves) {
    QStringList words;
    for (std::size_t arm = 0; trial.factor && arm < trial.arms.size(); ++arm)
        words << TrialText::tr("%1 = %2", "number and name of an arm")
                     .arg(armNumber(static_cast<int>(arm)),
                          QString::fromStdString(core::nameOf(trial.arms[arm], *trial.factor, shelves)));
    return words;
}

std::vector<Fact> designFacts(const core::Trial& trial, const core::Shelves& shelves) {
    std::vector<Fact> facts;
    const auto add = [&facts](const QString& label, const QString& value) {
        if (!value.isEmpty()) facts.push_back({label, value});
    };
    if (trial.factor) add(TrialText::tr("Arms differ in"), factorWords(*trial.factor));
    add(TrialText::tr("Arms"), armWords(trial, shelves).join(QStringLiteral(", ")));
    if (trial.factor) add(TrialText::tr("Blocks"), blockWords(trial.blockedBy));
    if (trial.perArm) add(TrialText::tr("Cuttings per arm"), plot::countText(*trial.perArm));
    if (trial.horizonDay) add(TrialText::tr("Horizon"), plot::dayText(*trial.horizonDay));
    if (trial.factor) add(TrialText::tr("What counts"), measureWords(trial));
    if (trial.setOn) add(TrialText::tr("Set on"), plot::dateText(*trial.setOn));
    if (trial.factor == core::Factor::Method) add(TrialText::tr("Crossed over"), yesOrNo(trial.isCrossedOver));
    if (trial.factor) add(TrialText::tr("Arms told before the horizon"), yesOrNo(!trial.isBlinded));
    if (trial.allocationSeed) add(TrialText::tr("Dealt by chance with seed"), QString::number(*trial.allocationSeed));
    return facts;
}

QString changeWords(const core::TrialChange& change) {
    return TrialText::tr("%1: %2, %3 before, %4 after. Reason: %5", "date, what, before, after, reason")
        .arg(plot::dateText(change.changedOn), QString::fromStdString(change.what), QString::fromStdString(change.was),
             QString::fromStdString(change.became), QString::fromStdString(change.reason));
}

QString notBeforeWords(const core::TrialProgress& progress) {
    const QString day = plot::dayText(progress.horizonDay);
    if (progress.decidedOn)
        return TrialText::tr("Not before %1, %2 of the batch stuck last.", "date, day")
            .arg(plot::dateText(*progress.decidedOn), day);
    if (progress.stage == core::TrialStage::Sticking || progress.stage == core::TrialStage::Planned)
        return TrialText::tr("Not before %1 of the batch stuck last, and not all are stuck yet.", "day").arg(day);
    return TrialText::tr("Not before a batch is stuck for it and is at %1.", "day").arg(day);
}

Table countsTable(const std::vector<core::ArmCounts>& arms, bool isByBlock) {
    Table table;
    table.headings = {TrialText::tr("Arm"),       TrialText::tr("batches"),  TrialText::tr("to stick"),
                      TrialText::tr("stuck"),     TrialText::tr("rooted"),   TrialText::tr("lost"),
                      TrialText::tr("withdrawn"), TrialText::tr("undecided")};
    if (isByBlock) table.headings.prepend(TrialText::tr("Block"));
    table.aligned.assign(static_cast<std::size_t>(table.headings.size()), Align::Right);
    for (int column = 0; column < (isByBlock ? 2 : 1); ++column)
        table.aligned[static_cast<std::size_t>(column)] = Align::Left;
    table.mayBeShortened = isByBlock;
    for (const core::ArmCounts& counts : arms) {
        QStringList row{QString::fromStdString(counts.name),
                        TrialText::tr("%1 of %2", "batches stuck of those dealt")
                            .arg(plot::countText(counts.batchesStuck),
                                 plot::countText(std::max(counts.batchesDealt, counts.batchesStuck))),
                        plot::countText(std::max(0, counts.dealt - counts.stuck))};
        for (const int count : {counts.stuck, counts.rooted, counts.lost, counts.withdrawn, counts.undecided})
            row << plot::countText(count);
        if (isByBlock) row.prepend(QString::fromStdString(counts.block));
        table.rows.push_back(row);
    }
    return table;
}

}  // namespace report
