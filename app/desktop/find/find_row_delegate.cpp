// SPDX-License-Identifier: MIT
#include "app/desktop/find/find_row_delegate.h"

#include <QApplication>
#include <QPainter>

#include "app/desktop/find/find_model.h"
#include "app/desktop/look/look.h"
#include "app/desktop/names/plant_name_delegate.h"
#include "app/plot/plant_name.h"

namespace desktop {

namespace {

/// Puts text after text into what is left of a row, mirrored where the language runs from right to left.
class FindRowPen {
  public:
    FindRowPen(QPainter& painter, const QStyleOptionViewItem& option, QRect room)
        : painter_(painter),
          option_(option),
          room_(room),
          alignment_(static_cast<int>(Qt::AlignVCenter | Qt::TextSingleLine) |
                     static_cast<int>(QStyle::visualAlignment(option.direction, Qt::AlignLeft))) {}

    void write(const QString& text, const QFont& font, const QColor& colour) {
        if (text.isEmpty() || room_.width() <= 0) return;
        const QFontMetrics metrics(font, painter_.device());
        painter_.setFont(font);
        painter_.setPen(colour);
        const QString fitting = metrics.elidedText(text, Qt::ElideRight, room_.width());
        painter_.drawText(QStyle::visualRect(option_.direction, option_.rect, room_), alignment_, fitting);
        room_.setLeft(room_.left() + metrics.horizontalAdvance(fitting));
    }
    void writePlant(const QString& name, const QFont& font, const QColor& colour) {
        for (const plot::NamePart& part : plot::partsOfPlantName(name)) {
            QFont set = font;
            set.setItalic(part.isItalic);
            write(part.text, set, colour);
        }
    }
    void skip(int width) { room_.setLeft(room_.left() + width); }

  private:
    QPainter& painter_;
    const QStyleOptionViewItem& option_;
    QRect room_;
    int alignment_;
};

}  // namespace

void FindRowDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyleOptionViewItem row = option;
    initStyleOption(&row, index);
    row.state.setFlag(QStyle::State_Active);  // the keys go to the field, the list is where they work
    row.text.clear();
    row.icon = {};
    const QStyle* style = row.widget ? row.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &row, painter, row.widget);

    const bool isSelected = row.state.testFlag(QStyle::State_Selected);
    const QColor colour = textColourOf(row);
    const QColor quiet = isSelected ? colour : quietColour(row.palette);
    const int em = row.fontMetrics.height();
    painter->save();
    if (index.data(FindModel::StartsKindRole).toBool()) {
        painter->setPen(edgeColour(row.palette));
        painter->drawLine(row.rect.topLeft(), row.rect.topRight());
    }
    const QRect within = row.rect.adjusted(em / 2, 0, -em / 2, 0);
    const QRect sign(within.left(), within.center().y() - em / 2, em, em);
    index.data(Qt::DecorationRole)
        .value<QIcon>()
        .paint(painter, QStyle::visualRect(row.direction, row.rect, sign), Qt::AlignCenter,
               isSelected ? QIcon::Selected : QIcon::Normal);
    const QString kind = index.data(FindModel::KindRole).toString();
    const int kindWidth = row.fontMetrics.horizontalAdvance(kind) + 1;
    FindRowPen last(*painter, row, within.adjusted(within.width() - kindWidth, 0, 0, 0));
    last.write(kind, row.font, quiet);

    FindRowPen pen(*painter, row, within.adjusted(em * 3 / 2, 0, -kindWidth - em, 0));
    const QString title = index.data().toString();
    const QString plant = index.data(FindModel::PlantRole).toString();
    if (title == plant) {
        pen.writePlant(plant, row.font, colour);
    } else {
        pen.write(title, row.font, colour);
        pen.skip(em * 3 / 4);
        pen.writePlant(plant, row.font, colour);
    }
    pen.skip(em * 3 / 4);
    pen.write(index.data(FindModel::DetailRole).toString(), row.font, quiet);
    painter->restore();
}

QSize FindRowDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {option.fontMetrics.averageCharWidth() * 40, option.fontMetrics.height() * 8 / 5};
}

}  // namespace desktop
