// SPDX-License-Identifier: MIT
// A mix goes to the session or into the care of a station in one step, comes back with one undo, and is shown with the batch.
#include <gmock/gmock.h>

#include <QComboBox>
#include <QDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

#include "app/desktop/batches/batch_page.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/widgets/fault_label.h"
#include "core/mixing/trade_cautions.h"
#include "tests/desktop/mix/mix_desk.h"

namespace {

using pages::named;
using testing::HasSubstr;

class KeptMixes : public mixing::MixDesk {
  protected:
    KeptMixes() {
        fill(support::recordsOf({support::aBatch()}));
        openPage();
        ask("nutrient");
        MixDesk::fill("volume", "20");
        MixDesk::fill("target", "1");
        fillFeed();
    }
    using pages::Desk::fill;

    core::Batch stuck() { return logbook().batchRecords().front().batch; }
    QDialog* open(const char* button) {
        named<QPushButton>(view(), button).click();
        return pages::opened<QDialog>(*page_);
    }
    static core::Moment begin() { return std::chrono::sys_days{std::chrono::year{2000} / 1 / 1}; }
    static core::Moment end() { return std::chrono::sys_days{std::chrono::year{2100} / 1 / 1}; }
};

TEST_F(KeptMixes, GoWithASessionAndComeBackWithOneUndo) {
    QDialog* dialog = open("mixKeepSession");
    ASSERT_NE(dialog, nullptr);
    named<QPushButton>(*dialog, "keepMix").click();
    const std::vector<core::KeptMix> kept = logbook().mixes(stuck().session);
    ASSERT_EQ(kept.size(), 1u);
    EXPECT_EQ(kept[0].kind, core::MixKind::Nutrient);
    EXPECT_EQ(kept[0].title, "Nutrient for 20 L at EC 1 mS/cm");
    EXPECT_THAT(kept[0].amounts, HasSubstr("A: 7.0 g (7 g worked out)"));
    EXPECT_THAT(kept[0].workings, HasSubstr("(1 - 0.3) / 2.4 = 0.2917"));
    EXPECT_THAT(kept[0].cautions, HasSubstr("concentrates"));
    EXPECT_TRUE(workspace_.undo());
    EXPECT_TRUE(logbook().mixes(stuck().session).empty());
}

TEST_F(KeptMixes, GoIntoTheCareOfAStationWithTheirVolumeInOneStep) {
    QDialog* dialog = open("mixKeepCare");
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(named<QLineEdit>(*dialog, "mixLitres").text(), "20");
    EXPECT_EQ(named<QComboBox>(*dialog, "mixCareKind").currentText(), "solution changed");
    auto& station = named<QComboBox>(*dialog, "mixStation");
    station.setCurrentIndex(station.findData(QVariant::fromValue<qlonglong>(stuck().station.value)));
    named<QPushButton>(*dialog, "keepMix").click();
    const std::vector<core::Care> care = logbook().care(stuck().station, begin(), end());
    ASSERT_EQ(care.size(), 1u);
    EXPECT_EQ(care[0].kind, core::CareKind::SolutionChanged);
    EXPECT_NEAR(care[0].litres.value_or(0), 20, 1e-9);
    EXPECT_EQ(logbook().mixes(care[0].id).size(), 1u);
    EXPECT_TRUE(workspace_.undo());
    EXPECT_TRUE(logbook().care(stuck().station, begin(), end()).empty());
    EXPECT_TRUE(logbook().mixesAt(stuck().station, begin(), end()).empty());
}

TEST_F(KeptMixes, RefuseAVolumeThatCanNotBeWhereItStands) {
    QDialog* dialog = open("mixKeepCare");
    named<QLineEdit>(*dialog, "mixLitres").setText("a lot");
    named<QPushButton>(*dialog, "keepMix").click();
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_EQ(named<QLineEdit>(*dialog, "mixLitres").text(), "a lot");
    QStringList sentences;
    for (const auto* label : dialog->findChildren<desktop::FaultLabel*>())
        if (label->isVisible()) sentences << label->fault();
    EXPECT_THAT(sentences.join('\n').toStdString(),
                HasSubstr("How much is \u201ca lot\u201d; a number in L is allowed"));
    named<QLineEdit>(*dialog, "mixLitres").setText("-2");
    named<QPushButton>(*dialog, "keepMix").click();
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_TRUE(logbook().care(stuck().station, begin(), end()).empty());
}

TEST_F(KeptMixes, AreALineOfTheBatchAndTheirCardIsPrintedAgain) {
    QDialog* dialog = open("mixKeepSession");
    named<QPushButton>(*dialog, "keepMix").click();
    desktop::BatchPage batch(context());
    pages::show(batch);
    ASSERT_TRUE(batch.show(stuck().id));
    auto& only = named<QComboBox>(batch, "timelineKind");
    only.setCurrentText("mixes");
    auto& table = named<QTableView>(batch, "timeline");
    ASSERT_EQ(table.model()->rowCount(), 1);
    QStringList row;
    for (int column = 0; column < table.model()->columnCount(); ++column)
        row << table.model()->index(0, column).data().toString();
    EXPECT_THAT(row.join(' ').toStdString(), HasSubstr("Nutrient for 20 L at EC 1 mS/cm"));
    table.setCurrentIndex(table.model()->index(0, 0));
    table.setFocus();
    QTest::keyClick(&table, Qt::Key_Return);
    EXPECT_NE(pages::opened<desktop::PrintPreview>(batch), nullptr);
    QTest::keyClick(&table, Qt::Key_Delete);
    EXPECT_TRUE(logbook().mixes(stuck().session).empty());
    EXPECT_TRUE(workspace_.undo());
    EXPECT_EQ(logbook().mixes(stuck().session).size(), 1u);
}

TEST_F(KeptMixes, SayWhereThereIsNothingToKeepThemWith) {
    fill(core::Records{.shelves = core::startingShelves(), .sessions = {}, .batches = {}});
    QSignalSpy said(page_.get(), &desktop::Page::said);
    EXPECT_EQ(open("mixKeepSession"), nullptr);
    EXPECT_EQ(open("mixKeepCare"), nullptr);
    ASSERT_EQ(said.size(), 2);
    EXPECT_THAT(said[0][0].toString().toStdString(), HasSubstr("no session yet"));
    EXPECT_THAT(said[1][0].toString().toStdString(), HasSubstr("no station yet"));
    ask("lid");
    EXPECT_FALSE(named<QPushButton>(view(), "mixKeepCare").isEnabled()) << "a lid goes into no tub";
}

}  // namespace
