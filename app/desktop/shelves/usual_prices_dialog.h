// SPDX-License-Identifier: MIT
// The first prices of a bench in one table: the usual things are named, the grower fills in the figures of those that there are. Rows left
// blank are not kept; the rest is kept in one step.
#pragma once

#include <QDialog>
#include <optional>
#include <vector>

#include "app/desktop/page.h"
#include "app/desktop/shelves/money_words.h"
#include "app/desktop/shelves/usual_things.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QLayout;
class QScrollArea;
class QLineEdit;

namespace desktop {

class DateEdit;
class FaultLabel;

class UsualPricesDialog : public QDialog {
    Q_OBJECT

  public:
    explicit UsualPricesDialog(const PageContext& context, QWidget* parent = nullptr);

    void reject() override;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Line {
        UsualThing thing;
        std::vector<QLineEdit*> figures;  // as many as it has, in the order of the columns
        QComboBox* owner{};               // nullptr: the whole bench's alone
        FaultLabel* fault{};
        bool isJudged{};  // a fault was found on keeping: from then on it is judged while typing
    };
    void build();
    QLayout* makeFrom();
    QWidget* makeTable();
    QComboBox* makeOwner(const UsualThing& thing);
    void addLine(QGridLayout& grid, const UsualThing& thing);
    [[nodiscard]] int usualOwnerOf(const UsualThing& thing) const;
    [[nodiscard]] core::Date firstDay() const;
    [[nodiscard]] static bool isBlank(const Line& line);
    [[nodiscard]] core::Price priceOf(const Line& line, core::Date from, core::Refusals& faults) const;
    /// Shows the faults, or that there is none any more; nothing when blank or at fault.
    std::optional<core::Price> judge(const Line& line) const;
    void judgeAnew(std::size_t number);
    void judgeFromAnew();
    void bringIntoSight(QWidget* fault);
    /// Nothing when there is a fault, which is then shown.
    std::optional<std::vector<core::Price>> read();
    void keep();
    void showFilled();
    void goOnFrom(const QObject* field);

    PageContext context_;
    std::vector<PriceOwner> owners_;
    std::vector<Line> lines_;
    DateEdit* from_{};
    QScrollArea* table_{};
    FaultLabel *fromFault_{}, *rest_{};
    QLabel* filled_{};
};

/// For a shelf's offer; the id is not looked at.
[[nodiscard]] QDialog* usualPricesDialog(const PageContext& context, std::int64_t id, QWidget* parent);

}  // namespace desktop
