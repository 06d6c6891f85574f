// SPDX-License-Identifier: MIT
// What must hold of every figure, at every size, in every palette.
#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QSize>
#include <functional>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "app/plot/cost_parts_figure.h"
#include "app/plot/difference_figure.h"
#include "app/plot/dose_figure.h"
#include "app/plot/figure_font.h"
#include "app/plot/forest_figure.h"
#include "app/plot/goes_with_figure.h"
#include "app/plot/loss_by_month_figure.h"
#include "app/plot/loss_by_station_figure.h"
#include "app/plot/loss_pareto_figure.h"
#include "app/plot/number_text.h"
#include "app/plot/palette.h"
#include "app/plot/rooted_by_day_figure.h"
#include "app/plot/save_figure.h"
#include "app/plot/speed_figure.h"
#include "app/plot/strike_chart_figure.h"
#include "app/plot/strike_plane_figure.h"
#include "app/plot/strike_rate_figure.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/plot/comparison_examples.h"
#include "tests/plot/loss_examples.h"
#include "tests/plot/more_examples.h"
#include "tests/plot/worth_examples.h"

namespace {

struct Case {
    std::string name;
    std::shared_ptr<const plot::Figure> figure;
};

void addAll(std::vector<Case>& cases, const std::string& name, const core::Comparison& comparison) {
    cases.push_back({name + ", rooted by day", plot::rootedByDayFigure(comparison)});
    cases.push_back({name + ", strike rates", plot::strikeRateFigure(comparison)});
    cases.push_back({name + ", forest", plot::forestFigure(comparison, 0)});
    cases.push_back({name + ", difference", plot::differenceFigure(comparison, 0)});
    cases.push_back({name + ", speeds", plot::speedFigure(examples::withSpeeds(comparison))});
    cases.push_back({name + ", no speeds", plot::speedFigure(comparison)});
}

void addDoses(std::vector<Case>& cases) {
    for (const auto& [name, series] :
         {std::pair("doses", examples::doseSeries()), std::pair("two doses", examples::twoDoses()),
          std::pair("endless doses", examples::endlessDoses()), std::pair("crowded doses", examples::crowdedDoses()),
          std::pair("no doses", core::DoseSeries{})})
        cases.push_back({name, plot::doseFigure(series, 0.95)});
}

void addRecordsOfMany(std::vector<Case>& cases) {
    for (const int count : {0, 1, 3, 12, 40})
        cases.push_back(
            {std::to_string(count) + " associations", plot::goesWithFigure(examples::goesWith(count), 0.95)});
    for (const int count : {0, 1, 2, 12, 40}) {
        const core::StrikeChart chart = examples::strikeChart(count);
        const QString last = count > 0 ? QString::fromStdString(chart.batches.back().code) : QString();
        cases.push_back({std::to_string(count) + " batches", plot::strikeChartFigure(chart, last)});
        cases.push_back({std::to_string(count) + " batches, none of them chosen", plot::strikeChartFigure(chart, {})});
    }
    cases.push_back({"fourteen batches with a turn",
                     plot::strikeChartFigure(examples::strikeChart(14), {}, examples::turningPoint())});
}

void addCosts(std::vector<Case>& cases) {
    const auto add = [&cases](const std::string& name, std::vector<core::WorthOfMethod> methods, bool hasPlants) {
        cases.push_back(
            {name, plot::costPartsFigure(
                       {.methods = std::move(methods), .hasPlants = hasPlants, .currency = "EUR", .level = 0.95})});
    };
    add("two methods, costs", examples::worthOfTwoMethods().methods, false);
    add("no methods, costs", {}, false);
    add("none rooted, costs", {examples::noneRooted(), examples::notPriced()}, false);
    for (const int plants : {1, 4, 20})
        add(std::to_string(plants) + " plants, costs", examples::worthByPlant(plants), true);
    core::WorthOfPair pair = examples::worthOfTwoMethods().pairs.front();
    cases.push_back({"plane", plot::strikePlaneFigure(pair, 0.95)});
    pair.dear.name = "a tub of aerated water under two lamps in the cellar, the old pump";
    pair.line = {.dear = 5, .cheap = 0.2, .shift = 0};
    cases.push_back({"steep plane", plot::strikePlaneFigure(pair, 0.95)});
    pair.line = {.dear = 0.4, .cheap = 0.4, .shift = 0.5};
    cases.push_back({"flat plane", plot::strikePlaneFigure(pair, 0.95)});
    pair.cheap = examples::notPriced();
    cases.push_back({"no plane", plot::strikePlaneFigure(pair, 0.95)});
}

void addLosses(std::vector<Case>& cases) {
    for (const auto& [name, losses] :
         {std::pair("losses", examples::losses(4, 6, 3)), std::pair("one loss", examples::losses(1, 1, 1)),
          std::pair("many losses", examples::losses(14, 40, 20)), std::pair("nothing lost", examples::nothingLost()),
          std::pair("nothing stood", core::Losses{})})
        for (const auto& figure :
             {plot::lossParetoFigure(losses), plot::lossByMonthFigure(losses), plot::lossByStationFigure(losses)})
            cases.push_back({std::string(name) + ": " + figure->sentence().toStdString(), figure});
}

core::Comparison singleLook() {
    core::Comparison comparison = examples::oneStationEach();
    for (core::Arm& arm : comparison.arms) {
        arm.rootedByDay.resize(1), arm.lostByDay.resize(1), arm.looks.resize(1);
    }
    return comparison;
}

core::Comparison manyLooks() {
    std::vector<int> rooted, lost;
    for (int week = 0; week < 60; ++week) rooted.push_back(2 * week), lost.push_back(week / 2);
    core::Comparison comparison = examples::twoMethods(3);
    comparison.arms[0] = examples::weeklyArm("media tray", 400, rooted, lost);
    return comparison;
}

core::Comparison largeCounts() {
    core::Comparison comparison = examples::manyArms(5);
    for (core::Arm& arm : comparison.arms) {
        arm.stuck = 98765;
        for (core::LookCounts& look : arm.looks)
            look = {.day = look.day, .waiting = 45678, .rooted = 34567, .lost = 18520};
    }
    return comparison;
}

const std::vector<Case>& allCases() {
    static const std::vector<Case> all = [] {
        std::vector<Case> cases;
        addAll(cases, "two methods", examples::twoMethods());
        addAll(cases, "one plant", examples::twoMethods(1));
        addAll(cases, "twelve plants", examples::twoMethods(12));
        addAll(cases, "one station each", examples::oneStationEach());
        addAll(cases, "eight arms", examples::manyArms(8));
        addAll(cases, "long names", examples::longNames());
        addAll(cases, "nothing", examples::nothing());
        addAll(cases, "never checked", examples::neverChecked());
        addAll(cases, "a single look", singleLook());
        addAll(cases, "sixty looks", manyLooks());
        addAll(cases, "large counts", largeCounts());
        cases.push_back({"one batch", plot::rootedByDayFigure(examples::batchSummary(), QStringLiteral("B260047K"))});
        cases.push_back({"a new batch", plot::rootedByDayFigure(core::BatchSummary{}, QStringLiteral("B260048N"))});
        addDoses(cases);
        addRecordsOfMany(cases);
        addLosses(cases);
        addCosts(cases);
        return cases;
    }();
    return all;
}

plot::Drawing paintedAt(const plot::Figure& figure, const QSize& size) {
    QImage image(size, QImage::Format_RGB32);
    image.setDotsPerMeterX(3780);
    image.setDotsPerMeterY(3780);
    QPainter painter(&image);
    painter.setFont(plot::figureFont(9));
    return figure.paint(painter, QRectF(8, 8, size.width() - 16, size.height() - 16), plot::Palette::light());
}

const std::vector<QSize>& sizes() {
    // From the smallest that is promised to A4 across at 96 dots an inch.
    static const std::vector<QSize> all{{600, 300}, {760, 420}, {900, 640}, {1123, 794}, {640, 900}};
    return all;
}

}  // namespace

TEST(Figures, KeepEveryTextInsideTheirArea) {
    for (const Case& one : allCases())
        for (const QSize& size : sizes()) {
            SCOPED_TRACE(testing::Message() << one.name << " at " << size.width() << " x " << size.height());
            for (const plot::DrawnText& text : paintedAt(*one.figure, size).texts)
                EXPECT_TRUE(QRectF(0, 0, size.width(), size.height()).contains(text.area)) << text.text.toStdString();
        }
}

TEST(Figures, NeverLetTwoTextsOverlap) {
    constexpr double hair = 0.5;  // pixels: neighbouring lines may touch
    for (const Case& one : allCases())
        for (const QSize& size : sizes()) {
            const plot::Drawing drawing = paintedAt(*one.figure, size);
            for (std::size_t i = 0; i < drawing.texts.size(); ++i)
                for (std::size_t j = i + 1; j < drawing.texts.size(); ++j) {
                    const QRectF shared = drawing.texts[i].area.intersected(drawing.texts[j].area);
                    // Line boxes hold leading; what may not meet are the inked middles.
                    EXPECT_FALSE(shared.width() > hair && shared.height() > 3)
                        << one.name << " at " << size.width() << " x " << size.height() << ": "
                        << drawing.texts[i].text.toStdString() << " | " << drawing.texts[j].text.toStdString();
                }
        }
}

TEST(Figures, SayWhatTheyShowInASentenceWithoutPlaceholders) {
    static const QRegularExpression placeholder(QStringLiteral("%[0-9n]"));
    for (const Case& one : allCases()) {
        EXPECT_FALSE(one.figure->sentence().isEmpty()) << one.name;
        EXPECT_FALSE(one.figure->sentence().contains(placeholder)) << one.figure->sentence().toStdString();
        EXPECT_FALSE(one.figure->method().contains(placeholder)) << one.figure->method().toStdString();
        for (const plot::DrawnText& text : paintedAt(*one.figure, {900, 640}).texts)
            EXPECT_FALSE(text.text.contains(placeholder)) << text.text.toStdString();
    }
}

TEST(Figures, GiveTablesWhoseRowsAreAsLongAsTheirHeadings) {
    for (const Case& one : allCases()) {
        const plot::FigureTable table = one.figure->table();
        EXPECT_EQ(table.title, one.figure->sentence()) << one.name;
        EXPECT_FALSE(table.headings.isEmpty()) << one.name;
        for (const QStringList& row : table.rows) EXPECT_EQ(row.size(), table.headings.size()) << one.name;
    }
}

TEST(Figures, SaySoInThePictureWhenThereIsNothingToPlot) {
    for (const core::Comparison& comparison : {examples::nothing(), examples::neverChecked()})
        for (const auto& figure : {plot::rootedByDayFigure(comparison), plot::forestFigure(comparison, 0),
                                   plot::differenceFigure(comparison, 0)}) {
            const plot::Drawing drawing = paintedAt(*figure, {600, 300});
            EXPECT_EQ(figure->table().rows.size(), 0U) << figure->sentence().toStdString();
            EXPECT_GE(drawing.texts.size(), 2U) << "title and reason: " << figure->sentence().toStdString();
        }
}

TEST(Figures, DontMindAPairThatIsNotThere) {
    for (const int pair : {-1, 1, 99}) {
        EXPECT_TRUE(plot::forestFigure(examples::twoMethods(), pair)->table().rows.empty());
        EXPECT_TRUE(plot::differenceFigure(examples::twoMethods(), pair)->table().rows.empty());
    }
}

TEST(DifferenceFigure, ShowsWithTheSpreadWhatItsIntervalIsAbout) {
    core::Comparison comparison = examples::twoMethods();
    core::PairDifference& difference = *comparison.pairs.front().difference;
    difference.value = 0.10;
    difference.ofBatches = -0.25;
    difference.withSpread = core::Limits{.low = -0.40, .high = -0.10};
    const auto figure = plot::differenceFigure(comparison, 0);
    ASSERT_EQ(figure->table().rows.size(), 2U);
    EXPECT_EQ(figure->table().rows[0][1], plot::decimalText(10, 1));
    EXPECT_EQ(figure->table().rows[1][1], plot::decimalText(-25, 1));
    EXPECT_TRUE(figure->sentence().contains(plot::differenceText(-0.25))) << figure->sentence().toStdString();
}

TEST(Figures, GiveNonEmptyFilesOfEachKind) {
    const auto figure = plot::rootedByDayFigure(examples::twoMethods());
    EXPECT_TRUE(plot::figureBytes(*figure, plot::FigureFile::Pdf).startsWith("%PDF"));
    EXPECT_TRUE(plot::figureBytes(*figure, plot::FigureFile::Png).startsWith("\x89PNG"));
    EXPECT_TRUE(plot::figureBytes(*figure, plot::FigureFile::Svg).contains("<svg"));
    EXPECT_TRUE(plot::figureBytes(*figure, plot::FigureFile::Csv).startsWith("Arm,Stuck,Day"));
}

TEST(Figures, ShowTheSameFiguresInSvgAsInTheirTable) {
    const auto figure = plot::forestFigure(examples::twoMethods(), 0);
    const QString svg = QString::fromUtf8(plot::figureBytes(*figure, plot::FigureFile::Svg));
    for (const QStringList& row : figure->table().rows)
        EXPECT_TRUE(svg.contains(row[1] + QStringLiteral(" of ") + row[2])) << row.join(u' ').toStdString();
}

TEST(Figures, FollowThePalette) {
    const auto figure = plot::strikeRateFigure(examples::twoMethods());
    const QImage light = plot::figureImage(*figure, {600, 300}, 1, plot::Palette::light());
    const QImage dark = plot::figureImage(*figure, {600, 300}, 1, plot::Palette::dark());
    EXPECT_EQ(light.pixelColor(1, 1), plot::Palette::light().paper);
    EXPECT_EQ(dark.pixelColor(1, 1), plot::Palette::dark().paper);
}

TEST(RootedByDayFigure, DrawsLossesBelowAndCountsUnderTheAxis) {
    QStringList texts;
    for (const plot::DrawnText& text : paintedAt(*plot::rootedByDayFigure(examples::twoMethods()), {900, 640}).texts)
        texts << text.text;
    EXPECT_TRUE(texts.contains(QStringLiteral("lost, of those stuck")));
    EXPECT_EQ(texts.count(QStringLiteral("waiting")), 2);
    EXPECT_TRUE(texts.contains(QStringLiteral("horizon, day 28")));
}

TEST(RootedByDayFigure, KeepsLossesAndCountsInTheSmallestSize) {
    QStringList texts;
    for (const plot::DrawnText& text : paintedAt(*plot::rootedByDayFigure(examples::twoMethods()), {600, 300}).texts)
        texts << text.text;
    EXPECT_TRUE(texts.contains(QStringLiteral("lost, of those stuck")));
    EXPECT_TRUE(texts.contains(QStringLiteral("waiting / rooted / lost")));
}

TEST(RootedByDayFigure, TellsTheFiguresNearTheMouse) {
    const plot::Drawing drawing = paintedAt(*plot::rootedByDayFigure(examples::twoMethods()), {900, 640});
    ASSERT_FALSE(drawing.hints.empty());
    EXPECT_THAT(drawing.hints.back().text.toStdString(), testing::HasSubstr("day 28"));
    EXPECT_THAT(drawing.hints.back().text.toStdString(), testing::HasSubstr("media tray"));
}

TEST(ForestFigure, SaysHowManyPlantsDidNotFit) {
    QString words;
    for (const plot::DrawnText& text : paintedAt(*plot::forestFigure(examples::twoMethods(12), 0), {600, 300}).texts)
        words += text.text + u'\n';
    EXPECT_TRUE(words.contains(QStringLiteral("more, in the table of figures"))) << words.toStdString();
}

TEST(ForestFigure, SaysWhetherThePlantsAgree) {
    core::Comparison comparison = examples::twoMethods();
    const auto words = [&] {
        QString all;
        for (const plot::DrawnText& text : paintedAt(*plot::forestFigure(comparison, 0), {900, 640}).texts)
            all += text.text;
        return all.toStdString();
    };
    EXPECT_THAT(words(), testing::HasSubstr("As far as these counts can tell, yes"));
    comparison.pairs[0].pooled.agreementP = 0.02;
    EXPECT_THAT(words(), testing::HasSubstr("read each line by itself"));
}

TEST(DifferenceFigure, PrintsTheCautionInThePicture) {
    QString words;
    for (const plot::DrawnText& text :
         paintedAt(*plot::differenceFigure(examples::oneStationEach(), 0), {760, 300}).texts)
        words += text.text;
    EXPECT_TRUE(words.contains(QStringLiteral("cannot be told apart"))) << words.toStdString();
}
