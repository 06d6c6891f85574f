// SPDX-License-Identifier: MIT
// Which season to look back on: a year, the last twelve months, or any span. The review is worked out away from the window's thread, with its
// share told and a way to call it off; then it is shown as the pages that it prints.
#pragma once

#include <QDialog>
#include <atomic>
#include <memory>

#include "app/desktop/background/read_beside.h"
#include "app/desktop/page.h"
#include "app/desktop/widgets/fault_label.h"
#include "core/review/season_review.h"

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;

namespace desktop {

class DateEdit;

class SeasonReviewDialog : public QDialog {
    Q_OBJECT

  public:
    explicit SeasonReviewDialog(const PageContext& context, QWidget* parent = nullptr);

    [[nodiscard]] bool isWorking() const { return isWorking_; }
    /// While it works this calls the work off; else it closes the dialog.
    void reject() override;

  signals:
    void reviewShown();
    void said(const QString& sentence);

  private:
    struct Reviewed {
        core::Shelves shelves;
        core::Result<core::SeasonReview> review;
    };
    using Answer = std::shared_ptr<const Reviewed>;

    void fillSpans();
    void build();
    [[nodiscard]] QWidget* makeDays();
    void takeSpan();
    [[nodiscard]] std::optional<core::ReviewQuestion> question();
    void work();
    void tellShare(double share);
    void setWorking(bool isWorking);
    void show(const Reviewed& reviewed);

    PageContext context_;
    core::Date today_;
    bool isWorking_{};
    std::atomic<int> percentTold_{-1};
    QComboBox* span_{};
    DateEdit* from_{};
    DateEdit* until_{};
    FaultLabel* fromFault_{};
    FaultLabel* untilFault_{};
    FaultMarks marks_;
    QLabel* state_{};
    QProgressBar* bar_{};
    QPushButton* review_{};
    QPushButton* cancel_{};
    ReadBeside<Answer> reading_;  // last, so that it has ended before anything else of ours does
};

}  // namespace desktop
