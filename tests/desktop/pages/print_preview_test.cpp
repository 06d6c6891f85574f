// SPDX-License-Identifier: MIT
#include "app/desktop/printing/print_preview.h"

#include <QComboBox>
#include <QFile>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>

#include "app/report/sheet.h"
#include "tests/desktop/pages/desk.h"

namespace {

using pages::named;

class Preview : public pages::Desk {
  protected:
    Preview() {
        report::Sheet sheet;
        sheet.title = QStringLiteral("A sheet");
        sheet.blocks = {report::Heading{QStringLiteral("Counts")},
                        report::Paragraph{QStringLiteral("18 of 24 rooted."), report::Tone::Plain}};
        preview_ = std::make_unique<desktop::PrintPreview>(std::make_shared<const report::Sheet>(sheet),
                                                           QStringLiteral("Tub/bench: spring"), context());
        pages::show(*preview_);
    }

    std::unique_ptr<desktop::PrintPreview> preview_;
};

TEST_F(Preview, BeginsWithTheLogbooksPaperAndTakesAnother) {
    EXPECT_EQ(preview_->paper(), report::Paper::A4);
    named<QComboBox>(*preview_, "paper").setCurrentIndex(1);
    EXPECT_EQ(preview_->paper(), report::Paper::Letter);
}

TEST_F(Preview, SavesAPdfAndSaysSo) {
    const QTemporaryDir folder;
    prompts_.willPickFileToSave(folder.filePath(QStringLiteral("sheet.pdf")));
    const QSignalSpy said(preview_.get(), &desktop::PrintPreview::said);
    named<QPushButton>(*preview_, "savePdf").click();
    EXPECT_TRUE(QFile::exists(folder.filePath(QStringLiteral("sheet.pdf"))));
    EXPECT_EQ(said.count(), 1);
}

TEST_F(Preview, StaysOpenWhenTheFileCannotBeWritten) {
    prompts_.willPickFileToSave(QStringLiteral("/no such folder/sheet.pdf"));
    const QSignalSpy failed(&workspace_, &desktop::Workspace::failed);
    named<QPushButton>(*preview_, "savePdf").click();
    EXPECT_TRUE(preview_->isVisible());
    EXPECT_EQ(failed.count(), 1);
}

TEST_F(Preview, DoesNothingWhenThePersonChangesTheirMind) {
    prompts_.willPickFileToSave(QString());
    named<QPushButton>(*preview_, "savePdf").click();
    EXPECT_TRUE(preview_->isVisible());
}

}  // namespace
