// SPDX-License-Identifier: MIT
#include "app/report/trial_report.h"

#include <QImage>
#include <QPainter>

#include "app/plot/figure_font.h"
#include "app/plot/palette.h"
#include "app/report/pdf.h"
#include "app/report/plain_text.h"
#include "app/report/trial_map.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/report/golden.h"
#include "tests/report/sheet_examples.h"

namespace {

using testing::HasSubstr;
using testing::Not;

core::Date march(unsigned day) {
    return {std::chrono::year(2026), std::chrono::month(3), std::chrono::day(day)};
}

/// Gel or nothing side by side in two trays, in blocks of their sides.
class TrialOnPaper : public testing::Test {
  protected:
    TrialOnPaper() : shelves_(examples::smallShelves()) {
        core::Treatment nothing;
        nothing.id = {66};
        nothing.name = "nothing";
        shelves_.treatments.push_back(nothing);
        core::Station second = shelves_.stations.front();
        second.id = {44};
        second.name = "bench tray 3";
        second.walkingOrder = 2;
        shelves_.stations.push_back(second);
        trial_.id = {70};
        trial_.name = "Gel or nothing";
        trial_.question = "Does gel help lavender?";
        trial_.factor = core::Factor::Treatment;
        trial_.arms = {{.treatment = {6}}, {.treatment = {66}}};
        trial_.blockedBy = core::BlockedBy::StationSide;
        trial_.horizonDay = 28;
        trial_.margin = 0.2;
        trial_.perArm = 24;
        trial_.setOn = march(1);
        trial_.allocationSeed = 20260301;
        deal({4}, "bench tray 2", 1);
        deal({44}, "bench tray 3", 5);
        shelves_.trials = {trial_};
    }

    void deal(core::StationId station, const std::string& name, int number) {
        const auto add = [&](const std::string& side, int arm, const std::string& positions) {
            trial_.batches.push_back({.number = number++,
                                      .session = 1,
                                      .station = station,
                                      .block = name + side,
                                      .plant = {1},
                                      .arm = arm,
                                      .stuck = 6,
                                      .positions = positions});
        };
        add(", left", 0, "A1, A3, B2, C1, C3, D2");
        add(", left", 1, "A2, B1, B3, C2, D1, D3");
        add(", right", 0, "A5, B4, B6, C5, D4, D6");
        add(", right", 1, "A4, A6, B5, C4, C6, D5");
    }

    /// Gel roots 4 to 6 of 6, nothing 1 to 3.
    void stickAndLook(int afterDays) {
        for (core::TrialBatch& dealt : trial_.batches) {
            core::BatchRecord record = examples::batchChecked(0);
            core::Batch& batch = record.batch;
            batch.id = {1000 + dealt.number};
            batch.code = "B2600" + std::to_string(10 + dealt.number);
            batch.stuck = dealt.stuck;
            batch.treatment = trial_.arms[static_cast<std::size_t>(dealt.arm)].treatment;
            batch.station = dealt.station;
            batch.positions = dealt.positions;
            batch.block = dealt.block;
            batch.trial = trial_.id;
            core::Check check;
            check.batch = batch.id;
            check.checkedOn = core::addDays(batch.stuckOn, afterDays);
            check.rooted = (dealt.arm == 0 ? 4 : 1) + dealt.number % 3;
            record.checks = {check};
            dealt.batch = batch.id;
            records_.push_back(std::move(record));
        }
        shelves_.trials = {trial_};
    }

    core::TrialProgress on(int day) {
        std::vector<core::BatchLine> lines;
        for (const core::BatchRecord& record : records_)
            lines.push_back({record.batch, core::tallyOf(record.batch, record.checks)});
        return core::progressOf(trial_, shelves_, lines, core::addDays(march(14), day));
    }

    std::string printed(int day) {
        const core::TrialProgress progress = on(day);
        if (progress.stage != core::TrialStage::Decided)
            return report::plainText(report::trialReport(trial_, progress, nullptr, shelves_, examples::printedAt()))
                .toStdString();
        const core::Comparison result = core::trialResult(trial_, shelves_, records_).value();
        return report::plainText(report::trialReport(trial_, progress, &result, shelves_, examples::printedAt()))
            .toStdString();
    }

    core::Shelves shelves_;
    core::Trial trial_;
    std::vector<core::BatchRecord> records_;
};

TEST_F(TrialOnPaper, HoldsBackItsResultBeforeTheHorizon) {
    stickAndLook(14);
    examples::expectGolden(QString::fromStdString(printed(14)), "trial_watched");
}

TEST_F(TrialOnPaper, GivesItsResultWithItsIntervalsAtTheHorizon) {
    stickAndLook(28);
    examples::expectGolden(QString::fromStdString(printed(28)), "trial_decided");
}

TEST_F(TrialOnPaper, PrintsEveryChangeThatWasMadeAfterLooking) {
    stickAndLook(28);
    EXPECT_THAT(printed(28), HasSubstr("Nothing."));
    trial_.changes = {
        {.changedOn = march(30), .what = "horizon day", .was = "21", .became = "28", .reason = "cold nights"}};
    EXPECT_THAT(printed(28), HasSubstr("horizon day, 21 before, 28 after. Reason: cold nights"));
    EXPECT_THAT(printed(28), HasSubstr("it was changed when somebody had looked already"));
}

TEST_F(TrialOnPaper, KeepsArmsToItselfWhereTheyAreBlinded) {
    trial_.isBlinded = true;
    stickAndLook(14);
    EXPECT_THAT(printed(14), HasSubstr("arm A"));
    EXPECT_THAT(printed(14), HasSubstr("not told yet"));
    EXPECT_THAT(report::plainText(report::trialMapSheet(trial_, on(14), shelves_, examples::printedAt())).toStdString(),
                HasSubstr("arms are not told before the horizon"));
    EXPECT_THAT(printed(28), Not(HasSubstr("arm A")));
}

TEST_F(TrialOnPaper, FitsOnePage) {
    stickAndLook(28);
    trial_.changes.assign(
        6, {.changedOn = march(30), .what = "margin", .was = "0.1", .became = "0.2", .reason = "thought again"});
    const core::Comparison result = core::trialResult(trial_, shelves_, records_).value();
    const report::Sheet sheet = report::trialReport(trial_, on(28), &result, shelves_, examples::printedAt());
    EXPECT_EQ(report::pageCount(sheet, report::Paper::A4), 1);
    EXPECT_EQ(report::pageCount(sheet, report::Paper::Letter), 1);
}

TEST_F(TrialOnPaper, MapsTheNumberOfTheArmToEveryPositionThatWasDealt) {
    const auto picture = [this] {
        QImage image(900, 700, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.setFont(plot::figureFont(9));
        const auto figure = report::trialMapFigure(trial_, 1, shelves_.stations.front(), shelves_);
        (void)figure->paint(painter, QRectF(0, 0, 900, 700), plot::Palette::onPaper());
        return image;
    };
    EXPECT_EQ(report::trialMapFigure(trial_, 1, shelves_.stations.front(), shelves_)->table().rows[0].last(),
              "A1, A3, B2, C1, C3, D2");
    examples::expectGolden(report::plainText(report::trialMapSheet(trial_, on(0), shelves_, examples::printedAt())),
                           "trial_map");
    const QImage dealt = picture();
    EXPECT_EQ(picture(), dealt);
    std::swap(trial_.batches[0].positions, trial_.batches[1].positions);
    EXPECT_NE(picture(), dealt) << "the picture shows which arm stands where";
}

}  // namespace
