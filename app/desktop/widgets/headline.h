// SPDX-License-Identifier: MIT
// The one large line of a page or dialog; grows with the text size.
#pragma once

#include <QLabel>

namespace desktop {

class Headline : public QLabel {
    Q_OBJECT

  public:
    explicit Headline(QWidget* parent = nullptr);
    explicit Headline(const QString& text, QWidget* parent = nullptr);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void grow();
};

}  // namespace desktop
