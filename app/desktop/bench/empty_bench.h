// SPDX-License-Identifier: MIT
// What the bench shows while nothing is written down: what will be here, and three ways to begin.
#pragma once

#include <QWidget>

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

  private:
    QPushButton* makeButton(const QString& iconName, const QString& text, const QString& name);

    QPushButton *session_{}, *station_{}, *tables_{};
};

}  // namespace desktop
