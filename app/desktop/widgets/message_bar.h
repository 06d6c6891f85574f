// SPDX-License-Identifier: MIT
// The bar at the foot: one sentence and at most one button, staying until the next sentence or until it is closed. No
// countdown: wet hands are slow. It never takes the focus.
#pragma once

#include <QFrame>
#include <functional>

class QLabel;
class QPushButton;

namespace desktop {

class MessageBar : public QFrame {
    Q_OBJECT

  public:
    enum class Tone { Plain, Fault };

    explicit MessageBar(QWidget* parent = nullptr);
    void say(const QString& sentence, Tone tone = Tone::Plain);
    void offer(const QString& sentence, const QString& verb, std::function<void()> action, Tone tone = Tone::Plain);
    void hush();
    [[nodiscard]] QString sentence() const;

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void colour();

    Tone tone_{Tone::Plain};
    bool isColouring_{};
    QLabel* sign_;
    QLabel* text_;
    QPushButton* button_;
    std::function<void()> action_;
};

}  // namespace desktop
