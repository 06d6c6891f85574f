// SPDX-License-Identifier: MIT
// A lid seen from above with its holes, as large as there is room for. To look at; it stays left to right in every language.
#pragma once

#include <QWidget>

#include "core/station/lid_layout.h"

namespace desktop {

class LidView : public QWidget {
    Q_OBJECT

  public:
    explicit LidView(QWidget* parent = nullptr);

    /// `words` say the same to those who don't see it.
    void show(const core::Lid& lid, const core::LidLayout& layout, const QString& words);

    [[nodiscard]] QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    core::Lid lid_;
    core::LidLayout layout_;
};

}  // namespace desktop
