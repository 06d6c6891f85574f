// SPDX-License-Identifier: MIT
// The table of all batches with a box that filters it while one types.
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

class BatchListPage : public QWidget {
    Q_OBJECT

  public:
    explicit BatchListPage(const PageContext& context, QWidget* parent = nullptr);

    void focusTable();
    void focusFilter();

  signals:
    void batchChosen(core::BatchId batch);
    void sessionWanted();
    void said(const QString& sentence);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void build();
    QWidget* makeTable();
    void setWidths();
    QWidget* makeEmpty();
    void readAll();
    void refresh(const db::Changes& changes);
    void showCounts();
    void openCurrent();
    void keepCurrent(const std::function<void()>& change);

    PageContext context_;
    BatchTableModel* model_;
    QLineEdit* filter_{};
    QLabel* counts_{};
    QStackedWidget* stack_{};
    QTableView* table_{};
    QLabel* emptyTitle_{};
    QLabel* emptyText_{};
    QPushButton* emptyButton_{};
};

}  // namespace desktop
