// SPDX-License-Identifier: MIT
#include "app/report/worth_words.h"

#include <QCoreApplication>
#include <numeric>

#include "app/plot/arm_words.h"
#include "app/plot/cost_text.h"
#include "app/plot/number_text.h"

namespace report {
namespace {

struct WorthWords {
    Q_DECLARE_TR_FUNCTIONS(WorthWords)
};

QString noFigure() {
    return QStringLiteral("–");
}

QString dearOf(const core::WorthOfPair& pair) {
    return QString::fromStdString(pair.dear.name);
}

QString cheapOf(const core::WorthOfPair& pair) {
    return QString::fromStdString(pair.cheap.name);
}

QString perPlantText(const core::CostOfEach& cost, const core::CountedRate& rate, const QString& none) {
    if (cost.value) return plot::costOfEachText(cost);
    return rate.of > 0 && rate.succeeded == 0 ? plot::noneSucceededText(cost, none) : noFigure();
}

QString daysOf(const core::WorthOfMethod& method) {
    if (!method.medianDays) return noFigure();
    const QString days = plot::dayRangeText(*method.medianDays);
    if (!method.medianDaysLimits) return days;
    return WorthWords::tr("%1 (%2 to %3)", "when half have rooted, its interval")
        .arg(days, plot::decimalText(method.medianDaysLimits->low, 0),
             plot::decimalText(method.medianDaysLimits->high, 0));
}

QString usableOf(const core::WorthOfMethod& method) {
    if (!method.usable || method.usable->of == 0) return WorthWords::tr("not counted");
    return WorthWords::tr("%1 of %2, in %3", "usable of stuck, so many batches")
        .arg(plot::countText(method.usable->succeeded), plot::countText(method.usable->of),
             plot::batchesText(method.usable->batches));
}

QStringList worthRow(const core::WorthOfMethod& method, bool hasPlants) {
    QStringList row{QString::fromStdString(method.name)};
    if (hasPlants) row.prepend(QString::fromStdString(method.plantName));
    const bool isAssessed = method.strike.of > 0, isPriced = method.pricedBatches > 0;
    row << plot::countText(method.batches) << plot::countText(method.stuck)
        << (isAssessed ? plot::percentText(method.strike.rate, method.strike.succeeded, method.strike.of) : noFigure())
        << (isAssessed ? plot::limitsText(method.strike.limits) : noFigure())
        << (isPriced ? plot::costAmount(method.perCutting.total()) : noFigure())
        << (isPriced ? perPlantText(method.perRooted, method.strike, WorthWords::tr("none rooted")) : noFigure());
    const bool isCounted = method.usable && method.usable->of > 0;
    row << (isPriced && isCounted ? perPlantText(method.perUsable, *method.usable, WorthWords::tr("none usable"))
                                  : noFigure())
        << usableOf(method) << daysOf(method) << (isPriced ? plot::costAmount(method.upFront) : noFigure())
        << (isPriced ? plot::costAmount(method.perBatch) : noFigure()) << plot::countText(method.pricedBatches);
    return row;
}

QString paidOffSentence(const core::BreakEvenBatches& even, double level) {
    const QString name = QString::fromStdString(even.name);
    if (!even.middle)
        return WorthWords::tr("The chance that %1 ever pays for its own things is %2")
            .arg(name, plot::chanceText(even.chanceEver));
    const QString from = even.low ? plot::countText(*even.low) : noFigure();
    if (!even.high)
        return WorthWords::tr("The own things of %1 are paid for after %2; %3 interval from %4 to never")
            .arg(name, plot::batchesText(*even.middle), plot::levelText(level), from);
    return WorthWords::tr("The own things of %1 are paid for after %2; %3 interval %4 to %5")
        .arg(name, plot::batchesText(*even.middle), plot::levelText(level), from, plot::countText(*even.high));
}

QString paidOffMethod(const core::WorthOfPair& pair) {
    return WorthWords::tr(
               "From what a batch costs by each, what their own things cost up front, and what is known of the "
               "strike rates (%1: rooted %2 of %3, %4: %5 of %6). Days sooner are not counted.")
        .arg(dearOf(pair), plot::countText(pair.dear.strike.succeeded), plot::countText(pair.dear.strike.of),
             cheapOf(pair), plot::countText(pair.cheap.strike.succeeded), plot::countText(pair.cheap.strike.of));
}

QString ownerOf(const core::StoodEmpty& thing, const core::Shelves& shelves) {
    if (const core::Method* method = core::find(shelves.methods, thing.method))
        return QString::fromStdString(method->name);
    if (const core::Station* station = core::find(shelves.stations, thing.station))
        return QString::fromStdString(station->name);
    if (const core::Medium* medium = core::find(shelves.media, thing.medium))
        return QString::fromStdString(medium->name);
    if (const core::Treatment* treatment = core::find(shelves.treatments, thing.treatment))
        return QString::fromStdString(treatment->name);
    return WorthWords::tr("the whole bench");
}

}  // namespace

QString verdictHeadline(const core::WorthOfPair& pair) {
    switch (pair.verdict) {
        case core::WorthVerdict::NothingPriced:
            return WorthWords::tr("Not priced yet");
        case core::WorthVerdict::TooFew:
            return WorthWords::tr("Too few to tell");
        case core::WorthVerdict::CannotTellMethodFromStation:
            return WorthWords::tr("Method and station can\u2019t be told apart");
        case core::WorthVerdict::CannotTellYet:
            return WorthWords::tr("It can\u2019t be told yet");
        case core::WorthVerdict::BetterAndCheaper:
            return WorthWords::tr("Better and cheaper: %1").arg(cheapOf(pair));
        case core::WorthVerdict::DearerPays:
            return WorthWords::tr("Worth it: %1").arg(dearOf(pair));
        case core::WorthVerdict::CheaperPays:
            return WorthWords::tr("Not worth it: %1").arg(dearOf(pair));
    }
    return {};
}

std::vector<core::WorthOfMethod> methodsToShow(const core::Worth& worth, int pair) {
    if (pair < 0 || pair >= static_cast<int>(worth.pairs.size())) return worth.methods;
    const core::WorthOfPair& shown = worth.pairs[static_cast<std::size_t>(pair)];
    if (shown.plants.empty()) return worth.methods;
    return {shown.dear, shown.cheap};
}

QString pairText(const core::WorthOfPair& pair) {
    return WorthWords::tr("%1 against %2").arg(dearOf(pair), cheapOf(pair));
}

plot::FigureTable worthTable(const std::vector<core::WorthOfMethod>& methods, bool hasPlants, double level,
                             const std::string& currency) {
    const QString money = QString::fromStdString(currency), interval = plot::levelText(level);
    plot::FigureTable table{.title = {}, .headings = {WorthWords::tr("Method")}, .rows = {}};
    if (hasPlants) table.headings.prepend(WorthWords::tr("Plant"));
    table.headings << WorthWords::tr("Batches") << WorthWords::tr("Stuck") << WorthWords::tr("Strike rate")
                   << WorthWords::tr("%1 interval", "level").arg(interval)
                   << WorthWords::tr("A cutting, %1", "currency").arg(money)
                   << WorthWords::tr("A rooted plant, %1", "currency").arg(money)
                   << WorthWords::tr("A usable plant, %1", "currency").arg(money) << WorthWords::tr("Usable of stuck")
                   << WorthWords::tr("Half rooted by") << WorthWords::tr("Up front, %1", "currency").arg(money)
                   << WorthWords::tr("A batch, %1", "currency").arg(money) << WorthWords::tr("Batches priced");
    for (const core::WorthOfMethod& method : methods) table.rows.push_back(worthRow(method, hasPlants));
    return table;
}

double sumOf(const std::vector<core::StoodEmpty>& things) {
    return std::accumulate(things.begin(), things.end(), 0.0,
                           [](double sum, const core::StoodEmpty& thing) { return sum + thing.amount; });
}

plot::FigureTable stoodEmptyTable(const std::vector<core::StoodEmpty>& things, const core::Shelves& shelves) {
    plot::FigureTable table{
        .title = {},
        .headings = {WorthWords::tr("What stood empty"), WorthWords::tr("Whose"), WorthWords::tr("Days or times"),
                     WorthWords::tr("Cost, %1", "currency").arg(QString::fromStdString(shelves.facts.currency))},
        .rows = {}};
    for (const core::StoodEmpty& thing : things)
        table.rows.push_back({QString::fromStdString(thing.what), ownerOf(thing, shelves), plot::countText(thing.days),
                              plot::costAmount(thing.amount)});
    return table;
}

plot::ChanceCurve paidOffCurve(const core::WorthOfPair& pair, const std::vector<core::ChanceAfter>& curve,
                               double level) {
    const core::BreakEvenBatches& even = *pair.breakEven;
    const QString name = QString::fromStdString(even.name);
    plot::ChanceCurve chances{
        .sentence = paidOffSentence(even, level),
        .method = paidOffMethod(pair),
        .numberCaption = WorthWords::tr("batches by %1").arg(name),
        .chanceCaption = WorthWords::tr("chance that the own things of %1 are paid for").arg(name),
        .points = {},
        .wanted = {},
        .answer = even.middle,
        .nothing = WorthWords::tr("Not worked out.")};
    for (const core::ChanceAfter& point : curve)
        chances.points.push_back({.number = point.batches, .chance = point.chance});
    return chances;
}

}  // namespace report
