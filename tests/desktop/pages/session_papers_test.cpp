// SPDX-License-Identifier: MIT
#include "app/desktop/printing/session_papers.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>

#include "app/desktop/printing/print_preview.h"
#include "app/desktop/widgets/fault_label.h"
#include "tests/desktop/pages/desk.h"

namespace {

using pages::named;

class Papers : public pages::Desk {
  protected:
    void open() {
        dialog_ = std::make_unique<desktop::SessionPapers>(context());
        pages::show(*dialog_);
    }
    desktop::PrintPreview& preview(const char* button) {
        named<QPushButton>(*dialog_, button).click();
        auto* opened = pages::opened<desktop::PrintPreview>(*dialog_);
        if (opened == nullptr) throw std::logic_error("no preview");
        return *opened;
    }

    std::unique_ptr<desktop::SessionPapers> dialog_;
};

TEST_F(Papers, OfferEverySessionTheNewestFirst) {
    fill(support::recordsOf({support::aBatch(), support::aBatch().stuckOn(core::addDays(support::stickingDay(), 9))}));
    open();
    const auto& sessions = named<QComboBox>(*dialog_, "paperSession");
    ASSERT_EQ(sessions.count(), 2);
    EXPECT_TRUE(sessions.itemText(0).contains("11 March 2026")) << sessions.itemText(0).toStdString();
    EXPECT_TRUE(sessions.itemText(0).contains("1 batch"));
}

TEST_F(Papers, SayThatThereIsNoSessionYet) {
    open();
    EXPECT_FALSE(named<QPushButton>(*dialog_, "paperLabels").isEnabled());
    EXPECT_FALSE(named<QPushButton>(*dialog_, "paperSheet").isEnabled());
}

TEST_F(Papers, WriteLabelsFromTheFirstThatIsLeft) {
    fill(support::recordsOf({support::aBatch(), support::aBatch()}));
    open();
    desktop::PrintPreview& labels = preview("paperLabels");
    auto& start = named<QLineEdit>(labels, "labelStart");
    start.selectAll();
    QTest::keyClicks(&start, "99");
    const auto faults = labels.findChildren<desktop::FaultLabel*>();
    EXPECT_TRUE(std::ranges::any_of(faults, [](const auto* each) { return each->fault().contains("1 to 21"); }))
        << "what can't be is said where it stands";
    start.selectAll();
    QTest::keyClicks(&start, "21");
    const QTemporaryDir folder;
    prompts_.willPickFileToSave(folder.filePath("labels.pdf"));
    const QSignalSpy said(dialog_.get(), &desktop::SessionPapers::said);
    named<QPushButton>(labels, "savePdf").click();
    EXPECT_EQ(said.count(), 1);
    EXPECT_TRUE(QFile::exists(folder.filePath("labels.pdf")));
}

TEST_F(Papers, NeedNoStartOnARoll) {
    fill(support::recordsOf({support::aBatch()}));
    open();
    desktop::PrintPreview& labels = preview("paperLabels");
    auto& stock = named<QComboBox>(labels, "labelStock");
    EXPECT_TRUE(named<QLineEdit>(labels, "labelStart").isVisible());
    stock.setCurrentIndex(stock.findData("roll-50x25"));
    EXPECT_FALSE(named<QLineEdit>(labels, "labelStart").isVisible());
}

TEST_F(Papers, MoveLabelsByHalfMillimetresAndShowAPageToFindThatOutBy) {
    fill(support::recordsOf({support::aBatch()}));
    open();
    desktop::PrintPreview& labels = preview("paperLabels");
    auto& right = named<QComboBox>(labels, "labelRight");
    auto& down = named<QComboBox>(labels, "labelDown");
    EXPECT_EQ(right.currentText(), "0.0 mm");
    EXPECT_EQ(right.itemData(right.currentIndex() + 1).toInt(), 1) << "half a millimetre";
    const QTemporaryDir folder;
    const auto written = [&](const QString& name) {
        prompts_.willPickFileToSave(folder.filePath(name));
        named<QPushButton>(labels, "savePdf").click();
        QFile file(folder.filePath(name));
        return file.open(QIODevice::ReadOnly) ? file.size() : 0;
    };
    right.setCurrentIndex(right.findData(3));
    down.setCurrentIndex(down.findData(-2));
    named<QCheckBox>(labels, "labelCalibration").setChecked(true);
    EXPECT_GT(written("calibration.pdf"), 0);
    QProcess process;
    process.start("pdftotext", {folder.filePath("calibration.pdf"), "-"});
    ASSERT_TRUE(process.waitForFinished());
    const QString text = QString::fromUtf8(process.readAllStandardOutput())
                             .normalized(QString::NormalizationForm_KC)  // ligatures
                             .simplified();
    EXPECT_TRUE(text.contains("read the offset, in mm")) << text.toStdString();
    EXPECT_FALSE(text.contains("cuttings")) << "no labels on it";
}

TEST_F(Papers, ShowTheSessionSheet) {
    fill(support::recordsOf({support::aBatch()}));
    open();
    EXPECT_TRUE(preview("paperSheet").windowTitle().contains("Session of 2 March 2026"));
}

}  // namespace
