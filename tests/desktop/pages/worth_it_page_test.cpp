// SPDX-License-Identifier: MIT
#include "app/desktop/worth_it/worth_it_page.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/figures/figure_table_model.h"
#include "app/desktop/shelves/shelf_list.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/worth_it/prices_place.h"
#include "app/desktop/worth_it/worth_it_model.h"
#include "app/plot/cost_text.h"
#include "app/plot/figure_view.h"
#include "app/report/logbook_costs.h"
#include "app/report/sheet.h"
#include "app/report/worth_words.h"
#include "db/actions/price_actions.h"
#include "db/actions/records_actions.h"
#include "gmock/gmock.h"
#include "tests/desktop/pages/desk.h"
#include "tests/support/scratch_folder.h"

namespace {

using pages::named;
using testing::HasSubstr;

constexpr core::MethodId jar{303};
constexpr core::StationId sill{405};

core::BatchRecord inTheJar(int rooted) {
    core::BatchRecord record = support::aBatch().looked(28, {.rooted = rooted, .lost = 24 - rooted});
    record.batch.method = jar;
    record.batch.station = sill;
    return record;
}

core::Price priceOf(core::PriceKind kind, const std::string& what, std::int64_t tenThousandths) {
    core::Price price;
    price.kind = kind;
    price.what = what;
    price.tenThousandths = tenThousandths;
    price.from = core::addDays(support::stickingDay(), -30);
    return price;
}

core::Price pump(std::int64_t tenThousandths = 3'000'000) {
    core::Price price = priceOf(core::PriceKind::Lasting, "air pump", tenThousandths);
    price.method = support::aeratedWater;
    price.lastsYears = 3;
    return price;
}

core::Price gel() {
    core::Price price = priceOf(core::PriceKind::UsedUp, "rooting gel", 50'000);
    price.basis = core::PriceBasis::Cutting;
    price.lastsFor = 100;
    return price;
}

core::Price power() {
    core::Price price = priceOf(core::PriceKind::Electricity, "air pump", 0);
    price.method = support::aeratedWater;
    price.watts = 5;
    price.hoursADay = 24;
    return price;
}

class WorthIt : public pages::Desk {
  protected:
    void fillWith(std::vector<core::BatchRecord> batches) {
        core::Records records = support::recordsOf(std::move(batches));
        core::Method ofTheJar;
        ofTheJar.id = jar;
        ofTheJar.name = "jar on the sill";
        records.shelves.methods.push_back(ofTheJar);
        core::Station kitchen;
        kitchen.id = sill;
        kitchen.name = "kitchen sill";
        kitchen.method = jar;
        records.shelves.stations.push_back(kitchen);
        fill(records);
    }

    static std::vector<core::BatchRecord> twoMethods() {
        std::vector<core::BatchRecord> batches;
        for (const int rooted : {20, 22, 21})
            batches.push_back(support::aBatch().looked(14).looked(28, {.rooted = rooted, .lost = 24 - rooted}));
        batches.push_back(support::aBatch().at(support::tubSouth).looked(28, {.rooted = 19, .lost = 5}));
        for (const auto bench : {support::benchWest, support::benchEast, support::benchWest})
            batches.push_back(support::aBatch().at(bench).looked(28, {.rooted = 15, .lost = 9}));
        return batches;
    }

    void keep(const core::Price& price) {
        ASSERT_TRUE(
            workspace_.run([&](db::Logbook& logbook) { return db::keep(logbook, price, workspace_.today()); }).isDone);
    }

    void open() {
        page_ = std::make_unique<desktop::WorthItPage>(context());
        pages::show(*page_);
        page_->activated();
    }
    void openAnswered() {
        open();
        ASSERT_TRUE(pages::comesTrue([&] { return page_->sheet() != nullptr; }));
    }

    core::Worth expected(const core::WorthQuestion& question = {}) {
        const std::vector<core::BatchRecord> batches = logbook().batchRecords();
        const std::vector<core::Potting> pottings = logbook().allPottings();
        const core::CostsOfBatches costs = report::costsOfLogbook(logbook(), batches, workspace_.today());
        return core::worthIt(question, {.shelves = workspace_.shelves(),
                                        .batches = batches,
                                        .pottings = pottings,
                                        .costs = costs,
                                        .today = workspace_.today()})
            .value();
    }

    QString text(const char* label) { return named<QLabel>(*page_, label).text(); }
    std::string shownTable(const char* table) {
        QStringList cells;
        const QAbstractItemModel* model = named<QTableView>(*page_, table).model();
        for (int row = 0; row < model->rowCount(); ++row)
            for (int column = 0; column < model->columnCount(); ++column)
                cells << model->index(row, column).data().toString();
        return cells.join(u'|').toStdString();
    }

    std::unique_ptr<desktop::WorthItPage> page_;
};

TEST_F(WorthIt, SaysWhatToWriteDownFirstAndLeadsToThePrices) {
    fillWith(twoMethods());
    open();
    ASSERT_TRUE(pages::comesTrue([&] { return text("worthEmptyTitle") == QStringLiteral("No prices yet"); }));
    EXPECT_TRUE(text("worthEmptyText").contains(QStringLiteral("the years that it lasts")));
    EXPECT_EQ(page_->sheet(), nullptr);
    const QSignalSpy wanted(page_.get(), &desktop::Page::placeWanted);
    named<QPushButton>(*page_, "worthEmptyPrices").click();
    ASSERT_EQ(wanted.count(), 1);
    EXPECT_EQ(wanted[0][0].value<desktop::Place>(), desktop::pricesPlace());
    EXPECT_EQ(desktop::allShelves().at(static_cast<std::size_t>(desktop::pricesPlace().id)).word,
              QStringLiteral("prices"));
}

TEST_F(WorthIt, SaysThatNothingIsStuckYet) {
    open();
    EXPECT_TRUE(
        pages::comesTrue([&] { return text("worthEmptyTitle") == QStringLiteral("Nothing to reckon with yet"); }));
}

TEST_F(WorthIt, ShowsTheVeryVerdictAndFiguresOfTheSums) {
    fillWith(twoMethods());
    keep(pump());
    keep(gel());
    openAnswered();
    const pages::Obeys rules(named<QTableView>(*page_, "worthMethods").model());
    const core::Worth worth = expected();
    ASSERT_EQ(worth.pairs.size(), 1U);
    EXPECT_EQ(text("worthInWords"), QString::fromStdString(worth.pairs[0].inWords));
    EXPECT_EQ(text("worthHeadline"), report::verdictHeadline(worth.pairs[0]));
    for (const std::string& caution : worth.cautions)
        EXPECT_THAT(text("worthCautions").toStdString(), HasSubstr(caution));
    const plot::FigureTable table = report::worthTable(worth.methods, false, worth.level, "EUR");
    for (const QStringList& row : table.rows)
        EXPECT_THAT(shownTable("worthMethods"), HasSubstr(row.join(u'|').toStdString()));
    EXPECT_THAT(shownTable("worthMethods"), HasSubstr(plot::costAmount(300).toStdString())) << "up front";
    for (const char* figure : {"costPartsFigure", "strikePlaneFigure", "plantCostPartsFigure"})
        EXPECT_FALSE(named<desktop::FigurePanel>(*page_, figure).table()->table().rows.empty()) << figure;
    ASSERT_TRUE(worth.pairs[0].breakEven.has_value());
    EXPECT_TRUE(named<desktop::FigurePanel>(*page_, "payOffFigure").isVisibleTo(page_.get()));
    EXPECT_TRUE(page_->sheet()->title.contains(report::pairText(worth.pairs[0])));
}

TEST_F(WorthIt, SaysOfEachFigureHowItIsWorkedOut) {
    fillWith(twoMethods());
    keep(pump());
    keep(gel());
    openAnswered();
    for (const char* figure : {"costPartsFigure", "strikePlaneFigure", "payOffFigure", "plantCostPartsFigure"})
        EXPECT_TRUE(named<QPushButton>(*page_, (std::string(figure) + "WorkedOut").c_str()).isVisibleTo(page_.get()))
            << figure;
}

TEST_F(WorthIt, SaysOfNoneRootedThatThereIsNoCostPerPlant) {
    std::vector<core::BatchRecord> batches = twoMethods();
    for (int batch = 0; batch < 3; ++batch) batches.push_back(inTheJar(0));
    fillWith(batches);
    keep(gel());
    openAnswered();
    EXPECT_THAT(shownTable("worthMethods"), HasSubstr("none rooted; at least"));
    EXPECT_THAT(shownTable("worthMethods"), testing::Not(HasSubstr("inf")));
    EXPECT_THAT(shownTable("worthMethods"), testing::Not(HasSubstr("nan")));
}

TEST_F(WorthIt, SaysWhatThePricesDontHoldAndLeadsThere) {
    fillWith(twoMethods());
    keep(pump());
    keep(power());
    openAnswered();
    ASSERT_FALSE(expected().missing.empty());
    EXPECT_EQ(text("missingSentence"), QString::fromStdString(expected().missing.front()));
    EXPECT_THAT(text("missingSentence").toStdString(), HasSubstr("tariff"));
    const QSignalSpy wanted(page_.get(), &desktop::Page::placeWanted);
    named<QPushButton>(*page_, "missingButton").click();
    EXPECT_EQ(wanted.count(), 1);
    keep(priceOf(core::PriceKind::Tariff, "electricity", 3'000));
    EXPECT_TRUE(pages::comesTrue([&] { return !named<QWidget>(*page_, "missingPrices").isVisible(); }));
}

TEST_F(WorthIt, FollowsAPriceThatChangesAndItsUndo) {
    fillWith(twoMethods());
    keep(gel());
    openAnswered();
    const std::string before = shownTable("worthMethods");
    keep(pump());
    EXPECT_TRUE(pages::comesTrue([&] { return shownTable("worthMethods") != before; }));
    EXPECT_TRUE(workspace_.undo());
    EXPECT_TRUE(pages::comesTrue([&] { return shownTable("worthMethods") == before; }));
}

TEST_F(WorthIt, HoldsOtherMethodsAgainstEachOtherByKeyboard) {
    std::vector<core::BatchRecord> batches = twoMethods();
    for (int batch = 0; batch < 3; ++batch) batches.push_back(inTheJar(9));
    fillWith(batches);
    keep(pump());
    keep(gel());
    openAnswered();
    ASSERT_EQ(expected().pairs.size(), 3U);
    auto& first = named<QComboBox>(*page_, "worthFirst");
    auto& second = named<QComboBox>(*page_, "worthSecond");
    EXPECT_NE(first.currentText(), second.currentText());
    const QStringList both{first.currentText(), second.currentText()};
    second.setFocus();
    pages::type(QStringLiteral("jar"));
    ASSERT_EQ(second.currentText(), QStringLiteral("jar on the sill"));
    EXPECT_TRUE(pages::comesTrue([&] { return text("worthInWords").contains(QStringLiteral("jar on the sill")); }));
    EXPECT_TRUE(pages::comesTrue([&] { return page_->sheet() != nullptr; }));
    EXPECT_TRUE(page_->sheet()->title.contains(QStringLiteral("jar on the sill")));
    first.setFocus();
    pages::type(QStringLiteral("jar"));
    EXPECT_EQ(first.currentText(), QStringLiteral("jar on the sill"));
    EXPECT_EQ(second.currentText(), both[0]) << "the other one steps aside";
}

TEST_F(WorthIt, AsksForOnePlantAndOneYear) {
    std::vector<core::BatchRecord> batches = twoMethods();
    batches.push_back(support::aBatch().of(support::deutzia).looked(28, {.rooted = 20}));
    fillWith(batches);
    keep(gel());
    openAnswered();
    EXPECT_TRUE(named<QTableView>(*page_, "worthPlants").isVisibleTo(page_.get()));
    auto& plants = named<QComboBox>(*page_, "worthPlant");
    plants.setCurrentIndex(plants.findData(QVariant::fromValue<qlonglong>(support::deutzia.value)));
    EXPECT_TRUE(pages::comesTrue([&] { return text("worthHeadline").startsWith(QStringLiteral("Only one method")); }));
    EXPECT_FALSE(named<QTableView>(*page_, "worthPlants").isVisibleTo(page_.get()));
    EXPECT_FALSE(named<QWidget>(*page_, "strikePlaneFigure").isVisibleTo(page_.get()));
    auto& years = named<QComboBox>(*page_, "worthYear");
    ASSERT_EQ(years.count(), 2);
    years.setCurrentIndex(1);
    EXPECT_TRUE(pages::comesTrue([&] { return page_->sheet() != nullptr; }));
}

TEST_F(WorthIt, TakesWhatADaySoonerIsWorthAndMarksWhatIsNone) {
    fillWith(twoMethods());
    keep(pump());
    keep(gel());
    keep(priceOf(core::PriceKind::DaySooner, "a day sooner", 400));
    openAnswered();
    auto& dayField = named<QLineEdit>(*page_, "worthOfADay");
    EXPECT_EQ(dayField.placeholderText(), QStringLiteral("0.040"));
    QTest::keyClicks(&dayField, QStringLiteral("much"));
    QTest::keyClick(&dayField, Qt::Key_Return);
    QStringList faults;
    for (const auto* label : page_->findChildren<desktop::FaultLabel*>()) faults << label->fault();
    EXPECT_THAT(faults.join(u' ').toStdString(), HasSubstr("\u201cmuch\u201d"));
    EXPECT_EQ(dayField.text(), QStringLiteral("much"));
    dayField.clear();
    QTest::keyClicks(&dayField, QStringLiteral("0,25"));
    QTest::keyClick(&dayField, Qt::Key_Return);
    ASSERT_TRUE(pages::comesTrue([&] { return page_->sheet() != nullptr; }));
    core::WorthQuestion question;
    question.worthOfADay = 0.25;
    EXPECT_EQ(text("worthInWords"), QString::fromStdString(expected(question).pairs.at(0).inWords));
}

TEST_F(WorthIt, ReadsTheRecordsOfAFileAwayFromTheWindow) {
    fillWith(twoMethods());
    keep(gel());
    const support::ScratchFolder folder;
    const core::Records records = logbook().records();
    db::Logbook file = db::Logbook::create(folder / "season.strikebook", records.shelves.facts,
                                           {.clock = workspace_.clock(), .author = "Tester"});
    ASSERT_TRUE(db::addRecords(file, records, "records of a test", true));
    const std::string words = expected().pairs.at(0).inWords;
    workspace_.use(std::move(file));
    desktop::WorthItModel model(workspace_);
    model.setWatched(true);
    EXPECT_TRUE(model.state().isReading) << "it came back before they were read";
    ASSERT_TRUE(pages::comesTrue([&] { return !model.state().isWorking; }));
    ASSERT_GE(model.state().pair, 0);
    EXPECT_EQ(model.pair().inWords, words);
    workspace_.use(db::Logbook::inMemory(records.shelves.facts, {.clock = workspace_.clock(), .author = {}}));
    EXPECT_EQ(model.state().worth, nullptr) << "what it said was of another logbook";
}

TEST_F(WorthIt, StoppedSaysSoAndGoesOnWhenAsked) {
    fillWith(twoMethods());
    keep(gel());
    open();
    named<QPushButton>(*page_, "stopWork").click();  // no event came in between: the answer can't be there yet
    EXPECT_EQ(text("worthEmptyTitle"), QStringLiteral("Stopped"));
    EXPECT_TRUE(named<QWidget>(*page_, "stopped").isVisibleTo(page_.get()));
    named<QPushButton>(*page_, "workItOut").click();
    EXPECT_TRUE(pages::comesTrue([&] { return page_->sheet() != nullptr; }));
}

}  // namespace
