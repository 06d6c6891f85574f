// SPDX-License-Identifier: MIT
#include <QElapsedTimer>
#include <QHeaderView>
#include <QImage>
#include <QLabel>
#include <QPainter>
#include <QScrollBar>

#include "app/desktop/positions/position_map_model.h"
#include "app/desktop/positions/position_map_panel.h"
#include "app/desktop/positions/position_map_view.h"
#include "app/plot/figure_font.h"
#include "app/plot/palette.h"
#include "tests/desktop/pages/desk.h"

namespace {

using core::Outcome;
using desktop::PositionMapModel;
using desktop::PositionMapPanel;
using desktop::PositionMapView;
using pages::press;

class PositionMap : public pages::Desk {
  protected:
    void SetUp() override { panel_ = std::make_unique<PositionMapPanel>(model_); }

    core::Station station(int rows, int columns) {
        core::Station made = *core::find(workspace_.shelves().stations, support::tubNorth);
        made.rows = rows;
        made.columns = columns;
        return made;
    }
    PositionMapView& view() { return panel_->view(); }
    QString accessible(const char* position) {
        return model_.indexOf(*core::positionNamed(position)).data(Qt::AccessibleTextRole).toString();
    }

    PositionMapModel model_{workspace_};
    std::unique_ptr<PositionMapPanel> panel_;
};

core::BatchRecord aPlacedBatch() {
    core::BatchRecord record = support::aBatch().stuck(6).looked(14, {.rooted = 1, .lost = 1, .withdrawn = 1});
    record.batch.positions = "A1-A6";
    record.checks.front().findings = {{.position = {0, 0}, .outcome = Outcome::Rooted, .cause = {}},
                                      {.position = {0, 1}, .outcome = Outcome::Lost, .cause = support::rotted},
                                      {.position = {0, 2}, .outcome = Outcome::Withdrawn, .cause = {}}};
    return record;
}

TEST_F(PositionMap, TellsEachPositionInWordsToScreenReaders) {
    const pages::Obeys rules(&model_);
    core::BatchRecord other = support::aBatch().stuck(2);
    other.batch.positions = "B1-B2";
    const core::BatchRecord record = aPlacedBatch();
    core::Station here = station(3, 6);
    here.blocked = "C1";
    model_.show(here, {record, other}, record.batch.id);
    EXPECT_EQ(accessible("A1"), QStringLiteral("A1, rooted"));
    EXPECT_EQ(accessible("A2"), QStringLiteral("A2, lost (rotted)"));
    EXPECT_EQ(accessible("A3"), QStringLiteral("A3, withdrawn"));
    EXPECT_EQ(accessible("A4"), QStringLiteral("A4, undecided"));
    EXPECT_EQ(accessible("B1"), QStringLiteral("B1, undecided, of %1").arg(QString::fromStdString(other.batch.code)));
    EXPECT_EQ(accessible("C1"), QStringLiteral("C1, blocked"));
    EXPECT_EQ(accessible("C2"), QStringLiteral("C2, free"));
    EXPECT_EQ(model_.headerData(1, Qt::Vertical, Qt::AccessibleTextRole).toString(), QStringLiteral("Row B"));
}

TEST_F(PositionMap, SaysBelowWhatStandsUnderTheCursorWithItsAgeAndItsDay) {
    const core::BatchRecord record = aPlacedBatch();
    model_.show(station(3, 6), {record}, record.batch.id);
    view().goTo({0, 0});
    const QString words = pages::named<QLabel>(*panel_, "positionWords").text();
    const int age = core::daysBetween(record.batch.stuckOn, support::today());
    for (const QString& part : {QStringLiteral("A1, rooted on day 14"), QString::fromStdString(record.batch.code),
                                QStringLiteral("Hebe albicans"), QStringLiteral("day %1").arg(age)})
        EXPECT_TRUE(words.contains(part)) << words.toStdString();
    EXPECT_EQ(model_.indexOf({0, 0}).data(Qt::ToolTipRole).toString(), words);
}

TEST_F(PositionMap, TellsStatesByShapeAndLetterAndTheDayOfWhatWasDecided) {
    const core::BatchRecord record = aPlacedBatch();
    model_.show(station(3, 6), {record}, record.batch.id);
    EXPECT_EQ(model_.placeAt({0, 0}).letter, QStringLiteral("R"));
    EXPECT_EQ(model_.placeAt({0, 0}).day, QStringLiteral("14"));
    EXPECT_EQ(model_.placeAt({0, 1}).letter, QStringLiteral("T"));
    EXPECT_EQ(model_.placeAt({0, 2}).letter, QStringLiteral("W"));
    EXPECT_EQ(model_.placeAt({0, 3}).state, plot::PlaceState::Undecided);
}

TEST_F(PositionMap, DrawsNoTwoStatesAlikeEvenInBlackAndWhite) {
    const std::vector<plot::MapPlace> places{
        {.state = plot::PlaceState::Free},
        {.state = plot::PlaceState::Blocked},
        {.state = plot::PlaceState::Undecided},
        {.state = plot::PlaceState::Rooted, .letter = "R"},
        {.state = plot::PlaceState::Lost, .letter = "R"},  // a cause that had this letter would still be crossed
        {.state = plot::PlaceState::Withdrawn, .letter = "W"}};
    std::vector<QImage> pictures;
    for (const plot::MapPlace& place : places) {
        QImage picture(32, 32, QImage::Format_RGB32);
        picture.fill(Qt::white);
        QPainter painter(&picture);
        plot::drawPlace(painter, QRectF(0, 0, 32, 32), place, true, plot::Palette::light());
        painter.end();
        pictures.push_back(picture.convertToFormat(QImage::Format_Mono, Qt::ThresholdDither));
    }
    for (std::size_t one = 0; one < pictures.size(); ++one)
        for (std::size_t other = 0; other < one; ++other) EXPECT_NE(pictures[one], pictures[other]) << one << other;
}

TEST_F(PositionMap, FitsOnPaperWithItsLettersAndNumbers) {
    const core::BatchRecord record = aPlacedBatch();
    core::Station tray = station(16, 25);
    tray.isStaggered = true;
    model_.show(tray, {record}, {});
    const auto figure = plot::positionMapFigure(model_.picture(), "Tub north", "Rows are lettered from the back.", {});
    QImage page(800, 560, QImage::Format_RGB32);
    QPainter painter(&page);
    painter.setFont(plot::figureFont(9));
    const plot::Drawing drawing = figure->paint(painter, page.rect(), plot::Palette::onPaper());
    painter.end();
    QStringList texts;
    for (const plot::DrawnText& text : drawing.texts) {
        EXPECT_TRUE(QRectF(page.rect()).contains(text.area)) << text.text.toStdString();
        texts << text.text;
    }
    EXPECT_TRUE(texts.contains(QStringLiteral("P")));
    EXPECT_TRUE(texts.contains(QStringLiteral("25")));
    EXPECT_TRUE(drawing.hints.empty());  // nothing had to be cut short
}

TEST_F(PositionMap, PutsStaggeredRowsHalfAStepToTheRight) {
    core::Station staggered = station(4, 5);
    staggered.isStaggered = true;
    model_.show(staggered, {}, {});
    pages::show(*panel_);
    const QRect upper = view().visualRect(model_.index(0, 2)), lower = view().visualRect(model_.index(1, 2));
    EXPECT_EQ(lower.left() - upper.left(), upper.width() / 2);
    EXPECT_EQ(view().indexAt(lower.center()), model_.index(1, 2));
    EXPECT_FALSE(view().indexAt(QPoint(1, lower.center().y())).isValid());
    // Every cell is hit where it is drawn, the last of a shifted row too.
    const QRect last = view().visualRect(model_.index(3, 4));
    EXPECT_EQ(view().indexAt(last.center()), model_.index(3, 4));
    EXPECT_LE(last.right(), view().viewport()->width());
}

TEST_F(PositionMap, GrowsWithItsRoomAndScrollsRatherThanFallBelowAFinger) {
    model_.show(station(2, 3), {}, {});
    pages::show(*panel_);
    const int few = view().cellSize();
    model_.show(station(26, 40), {}, {});
    EXPECT_GE(view().cellSize(), 32);
    EXPECT_GT(few, view().cellSize());
    EXPECT_GT(view().horizontalScrollBar()->maximum(), 0);
    view().goTo({25, 39});
    EXPECT_TRUE(view().viewport()->rect().contains(view().visualRect(model_.index(25, 39)).center()));
}

TEST_F(PositionMap, StaysLeftToRightInALanguageThatRunsTheOtherWay) {
    panel_->setLayoutDirection(Qt::RightToLeft);
    model_.show(station(3, 6), {}, {});
    pages::show(*panel_);
    EXPECT_EQ(view().layoutDirection(), Qt::LeftToRight);
    EXPECT_EQ(view().viewport()->layoutDirection(), Qt::LeftToRight);
    EXPECT_LT(view().visualRect(model_.index(0, 0)).left(), view().visualRect(model_.index(0, 5)).left());
    view().goTo({0, 0});
    view().setFocus();
    press(Qt::Key_Right);
    EXPECT_EQ(view().current(), (core::Position{0, 1}));
}

TEST_F(PositionMap, SelectsABlockWithShiftAndGoesToTheEndsOfTheRow) {
    core::Station staggered = station(4, 5);
    staggered.isStaggered = true;
    model_.show(staggered, {}, {});
    pages::show(*panel_);
    view().setFocus();
    press(Qt::Key_Right);
    press(Qt::Key_Down, Qt::ShiftModifier);
    press(Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_EQ(core::textOf(view().selected()), "A2-A3, B2-B3");
    press(Qt::Key_End);
    EXPECT_EQ(view().current(), (core::Position{1, 4}));
    EXPECT_EQ(core::textOf(view().selected()), "B5");
    press(Qt::Key_Home);
    EXPECT_EQ(view().current(), (core::Position{1, 0}));
}

TEST_F(PositionMap, SelectsALineByItsLetterOrNumber) {
    model_.show(station(3, 4), {}, {});
    pages::show(*panel_);
    QHeaderView& rows = *view().verticalHeader();
    QTest::mouseClick(rows.viewport(), Qt::LeftButton, {},
                      QPoint(rows.width() / 2, rows.sectionViewportPosition(1) + rows.sectionSize(1) / 2));
    EXPECT_EQ(core::textOf(view().selected()), "B1-B4");
}

TEST_F(PositionMap, ShowsFourHundredPositionsAtOnce) {
    core::BatchRecord record = support::aBatch().stuck(400);
    record.batch.positions = "A1-P25";
    // The best of three: others may be at work on the machine.
    qint64 best = 1'000'000;
    for (int attempt = 0; attempt < 3; ++attempt) {
        QElapsedTimer timer;
        timer.start();
        PositionMapModel model(workspace_);
        PositionMapPanel panel(model);
        model.show(station(16, 25), {record}, record.batch.id);
        panel.resize(1110, 720);
        panel.show();
        (void)panel.grab();
        best = std::min(best, timer.elapsed());
    }
    RecordProperty("milliseconds", static_cast<int>(best));
    EXPECT_LT(best, 100);
}

}  // namespace
