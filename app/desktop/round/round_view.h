// SPDX-License-Identifier: MIT
// The table of a round: the cursor lives in the Entry column, typing starts at once, Enter takes the entry and goes down. A refused entry stays
// open under the cursor with its reason beside it. * or space in a blank row says "nothing new" and goes down at once. Tab leaves the table; a batch code typed or scanned jumps to its row.
#pragma once

#include <QLineEdit>
#include <QPointer>
#include <QStyledItemDelegate>
#include <QTableView>

namespace desktop {

class RoundModel;

class RoundView : public QTableView {
    Q_OBJECT

  public:
    explicit RoundView(RoundModel* model, QWidget* parent = nullptr);

    void goToRow(int row);
    /// Nothing new in this row, which is one key; then the next row. A row that has an entry keeps it.
    void passOver();
    /// Takes what stands in the open editor, as if the cursor had left it.
    void commitOpenEditor();
    /// What an entry means is to be read; where the text is large, what stands below the table too makes room for it.
    void hideWhatHasNoRoom();

    void keyboardSearch(const QString& search) override;

  signals:
    /// Enter on the last row: with every row entered, or with some left out.
    void finished();
    void endReached();

  protected:
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    void keyPressEvent(QKeyEvent* event) override;
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
    void focusInEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    class Delegate;
    void goDown(int fromRow);

    RoundModel* model_;
    QPointer<QLineEdit> editor_;
    int jumpTo_{-1};
};

}  // namespace desktop
