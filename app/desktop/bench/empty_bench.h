// SPDX-License-Identifier: MIT
// What the bench shows while nothing is written down: what will be here, and three ways to begin.
#pragma once

#include <QWidget>

class QLabel;
class QPushButton;

namespace desktop {

class EmptyBench : public QWidget {
    Q_OBJECT

  public:
    explicit EmptyBench(QWidget* parent = nullptr);

    void setWritable(bool isWritable);
    void focusFirst();

  signals:
    void sessionWanted();
    void stationWanted();
    void tablesWanted();

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void fit();
    QPushButton* makeButton(const QString& iconName, const QString& text, const QString& name);

    QLabel* words_{};
    QPushButton *session_{}, *station_{}, *tables_{};
};

}  // namespace desktop
