// SPDX-License-Identifier: MIT
#include "app/desktop/worth_it/worth_it_chooser.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <chrono>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/widgets/work_strip.h"
#include "app/desktop/widgets/wrapping_row.h"
#include "app/desktop/worth_it/worth_it_model.h"
#include "app/plot/cost_text.h"
#include "app/plot/number_text.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

constexpr double mostWorthOfADay = 1'000'000;

}  // namespace

WorthItChooser::WorthItChooser(WorthItModel& model, QWidget* parent) : QWidget(parent), model_(model) {
    makeFields();
    build();
    connectFields();
    showState();
}

void WorthItChooser::focusFirst() {
    plant_->setFocus(Qt::OtherFocusReason);
}

void WorthItChooser::makeFields() {
    plant_ = shortBox(QStringLiteral("worthPlant"), 18);
    first_ = shortBox(QStringLiteral("worthFirst"), 14);
    second_ = shortBox(QStringLiteral("worthSecond"), 14);
    year_ = shortBox(QStringLiteral("worthYear"), 8);
    prices_ = new QPushButton(tr("Pr&ices\u2026"));
    prices_->setObjectName(QStringLiteral("worthPrices"));
    prices_->setToolTip(tr("What things cost and how long they last: the shelf of prices"));
    print_ = new QPushButton(tr("Pri&nt preview\u2026"));
    print_->setObjectName(QStringLiteral("printWorth"));
}

void WorthItChooser::build() {
    auto* bar = new QWidget;
    auto* row = new WrappingRow(bar);
    addField(*row, tr("&Plant"), plant_, plant_);
    addField(*row, tr("&Method"), first_, first_);
    addField(*row, tr("a&gainst"), second_, second_);
    addField(*row, tr("Stuc&k in"), year_, year_);
    QWidget* day = makeDay();
    addField(*row, tr("A day &sooner is worth"), day, day_);
    row->addWidget(prices_);
    row->addWidget(print_);
    horizon_ = quietLabel(QStringLiteral("worthHorizon"));
    auto* under = new QHBoxLayout;
    under->addWidget(horizon_, 1);
    under->addWidget(makeWork());
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(bar);
    layout->addWidget(dayFault_ = new FaultLabel);
    layout->addLayout(under);
}

QWidget* WorthItChooser::makeDay() {
    day_ = new QLineEdit;
    day_->setObjectName(QStringLiteral("worthOfADay"));
    day_->setAccessibleName(tr("What a day sooner is worth"));
    day_->setAlignment(Qt::AlignRight);
    day_->setMaxLength(12);
    day_->setMaximumWidth(fontMetrics().averageCharWidth() * 12);
    day_->setToolTip(tr("To have one rooted plant a day sooner; blank: as the prices have it"));
    dayUnit_ = new QLabel;
    auto* withUnit = new QWidget;
    auto* row = new QHBoxLayout(withUnit);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(day_);
    row->addWidget(dayUnit_);
    return withUnit;
}

WorkStrip* WorthItChooser::makeWork() {
    work_ = new WorkStrip(tr("Working out what is worth it"));
    connect(work_, &WorkStrip::stopWanted, &model_, &WorthItModel::stop);
    connect(work_, &WorkStrip::goOnWanted, this, [this] {
        focusFirst();
        model_.workItOut();
    });
    return work_;
}

void WorthItChooser::addField(WrappingRow& row, const QString& caption, QWidget* field, QWidget* buddy) {
    auto* label = new QLabel(caption);
    label->setBuddy(buddy);
    auto* both = new QWidget;
    auto* layout = new QHBoxLayout(both);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(label);
    layout->addWidget(field);
    row.addWidget(both);
}

void WorthItChooser::connectFields() {
    const auto chosen = [](const QComboBox& box) { return box.currentData().toLongLong(); };
    connect(plant_, &QComboBox::currentIndexChanged, this, [=, this] { model_.choosePlant({chosen(*plant_)}); });
    connect(first_, &QComboBox::currentIndexChanged, this, [=, this] { model_.chooseFirst({chosen(*first_)}); });
    connect(second_, &QComboBox::currentIndexChanged, this, [=, this] { model_.chooseSecond({chosen(*second_)}); });
    connect(year_, &QComboBox::currentIndexChanged, this, [this] { model_.chooseYear(year_->currentData().toInt()); });
    connect(prices_, &QPushButton::clicked, this, &WorthItChooser::pricesWanted);
    connect(print_, &QPushButton::clicked, this, &WorthItChooser::printWanted);
    connect(&model_, &WorthItModel::stateChanged, this, &WorthItChooser::showState);
    using namespace std::chrono_literals;
    constexpr auto untilTyped = 350ms;
    typing_.setSingleShot(true);
    typing_.setInterval(untilTyped);
    connect(day_, &QLineEdit::textEdited, &typing_, qOverload<>(&QTimer::start));
    connect(&typing_, &QTimer::timeout, this, &WorthItChooser::readDay);
    connect(day_, &QLineEdit::editingFinished, this, &WorthItChooser::readDay);
}

void WorthItChooser::readDay() {
    typing_.stop();
    const QString typed = day_->text().trimmed();
    const auto amount = core::numberFrom(typed.toStdString());
    const bool isFine = typed.isEmpty() || (amount && *amount >= 0 && *amount <= mostWorthOfADay);
    dayFault_->setFault(isFine
                            ? QString()
                            : tr("What a day sooner is worth is \u201c%1\u201d: it has to be an amount of money from 0 "
                                 "to %2, such as 0.05, or blank.")
                                  .arg(typed, plot::countText(static_cast<int>(mostWorthOfADay))));
    if (isFine) model_.setWorthOfADay(typed.isEmpty() ? std::nullopt : amount);
}

void WorthItChooser::showState() {
    const WorthItState& state = model_.state();
    fillChoices();
    horizon_->setText(state.horizon);
    day_->setPlaceholderText(state.priceOfADay ? plot::costAmount(*state.priceOfADay) : tr("nothing"));
    print_->setEnabled(model_.sheet() != nullptr);
    work_->showWork({.isWorking = state.isWorking, .isReading = state.isReading, .isStopped = state.isStopped});
}

void WorthItChooser::fillChoices() {
    const WorthItState& state = model_.state();
    refill(*plant_, tr("all plants"), state.plants, model_.question().plant);
    const bool hasPair = state.pair >= 0;
    for (QComboBox* box : {first_, second_}) box->setEnabled(state.methods.size() > 1);
    refill(*first_, {}, state.methods, hasPair ? model_.first() : core::MethodId{});
    refill(*second_, {}, state.methods, hasPair ? model_.second() : core::MethodId{});
    const QSignalBlocker quiet(year_);
    year_->clear();
    year_->addItem(tr("any year"), 0);
    for (const int year : state.years) year_->addItem(plot::countText(year), year);
    year_->setCurrentIndex(std::max(0, year_->findData(model_.year())));
    if (model_.hasLogbook())
        dayUnit_->setText(tr("%1 a plant", "currency").arg(QString::fromStdString(model_.shelves().facts.currency)));
}

}  // namespace desktop
