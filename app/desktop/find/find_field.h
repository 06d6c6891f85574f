// SPDX-License-Identifier: MIT
// The field at the top of the window, and under it the list of what it found. The keys stay in the field: arrows choose, Enter opens, Esc
// clears and gives the focus back to where it was. A scanner types a code and Enter, and that opens the batch.
#pragma once

#include <QLineEdit>
#include <QPointer>

#include "app/desktop/find/find_index.h"

class QFrame;
class QLabel;
class QListView;

namespace desktop {

class FindModel;
class Finder;

class FindField : public QLineEdit {
    Q_OBJECT

  public:
    explicit FindField(Finder& finder, QWidget* parent = nullptr);

    /// Puts the focus here; what stands in it is selected.
    void enter();
    /// A letter that was typed where nobody wanted it begins here.
    void startWith(const QString& letter);

  signals:
    void chosen(const FoundThing& thing);
    /// Enter, and there is nothing of the kind: why, in a sentence.
    void notFound(const QString& sentence);
    /// Left by Esc, and nothing is there that had the focus before.
    void left();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void makeList();
    void find();
    void showList();
    void hideList();
    void placeList();
    void tellCurrent();
    void accept();
    void open(int row);
    void leave();
    [[nodiscard]] QString countText() const;
    [[nodiscard]] QString notFoundText() const;

    Finder& finder_;
    FindModel* model_;
    QFrame* popup_{};
    QListView* list_{};
    QLabel* count_{};
    QPointer<QWidget> before_;  // had the focus
    bool isRowChosen_{};        // by an arrow key, not by being first
};

}  // namespace desktop
