// SPDX-License-Identifier: MIT
// The session's grid under the fingers: typing starts at once; Enter goes on to the next cell that is usually typed, from Stuck to the next
// row, and in a copied row from a plant that stays to the station; Tab and the arrows go to any cell; the quotation mark copies the cell
// above; Ctrl+Delete takes a row away.
#pragma once

#include <QTableView>

namespace desktop {

class SessionModel;

class SessionGrid : public QTableView {
    Q_OBJECT

  public:
    explicit SessionGrid(SessionModel& model, QWidget* parent = nullptr);

    /// What its keys do, in a few sentences.
    [[nodiscard]] static QString keysText();

    void goTo(int row, int column);
    void keyboardSearch(const QString&) override {}  // letters start typing, they don't search
    void removeCurrentRow();
    /// To the next cell that can be typed into; from the last one to the next row.
    void goRight();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void goOn();
    void goBack();
    void goToNextRow();
    void shareWidth();

    SessionModel& model_;
};

}  // namespace desktop
