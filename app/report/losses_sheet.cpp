// SPDX-License-Identifier: MIT
#include "app/report/losses_sheet.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/plot/goes_with_figure.h"
#include "app/plot/loss_by_month_figure.h"
#include "app/plot/loss_by_station_figure.h"
#include "app/plot/loss_pareto_figure.h"
#include "app/plot/number_text.h"
#include "app/plot/rare_text.h"
#include "app/report/losses_words.h"
#include "app/report/sheet_words.h"

namespace report {
namespace {

constexpr double kAroundRows = 30, kPerLossRow = 6.5, kTallestRows = 150;  // millimetres
constexpr double kMonthsHeight = 62, kLossChartHeight = 75;

double heightOf(std::size_t rows) {
    return std::min(kTallestRows, kAroundRows + kPerLossRow * static_cast<double>(rows));
}

class LossesSheetMaker {
    Q_DECLARE_TR_FUNCTIONS(LossesSheet)

  public:
    LossesSheetMaker(const LossesAnswer& answer, const LossesPaper& paper, const core::Shelves& shelves)
        : answer_(answer), paper_(paper), shelves_(shelves) {}

    Sheet make(const QDateTime& printedAt) {
        sheet_ = sheetFor(shelves_.facts, printedAt);
        sheet_.title = tr("Losses");
        sheet_.subtitle = subtitle();
        say(QString::fromStdString(answer_.losses.inWords), Tone::Answer);
        say(coveredText(answer_.losses), Tone::Plain);
        addUnusual();
        addLosses();
        addChart();
        addGoesWith();
        sheet_.blocks.emplace_back(Heading{tr("How this was worked out")});
        say(tr("A loss counts on the day of the check that found it. Stood: cuttings undecided when the time began, or "
               "stuck in it. A batch is out of the ordinary where so few rooted by the day of its last look, given the "
               "earlier batches of its plant and method and the spread between batches, would be rarer by luck than "
               "the rate of false alarms in Settings."),
            Tone::Quiet);
        return std::move(sheet_);
    }

  private:
    void say(const QString& text, Tone tone) {
        if (!text.isEmpty()) sheet_.blocks.emplace_back(Paragraph{text, tone});
    }

    QString subtitle() const {
        const core::Plant* plant = core::find(shelves_.plants, answer_.question.plant);
        const core::Method* method = core::find(shelves_.methods, answer_.question.method);
        return tr("%1; %2; %3", "span, plant, method")
            .arg(paper_.span, plant == nullptr ? tr("all plants") : QString::fromStdString(core::fullName(*plant)),
                 method == nullptr ? tr("all methods") : QString::fromStdString(method->name));
    }

    void addUnusual() {
        sheet_.blocks.emplace_back(Heading{tr("Out of the ordinary")});
        say(unusualText(answer_, shelves_.facts.falseAlarmRate), Tone::Plain);
        if (!answer_.unusual.empty()) sheet_.blocks.emplace_back(unusualTable(answer_.unusual, shelves_));
    }

    void addLosses() {
        const core::Losses& losses = answer_.losses;
        if (losses.rows.empty()) return;
        sheet_.blocks.emplace_back(Heading{tr("Lost to what, when and where")});
        sheet_.blocks.emplace_back(Picture{plot::lossParetoFigure(losses), heightOf(losses.rows.size())});
        sheet_.blocks.emplace_back(Picture{plot::lossByMonthFigure(losses), kMonthsHeight});
        sheet_.blocks.emplace_back(Picture{plot::lossByStationFigure(losses), heightOf(losses.stations.size())});
    }

    void addChart() {
        if (!paper_.chart || paper_.chartFigure == nullptr) return;
        sheet_.blocks.emplace_back(Heading{tr("Batch by batch: %1").arg(chartName(*paper_.chart, shelves_))});
        say(paper_.chartWords, Tone::Plain);
        sheet_.blocks.emplace_back(Picture{paper_.chartFigure, kLossChartHeight});
    }

    void addGoesWith() {
        const core::GoesWith& goesWith = answer_.goesWith;
        sheet_.blocks.emplace_back(Heading{tr("What went with rooting")});
        say(goesWithText(goesWith), Tone::Plain);
        if (!goesWith.associations.empty())
            sheet_.blocks.emplace_back(
                Picture{plot::goesWithFigure(goesWith, answer_.losses.level), heightOf(goesWith.associations.size())});
    }

    const LossesAnswer& answer_;
    const LossesPaper& paper_;
    const core::Shelves& shelves_;
    Sheet sheet_;
};

struct UnusualWords {
    Q_DECLARE_TR_FUNCTIONS(LossesSheet)
};

}  // namespace

Sheet lossesSheet(const LossesAnswer& answer, const LossesPaper& paper, const core::Shelves& shelves,
                  const QDateTime& printedAt) {
    return LossesSheetMaker(answer, paper, shelves).make(printedAt);
}

Table unusualTable(const std::vector<core::UnusualBatch>& unusual, const core::Shelves& shelves) {
    Table table{
        .title = {},
        .headings = {UnusualWords::tr("Batch"), UnusualWords::tr("plant"), UnusualWords::tr("method"),
                     UnusualWords::tr("stuck on"), UnusualWords::tr("rooted"), UnusualWords::tr("expected"),
                     UnusualWords::tr("by luck")},
        .aligned = {Align::Left, Align::Left, Align::Left, Align::Right, Align::Right, Align::Right, Align::Right},
        .rows = {},
        .mayBeShortened = true,
        .plantColumn = 1,
        .breaksPlantNames = true,
        .wholeColumns = {0}};
    for (const core::UnusualBatch& batch : unusual) {
        const core::Plant* plant = core::find(shelves.plants, batch.plant);
        const core::Method* method = core::find(shelves.methods, batch.method);
        table.rows.push_back({QString::fromStdString(batch.code),
                              plant == nullptr ? QString() : QString::fromStdString(core::fullName(*plant)),
                              method == nullptr ? QString() : QString::fromStdString(method->name),
                              plot::shortDateText(batch.stuckOn), rootedText(batch.against),
                              plot::decimalText(batch.against.expected, 1),
                              plot::oneInText(batch.against.chanceOfSoFew)});
    }
    return table;
}

}  // namespace report
