// SPDX-License-Identifier: MIT
// What the window shows while no logbook is open: three ways to begin, and, when the last logbook could not be opened, why not and its newest
// backup. No wizard.
#pragma once

#include <QWidget>

class QCommandLinkButton;
class QPushButton;

namespace desktop {

class FaultLabel;

class FirstRunPage : public QWidget {
    Q_OBJECT

  public:
    explicit FirstRunPage(QWidget* parent = nullptr);

    /// `sentence` says why `file` was not opened; `backupTime` names its newest backup in words, empty when there is none.
    void showFault(const QString& sentence, const QString& backupTime);
    void clearFault();

  signals:
    void sampleWanted();
    void newWanted();
    void tablesWanted();
    void openWanted();
    void backupWanted();

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    QCommandLinkButton* addChoice(const QString& name, const QString& iconName, const QString& title,
                                  const QString& what);

    FaultLabel* fault_;
    QPushButton* backup_;
    QCommandLinkButton* first_{};
};

}  // namespace desktop
