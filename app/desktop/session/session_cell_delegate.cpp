// SPDX-License-Identifier: MIT
#include "app/desktop/session/session_cell_delegate.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QCompleter>
#include <QLineEdit>
#include <QPainter>
#include <QPointer>

#include "app/desktop/look/look.h"
#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/session/offer_edit.h"
#include "app/desktop/session/session_model.h"

namespace desktop {

SessionCellDelegate::SessionCellDelegate(SessionModel& model, QObject* parent)
    : QStyledItemDelegate(parent), model_(model) {}

QWidget* SessionCellDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                           const QModelIndex& index) const {
    const QStringList offers = model_.offersFor(index);
    QLineEdit* line = offers.isEmpty() ? new QLineEdit(parent) : new OfferEdit(offers, parent);
    line->setObjectName(QStringLiteral("cellEditor"));
    line->setFrame(false);
    line->setMaxLength(4000);
    line->setAccessibleName(headingOf(static_cast<SessionColumn>(index.column())));
    if (const QCompleter* completer = line->completer()) {
        // While offers are shown they get the keys, and the delegate doesn't see Enter: we go on as Enter on typed text does.
        connect(completer, qOverload<const QString&>(&QCompleter::activated), this, &SessionCellDelegate::takeOffer,
                Qt::QueuedConnection);
        connect(line, &QLineEdit::returnPressed, this, &SessionCellDelegate::takeTyped);
    }
    return line;
}

void SessionCellDelegate::takeOffer() {
    const auto* completer = qobject_cast<QCompleter*>(sender());
    if (completer != nullptr) finish(completer->widget());
}

void SessionCellDelegate::takeTyped() {
    const QPointer<QLineEdit> line = qobject_cast<QLineEdit*>(sender());
    if (line == nullptr || !line->completer()->popup()->isVisible()) return;  // the delegate has seen it
    QMetaObject::invokeMethod(
        this, [this, line] { finish(line); }, Qt::QueuedConnection);
}

void SessionCellDelegate::finish(QWidget* editor) {
    if (editor == nullptr || !editor->isVisible()) return;  // closed meanwhile
    emit commitData(editor);
    emit closeEditor(editor, QAbstractItemDelegate::SubmitModelCache);
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
    const bool isQuiet =
        index.data(SessionGridModel::IsOfferedRole).toBool() || index.data(SessionGridModel::IsFilledRole).toBool();
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
