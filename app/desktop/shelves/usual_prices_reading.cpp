// SPDX-License-Identifier: MIT
// The part of UsualPricesDialog that reads and judges what was typed.
#include <QComboBox>
#include <QLineEdit>
#include <QScrollArea>
#include <algorithm>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/shelves/usual_prices_dialog.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "core/money/amount_entry.h"
#include "core/money/price_rules.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

/// Nothing, with a refusal, when it can't be read.
std::optional<double> figureBefore(const QString& unit, const QString& typed, core::Refusals& faults) {
    const std::optional<double> figure = core::numberFrom(typed.toStdString());
    if (figure) return figure;
    const QString sentence =
        typed.trimmed().isEmpty()
            ? UsualPricesDialog::tr("What stands before \u201c%1\u201d is blank; a number is allowed, such as 1.5.")
                  .arg(unit)
            : UsualPricesDialog::tr("\u201c%2\u201d stands before \u201c%1\u201d; a number is allowed, such as 1.5.")
                  .arg(unit, typed.trimmed());
    faults.push_back({unit.toStdString(), typed.toStdString(), {}, sentence.toStdString()});
    return {};
}

}  // namespace

bool UsualPricesDialog::isBlank(const Line& line) {
    return std::ranges::all_of(line.figures, [](const QLineEdit* edit) { return edit->text().trimmed().isEmpty(); });
}

core::Price UsualPricesDialog::priceOf(const Line& line, core::Date from, core::Refusals& faults) const {
    core::Price price = line.thing.price;
    price.from = from;
    if (line.owner != nullptr) owners_[static_cast<std::size_t>(line.owner->currentIndex())].give(price);
    auto next = line.figures.begin();
    if (!line.thing.unitOfAmount.isEmpty()) {
        const int mostDecimals = price.kind == core::PriceKind::Tariff ? 4 : 2;
        const auto amount = core::tenThousandthsFrom((*next++)->text().toStdString(), mostDecimals);
        if (amount) price.tenThousandths = *amount;
        if (!amount) faults = amount.error();
    }
    const auto figure = [&](const QString& unit) {
        return unit.isEmpty() ? std::nullopt : figureBefore(unit, (*next++)->text(), faults);
    };
    const std::optional<double> first = figure(line.thing.unitOfFigure);
    const std::optional<double> second = figure(line.thing.secondUnit);
    // Of what can't be read it is said already; with a 1 in its place core judges only the rest.
    if (price.kind == core::PriceKind::Lasting) price.lastsYears = first.value_or(1);
    if (price.kind == core::PriceKind::UsedUp) price.lastsFor = first.value_or(1);
    if (price.kind == core::PriceKind::WorkTime) price.minutes = first.value_or(1);
    if (price.kind == core::PriceKind::Electricity) {
        price.watts = first.value_or(1);
        price.hoursADay = second.value_or(1);
    }
    const core::Refusals ruled = core::faultsIn(price, context_.workspace.shelves(), context_.workspace.today());
    faults.insert(faults.end(), ruled.begin(), ruled.end());
    return price;
}

std::optional<core::Price> UsualPricesDialog::judge(const Line& line) const {
    std::optional<core::Price> price;
    core::Refusals faults;
    if (!isBlank(line) && from_->date()) price = priceOf(line, *from_->date(), faults);
    const QString sentences = sentencesOf(faults);
    // Each is read out, so only what is new.
    if (sentences != line.fault->fault()) line.fault->setFault(sentences);
    return faults.empty() ? price : std::nullopt;
}

void UsualPricesDialog::judgeAnew(std::size_t number) {
    rest_->setFault({});
    // While the table is made the line is not there yet.
    if (number < lines_.size() && lines_[number].isJudged) judge(lines_[number]);
}

void UsualPricesDialog::judgeFromAnew() {
    if (!fromFault_->fault().isEmpty()) fromFault_->setFault(from_->fault());
    for (std::size_t number = 0; number < lines_.size(); ++number) judgeAnew(number);
}

/// It has its place only once the table is laid out anew.
void UsualPricesDialog::bringIntoSight(QWidget* fault) {
    QMetaObject::invokeMethod(
        this, [this, fault] { table_->ensureWidgetVisible(fault); }, Qt::QueuedConnection);
}

std::optional<std::vector<core::Price>> UsualPricesDialog::read() {
    rest_->setFault({});
    fromFault_->setFault(from_->fault());
    QWidget* firstFault = from_->date() ? nullptr : from_->line();
    std::vector<core::Price> prices;
    for (Line& line : lines_) {
        const std::optional<core::Price> price = judge(line);
        if (price) prices.push_back(*price);
        line.isJudged = !line.fault->fault().isEmpty();
        if (!line.isJudged || firstFault != nullptr) continue;
        firstFault = line.figures.front();
        bringIntoSight(line.fault);
    }
    if (firstFault != nullptr) {
        firstFault->setFocus(Qt::TabFocusReason);
        return {};
    }
    if (!prices.empty()) return prices;
    rest_->setFault(tr("Nothing is filled in yet; at least one row is needed."));
    lines_.front().figures.front()->setFocus(Qt::TabFocusReason);
    return {};
}

}  // namespace desktop
