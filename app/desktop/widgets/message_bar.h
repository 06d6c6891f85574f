// SPDX-License-Identifier: MIT
// The bar at the foot: what can be taken back, with its button, and above it what else there is to say. Each stays until the next of its
// kind or until the bar is closed; a sentence never takes an offered button away. No countdown: wet hands are slow. It never takes the focus.
#pragma once

#include <QFrame>
#include <functional>

class QLabel;
class QPushButton;
class QWidget;

namespace desktop {

class MessageBar : public QFrame {
    Q_OBJECT

  public:
    enum class Tone { Plain, Fault };

    explicit MessageBar(QWidget* parent = nullptr);
    /// Beside what is on offer.
    void say(const QString& sentence, Tone tone = Tone::Plain);
    /// In place of everything before.
    void offer(const QString& sentence, const QString& verb, std::function<void()> action);
    void hush();
    /// Only what say() said goes.
    void hushSaid();
    /// What stands there: first what was said, then what is on offer.
    [[nodiscard]] QString sentence() const;

  protected:
    void changeEvent(QEvent* event) override;

  private:
    struct Line {
        QWidget* row{};
        QLabel* sign{};
        QLabel* text{};
    };

    Line makeLine(const QString& name);
    static void put(const Line& line, const QString& sentence);
    void act();
    void announce(const QString& sentence);
    void colour();

    Tone tone_{Tone::Plain};
    bool isColouring_{};
    Line said_;
    Line offered_;
    QPushButton* button_;
    std::function<void()> action_;
};

}  // namespace desktop
