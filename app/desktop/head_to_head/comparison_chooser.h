// SPDX-License-Identifier: MIT
// The row on top of the head-to-head page: factor, plant, trial, horizon day, level, interval, margin; and how far the
// sums are.
#pragma once

#include <QTimer>
#include <QWidget>

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace desktop {

class FaultLabel;
class HeadToHeadModel;
class WorkStrip;

class ComparisonChooser : public QWidget {
    Q_OBJECT

  public:
    explicit ComparisonChooser(HeadToHeadModel& model, QWidget* parent = nullptr);
    void focusFirst();

  signals:
    void printWanted();

  private:
    void build();
    void makeFields();
    QWidget* makeMargin();
    void setTabOrders();
    void connectFields();
    void connectTyped(QLineEdit& field, QTimer& typing, void (ComparisonChooser::*read)());
    WorkStrip* makeWork();
    void addField(QGridLayout& grid, int column, const QString& caption, QWidget* field, QWidget* buddy);
    void readHorizon();
    void readMargin();
    void showView();
    void fillChoices();

    HeadToHeadModel& model_;
    QComboBox *factor_{}, *plant_{}, *trial_{}, *level_{}, *interval_{};
    QLineEdit *horizon_{}, *margin_{};
    FaultLabel *horizonFault_{}, *marginFault_{};
    QLabel* horizonReason_{};
    WorkStrip* work_{};
    QPushButton* print_{};
    QTimer typingHorizon_, typingMargin_;  // a number is asked for when its last digit is typed
};

}  // namespace desktop
