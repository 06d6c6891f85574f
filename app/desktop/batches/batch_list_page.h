// SPDX-License-Identifier: MIT
// The table of all batches, or of those of one plant, stock plant or station, with a box that filters it while one types.
#pragma once

#include <QWidget>

#include "app/desktop/page.h"
#include "db/logbook.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QStackedWidget;
class QTableView;

namespace desktop {

class BatchTableModel;
class TableColumns;

class BatchListPage : public QWidget {
    Q_OBJECT

  public:
    explicit BatchListPage(const PageContext& context, QWidget* parent = nullptr);

    void focusTable();
    void focusFilter();
    /// The batches of this plant, stock plant or station; all for Place::Kind::Page. False when there is no such thing.
    bool showOnly(const Place& whose);
    [[nodiscard]] const Place& only() const { return only_; }

  signals:
    void onlyChanged();
    void batchChosen(core::BatchId batch);
    void sessionWanted();
    void said(const QString& sentence);
    void placeWanted(const Place& place);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void build();
    QWidget* makeTable();
    [[nodiscard]] std::vector<int> usualWidths() const;
    QWidget* makeOnly();
    QWidget* makeEmpty();
    void showAllBatches();
    void readAll();
    void refresh(const db::Changes& changes);
    void showCounts();
    void openCurrent();
    void keepCurrent(const std::function<void()>& change);

    PageContext context_;
    BatchTableModel* model_;
    Place only_;
    QLineEdit* filter_{};
    QPushButton* columnsButton_{};
    QWidget* onlyRow_{};
    QLabel* onlyWords_{};
    QLabel* counts_{};
    QStackedWidget* stack_{};
    QTableView* table_{};
    TableColumns* columns_{};
    QLabel* emptyTitle_{};
    QLabel* emptyText_{};
    QPushButton* emptyButton_{};
};

}  // namespace desktop
