// SPDX-License-Identifier: MIT
// Cells of the session's grid: offers names while one types, draws plant names as they should be set, offered rows pale, and marks a
// fault with a sign and a line, so that colour isn't the only sign.
#pragma once

#include <QStyledItemDelegate>

namespace desktop {

class SessionModel;

class SessionCellDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    explicit SessionCellDelegate(SessionModel& model, QObject* parent = nullptr);

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

  private:
    void takeOffer();
    void takeTyped();
    void finish(QWidget* editor);

    SessionModel& model_;
};

}  // namespace desktop
