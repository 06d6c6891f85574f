// SPDX-License-Identifier: MIT
// The session's grid under the fingers: typing starts at once, Enter goes on to the next cell and from the last one to a new row, the
// quotation mark copies the cell above, Ctrl+Delete takes a row away.
#pragma once

#include <QTableView>

namespace desktop {

class SessionModel;

class SessionGrid : public QTableView {
    Q_OBJECT

  public:
    explicit SessionGrid(SessionModel& model, QWidget* parent = nullptr);

    void goTo(int row, int column);
    void keyboardSearch(const QString&) override {}  // letters start typing, they don't search
    void removeCurrentRow();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void goOn();
    void goBack();
    void shareWidth();

    SessionModel& model_;
};

}  // namespace desktop
