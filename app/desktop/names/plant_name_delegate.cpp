// SPDX-License-Identifier: MIT
#include "app/desktop/names/plant_name_delegate.h"

#include <QApplication>
#include <QPainter>
#include <QtMath>
#include <algorithm>

#include "app/desktop/names/cell_text.h"
#include "app/plot/plant_name.h"

namespace desktop {

QColor textColourOf(const QStyleOptionViewItem& option) {
    const bool isSelected = (option.state & QStyle::State_Selected) != 0;
    const bool isEnabled = (option.state & QStyle::State_Enabled) != 0;
    const bool isActive = (option.state & QStyle::State_Active) != 0;
    const QPalette::ColorGroup group = !isEnabled ? QPalette::Disabled
                                       : isActive ? QPalette::Normal
                                                  : QPalette::Inactive;
    return option.palette.color(group, isSelected ? QPalette::HighlightedText : QPalette::Text);
}

void drawPlantName(QPainter& painter, const QStyleOptionViewItem& option, const QString& name) {
    const QStyle* style = option.widget == nullptr ? QApplication::style() : option.widget->style();
    QStyleOptionViewItem asText = option;
    asText.text = name;
    const QRect place = style->subElementRect(QStyle::SE_ItemViewItemText, &asText, option.widget);
    const int margin = style->pixelMetric(QStyle::PM_FocusFrameHMargin, &asText, option.widget) + 1;
    drawPlantNameIn(place.adjusted(margin, 0, -margin, 0), painter, option, name);
}

void drawPlantNameIn(QRect place, QPainter& painter, const QStyleOptionViewItem& option, const QString& name) {
    const std::vector<plot::NamePart> parts = plot::partsOfPlantName(name);
    QFont upright = option.font;
    upright.setItalic(false);
    QFont italic = option.font;
    italic.setItalic(true);
    const auto fontOf = [&](const plot::NamePart& part) -> const QFont& { return part.isItalic ? italic : upright; };
    // A botanical name is read from left to right wherever it stands.
    if (option.direction == Qt::RightToLeft) {
        int width = 0;
        for (const plot::NamePart& part : parts)
            width += qCeil(cellTextWidth(fontOf(part), Qt::LeftToRight, part.text));
        place.setLeft(std::max(place.left(), place.right() + 1 - width));
    }
    painter.save();
    painter.setPen(textColourOf(option));
    for (const plot::NamePart& part : parts) {
        painter.setFont(fontOf(part));
        const DrawnText drawn = drawCellText(painter, place, Qt::AlignLeft, Qt::LeftToRight, part.text);
        if (!drawn.isWhole) break;
        place.setLeft(place.left() + qRound(drawn.width));
    }
    painter.restore();
}

void PlantNameDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyleOptionViewItem item = option;
    initStyleOption(&item, index);
    const QString name = item.text;
    item.text.clear();
    const QStyle* style = item.widget == nullptr ? QApplication::style() : item.widget->style();
    style->drawControl(QStyle::CE_ItemViewItem, &item, painter, item.widget);
    drawPlantName(*painter, item, name);
}

QString plantNameAsHtml(const QString& name) {
    QString html;
    for (const plot::NamePart& part : plot::partsOfPlantName(name))
        html += part.isItalic ? QStringLiteral("<i>%1</i>").arg(part.text.toHtmlEscaped()) : part.text.toHtmlEscaped();
    return html;
}

}  // namespace desktop
