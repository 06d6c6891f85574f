// SPDX-License-Identifier: MIT
#include "app/report/labels.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/plot/number_text.h"
#include "app/report/pdf.h"
#include "core/batch/licence.h"

namespace report {
namespace {

struct LabelWords {
    Q_DECLARE_TR_FUNCTIONS(Labels)
};

constexpr QSizeF a4(210, 297);
constexpr QSizeF letter(215.9, 279.4);

/// Sheets are cut so that the labels stand in the middle of the page; rows touch, columns have a gap (common practice, no source).
LabelStock sheetOf(const QString& word, const QString& name, const QSizeF& page, int columns, int rows,
                   const QSizeF& label, double columnGap) {
    const QSizeF pitch(label.width() + columnGap, label.height());
    return {.word = word,
            .name = name,
            .page = page,
            .columns = columns,
            .rows = rows,
            .label = label,
            .first = {(page.width() - columns * pitch.width() + columnGap) / 2,
                      (page.height() - rows * pitch.height()) / 2},
            .pitch = pitch};
}

LabelStock rollOf(const QString& word, const QString& name, const QSizeF& label) {
    return {.word = word,
            .name = name,
            .page = label,
            .columns = 1,
            .rows = 1,
            .label = label,
            .first = {0, 0},
            .pitch = label};
}

}  // namespace

QRectF LabelStock::place(int number) const {
    const int onPage = number % perPage();
    const int row = onPage / columns, column = onPage % columns;
    return {first.x() + column * pitch.width(), first.y() + row * pitch.height(), label.width(), label.height()};
}

std::vector<LabelStock> labelStocks(const std::string& paper) {
    const QSizeF small(38.1, 21.2);
    std::vector<LabelStock> stocks{
        sheetOf(QStringLiteral("a4-21"), LabelWords::tr("63.5 × 38.1 mm, 21 on A4"), a4, 3, 7, {63.5, 38.1}, 2.54),
        sheetOf(QStringLiteral("a4-65"), LabelWords::tr("38 × 21 mm, 65 on A4"), a4, 5, 13, small, 2.54),
        sheetOf(QStringLiteral("letter-30"), LabelWords::tr("66.7 × 25.4 mm, 30 on Letter"), letter, 3, 10,
                {66.675, 25.4}, 3.175),
        rollOf(QStringLiteral("roll-50x25"), LabelWords::tr("50 × 25 mm, roll"), {50, 25}),
        rollOf(QStringLiteral("stake-100x16"), LabelWords::tr("100 × 16 mm, stakes on a roll"), {100, 16})};
    if (paperFrom(QString::fromStdString(paper)) == Paper::Letter)
        std::rotate(stocks.begin(), stocks.begin() + 2, stocks.begin() + 3);
    return stocks;
}

QStringList stockWords() {
    QStringList words;
    for (const LabelStock& stock : labelStocks("A4")) words << stock.word;
    return words;
}

std::vector<Label> labelsOf(std::span<const core::Batch> batches, const core::Shelves& shelves) {
    std::vector<Label> labels;
    for (const core::Batch& batch : batches) {
        const core::Plant* plant = core::find(shelves.plants, batch.plant);
        const core::Treatment* treatment =
            batch.treatment.isSet() ? core::find(shelves.treatments, batch.treatment) : nullptr;
        labels.push_back({.code = QString::fromStdString(batch.code),
                          .plant = plant == nullptr ? QString() : QString::fromStdString(core::fullName(*plant)),
                          .treatment = treatment == nullptr ? QString() : QString::fromStdString(treatment->name),
                          .day = plot::shortDateText(batch.stuckOn),
                          .count = plot::cuttingsText(batch.stuck),
                          .mark = shelves.facts.isInvented ? LabelWords::tr("invented") : QString(),
                          .licence = QString::fromStdString(core::licenceInWords(batch, shelves))});
    }
    return labels;
}

int LabelPrint::pages() const {
    const int places = static_cast<int>(labels.size()) + start - 1;
    return labels.empty() ? 0 : (places + stock.perPage() - 1) / stock.perPage();
}

}  // namespace report
