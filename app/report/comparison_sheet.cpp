// SPDX-License-Identifier: MIT
#include "app/report/comparison_sheet.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cstddef>

#include "app/plot/difference_figure.h"
#include "app/plot/dose_figure.h"
#include "app/plot/forest_figure.h"
#include "app/plot/goes_with_figure.h"
#include "app/plot/number_text.h"
#include "app/plot/rooted_by_day_figure.h"
#include "app/plot/speed_figure.h"
#include "app/plot/strike_rate_figure.h"
#include "app/report/comparison_tables.h"
#include "app/report/several_arms_words.h"
#include "app/report/sheet_words.h"

namespace report {
namespace {

using plot::countText;

class ComparisonSheetMaker {
    Q_DECLARE_TR_FUNCTIONS(ComparisonSheet)

  public:
    ComparisonSheetMaker(const core::Comparison& comparison, const core::Shelves& shelves)
        : comparison_(comparison), shelves_(shelves) {}

    Sheet make(const QDateTime& printedAt) {
        sheet_ = sheetFor(shelves_.facts, printedAt);
        sheet_.title = tr("Head to head: %1").arg(factorText());
        sheet_.subtitle = tr("At day %1 (%2), intervals at %3")
                              .arg(countText(comparison_.horizonDay), QString::fromStdString(comparison_.horizonReason),
                                   plot::levelText(comparison_.level));
        addAnswer();
        if (comparison_.arms.empty()) return std::move(sheet_);
        addArms();
        addDifferences();
        sheet_.blocks.emplace_back(Heading{tr("How fast")});
        sheet_.blocks.emplace_back(Picture{plot::rootedByDayFigure(comparison_), 95});
        addSpeed();
        for (int pair = 0; pair < std::ssize(comparison_.pairs); ++pair) addPlants(pair);
        addDoses();
        addGoesWith();
        for (const core::Pair& pair : comparison_.pairs) addFigures(pair);
        sheet_.blocks.emplace_back(Heading{tr("How this was worked out")});
        sheet_.blocks.emplace_back(Paragraph{method(), Tone::Quiet});
        return std::move(sheet_);
    }

  private:
    QString factorText() const {
        switch (comparison_.factor) {
            case core::Factor::Method:
                return tr("methods");
            case core::Factor::Treatment:
                return tr("treatments");
            case core::Factor::Medium:
                return tr("media");
            case core::Factor::CuttingKind:
                return tr("kinds of cutting");
        }
        return {};
    }

    QString armName(int arm) const {
        return QString::fromStdString(comparison_.arms[static_cast<std::size_t>(arm)].name);
    }

    void addAnswer() {
        sheet_.blocks.emplace_back(Paragraph{QString::fromStdString(comparison_.inWords), Tone::Answer});
        for (const QString& caution : cautionsToPrint(comparison_.cautions, shelves_.facts))
            sheet_.blocks.emplace_back(Paragraph{caution, Tone::Caution});
    }

    Table armTable() const {
        Table table{.title = {},
                    .headings = {tr("Arm"), tr("batches"), tr("stations"), tr("stuck"), tr("rooted"), tr("lost"),
                                 tr("withdrawn"), tr("undecided"), tr("assessed"), tr("strike rate"),
                                 tr("half of stuck rooted")},
                    .aligned = {Align::Left},
                    .rows = {},
                    .mayBeShortened = false,
                    .plantColumn = -1};
        table.aligned.resize(static_cast<std::size_t>(table.headings.size()), Align::Right);
        for (const core::Arm& arm : comparison_.arms)
            table.rows.push_back({QString::fromStdString(arm.name), countText(arm.batches), countText(arm.stations),
                                  countText(arm.stuck), countText(arm.rooted), countText(arm.lost),
                                  countText(arm.withdrawn), countText(arm.undecided), countText(arm.assessed),
                                  arm.rate ? plot::shareText(*arm.rate) : QStringLiteral("–"),
                                  plot::dayRangeText(arm.ofStuck.p50)});
        return table;
    }

    void addArms() {
        constexpr double perArm = 7, around = 26;  // millimetres
        sheet_.blocks.emplace_back(Heading{tr("Strike rates")});
        sheet_.blocks.emplace_back(
            Picture{plot::strikeRateFigure(comparison_),
                    std::min(110.0, around + perArm * static_cast<double>(comparison_.arms.size()))});
        sheet_.blocks.emplace_back(armTable());
        if (comparison_.severalArms)
            sheet_.blocks.emplace_back(Paragraph{severalArmsText(*comparison_.severalArms), Tone::Plain});
        addLosses();
    }

    void addSpeed() {
        if (!hasSpeed()) return addWhyNoSpeed();
        constexpr double perArm = 14, around = 30, most = 150;  // millimetres
        sheet_.blocks.emplace_back(
            Picture{plot::speedFigure(comparison_),
                    std::min(most, around + perArm * static_cast<double>(comparison_.arms.size()))});
    }

    void addWhyNoSpeed() {
        QStringList reasons;
        for (const core::Arm& arm : comparison_.arms)
            if (!arm.speed.whyNot.empty())
                reasons << tr("%1: %2", "arm, reason")
                               .arg(QString::fromStdString(arm.name), QString::fromStdString(arm.speed.whyNot));
        if (reasons.isEmpty()) return;
        sheet_.blocks.emplace_back(
            Paragraph{tr("Who roots and how fast: no curve can be fitted. %1.").arg(reasons.join(QStringLiteral("; "))),
                      Tone::Plain});
    }

    void addDoses() {
        for (const core::DoseSeries& series : comparison_.doses) {
            sheet_.blocks.emplace_back(Heading{tr("Doses: %1").arg(QString::fromStdString(series.auxin))});
            sheet_.blocks.emplace_back(Paragraph{QString::fromStdString(series.inWords), Tone::Plain});
            sheet_.blocks.emplace_back(Picture{plot::doseFigure(series, comparison_.level), 85});
            sheet_.blocks.emplace_back(trendTable(series));
        }
    }

    void addGoesWith() {
        constexpr double perRow = 6, around = 34, most = 200;  // millimetres
        const core::GoesWith& answer = comparison_.goesWith;
        if (answer.inWords.empty()) return;
        sheet_.blocks.emplace_back(Heading{tr("What went with rooting")});
        sheet_.blocks.emplace_back(Paragraph{QString::fromStdString(answer.inWords), Tone::Plain});
        for (const std::string& name : answer.cannotBeTold)
            sheet_.blocks.emplace_back(
                Paragraph{tr("Left out, since it can't be told from the rest: %1.").arg(QString::fromStdString(name)),
                          Tone::Plain});
        for (const std::string& condition : answer.leftOut)
            sheet_.blocks.emplace_back(
                Paragraph{tr("Not looked at, since too few batches have it or leave room for it: %1.")
                              .arg(QString::fromStdString(condition)),
                          Tone::Plain});
        if (answer.associations.empty()) return;
        sheet_.blocks.emplace_back(
            Picture{plot::goesWithFigure(answer, comparison_.level),
                    std::min(most, around + perRow * static_cast<double>(answer.associations.size()))});
    }

    void addLosses() {
        QStringList lines;
        for (const core::Arm& arm : comparison_.arms) {
            QStringList parts;
            for (const core::LossByCause& loss : arm.losses)
                parts << tr("%1 %2", "cause, count").arg(QString::fromStdString(loss.cause), countText(loss.count));
            if (!parts.isEmpty())
                lines << tr("%1: %2", "arm, causes")
                             .arg(QString::fromStdString(arm.name), parts.join(QStringLiteral(", ")));
        }
        if (!lines.isEmpty())
            sheet_.blocks.emplace_back(
                Paragraph{tr("Losses by cause. %1.").arg(lines.join(QStringLiteral("; "))), Tone::Plain});
    }

    const core::Pair& pairOf(int index) const { return comparison_.pairs[static_cast<std::size_t>(index)]; }

    QString namesOf(const core::Pair& pair) const {
        return tr("%1 against %2").arg(armName(pair.first), armName(pair.second));
    }

    void addDifferences() {
        if (comparison_.pairs.empty()) return;
        sheet_.blocks.emplace_back(Heading{tr("How sure")});
        for (int index = 0; index < std::ssize(comparison_.pairs); ++index) {
            if (comparison_.pairs.size() > 1)
                sheet_.blocks.emplace_back(Paragraph{QString::fromStdString(pairOf(index).inWords), Tone::Plain});
            sheet_.blocks.emplace_back(Picture{plot::differenceFigure(comparison_, index), 50});
        }
    }

    void addPlants(int index) {
        const core::Pair& pair = pairOf(index);
        if (!pair.difference || pair.bySpecies.empty()) return;
        constexpr double perPlant = 5.5, around = 36, most = 150;  // millimetres
        sheet_.blocks.emplace_back(Heading{tr("For which plants: %1").arg(namesOf(pair))});
        sheet_.blocks.emplace_back(
            Picture{plot::forestFigure(comparison_, index),
                    std::min(most, around + perPlant * static_cast<double>(pair.bySpecies.size()))});
    }

    void addFigures(const core::Pair& pair) {
        if (!pair.difference) return;
        sheet_.blocks.emplace_back(Heading{tr("Figures: %1").arg(namesOf(pair))});
        sheet_.blocks.emplace_back(
            figuresOf(pair, armName(pair.first), armName(pair.second), comparison_.pairs.size() > 1));
    }

    QString method() const {
        QString text =
            tr("Rates are rooted of those assessed: cuttings whose fate at day %1 is known. Cuttings still undecided "
               "and those "
               "withdrawn before are counted and shown, not taken for failures. Intervals as counted take cuttings as "
               "independent; those with spread allow for batches that differ.")
                .arg(countText(comparison_.horizonDay));
        const core::Spread& spread = comparison_.spread;
        if (spread.isFromRecords)
            text += u' ' + tr("Likeness within batches: intra-class correlation %1, design effect %2, from %3.")
                               .arg(plot::decimalText(spread.intraclassCorrelation, 3),
                                    plot::decimalText(spread.designEffect, 2), plot::batchesText(spread.batches));
        text += u' ' + tr("Curves: nonparametric estimate for days known only to lie between two checks, losses as a "
                          "fate of their own.");
        if (hasSpeed())
            text += u' ' + tr("Who roots and how fast: a mixture of those that root, after a smooth curve of days, and "
                              "those that never do, lost ones among the latter.");
        if (!comparison_.doses.empty())
            text += u' ' + tr("Doses: logistic curve on the logarithm of the dose and its square, untreated cuttings "
                              "apart; Fieller's interval of its top.");
        if (!comparison_.goesWith.associations.empty())
            text += u' ' + tr("What went with rooting: Firth's logistic regression of all batches on everything "
                              "recorded, each interval widened by the spread between batches.");
        if (hasMargin())
            text += u' ' + tr("As good as: the interval of the difference against the margin set; what allows for the "
                              "spread decides.");
        return text;
    }

    bool hasSpeed() const {
        return std::any_of(comparison_.arms.begin(), comparison_.arms.end(),
                           [](const core::Arm& arm) { return !arm.speed.fits.empty(); });
    }
    bool hasMargin() const {
        return std::any_of(comparison_.pairs.begin(), comparison_.pairs.end(),
                           [](const core::Pair& pair) { return pair.firstAsGood || pair.secondAsGood; });
    }

    const core::Comparison& comparison_;
    const core::Shelves& shelves_;
    Sheet sheet_;
};

}  // namespace

Sheet comparisonSheet(const core::Comparison& comparison, const core::Shelves& shelves, const QDateTime& printedAt) {
    return ComparisonSheetMaker(comparison, shelves).make(printedAt);
}

}  // namespace report
