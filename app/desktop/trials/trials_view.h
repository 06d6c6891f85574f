// SPDX-License-Identifier: MIT
// "Is this way better than that?", asked fairly: the trials of the logbook, and below them all about the chosen one.
#pragma once

#include <QWidget>
#include <memory>

#include "app/desktop/page.h"

class QDialog;
class QPushButton;
class QStackedWidget;
class QTableView;

namespace desktop {

class FaultLabel;
class TableColumns;
class TrialDetails;
class TrialsModel;
class TrialTableModel;

class TrialsView : public QWidget {
    Q_OBJECT

  public:
    explicit TrialsView(const PageContext& context, QWidget* parent = nullptr);

    /// It has come to the front: the focus goes to where work begins.
    void activated();
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const;

  signals:
    void said(const QString& sentence);
    void sheetChanged();
    void placeWanted(const Place& place);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

  private:
    void build();
    QWidget* makeTable();
    QWidget* makeButtons();
    QWidget* makeEmpty();
    QPushButton* button(const char* name, const QString& text, const QString& tip, void (TrialsView::*verb)());
    bool handleKey(int key);
    void showRows();
    void showChosen();
    [[nodiscard]] core::TrialId current() const;

    void planNew();
    void dealAgain();
    void change();
    void stick();
    void removeTrial();
    void print();
    void printMap();
    void compare();
    void openPlanning(core::TrialId trial);
    void open(QDialog* dialog);

    PageContext context_;
    TrialsModel* model_;
    TrialTableModel* rows_;
    core::TrialId wanted_{};  // to be chosen as soon as it is there
    QStackedWidget* stack_{};
    QTableView* table_{};
    TableColumns* columns_{};
    TrialDetails* details_{};
    FaultLabel* fault_{};
    QPushButton *new_{}, *stick_{}, *change_{}, *again_{}, *remove_{}, *print_{}, *printMap_{}, *compare_{}, *first_{};
};

}  // namespace desktop
