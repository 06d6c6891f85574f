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
#include "db/actions/price_actions.h"

namespace desktop {

namespace {

enum UsualColumn { UsualWhat, UsualAmount, UsualAmountUnit, UsualFigure, UsualFigureUnit, UsualWhose, usualColumns };

/// The work of a session is that of all that is stuck on the day.
bool canHaveOwner(const core::Price& price) {
    return !isNamedByItsKind(price.kind) &&
           !(price.kind == core::PriceKind::WorkTime && price.basis == core::PriceBasis::Session);
}

QLabel* usualHeading(const QString& text) {
    auto* label = new QLabel(text);
    QFont bold = label->font();
    bold.setBold(true);
    label->setFont(bold);
    return label;
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
    connect(from_, &DateEdit::dateChanged, this, &UsualPricesDialog::judgeFromAnew);
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

/// The place in the box: that of its usual method where that is in use, else the whole bench, which stands first.
int UsualPricesDialog::usualOwnerOf(const UsualThing& thing) const {
    for (const core::Method& method : context_.workspace.shelves().methods)
        for (std::size_t i = 1; i < owners_.size() && method.name == thing.method; ++i)
            if (owners_[i].method == method.id) return static_cast<int>(i);
    return 0;
}

/// For the line that comes next.
QComboBox* UsualPricesDialog::makeOwner(const UsualThing& thing) {
    const std::size_t number = lines_.size();
    auto* owner = new QComboBox;
    owner->setObjectName(QStringLiteral("usual%1Owner").arg(number));
    for (const PriceOwner& each : owners_) owner->addItem(each.text);
    // In large type the boxes give way, so that nothing is to be scrolled sideways.
    owner->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    owner->setMinimumContentsLength(12);
    owner->setAccessibleName(tr("%1: whose", "air pump").arg(QString::fromStdString(thing.price.what)));
    owner->setAccessibleDescription(owner->accessibleName());
    owner->installEventFilter(this);
    owner->setCurrentIndex(usualOwnerOf(thing));
    connect(owner, &QComboBox::currentIndexChanged, this, [this, number] { judgeAnew(number); });
    return owner;
}

void UsualPricesDialog::addLine(QGridLayout& grid, const UsualThing& thing) {
    int row = grid.rowCount();
    if (lines_.empty() || lines_.back().thing.group != thing.group) {
        grid.addWidget(usualHeading(thing.group), row++, UsualWhat, 1, usualColumns);
    }
    Line line{.thing = thing, .figures = {}, .owner = nullptr, .fault = new FaultLabel};
    const QString what = QString::fromStdString(thing.price.what);
    auto* label = new QLabel(what);
    grid.addWidget(label, row, UsualWhat);
    const std::size_t number = lines_.size();
    const auto add = [&](const QString& unit, int column, const QString& name) {
        if (unit.isEmpty()) return;
        auto* figure = new QLineEdit;
        figure->setObjectName(QStringLiteral("usual%1Figure%2").arg(number).arg(line.figures.size()));
        figure->setAccessibleName(name);
        figure->setAlignment(Qt::AlignRight);
        figure->setMaxLength(16);
        figure->setMaximumWidth(fontMetrics().horizontalAdvance(QStringLiteral("00000000")) + fontMetrics().height());
        figure->installEventFilter(this);
        connect(figure, &QLineEdit::textEdited, this, [this, number] {
            showFilled();
            judgeAnew(number);
        });
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
        line.owner = makeOwner(thing);
        grid.addWidget(line.owner, row, UsualWhose);
    }
    grid.addWidget(line.fault, row + 1, UsualAmount, 1, usualColumns - UsualAmount);
    lines_.push_back(std::move(line));
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
