// SPDX-License-Identifier: MIT
// "What is due, what goes on?": the page that the day at the bench begins with.
#pragma once

#include <vector>

#include "app/desktop/page.h"
#include "core/records.h"

class QLabel;
class QPushButton;
class QStackedWidget;
class QTableView;
class QTreeView;

namespace db {
struct Changes;
}

namespace desktop {

class DueModel;
class StationModel;

class BenchPage : public Page {
    Q_OBJECT

  public:
    explicit BenchPage(const PageContext& context, QWidget* parent = nullptr);

    void activated() override;

  private:
    QWidget* makeHead();
    QWidget* makeEmpty();
    QWidget* makeDay();
    QWidget* makeDue();
    QWidget* makeStations();
    void readAll();
    void readChanged(const db::Changes& changes);
    void showLines();

    PageContext context_;
    DueModel* dueModel_;
    StationModel* stationModel_;
    std::vector<core::BatchLine> lines_;

    QLabel* day_{};
    QLabel* sentence_{};
    QPushButton* round_{};
    QPushButton* session_{};
    QPushButton* firstSession_{};
    QStackedWidget* stack_{};
    QTreeView* due_{};
    QTableView* stations_{};
};

}  // namespace desktop
