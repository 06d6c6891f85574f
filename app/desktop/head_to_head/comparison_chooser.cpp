// SPDX-License-Identifier: MIT
#include "app/desktop/head_to_head/comparison_chooser.h"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>
#include <chrono>

#include "app/desktop/head_to_head/head_to_head_model.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/plot/number_text.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

using namespace std::chrono_literals;
constexpr auto untilProgress = 200ms;
constexpr auto untilTyped = 350ms;
constexpr int latestDay = 3650;

template <class ThingId>
void refill(QComboBox& box, const QString& all, const std::vector<Choice<ThingId>>& choices, ThingId current) {
    const QSignalBlocker quiet(box);
    box.clear();
    box.addItem(all, QVariant::fromValue<qlonglong>(0));
    for (const Choice<ThingId>& choice : choices)
        box.addItem(choice.name, QVariant::fromValue<qlonglong>(choice.id.value));
    box.setCurrentIndex(std::max(0, box.findData(QVariant::fromValue<qlonglong>(current.value))));
}

}  // namespace

ComparisonChooser::ComparisonChooser(HeadToHeadModel& model, QWidget* parent) : QWidget(parent), model_(model) {
    slow_.setSingleShot(true);
    slow_.setInterval(untilProgress);
    typing_.setSingleShot(true);
    typing_.setInterval(untilTyped);
    build();
    connectFields();
    showView();
}

void ComparisonChooser::focusFirst() {
    factor_->setFocus(Qt::OtherFocusReason);
}

void ComparisonChooser::build() {
    factor_ = new QComboBox;
    factor_->setObjectName(QStringLiteral("factor"));
    factor_->addItem(tr("method"), static_cast<int>(core::Factor::Method));
    factor_->addItem(tr("treatment"), static_cast<int>(core::Factor::Treatment));
    factor_->addItem(tr("medium"), static_cast<int>(core::Factor::Medium));
    factor_->addItem(tr("kind of cutting"), static_cast<int>(core::Factor::CuttingKind));
    plant_ = new QComboBox;
    plant_->setObjectName(QStringLiteral("plant"));
    plant_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    plant_->setMinimumContentsLength(20);
    trial_ = new QComboBox;
    trial_->setObjectName(QStringLiteral("trial"));
    trial_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    trial_->setMinimumContentsLength(14);
    horizon_ = new QLineEdit;
    horizon_->setObjectName(QStringLiteral("horizon"));
    horizon_->setAlignment(Qt::AlignRight);
    horizon_->setMaxLength(6);
    horizon_->setToolTip(tr("Blank: the trial's, the plants' or the logbook's own"));
    level_ = new QComboBox;
    level_->setObjectName(QStringLiteral("level"));
    level_->addItem(tr("as the logbook"), 0.0);
    for (const double level : {0.8, 0.9, 0.95, 0.99}) level_->addItem(plot::levelText(level), level);
    print_ = new QPushButton(tr("P&rint preview\u2026"));
    print_->setObjectName(QStringLiteral("printComparison"));

    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(fontMetrics().height() / 2);
    addField(*grid, 0, tr("&Compare by"), factor_);
    addField(*grid, 1, tr("&Plant"), plant_);
    addField(*grid, 2, tr("&Trial"), trial_);
    addField(*grid, 3, tr("&Horizon day"), horizon_);
    addField(*grid, 4, tr("&Level"), level_);
    grid->addWidget(print_, 1, 5);
    grid->setColumnStretch(1, 3);
    grid->setColumnStretch(2, 2);
    horizonReason_ = quietLabel(QStringLiteral("horizonReason"));
    auto* under = new QHBoxLayout;
    under->addWidget(horizonReason_, 1);
    under->addWidget(makeProgress());
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(grid);
    layout->addWidget(horizonFault_ = new FaultLabel);
    layout->addLayout(under);
}

void ComparisonChooser::addField(QGridLayout& grid, int column, const QString& caption, QWidget* field) {
    auto* label = new QLabel(caption);
    label->setBuddy(field);
    grid.addWidget(label, 0, column);
    grid.addWidget(field, 1, column);
}

QWidget* ComparisonChooser::makeProgress() {
    progress_ = new QWidget;
    progress_->setObjectName(QStringLiteral("progress"));
    auto* bar = new QProgressBar;
    bar->setRange(0, 0);
    bar->setTextVisible(false);
    bar->setAccessibleName(tr("Working out the comparison"));
    bar->setMaximumWidth(fontMetrics().averageCharWidth() * 20);
    auto* stop = new QPushButton(tr("Stop"));
    connect(stop, &QPushButton::clicked, this, [this] { model_.stop(); });
    auto* row = new QHBoxLayout(progress_);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(new QLabel(tr("Working it out")));
    row->addWidget(bar);
    row->addWidget(stop);
    progress_->hide();
    return progress_;
}

void ComparisonChooser::connectFields() {
    connect(factor_, &QComboBox::currentIndexChanged, this,
            [this] { model_.chooseFactor(static_cast<core::Factor>(factor_->currentData().toInt())); });
    connect(plant_, &QComboBox::currentIndexChanged, this,
            [this] { model_.choosePlant({plant_->currentData().toLongLong()}); });
    connect(trial_, &QComboBox::currentIndexChanged, this,
            [this] { model_.chooseTrial({trial_->currentData().toLongLong()}); });
    connect(level_, &QComboBox::currentIndexChanged, this, [this] {
        const double level = level_->currentData().toDouble();
        model_.setLevel(level > 0 ? std::optional(level) : std::nullopt);
    });
    connect(horizon_, &QLineEdit::textEdited, &typing_, qOverload<>(&QTimer::start));
    connect(&typing_, &QTimer::timeout, this, &ComparisonChooser::readHorizon);
    connect(horizon_, &QLineEdit::editingFinished, this, &ComparisonChooser::readHorizon);
    connect(print_, &QPushButton::clicked, this, &ComparisonChooser::printWanted);
    connect(&slow_, &QTimer::timeout, this, [this] { progress_->setVisible(model_.view().isWorking); });
    connect(&model_, &HeadToHeadModel::viewChanged, this, &ComparisonChooser::showView);
}

void ComparisonChooser::readHorizon() {
    typing_.stop();
    const QString typed = horizon_->text().trimmed();
    const auto day = core::countFrom(typed.toStdString());
    const bool isFine = typed.isEmpty() || (day && *day >= 1 && *day <= latestDay);
    horizonFault_->setFault(
        isFine ? QString()
               : tr("Horizon day is \u201c%1\u201d: it has to be a whole number from 1 to %2, or blank.")
                     .arg(typed)
                     .arg(latestDay));
    if (isFine) model_.setHorizon(typed.isEmpty() ? std::nullopt : day);
}

void ComparisonChooser::showView() {
    const HeadToHeadView& view = model_.view();
    fillChoices();
    horizonReason_->setText(view.horizon);
    print_->setEnabled(view.comparison != nullptr && !view.isWorking && view.comparison->arms.size() > 1);
    if (view.isWorking && !slow_.isActive()) slow_.start();
    if (view.isWorking) return;
    slow_.stop();
    progress_->hide();
}

void ComparisonChooser::fillChoices() {
    refill(*plant_, tr("all plants"), model_.view().plants, model_.question().plant);
    refill(*trial_, tr("all records"), model_.view().trials, model_.question().trial.value_or(core::TrialId{}));
}

}  // namespace desktop
