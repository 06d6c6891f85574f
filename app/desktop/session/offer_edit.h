// SPDX-License-Identifier: MIT
// A field that offers names while one types and marks the one that Enter would take: the first that begins like what stands there, or has a
// word that does. Esc turns the offers down; then Enter takes what was typed.
#pragma once

#include <QLineEdit>
#include <QStringList>

namespace desktop {

class OfferEdit : public QLineEdit {
    Q_OBJECT

  public:
    explicit OfferEdit(const QStringList& offers, QWidget* parent = nullptr);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void markOffer();
};

/// Where in `offers` the name stands that `typed` means before all others, -1 when none begins so.
[[nodiscard]] int bestOffer(const QStringList& offers, const QString& typed);

}  // namespace desktop
