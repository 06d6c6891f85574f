// SPDX-License-Identifier: MIT
// Cautions and licences on paper: in the text of the pages and of PDFs.
#include "app/report/caution_words.h"

#include <QProcess>
#include <QTemporaryDir>

#include "app/report/allocation_sheet.h"
#include "app/report/batch_summary_sheet.h"
#include "app/report/labels.h"
#include "app/report/pdf.h"
#include "app/report/plain_text.h"
#include "app/report/session_sheet.h"
#include "gtest/gtest.h"
#include "tests/report/sheet_examples.h"

namespace {

using enum core::CautionTopic;

QString textOfPdf(const QString& file) {
    QProcess process;
    process.start("pdftotext", {"-layout", file, "-"});
    // Ligatures as people read them.
    return process.waitForFinished() ? QString::fromUtf8(process.readAllStandardOutput())
                                           .normalized(QString::NormalizationForm_KC)
                                           .simplified()
                                     : QString();
}

QString textOf(const report::Sheet& sheet) {
    const QTemporaryDir folder;
    const QString file = folder.filePath("sheet.pdf");
    report::writePdf(sheet, file, report::Paper::A4);
    return textOfPdf(file);
}

/// A protected plant that is eaten, stuck with hormone.
core::Shelves shelvesToMind() {
    core::Shelves shelves = examples::smallShelves();
    for (core::Plant& plant : shelves.plants) plant.isProtected = plant.isEdible = true;
    for (core::Treatment& treatment : shelves.treatments)
        treatment.auxins = {{.name = "IBA", .form = core::AuxinForm::Acid, .milligramsPerLitre = 1000}};
    return shelves;
}

core::Batch batchToMind(const std::string& licence) {
    core::Batch batch = examples::batchChecked(0).batch;
    batch.licence = licence;
    return batch;
}

void expectMinded(const QString& text, std::initializer_list<core::CautionTopic> topics) {
    for (const core::CautionTopic topic : topics)
        EXPECT_TRUE(text.contains(report::cautionText(topic))) << core::tradeCaution(topic).name << " is not in\n"
                                                               << text.toStdString();
}

TEST(CautionSheet, HasEveryCautionWithItsSourceOnPaper) {
    const QString text = textOf(report::cautionSheet(examples::smallShelves().facts, examples::printedAt()));
    for (const core::TradeCaution& caution : core::allTradeCautions()) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(caution.text).simplified())) << caution.name;
        EXPECT_TRUE(text.contains(QString::fromUtf8(caution.source))) << caution.name;
    }
}

TEST(CautionsOnPaper, StandOnTheSessionsSheetWithItsLicences) {
    const std::vector<core::Batch> batches{batchToMind("PVR 1234 of an invented breeder")};
    const QString text =
        textOf(report::sessionSheet(examples::session(), batches, shelvesToMind(), examples::printedAt()));
    expectMinded(text, {GrowthRegulators, EdibleCrops, HormoneHygiene, ProtectedVarieties, Advice});
    EXPECT_TRUE(text.contains("licence: PVR 1234 of an invented breeder")) << text.toStdString();
    const std::vector<core::Batch> without{batchToMind("")};
    EXPECT_TRUE(textOf(report::sessionSheet(examples::session(), without, shelvesToMind(), examples::printedAt()))
                    .contains("protected: no licence written down"));
}

TEST(CautionsOnPaper, LeaveASheetAloneThatNeedsNone) {
    core::Batch bare = batchToMind("");
    bare.treatment = {};
    core::Shelves shelves = examples::smallShelves();
    for (core::Plant& plant : shelves.plants) plant.isProtected = false;
    const QString text =
        report::plainText(report::sessionSheet(examples::session(), std::vector{bare}, shelves, examples::printedAt()));
    EXPECT_FALSE(text.contains("mind", Qt::CaseInsensitive)) << text.toStdString();
}

TEST(CautionsOnPaper, StandOnTheAllocationSheet) {
    const report::AllocationPlan plan{.trial = "which",
                                      .plant = "Lavandula angustifolia",
                                      .stuckOn = *core::dateFromIso("2026-03-14"),
                                      .arms = {"tray", "tub"},
                                      .allocation = {.armOfCutting = {1, 0}, .perArm = {1, 1}},
                                      .seed = 7,
                                      .batches = {batchToMind("")}};
    const QString text = textOf(report::allocationSheet(plan, shelvesToMind(), examples::printedAt()));
    expectMinded(text, {GrowthRegulators, EdibleCrops, ProtectedVarieties, Advice});
    EXPECT_TRUE(text.contains("protected: no licence written down"));
}

TEST(CautionsOnPaper, StandOnTheBatchsSummary) {
    core::BatchRecord record = examples::batchChecked(3);
    record.batch.licence = "PVR 1234";
    const core::Shelves shelves = shelvesToMind();
    const core::BatchSummary summary =
        core::summaryOf(record, shelves, std::vector{record}, *core::dateFromIso("2026-06-30"));
    const QString text =
        textOf(report::batchSummarySheet(record, examples::session(), summary, shelves, examples::printedAt(), {}));
    expectMinded(text, {GrowthRegulators, EdibleCrops, ProtectedVarieties, PlantHealth, Advice});
    EXPECT_TRUE(text.contains("Licence PVR 1234")) << text.toStdString();
}

TEST(LabelsOfProtectedPlants, CarryTheLicenceOrSayThatNoneIsWrittenDown) {
    const QTemporaryDir folder;
    const std::vector<core::Batch> batches{batchToMind("PVR 1234"), batchToMind("")};
    for (const report::LabelStock& stock : report::labelStocks("A4")) {
        if (stock.label.height() < 30) continue;  // smaller ones as far as there is room
        const QString file = folder.filePath(stock.word + ".pdf");
        report::writePdf({.labels = report::labelsOf(batches, shelvesToMind()), .stock = stock}, file);
        QProcess process;
        process.start("pdftotext", {"-raw", file, "-"});
        ASSERT_TRUE(process.waitForFinished());
        const QString text = QString::fromUtf8(process.readAllStandardOutput()).simplified();
        EXPECT_TRUE(text.contains("licence: PVR 1234")) << stock.word.toStdString() << ": " << text.toStdString();
        EXPECT_TRUE(text.contains("protected: no licence written down"))
            << stock.word.toStdString() << ": " << text.toStdString();
    }
}

}  // namespace
