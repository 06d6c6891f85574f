// SPDX-License-Identifier: MIT
#include "app/report/caution_words.h"

#include <QCoreApplication>

#include "app/report/sheet_words.h"
#include "core/batch/licence.h"

namespace report {

namespace {

struct MindWords {
    Q_DECLARE_TR_FUNCTIONS(Cautions)
};

QString nameOfCaution(const core::TradeCaution& caution) {
    QString name = QString::fromUtf8(caution.name);
    name[0] = name[0].toUpper();
    return name;
}

}  // namespace

QString cautionText(core::CautionTopic topic) {
    const core::TradeCaution& caution = core::tradeCaution(topic);
    return MindWords::tr("%1: %2", "a caution's name, its words")
        .arg(nameOfCaution(caution), QString::fromUtf8(caution.text));
}

std::vector<Block> cautionBlocks(const std::vector<core::CautionTopic>& topics) {
    std::vector<Block> blocks;
    if (!topics.empty()) blocks.emplace_back(Heading{MindWords::tr("What to mind")});
    for (const core::CautionTopic topic : topics) blocks.emplace_back(Paragraph{cautionText(topic), Tone::Caution});
    return blocks;
}

void addCautions(Sheet& sheet, const std::vector<core::CautionTopic>& topics) {
    for (Block& block : cautionBlocks(topics)) sheet.blocks.push_back(std::move(block));
}

void addLicences(Sheet& sheet, std::span<const core::Batch* const> batches, const core::Shelves& shelves) {
    for (const core::Batch* batch : batches) {
        const std::string words = core::licenceInWords(*batch, shelves);
        if (words.empty()) continue;
        sheet.blocks.emplace_back(
            Paragraph{MindWords::tr("%1: %2", "batch, its licence")
                          .arg(QString::fromStdString(batch->code), QString::fromStdString(words)),
                      Tone::Plain});
    }
}

Sheet cautionSheet(const core::LogbookFacts& facts, const QDateTime& printedAt) {
    Sheet sheet = sheetFor(facts, printedAt);
    sheet.title = MindWords::tr("What to mind");
    sheet.blocks.emplace_back(
        Paragraph{QString::fromUtf8(core::tradeCaution(core::CautionTopic::Advice).text), Tone::Answer});
    for (const core::TradeCaution& caution : core::allTradeCautions()) {
        sheet.blocks.emplace_back(Heading{nameOfCaution(caution)});
        sheet.blocks.emplace_back(Paragraph{QString::fromUtf8(caution.text), Tone::Plain});
        sheet.blocks.emplace_back(
            Paragraph{MindWords::tr("Source: %1").arg(QString::fromUtf8(caution.source)), Tone::Quiet});
    }
    return sheet;
}

}  // namespace report
