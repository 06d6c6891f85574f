// SPDX-License-Identifier: MIT
#include "app/desktop/session/session_cell_delegate.h"

#include <QApplication>
#include <QCompleter>
#include <QLineEdit>
#include <QPainter>

#include "app/desktop/look/look.h"
#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/session/session_model.h"

namespace desktop {

SessionCellDelegate::SessionCellDelegate(SessionModel& model, QObject* parent)
    : QStyledItemDelegate(parent), model_(model) {}

QWidget* SessionCellDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                           const QModelIndex& index) const {
    auto* line = new QLineEdit(parent);
    line->setObjectName(QStringLiteral("cellEditor"));
    line->setFrame(false);
    line->setMaxLength(4000);
    line->setAccessibleName(headingOf(static_cast<SessionColumn>(index.column())));
    const QStringList offers = model_.offersFor(index);
    if (!offers.isEmpty()) {
        auto* completer = new QCompleter(offers, line);
        completer->setCaseSensitivity(Qt::CaseInsensitive);
        completer->setFilterMode(Qt::MatchContains);
        completer->setMaxVisibleItems(10);
        line->setCompleter(completer);
        // Enter on an offer takes it and goes on, as Enter on typed text does; the text is set by then.
        connect(completer, qOverload<const QString&>(&QCompleter::activated), this, &SessionCellDelegate::takeOffer,
                Qt::QueuedConnection);
    }
    return line;
}

void SessionCellDelegate::takeOffer() {
    const auto* completer = qobject_cast<QCompleter*>(sender());
    if (completer == nullptr) return;  // its editor was closed meanwhile
    emit commitData(completer->widget());
    emit closeEditor(completer->widget(), QAbstractItemDelegate::SubmitModelCache);
}

void SessionCellDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    auto* line = static_cast<QLineEdit*>(editor);
    line->setText(index.data(Qt::EditRole).toString());
    line->selectAll();
}

void SessionCellDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyleOptionViewItem item = option;
    initStyleOption(&item, index);
    const bool isSelected = (item.state & QStyle::State_Selected) != 0;
    const bool isQuiet = index.data(SessionGridModel::IsOfferedRole).toBool() ||
                         static_cast<SessionColumn>(index.column()) == SessionColumn::Method;
    if (isQuiet && !isSelected) item.palette.setColor(QPalette::Text, quietColour(item.palette));
    const QString fault = index.data(SessionGridModel::FaultRole).toString();
    const QString text = item.text;
    const bool isPlantName = index.data(SessionGridModel::IsPlantNameRole).toBool();
    if (isPlantName) item.text.clear();
    const QStyle* style = item.widget == nullptr ? QApplication::style() : item.widget->style();
    style->drawControl(QStyle::CE_ItemViewItem, &item, painter, item.widget);
    if (isPlantName) drawPlantName(*painter, item, text);
    if (fault.isEmpty()) return;
    const int size = item.fontMetrics.height();
    const QRect box = item.rect.adjusted(1, 1, -1, -1);
    painter->save();
    painter->setPen(QPen(isSelected ? textColourOf(item) : faultColour(item.palette), std::max(1, size / 9)));
    painter->drawLine(box.bottomLeft(), box.bottomRight());
    painter->restore();
    const bool isCount = static_cast<SessionColumn>(index.column()) == SessionColumn::Count;
    const QRect place(isCount ? box.left() + 2 : box.right() - size - 1, box.center().y() - size / 2, size, size);
    icon(QStringLiteral("fault")).paint(painter, place);
}

}  // namespace desktop
