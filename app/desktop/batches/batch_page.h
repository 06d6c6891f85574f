// SPDX-License-Identifier: MIT
// One batch: facts, the timeline of its checks, its curve against the grower's own past, its place among other batches, what the records
// say, and every edit.
#pragma once

#include <QWidget>
#include <memory>
#include <vector>

#include "app/desktop/page.h"

class QFormLayout;
class QLabel;
class QPushButton;
class QTabWidget;
class QVBoxLayout;

namespace desktop {

class BatchPageModel;
class CheckTimeline;
class FigurePanel;

class BatchPage : public QWidget {
    Q_OBJECT

  public:
    explicit BatchPage(const PageContext& context, QWidget* parent = nullptr);

    /// False when there is no such batch.
    bool show(core::BatchId batch);
    void clear();
    void focusChecks();
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const;

  signals:
    void backWanted();
    void said(const QString& sentence);
    void sheetChanged();

  private:
    void build();
    QWidget* makeHead();
    QWidget* makeFacts();
    QPushButton* makeEdit(const QString& text, const QString& name, void (BatchPage::*act)());
    QPushButton* makeButton(const QString& text, const QString& name, void (BatchPage::*act)());
    void showView();
    void showSummary();
    void recordCheck();
    void editBatch();
    void editSession();
    void closeOrReopen();
    void deleteBatch();
    void print();

    PageContext context_;
    BatchPageModel* model_;
    CheckTimeline* checks_;
    QLabel* code_{};
    QLabel* plant_{};
    QLabel* state_{};
    QLabel* inWords_{};
    QLabel* cautions_{};
    QFormLayout* facts_{};
    QTabWidget* figures_{};
    FigurePanel *curve_{}, *chart_{};
    std::vector<QPushButton*> edits_;  // what a logbook that is only read has no use for
    QPushButton* closing_{};
    QPushButton* print_{};
};

}  // namespace desktop
