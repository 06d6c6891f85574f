// SPDX-License-Identifier: MIT
#include "app/plot/cost_parts_figure.h"

#include <QCoreApplication>
#include <algorithm>
#include <utility>

#include "app/plot/arm_words.h"
#include "app/plot/cost_parts_picture.h"
#include "app/plot/cost_text.h"
#include "app/plot/empty_picture.h"
#include "app/plot/number_text.h"

namespace plot {
namespace {

class CostPartsFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(CostPartsFigure)

  public:
    explicit CostPartsFigure(CostRows rows) : rows_(std::move(rows)) {}

    QString sentence() const override {
        std::vector<const core::WorthOfMethod*> known;
        for (const core::WorthOfMethod& method : rows_.methods)
            if (method.perRooted.value) known.push_back(&method);
        if (known.empty()) return tr("Cost of a rooted plant: nothing to show yet");
        std::ranges::stable_sort(known, {}, [](const auto* method) { return *method->perRooted.value; });
        const core::WorthOfMethod &cheapest = *known.front(), &dearest = *known.back();
        if (known.size() == 1) return tr("A rooted plant costs %1: %2").arg(costOf(cheapest), nameOf(cheapest));
        if (known.size() == 2)
            return tr("A rooted plant costs %1 by %2 and %3 by %4")
                .arg(costOf(cheapest), nameOf(cheapest), costOf(dearest), nameOf(dearest));
        return tr("A rooted plant costs from %1 (%2) to %3 (%4)")
            .arg(costOf(cheapest), nameOf(cheapest), costOf(dearest), nameOf(dearest));
    }

    QString method() const override {
        if (rows_.methods.empty()) return {};
        return tr("Cost of a cutting divided by the strike rate. Line below a bar: %1 interval of the whole, from that "
                  "of "
                  "the strike rate, the spread between batches counted. n: rooted of those assessed.")
            .arg(levelText(rows_.level));
    }

    FigureTable table() const override {
        const QString currency = textOf(rows_.currency);
        FigureTable table{.title = sentence(), .headings = {tr("Method")}, .rows = {}};
        if (rows_.hasPlants) table.headings.prepend(tr("Plant"));
        table.headings << tr("Batches") << tr("Rooted") << tr("Assessed") << tr("Batches priced");
        for (const core::CostPart part : core::allCostParts)
            table.headings
                << tr("%1, %2", "a part of the cost, the currency").arg(capitalised(costPartText(part)), currency);
        table.headings << tr("A rooted plant, %1").arg(currency) << tr("Low") << tr("High");
        for (const core::WorthOfMethod& method : rows_.methods) table.rows.push_back(rowOf(method));
        return table;
    }

    QSizeF sizeInEms() const override {
        if (rows_.methods.empty()) return {54, 9};
        return {54, std::clamp(8.4 + 2.65 * static_cast<double>(rows_.methods.size()), 13.0, 60.0)};
    }

  private:
    QString nameOf(const core::WorthOfMethod& method) const { return nameOfCostRow(method, rows_.hasPlants); }
    QString costOf(const core::WorthOfMethod& method) const {
        return costText(*method.perRooted.value, rows_.currency);
    }

    QStringList rowOf(const core::WorthOfMethod& method) const {
        QStringList row{textOf(method.name)};
        if (rows_.hasPlants) row.prepend(textOf(method.plantName));
        row << countText(method.strike.batches) << countText(method.strike.succeeded) << countText(method.strike.of)
            << countText(method.pricedBatches);
        const core::CostParts parts = partsPerRooted(method);
        const bool isKnown = method.perRooted.value.has_value();
        for (const core::CostPart part : core::allCostParts)
            row << (isKnown ? decimalText(parts.of(part), 4) : QString());
        if (isKnown)
            row << decimalText(*method.perRooted.value, 4) << decimalText(method.perRooted.limits.low, 4)
                << decimalText(method.perRooted.limits.high, 4);
        else
            row << costFigureOf(method) << (isPriced(method) ? decimalText(method.perRooted.limits.low, 4) : QString())
                << QString();
        return row;
    }

    void draw(Canvas& canvas, const QRectF& area) const override {
        if (rows_.methods.empty()) return drawEmptyPicture(canvas, area, tr("No batches to reckon with yet."));
        drawCostParts(canvas, area, rows_);
    }

    CostRows rows_;
};

}  // namespace

std::shared_ptr<const Figure> costPartsFigure(CostRows rows) {
    return std::make_shared<CostPartsFigure>(std::move(rows));
}

}  // namespace plot
