// SPDX-License-Identifier: MIT
#include "app/plot/strike_plane_figure.h"

#include <QCoreApplication>
#include <utility>

#include "app/plot/arm_words.h"
#include "app/plot/empty_picture.h"
#include "app/plot/number_text.h"
#include "app/plot/strike_plane_picture.h"

namespace plot {
namespace {

class StrikePlaneFigure : public Figure {
    Q_DECLARE_TR_FUNCTIONS(StrikePlaneFigure)

  public:
    StrikePlaneFigure(core::WorthOfPair pair, double level) : pair_(std::move(pair)), level_(level) {}

    QString sentence() const override {
        if (!isShown()) return tr("What strike rate would turn the answer: nothing to show yet");
        const QString dear = textOf(pair_.dear.name), cheap = textOf(pair_.cheap.name);
        if (pair_.dearStrikeToTie)
            return tr("With %1 rooting %2, %3 has to root %4 to cost the same for each rooted plant")
                .arg(cheap, shareText(pair_.cheap.strike.rate), dear, shareText(*pair_.dearStrikeToTie));
        if (pair_.cheap.strike.succeeded == 0)
            return tr("None rooted by %1, so no strike rate of %2 costs the same").arg(cheap, dear);
        return tr("With %1 rooting %2, no strike rate of %3 costs the same for each rooted plant")
            .arg(cheap, shareText(pair_.cheap.strike.rate), dear);
    }

    QString method() const override {
        if (!isShown()) return {};
        QString text = tr("On the line the cost of a cutting divided by the strike rate is the same by both. Box: %1 "
                          "intervals of the rates, the spread between batches counted.")
                           .arg(levelText(level_));
        if (pair_.worthOfADay && pair_.line.shift != 0) text += u' ' + tr("What days sooner are worth is in the line.");
        return text;
    }

    FigureTable table() const override {
        const QString dear = textOf(pair_.dear.name), cheap = textOf(pair_.cheap.name);
        FigureTable table{
            .title = sentence(), .headings = {tr("What"), tr("%1, %").arg(cheap), tr("%1, %").arg(dear)}, .rows = {}};
        if (!isShown()) return table;
        const auto add = [&](const QString& what, double x, double y) {
            table.rows.push_back({what, decimalText(100 * x, 1), decimalText(100 * y, 1)});
        };
        const core::CountedRate &x = pair_.cheap.strike, &y = pair_.dear.strike;
        table.rows.push_back({tr("Rooted of assessed"),
                              tr("%1 of %2", "rooted of assessed").arg(countText(x.succeeded), countText(x.of)),
                              tr("%1 of %2", "rooted of assessed").arg(countText(y.succeeded), countText(y.of))});
        add(tr("Strike rate"), x.rate, y.rate);
        add(tr("Low"), x.limits.low, y.limits.low);
        add(tr("High"), x.limits.high, y.limits.high);
        for (int tenth = 1; tenth <= 10; ++tenth)
            if (const auto tied = pair_.line.dearRateFor(tenth / 10.0)) add(tr("Costs the same"), tenth / 10.0, *tied);
        return table;
    }

    QSizeF sizeInEms() const override { return isShown() ? QSizeF(54, 25) : QSizeF(54, 9); }

  private:
    static bool isKnown(const core::WorthOfMethod& method) { return method.strike.of > 0 && method.pricedBatches > 0; }
    bool isShown() const { return isKnown(pair_.dear) && isKnown(pair_.cheap); }

    QString whyNot() const {
        for (const core::WorthOfMethod* method : {&pair_.dear, &pair_.cheap})
            if (method->pricedBatches == 0) return tr("Nothing of %1 is priced yet.").arg(textOf(method->name));
        for (const core::WorthOfMethod* method : {&pair_.dear, &pair_.cheap})
            if (method->strike.of == 0) return tr("Nothing of %1 is assessed yet.").arg(textOf(method->name));
        return {};
    }

    void draw(Canvas& canvas, const QRectF& area) const override {
        if (!isShown()) return drawEmptyPicture(canvas, area, whyNot());
        drawStrikePlane(canvas, area, pair_, level_);
    }

    core::WorthOfPair pair_;
    double level_{};
};

}  // namespace

std::shared_ptr<const Figure> strikePlaneFigure(core::WorthOfPair pair, double level) {
    return std::make_shared<StrikePlaneFigure>(std::move(pair), level);
}

}  // namespace plot
