// SPDX-License-Identifier: MIT
// The fields of a price in its form: all of them, of which those of the chosen kind are shown. Inside shelves only.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "app/desktop/shelves/form_parts.h"
#include "app/desktop/shelves/money_words.h"

namespace desktop {

class DateEdit;
class FigureAndUnit;

class PriceFields {
  public:
    PriceFields(ThingForm& form, const PageContext& context, const core::Price& price);

    [[nodiscard]] ThingRead<core::Price> read() const;
    /// The focus to what changes first when a price changes: its amount, its watts, its minutes.
    void chooseFigure();

    /// Puts each of core's refusals under its field.
    [[nodiscard]] static core::Refusals underFields(core::Refusals refusals);

  private:
    void addNameAndOwner(const core::Shelves& shelves);
    void addFigures();
    void addPower();
    void addDaysAndNote(core::Date today);
    void showKind();
    [[nodiscard]] core::PriceKind kind() const;
    void readAmount(ThingRead<core::Price>& now) const;
    void readFigures(ThingRead<core::Price>& now) const;
    void readPower(ThingRead<core::Price>& now) const;
    void readDays(ThingRead<core::Price>& now) const;

    ThingForm& form_;
    core::Price before_;
    std::vector<PriceOwner> owners_;
    std::string currency_;
    QComboBox *kind_{}, *owner_{};
    QLineEdit *what_{}, *amount_{}, *watts_{}, *hours_{}, *share_{};
    FigureAndUnit *lasts_{}, *pack_{}, *work_{};
    DateEdit *from_{}, *until_{};
    QPlainTextEdit* note_{};
    QLabel* hint_{};
};

}  // namespace desktop
