// SPDX-License-Identifier: MIT
// How far long sums are: a bar with a button that stops them, shown only for what takes longer than a blink; and, once they were stopped,
// that what is asked has no answer, with a button that takes them up again.
#pragma once

#include <QTimer>
#include <QWidget>

class QLabel;
class QPushButton;

namespace desktop {

struct WorkState {
    bool isWorking{};
    bool isReading{};  // isWorking, and the records aren't there yet
    bool isStopped{};
};

class WorkStrip : public QWidget {
    Q_OBJECT

  public:
    /// `name` is what is worked out, for those who listen.
    explicit WorkStrip(const QString& name, QWidget* parent = nullptr);

    void showWork(const WorkState& state);
    /// In the order of Tab.
    [[nodiscard]] QWidget* stopButton() const;
    [[nodiscard]] QWidget* goOnButton() const;

  signals:
    void stopWanted();
    void goOnWanted();

  private:
    QWidget* makeProgress(const QString& name);
    QWidget* makeStopped();

    bool isWorking_{};
    QTimer slow_{this};
    QWidget* progress_{};
    QLabel* words_{};
    QPushButton* stop_{};
    QWidget* stopped_{};
    QPushButton* goOn_{};
};

}  // namespace desktop
