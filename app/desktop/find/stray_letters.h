// SPDX-License-Identifier: MIT
// A scanner types. Where nobody wants letters (a table that is only read, a button, a list), the first letter or digit of a code goes to
// Find, and the rest follows it there. A widget that wants letters says so by accepting their QEvent::ShortcutOverride, as fields do.
#pragma once

#include <QObject>
#include <functional>

class QKeyEvent;
class QWidget;

namespace desktop {

class StrayLetters : public QObject {
    Q_OBJECT

  public:
    using Taking = std::function<void(const QString& letter)>;

    /// Watches the widgets of `window`, not those of dialogs over it.
    StrayLetters(QWidget& window, Taking take);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    [[nodiscard]] static bool wantsLetters(QWidget& widget, const QKeyEvent& typed);

    QWidget& window_;
    Taking take_;
};

}  // namespace desktop
