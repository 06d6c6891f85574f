// SPDX-License-Identifier: MIT
// One batch: facts, its pictures (strip, curve against the grower's own past, place among other batches, photos), the timeline of all
// that happened, what the records say, and every edit. Photos may be dropped on it or pasted.
#pragma once

#include <QWidget>
#include <memory>
#include <vector>

#include "app/desktop/page.h"

class QLabel;
class QPushButton;

namespace desktop {

class BatchFacts;
class BatchFigures;
class BatchPageModel;
class BatchTimeline;

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

  protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    void build();
    void connectTimeline();
    void paste();
    QWidget* makeHead();
    QPushButton* makeEdit(const QString& text, const QString& name, void (BatchPage::*act)());
    QPushButton* makeButton(const QString& text, const QString& name, void (BatchPage::*act)());
    void showView();
    void showSummary();
    void recordCheck();
    void editBatch();
    void editSession();
    void closeOrReopen();
    void deleteBatch();
    void openSuspects();
    void print();

    PageContext context_;
    BatchPageModel* model_;
    BatchFacts* facts_;
    BatchFigures* figures_;
    BatchTimeline* timeline_;
    QLabel* code_{};
    QLabel* plant_{};
    QLabel* state_{};
    std::vector<QPushButton*> edits_;  // what a logbook that is only read has no use for
    QPushButton* closing_{};
    QPushButton* suspects_{};
    QPushButton* print_{};
};

}  // namespace desktop
