// SPDX-License-Identifier: MIT
#include "app/desktop/names/plant_name_delegate.h"

#include <QApplication>
#include <QPainter>

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
    QRect place = style->subElementRect(QStyle::SE_ItemViewItemText, &asText, option.widget);
    const int margin = style->pixelMetric(QStyle::PM_FocusFrameHMargin, &asText, option.widget) + 1;
    place.adjust(margin, 0, -margin, 0);
    painter.save();
    painter.setPen(textColourOf(option));
    for (const plot::NamePart& part : plot::partsOfPlantName(name)) {
        QFont font = option.font;
        font.setItalic(part.isItalic);
        const QFontMetrics metrics(font, painter.device());
        const QString fitting = metrics.elidedText(part.text, Qt::ElideRight, place.width());
        painter.setFont(font);
        painter.drawText(place, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, fitting);
        if (fitting != part.text) break;
        place.setLeft(place.left() + metrics.horizontalAdvance(part.text));
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
