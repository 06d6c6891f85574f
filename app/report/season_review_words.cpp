// SPDX-License-Identifier: MIT
#include "app/report/season_review_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "app/plot/arm_words.h"
#include "app/plot/cost_text.h"
#include "app/plot/number_text.h"

namespace report {
namespace {

using plot::countText;
using plot::textOf;

struct ReviewWords {
    Q_DECLARE_TR_FUNCTIONS(SeasonReview)
};

Table reviewTable(const QStringList& headings, int leftColumns) {
    Table table{.title = {}, .headings = headings, .aligned = {}, .rows = {}};
    table.aligned.assign(static_cast<std::size_t>(headings.size()), Align::Right);
    std::fill_n(table.aligned.begin(), leftColumns, Align::Left);
    return table;
}

QString yearText(core::Date day) {
    return QString::number(static_cast<int>(day.year()));
}

QString periodText(const core::ReviewMonth& period) {
    if (period.from.month() != period.until.month() || period.from.year() != period.until.year())
        return yearText(period.from);
    const auto month = static_cast<int>(static_cast<unsigned>(period.from.month()));
    return ReviewWords::tr("%1 %2", "month, year").arg(QLocale().standaloneMonthName(month), yearText(period.from));
}

QStringList countCells(const QString& name, const core::ReviewCounts& counts) {
    QStringList cells{name};
    for (const int count :
         {counts.batches, counts.stuck, counts.rooted, counts.lost, counts.withdrawn, counts.undecided})
        cells << countText(count);
    return cells;
}

QString limitsOf(const std::optional<core::Limits>& limits, const QString& otherwise) {
    return limits ? plot::limitsText(*limits) : otherwise;
}

QStringList bestCells(const core::PlantInReview& plant) {
    const core::BestMethod& best = plant.best;
    const QString none = QStringLiteral("–");
    QStringList cells{textOf(plant.name)};
    if (best.method < 0) return cells << none << none << none << none << none << howSureText(best.sure);
    const core::Arm& arm = plant.methods[static_cast<std::size_t>(best.method)];
    cells << plot::nameOf(arm) << countText(arm.batches) << plot::rateText(arm)
          << limitsOf(arm.withSpread, ReviewWords::tr("one batch"));
    cells << (best.chanceAhead ? plot::chanceText(*best.chanceAhead) : none);
    return cells << howSureText(best.sure);
}

}  // namespace

QString spanText(core::Date from, core::Date until) {
    using std::chrono::December, std::chrono::January;
    if (from == core::Date(from.year() / January / 1) && until == core::Date(from.year() / December / 31))
        return yearText(from);
    return ReviewWords::tr("%1 to %2", "the first and the last day of a span")
        .arg(plot::dateText(from), plot::dateText(until));
}

Table reviewMonthsTable(const core::SeasonReview& review) {
    Table table = reviewTable(
        {ReviewWords::tr("Stuck in"), ReviewWords::tr("batches"), ReviewWords::tr("stuck"), ReviewWords::tr("rooted"),
         ReviewWords::tr("lost"), ReviewWords::tr("withdrawn"), ReviewWords::tr("undecided")},
        1);
    for (const core::ReviewMonth& month : review.months)
        table.rows.push_back(countCells(periodText(month), month.counts));
    if (table.rows.size() != 1) table.rows.push_back(countCells(ReviewWords::tr("All together"), review.counts));
    return table;
}

QString howSureText(core::HowSure sure) {
    switch (sure) {
        case core::HowSure::NothingKnown:
            return ReviewWords::tr("too few known");
        case core::HowSure::OneMethodOnly:
            return ReviewWords::tr("one method");
        case core::HowSure::CannotTell:
            return ReviewWords::tr("not told yet");
        case core::HowSure::BetterThanSome:
            return ReviewWords::tr("better than some");
        case core::HowSure::BetterThanAll:
            return ReviewWords::tr("better than the rest");
    }
    return {};
}

Table bestMethodsTable(const std::vector<core::PlantInReview>& plants, std::size_t most) {
    Table table = reviewTable({ReviewWords::tr("Plant"), ReviewWords::tr("highest rate"), ReviewWords::tr("batches"),
                               ReviewWords::tr("rooted of assessed"), ReviewWords::tr("with spread"),
                               ReviewWords::tr("chance that it is ahead"), ReviewWords::tr("how sure")},
                              2);
    table.aligned.back() = Align::Left;
    table.plantColumn = 0;
    table.breaksPlantNames = true;
    table.wholeColumns = {1};
    table.restColumn = 6;
    table.mostCellLines = 2;
    for (const core::PlantInReview& plant : plants)
        if (table.rows.size() < most) table.rows.push_back(bestCells(plant));
    return table;
}

Table unusualTable(const core::SeasonReview& review, const core::Shelves& shelves, std::size_t most) {
    Table table = reviewTable({ReviewWords::tr("Batch"), ReviewWords::tr("stuck on"), ReviewWords::tr("plant"),
                               ReviewWords::tr("method"), ReviewWords::tr("by day"), ReviewWords::tr("rooted"),
                               ReviewWords::tr("usual, nine times in ten"), ReviewWords::tr("earlier batches")},
                              4);
    table.wholeColumns = {0};
    table.plantColumn = 2;
    for (const core::UnusualBatch& batch : review.unusual) {
        if (table.rows.size() == most) break;
        const core::Plant* plant = core::find(shelves.plants, batch.plant);
        const core::Method* method = core::find(shelves.methods, batch.method);
        const core::AgainstThePast& against = batch.against;
        table.rows.push_back(
            {textOf(batch.code), plot::shortDateText(batch.stuckOn), plant ? textOf(core::fullName(*plant)) : QString(),
             method ? textOf(method->name) : QString(), countText(against.day),
             ReviewWords::tr("%1 of %2", "rooted, assessed").arg(countText(against.rooted), countText(against.of)),
             ReviewWords::tr("%1 to %2", "fewest, most")
                 .arg(countText(against.usualFewest), countText(against.usualMost)),
             countText(against.pastBatches)});
    }
    return table;
}

QStringList leftOutOfRates(const core::SeasonReview& review) {
    QStringList sentences;
    const auto say = [&](int batches, const QString& why) {
        if (batches > 0)
            sentences << ReviewWords::tr("In the sums, in no rate: %1 %2.", "batches, why")
                             .arg(plot::batchesText(batches), why);
    };
    say(review.youngBatches, ReviewWords::tr("not yet at the day of counting"));
    say(review.trialBatches,
        ReviewWords::tr("of trials that still go on: how their arms do is told at the trial's day, not before"));
    say(review.unwatchedBatches,
        ReviewWords::tr("with undecided cuttings that nobody looked at on the day of counting or after"));
    return sentences;
}

Table spentTable(const core::ReviewMoney& money, const std::string& currency) {
    Table table = reviewTable({ReviewWords::tr("Spent so far on"), ReviewWords::tr("batches"), {}}, 1);
    table.headings.back() = QString::fromStdString(currency);
    for (const core::CostPart part : core::allCostParts)
        if (money.spent.of(part) > 0)
            table.rows.push_back(
                {plot::capitalised(plot::costPartText(part)), QString(), plot::costAmount(money.spent.of(part))});
    table.rows.push_back({ReviewWords::tr("What was stuck in the span, all together"), countText(money.batches),
                          plot::costAmount(money.spent.total())});
    return table;
}

QString notPrintedText(std::size_t shown, std::size_t all) {
    if (all <= shown) return {};
    const auto more = static_cast<int>(all - shown);
    return more == 1 ? ReviewWords::tr("1 more is left out here.")
                     : ReviewWords::tr("%n more are left out here.", nullptr, more);
}

}  // namespace report
