// SPDX-License-Identifier: MIT
// One shelf: its table with a box that filters it while one types, and what can be done to the thing of the current row.
#pragma once

#include <QWidget>

#include "app/desktop/page.h"
#include "app/desktop/shelves/shelf.h"

class QDialog;
class QLabel;
class QLineEdit;
class QPushButton;
class QStackedWidget;
class QTableView;

namespace desktop {

class FaultLabel;
class ShelfModel;
class TableColumns;

class ShelfView : public QWidget {
    Q_OBJECT

  public:
    ShelfView(const PageContext& context, const Shelf& shelf, QWidget* parent = nullptr);

    [[nodiscard]] const Shelf& shelf() const { return shelf_; }
    void focusTable();
    void focusFilter();
    /// Puts this thing's row in front; false when there is none. A filter that hides it is cleared.
    bool showThing(std::int64_t id);
    /// Reads the shelf anew, at once when it can be seen, else when it is next shown.
    void refresh();

  signals:
    void said(const QString& sentence);
    void placeWanted(const Place& place);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    void build();
    QWidget* makeTop();
    QWidget* makeTable();
    QWidget* makeButtons();
    QWidget* makeEmpty();
    QPushButton* button(const QString& name, const QString& text, const QString& tip, void (ShelfView::*verb)());
    [[nodiscard]] std::vector<int> usualWidths() const;
    [[nodiscard]] int stretchedColumn() const;
    void read();
    void showState();
    void showCurrent();
    bool handleKey(int key, bool isShifted);

    void makeNew();
    void makeAnother();
    void makeMany();
    void edit();
    void merge();
    void retireOrTakeBack();
    void removeThing();
    void showBatches();
    void openForm(std::int64_t id);
    void come(QDialog* dialog);
    void change(const Shelf::Edit& edit);

    PageContext context_;
    Shelf shelf_;
    ShelfModel* model_;
    bool isStale_{true};
    bool hasRead_{};
    QLineEdit* filter_{};
    QLabel* counts_{};
    QPushButton* columnsButton_{};
    TableColumns* columns_{};
    QStackedWidget* stack_{};
    QTableView* table_{};
    QLabel *emptyTitle_{}, *emptyText_{};
    QPushButton *emptyButton_{}, *start_{};
    FaultLabel* fault_{};
    ShelfDetails* details_{};  // where the shelf has some
    QPushButton *new_{}, *another_{}, *edit_{}, *merge_{}, *retire_{}, *remove_{}, *batches_{};
};

}  // namespace desktop
