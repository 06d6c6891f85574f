// SPDX-License-Identifier: MIT
#include "app/desktop/bench/fill_delegate.h"

#include <QApplication>
#include <QPainter>

#include "app/desktop/look/look.h"

namespace desktop {

namespace {

constexpr int barInCharacters = 10;

int barWidth(const QFontMetrics& metrics) {
    return metrics.averageCharWidth() * barInCharacters;
}

int gap(const QFontMetrics& metrics) {
    return metrics.averageCharWidth();
}

}  // namespace

void FillDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const QVariant share = index.data(shareRole);
    if (!share.isValid()) return QStyledItemDelegate::paint(painter, option, index);
    QStyleOptionViewItem words = option;
    initStyleOption(&words, index);
    const QString text = std::exchange(words.text, QString());
    QApplication::style()->drawControl(QStyle::CE_ItemViewItem, &words, painter, words.widget);

    const bool isSelected = (option.state & QStyle::State_Selected) != 0;
    const QColor ink = option.palette.color(isSelected ? QPalette::HighlightedText : QPalette::Text);
    const int height = option.fontMetrics.height() * 3 / 5;
    QRect bar(option.rect.left() + gap(option.fontMetrics), option.rect.center().y() - height / 2,
              barWidth(option.fontMetrics), height);
    bar = QStyle::visualRect(option.direction, option.rect, bar);
    QRect taken = bar;
    taken.setWidth(qRound(bar.width() * share.toDouble()));
    taken = QStyle::visualRect(option.direction, bar, taken);
    painter->save();
    painter->fillRect(taken, isSelected ? ink : option.palette.color(QPalette::Highlight));
    painter->setPen(isSelected ? ink : edgeColour(option.palette));
    painter->drawRect(bar.adjusted(0, 0, -1, -1));
    QRect place = option.rect.adjusted(barWidth(option.fontMetrics) + 2 * gap(option.fontMetrics), 0, 0, 0);
    place = QStyle::visualRect(option.direction, option.rect, place);
    painter->setPen(ink);
    painter->drawText(place, Qt::AlignVCenter | Qt::AlignLeading,
                      option.fontMetrics.elidedText(text, Qt::ElideRight, place.width()));
    painter->restore();
}

QSize FillDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QSize size = QStyledItemDelegate::sizeHint(option, index);
    if (index.data(shareRole).isValid()) size.rwidth() += barWidth(option.fontMetrics) + 2 * gap(option.fontMetrics);
    return size;
}

}  // namespace desktop
