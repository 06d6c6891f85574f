// SPDX-License-Identifier: MIT
// "What is due, what goes on?": the page that the day at the bench begins with.
#pragma once

#include <vector>

#include "app/desktop/page.h"
#include "core/climate/reading.h"

class QLabel;
class QPushButton;
class QStackedWidget;
class QTableView;
class QTreeView;

namespace desktop {

class AttentionPanel;
class BehindSearch;
class DueModel;
class EmptyBench;
class StationModel;
struct BenchView;

class BenchPage : public Page {
    Q_OBJECT

  public:
    explicit BenchPage(const PageContext& context, QWidget* parent = nullptr);

    void activated() override;
    /// What is due, with boxes for a pencil.
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const override;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    QWidget* makeHead();
    EmptyBench* makeEmpty();
    QWidget* makeDay();
    QWidget* makeDue();
    QWidget* makeAttention();
    QWidget* makeStations();
    void readAll();
    void showLines();
    void fitColumns();
    void fitStations();
    void showSentence(const BenchView& view);
    void showAttention();

    PageContext context_;
    DueModel* dueModel_;
    StationModel* stationModel_;
    BehindSearch* behind_;
    std::vector<core::Reading> readings_;  // the newest of each station and quantity
    bool hasBatches_{};

    QLabel* day_{};
    QLabel* sentence_{};
    QPushButton* round_{};
    QPushButton* session_{};
    QPushButton* reading_{};
    EmptyBench* empty_{};
    AttentionPanel* attention_{};
    QStackedWidget* stack_{};
    QTreeView* due_{};
    QTableView* stations_{};
};

}  // namespace desktop
