// SPDX-License-Identifier: MIT
// Everything that happened to the batch that is shown, in one table in order of time: filtered by kind, each row corrected or deleted where
// it can be, and every kind of event added.
#pragma once

#include <QWidget>
#include <vector>

#include "app/desktop/batches/batch_events.h"
#include "app/desktop/page.h"

class QComboBox;
class QLabel;
class QPushButton;
class QTableView;

namespace desktop {

class BatchPageModel;
class EventTableModel;
struct Outcome;

class BatchTimeline : public QWidget {
    Q_OBJECT

  public:
    BatchTimeline(BatchPageModel& model, const PageContext& context, QWidget* parent = nullptr);

    /// What the model has now; the current row is kept where it is still there.
    void show(bool isWritable);
    void chooseNewest();
    void focusTable();
    /// Opens the dialog for a look of today: a new check, or the one that today has already.
    void recordCheck();
    void newReading();
    void newCare();
    void newExpense();
    void newPotting();

  signals:
    void said(const QString& sentence);
    void photosWanted();  // add some
    void photoFactsWanted(core::PhotoId photo);
    void photoDeletionWanted(core::PhotoId photo);
    void sessionWanted();  // to be corrected

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void build();
    QWidget* makeRow();
    QPushButton* makeButton(const QString& text, const char* name, const QString& tip, void (BatchTimeline::*act)());
    void fill();
    void showButtons();
    void edit();
    void editCheck(core::CheckId check);
    void editReadings(const BatchEvent& event);
    void editCare(core::CareId care);
    void editExpense(core::ExpenseId expense);
    void editPotting(core::PottingId potting);
    [[nodiscard]] std::optional<core::Expense> expenseOf(core::ExpenseId id) const;  // the session's too
    void printMix(core::KeptMixId mix);                                              // its card as it was
    void remove();
    void tell(const Outcome& outcome);
    void openDialog(class QDialog* dialog);
    void filter();

    BatchPageModel& model_;
    PageContext context_;
    EventTableModel* events_;
    QLabel* caption_{};
    QComboBox* only_{};
    QTableView* table_{};
    QPushButton *edit_{}, *remove_{};
    std::vector<QPushButton*> additions_;
    bool isWritable_{};
};

}  // namespace desktop
