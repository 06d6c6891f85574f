// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/usual_prices_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/prompts.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"
#include "core/money/amount_entry.h"
#include "core/money/price_rules.h"
#include "core/units/number_entry.h"
#include "db/actions/price_actions.h"

namespace desktop {

namespace {

enum UsualColumn { UsualWhat, UsualAmount, UsualAmountUnit, UsualFigure, UsualFigureUnit, UsualWhose, usualColumns };

/// The work of a session is that of all that is stuck on the day.
bool canHaveOwner(const core::Price& price) {
    return !isNamedByItsKind(price.kind) &&
           !(price.kind == core::PriceKind::WorkTime && price.basis == core::PriceBasis::Session);
}

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

UsualPricesDialog::UsualPricesDialog(const PageContext& context, QWidget* parent)
    : QDialog(parent), context_(context), owners_(priceOwners(context.workspace.shelves())) {
    setObjectName(QStringLiteral("usualPrices"));
    setWindowTitle(tr("The usual things"));
    build();
    showFilled();
    lines_.front().figures.front()->setFocus();
}

core::Date UsualPricesDialog::firstDay() const {
    core::Date first = context_.workspace.today();
    for (const core::BatchLine& line : context_.workspace.batchLines()) first = std::min(first, line.batch.stuckOn);
    return first;
}

QLayout* UsualPricesDialog::makeFrom() {
    from_ = new DateEdit(context_.workspace.today());
    from_->line()->setObjectName(QStringLiteral("usualFrom"));
    from_->setDate(firstDay());
    from_->line()->installEventFilter(this);
    from_->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    fromFault_ = new FaultLabel;
    auto* label = new QLabel(tr("&From"));
    label->setBuddy(from_->line());
    auto* row = new QHBoxLayout;
    QLabel* hint = quietLabelSaying(context_.workspace.batchLines().empty()
                                        ? tr("the first day on which they hold")
                                        : tr("the day of your first batch, so that all of them have their costs"));
    hint->setAlignment(Qt::AlignVCenter | Qt::AlignLeading);
    hint->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    label->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Preferred);
    row->addWidget(label);
    row->addWidget(from_);
    row->addWidget(hint, 1);
    return row;
}

QWidget* UsualPricesDialog::makeTable() {
    auto* content = new QWidget;
    auto* grid = new QGridLayout(content);
    grid->setColumnStretch(UsualWhose, 1);
    for (const UsualThing& thing : usualThings(context_.workspace.shelves().facts.currency)) addLine(*grid, thing);
    table_ = new QScrollArea;
    table_->setWidgetResizable(true);
    table_->setFrameShape(QFrame::NoFrame);
    table_->setFocusPolicy(Qt::NoFocus);
    table_->setWidget(content);
    resize(std::max(content->sizeHint().width() + fontMetrics().height() * 4, fontMetrics().averageCharWidth() * 100),
           std::min(content->sizeHint().height() + fontMetrics().height() * 14, fontMetrics().height() * 40));
    return table_;
}

void UsualPricesDialog::build() {
    auto* hint = quietLabel(QStringLiteral("usualHint"));
    hint->setText(
        tr("Fill in what you have and leave the rest blank: blank rows are not kept. Enter goes on to the next "
           "figure; the box at the right says whose a thing is. Names, and whatever else you pay for, can be changed "
           "and added on the shelf."));
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(hint);
    layout->addLayout(makeFrom());
    layout->addWidget(fromFault_);
    layout->addWidget(makeTable(), 1);
    rest_ = new FaultLabel;
    filled_ = quietLabel(QStringLiteral("usualFilled"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agreed = buttons->addButton(tr("&Keep these"), QDialogButtonBox::AcceptRole);
    agreed->setObjectName(QStringLiteral("usualKeep"));
    agreed->setToolTip(tr("Ctrl+Enter"));
    agreed->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &UsualPricesDialog::keep);
    connect(buttons, &QDialogButtonBox::rejected, this, &UsualPricesDialog::reject);
    layout->addWidget(filled_);
    layout->addWidget(rest_);
    layout->addWidget(buttons);
}

void UsualPricesDialog::addLine(QGridLayout& grid, const UsualThing& thing) {
    int row = grid.rowCount();
    if (lines_.empty() || lines_.back().thing.group != thing.group) {
        auto* heading = new QLabel(thing.group);
        QFont bold = heading->font();
        bold.setBold(true);
        heading->setFont(bold);
        grid.addWidget(heading, row++, UsualWhat, 1, usualColumns);
    }
    Line line{.thing = thing, .figures = {}, .owner = nullptr, .fault = new FaultLabel};
    const QString what = QString::fromStdString(thing.price.what);
    auto* label = new QLabel(what);
    grid.addWidget(label, row, UsualWhat);
    const auto add = [&](const QString& unit, int column, const QString& name) {
        if (unit.isEmpty()) return;
        auto* figure = new QLineEdit;
        figure->setObjectName(QStringLiteral("usual%1Figure%2").arg(lines_.size()).arg(line.figures.size()));
        figure->setAccessibleName(name);
        figure->setAlignment(Qt::AlignRight);
        figure->setMaxLength(16);
        figure->setMaximumWidth(fontMetrics().horizontalAdvance(QStringLiteral("00000000")) + fontMetrics().height());
        figure->installEventFilter(this);
        connect(figure, &QLineEdit::textEdited, this, &UsualPricesDialog::showFilled);
        grid.addWidget(figure, row, column);
        const bool leadsOn = column == UsualAmount && !thing.between.isEmpty();
        grid.addWidget(new QLabel(leadsOn ? tr("%1, %2", "EUR, lasts").arg(unit, thing.between) : unit), row,
                       column + 1);
        line.figures.push_back(figure);
    };
    const QString named = tr("%1: %2", "air pump: years");
    add(thing.unitOfAmount, UsualAmount, tr("%1: amount", "air pump").arg(what));
    add(thing.unitOfFigure, thing.secondUnit.isEmpty() ? UsualFigure : UsualAmount,
        named.arg(what, thing.unitOfFigure));
    add(thing.secondUnit, UsualFigure, named.arg(what, thing.secondUnit));
    label->setBuddy(line.figures.front());
    if (canHaveOwner(thing.price)) {
        line.owner = new QComboBox;
        line.owner->setObjectName(QStringLiteral("usual%1Owner").arg(lines_.size()));
        for (const PriceOwner& owner : owners_) line.owner->addItem(owner.text);
        // In large type the boxes give way, so that nothing is to be scrolled sideways.
        line.owner->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        line.owner->setMinimumContentsLength(12);
        line.owner->setAccessibleName(tr("%1: whose", "air pump").arg(what));
        line.owner->setAccessibleDescription(line.owner->accessibleName());
        line.owner->installEventFilter(this);
        grid.addWidget(line.owner, row, UsualWhose);
    }
    grid.addWidget(line.fault, row + 1, UsualAmount, 1, usualColumns - UsualAmount);
    lines_.push_back(std::move(line));
}

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
    if (price.kind == core::PriceKind::Lasting) price.lastsYears = first;
    if (price.kind == core::PriceKind::UsedUp) price.lastsFor = first;
    if (price.kind == core::PriceKind::WorkTime) price.minutes = first.value_or(0);
    if (price.kind == core::PriceKind::Electricity) {
        price.watts = first.value_or(0);
        price.hoursADay = second.value_or(0);
    }
    // Of what can't be read core would say that it is missing.
    if (faults.empty()) faults = core::faultsIn(price, context_.workspace.shelves(), context_.workspace.today());
    return price;
}

std::optional<std::vector<core::Price>> UsualPricesDialog::read() {
    rest_->setFault({});
    fromFault_->setFault(from_->fault());
    QWidget* firstFault = from_->date() ? nullptr : from_->line();
    std::vector<core::Price> prices;
    for (const Line& line : lines_) {
        core::Refusals faults;
        if (!isBlank(line) && from_->date()) prices.push_back(priceOf(line, *from_->date(), faults));
        line.fault->setFault(sentencesOf(faults));
        if (!faults.empty() && firstFault == nullptr) firstFault = line.figures.front();
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

void UsualPricesDialog::keep() {
    const auto prices = read();
    if (!prices) return;
    Workspace& workspace = context_.workspace;
    const Outcome outcome =
        workspace.run([&](db::Logbook& logbook) { return db::addPrices(logbook, *prices, workspace.today()); });
    if (outcome.isDone) return accept();
    rest_->setFault(sentencesOf(outcome.refusals));
}

void UsualPricesDialog::showFilled() {
    const auto filled = std::ranges::count_if(lines_, [](const Line& line) { return !isBlank(line); });
    filled_->setText(
        tr("%1 of %2 filled in", "3 of 18")
            .arg(plot::countText(static_cast<int>(filled)), plot::countText(static_cast<int>(lines_.size()))));
}

void UsualPricesDialog::reject() {
    const bool mayGo = std::ranges::all_of(lines_, isBlank) ||
                       context_.prompts.confirm(this, {.title = windowTitle(),
                                                       .sentence = tr("What you typed here is not saved yet."),
                                                       .verb = tr("Throw it away")});
    if (mayGo) QDialog::reject();
}

void UsualPricesDialog::goOnFrom(const QObject* field) {
    bool isPassed = field == from_->line();
    for (const Line& line : lines_) {
        for (QLineEdit* figure : line.figures) {
            if (isPassed) return figure->setFocus(Qt::TabFocusReason);
            isPassed = figure == field;
        }
        isPassed = isPassed || (line.owner != nullptr && line.owner == field);
    }
    keep();
}

bool UsualPricesDialog::eventFilter(QObject* watched, QEvent* event) {
    // Only Tab within the table brings a field into sight by itself.
    if (event->type() == QEvent::FocusIn && watched != from_->line())
        table_->ensureWidgetVisible(static_cast<QWidget*>(watched));
    if (event->type() != QEvent::KeyPress) return QDialog::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() != Qt::Key_Return && key->key() != Qt::Key_Enter) return QDialog::eventFilter(watched, event);
    key->modifiers().testFlag(Qt::ControlModifier) ? keep() : goOnFrom(watched);
    return true;
}

QDialog* usualPricesDialog(const PageContext& context, std::int64_t, QWidget* parent) {
    return new UsualPricesDialog(context, parent);
}

}  // namespace desktop
