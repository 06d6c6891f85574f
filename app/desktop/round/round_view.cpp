// SPDX-License-Identifier: MIT
#include "app/desktop/round/round_view.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <array>
#include <utility>

#include "app/desktop/look/look.h"
#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/round/round_model.h"
#include "app/desktop/widgets/table_manners.h"

namespace desktop {

class RoundView::Delegate : public QStyledItemDelegate {
  public:
    explicit Delegate(RoundView* view) : QStyledItemDelegate(view), view_(view) {}

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex& index) const override {
        auto* editor = new QLineEdit(parent);
        editor->setObjectName("roundEntry");
        editor->setAccessibleName(
            RoundView::tr("Entry for %1").arg(index.siblingAtColumn(RoundModel::Code).data().toString()));
        connect(editor, &QLineEdit::textEdited, view_->model_,
                [view = view_, index = QPersistentModelIndex(index)](const QString& typed) {
                    view->model_->preview(index.row(), typed);
                });
        view_->editor_ = editor;
        return editor;
    }

    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override {
        const QString typed = static_cast<QLineEdit*>(editor)->text().trimmed();
        const int row = !typed.isEmpty() && typed.front().isLetter() ? view_->model_->rowOf(typed) : -1;
        if (row < 0) {
            model->setData(index, typed);
            return;
        }
        view_->jumpTo_ = row;
        view_->model_->enter(index.row(), index.data(Qt::EditRole).toString());
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        QStyledItemDelegate::paint(painter, option, index);
        if (index.column() != RoundModel::Entry) return;
        // Shows where the keys go, also in a row that is not the current one.
        const bool isCurrent = index.row() == view_->currentIndex().row();
        painter->save();
        painter->setPen(QPen(isCurrent ? focusColour(option.palette) : edgeColour(option.palette), isCurrent ? 2 : 1));
        painter->drawRect(option.rect.adjusted(1, 1, -2, -2));
        painter->restore();
    }

  private:
    RoundView* view_;
};

RoundView::RoundView(RoundModel* model, QWidget* parent) : QTableView(parent), model_(model) {
    setModel(model);
    setItemDelegate(new Delegate(this));
    setItemDelegateForColumn(RoundModel::Plant, new PlantNameDelegate(this));
    giveTableManners(*this);
    setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::EditKeyPressed |
                    QAbstractItemView::SelectedClicked | QAbstractItemView::DoubleClicked);
    // Only the cell that takes the keys is marked, so that what stands around it stays readable.
    setSelectionBehavior(QAbstractItemView::SelectItems);
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() * 2);
    setTextElideMode(Qt::ElideRight);
}

void RoundView::goToRow(int row) {
    if (row < 0 || row >= model_->rowCount()) return;
    setCurrentIndex(model_->index(row, RoundModel::Entry));
    setFocus(Qt::OtherFocusReason);
}

void RoundView::commitOpenEditor() {
    if (!editor_) return;
    commitData(editor_);
    QTableView::closeEditor(editor_, QAbstractItemDelegate::NoHint);
    editor_ = nullptr;
}

void RoundView::keyboardSearch(const QString&) {}

QModelIndex RoundView::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
    if (action == MoveLeft || action == MoveRight) return currentIndex();
    const QModelIndex next = QTableView::moveCursor(action, modifiers);
    return next.isValid() ? next.siblingAtColumn(RoundModel::Entry) : next;
}

void RoundView::keyPressEvent(QKeyEvent* event) {
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    // Comes up from the editor, whose delegate takes the entry a moment later.
    if (isEnter && state() == EditingState) return;
    const bool isPlain = (event->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier)) == Qt::NoModifier;
    if (!isPlain || !currentIndex().isValid() || state() == EditingState) return QTableView::keyPressEvent(event);
    if (isEnter) return goDown(currentIndex().row());
    const bool isBlank = currentIndex().siblingAtColumn(RoundModel::Entry).data().toString().isEmpty();
    if (event->key() == Qt::Key_Space || (event->text() == QStringLiteral("*") && isBlank)) return passOver();
    QTableView::keyPressEvent(event);
}

void RoundView::passOver() {
    const int row = currentIndex().row();
    if (!model_->isEntered(row) && !model_->isFault(row)) model_->enter(row, QStringLiteral("*"));
    // One key must not end the round: from the last row it leads to the button.
    if (row + 1 < model_->rowCount())
        goToRow(row + 1);
    else
        emit endReached();
}

void RoundView::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
    const int row = currentIndex().row();
    const int jumpTo = std::exchange(jumpTo_, -1);
    if (hint == QAbstractItemDelegate::RevertModelCache && row >= 0)
        model_->enter(row, model_->index(row, RoundModel::Entry).data(Qt::EditRole).toString());
    const bool isRefused = row >= 0 && model_->index(row, RoundModel::Entry).data(RoundModel::isFaultRole).toBool();
    if (hint == QAbstractItemDelegate::SubmitModelCache && isRefused && jumpTo < 0)
        return;  // stays open under the cursor
    QTableView::closeEditor(editor, QAbstractItemDelegate::NoHint);
    editor_ = nullptr;  // it lives on until the event queue comes round
    if (jumpTo >= 0)
        goToRow(jumpTo);
    else if (hint == QAbstractItemDelegate::SubmitModelCache)
        goDown(row);
    else if (hint == QAbstractItemDelegate::EditNextItem || hint == QAbstractItemDelegate::EditPreviousItem)
        focusNextPrevChild(hint == QAbstractItemDelegate::EditNextItem);
}

void RoundView::hideWhatHasNoRoom() {
    constexpr std::array besides{RoundModel::Withdrawn, RoundModel::Station};
    for (const int column : besides) setColumnHidden(column, false);
    const int wanted = fontMetrics().averageCharWidth() * 30;
    int room = viewport()->width();
    for (int column = 0; column < RoundModel::Meaning; ++column) room -= columnWidth(column);
    for (const int column : besides) {
        if (room >= wanted) return;
        room += columnWidth(column);
        setColumnHidden(column, true);
    }
}

void RoundView::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    hideWhatHasNoRoom();
}

void RoundView::focusInEvent(QFocusEvent* event) {
    QTableView::focusInEvent(event);
    if (!currentIndex().isValid() && model_->rowCount() > 0) goToRow(0);
}

void RoundView::goDown(int fromRow) {
    if (fromRow + 1 < model_->rowCount()) return goToRow(fromRow + 1);
    if (model_->isComplete())
        emit finished();
    else
        emit endReached();
}

}  // namespace desktop
