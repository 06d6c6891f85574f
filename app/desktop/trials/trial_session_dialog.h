// SPDX-License-Identifier: MIT
// One session of a trial, as chance dealt it: what goes where stands there already; the day, and what of the cuttings was not dealt, is said
// once for all of them. Saved as one action; then the codes, labels and the session's sheet.
#pragma once

#include <QDialog>
#include <vector>

#include "app/desktop/page.h"
#include "app/desktop/workspace.h"
#include "core/trial/trial_rules.h"

class QComboBox;
class QLineEdit;
class QPushButton;
class QStackedWidget;
class QTableWidget;

namespace desktop {

class DateEdit;
class FaultLabel;
class SavedSession;

class TrialSessionDialog : public QDialog {
    Q_OBJECT

  public:
    TrialSessionDialog(const PageContext& context, core::TrialId trial, QWidget* parent = nullptr);

  signals:
    void said(const QString& sentence);

  private:
    QWidget* makeEntry();
    QWidget* makeHead();
    QWidget* makeCuttings();
    QWidget* makeFoot();
    void fillSessions();
    void fillBatches();
    void fillStockPlants();
    void placeAgain();
    void save();
    [[nodiscard]] std::vector<core::PlannedBatch> filledIn() const;
    [[nodiscard]] const core::Trial* trial() const;
    [[nodiscard]] QComboBox* makeChoice(const char* name);

    PageContext context_;
    core::TrialId id_;
    std::vector<core::PlannedBatch> planned_;
    QStackedWidget* pages_{};
    SavedSession* saved_{};
    QComboBox *session_{}, *plant_{}, *stockPlant_{}, *treatment_{}, *medium_{}, *kind_{};
    DateEdit* day_{};
    QLineEdit *worker_{}, *note_{};
    QTableWidget* batches_{};
    FaultLabel *dayFault_{}, *fault_{};
    QPushButton *save_{}, *again_{};
};

/// The first session of which anything is still to be stuck; 0: none.
[[nodiscard]] int sessionToStick(const core::Trial& trial);

}  // namespace desktop
