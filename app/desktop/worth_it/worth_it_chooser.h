// SPDX-License-Identifier: MIT
// The row on top of the Worth it page: plant, the two methods, the year, what a day sooner is worth; and how far the sums are.
#pragma once

#include <QTimer>
#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace desktop {

class FaultLabel;
class WorkStrip;
class WorthItModel;
class WrappingRow;

class WorthItChooser : public QWidget {
    Q_OBJECT

  public:
    explicit WorthItChooser(WorthItModel& model, QWidget* parent = nullptr);
    void focusFirst();

  signals:
    void printWanted();
    void pricesWanted();

  private:
    void makeFields();
    void build();
    QWidget* makeDay();
    WorkStrip* makeWork();
    void addField(WrappingRow& row, const QString& caption, QWidget* field, QWidget* buddy);
    void connectFields();
    void readDay();
    void showState();
    void fillChoices();

    WorthItModel& model_;
    QComboBox *plant_{}, *first_{}, *second_{}, *year_{};
    QLineEdit* day_{};
    QLabel* dayUnit_{};
    FaultLabel* dayFault_{};
    QLabel* horizon_{};
    WorkStrip* work_{};
    QPushButton *prices_{}, *print_{};
    QTimer typing_;  // an amount is asked for when its last digit is typed
};

}  // namespace desktop
