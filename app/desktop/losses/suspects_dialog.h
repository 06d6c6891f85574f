// SPDX-License-Identifier: MIT
// "What may have gone wrong" with one batch: the verdict and its warning, the suspects, likeliest first, and of the chosen one what speaks for
// and against it, what to change, and a trial to find out, one click away.
#pragma once

#include <QDialog>

#include "app/desktop/page.h"
#include "core/causes/suspects.h"

class QLabel;
class QListWidget;
class QPushButton;
class QTextBrowser;

namespace desktop {

class SuspectsModel;

class SuspectsDialog : public QDialog {
    Q_OBJECT

  public:
    SuspectsDialog(core::BatchId batch, const PageContext& context, QWidget* parent = nullptr);
    /// No way to the batch: it was opened from there.
    void leaveOutBatch();

  signals:
    void said(const QString& sentence);
    /// The dialog closes when somebody asks for the batch itself.
    void batchWanted(core::BatchId batch);

  private:
    QWidget* makeSuspects();
    QWidget* makeButtons();
    QPushButton* addButton(const QString& name, const QString& text, void (SuspectsDialog::*act)());
    [[nodiscard]] static QString textOf(const core::Suspect& suspect);
    void showView();
    void showList();
    void showChosen();
    [[nodiscard]] const core::Suspect* chosen() const;
    void planTrial();
    void openBatch();
    void print();

    PageContext context_;
    core::BatchId batch_;
    SuspectsModel* model_;
    QLabel *title_{}, *plant_{}, *state_{}, *inWords_{}, *warning_{}, *against_{}, *nextTime_{};
    QWidget* suspects_{};
    QListWidget* list_{};
    QTextBrowser* details_{};
    QPushButton *trial_{}, *open_{}, *print_{}, *close_{};
};

/// Opens it without blocking; it deletes itself when it closes.
SuspectsDialog* showSuspects(core::BatchId batch, const PageContext& context, QWidget* parent);

}  // namespace desktop
