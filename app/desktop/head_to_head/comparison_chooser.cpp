// SPDX-License-Identifier: MIT
#include "app/desktop/head_to_head/comparison_chooser.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <chrono>
#include <vector>

#include "app/desktop/head_to_head/head_to_head_model.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/widgets/work_strip.h"
#include "app/plot/number_text.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

using namespace std::chrono_literals;
constexpr auto untilTyped = 350ms;
constexpr int latestDay = 3650;

/// The list may be wider than its box.
void showWholeNames(QComboBox& box) {
    box.view()->setMinimumWidth(box.view()->sizeHintForColumn(0) + box.fontMetrics().height() * 2);
}

}  // namespace

ComparisonChooser::ComparisonChooser(HeadToHeadModel& model, QWidget* parent) : QWidget(parent), model_(model) {
    makeFields();
    build();
    setTabOrders();
    connectFields();
    showView();
}

void ComparisonChooser::focusFirst() {
    factor_->setFocus(Qt::OtherFocusReason);
}

void ComparisonChooser::makeFields() {
    factor_ = new QComboBox;
    factor_->setObjectName(QStringLiteral("factor"));
    factor_->addItem(tr("method"), static_cast<int>(core::Factor::Method));
    factor_->addItem(tr("treatment"), static_cast<int>(core::Factor::Treatment));
    factor_->addItem(tr("medium"), static_cast<int>(core::Factor::Medium));
    factor_->addItem(tr("kind of cutting"), static_cast<int>(core::Factor::CuttingKind));
    plant_ = shortBox(QStringLiteral("plant"), 20);
    trial_ = shortBox(QStringLiteral("trial"), 14);
    horizon_ = new QLineEdit;
    horizon_->setObjectName(QStringLiteral("horizon"));
    horizon_->setAlignment(Qt::AlignRight);
    horizon_->setMaxLength(6);
    horizon_->setToolTip(tr("Blank: the trial\u2019s, the plants\u2019 or the logbook\u2019s own"));
    level_ = new QComboBox;
    level_->setObjectName(QStringLiteral("level"));
    level_->addItem(tr("as the logbook"), 0.0);
    for (const double level : {0.8, 0.9, 0.95, 0.99}) level_->addItem(plot::levelText(level), level);
    interval_ = shortBox(QStringLiteral("interval"), 16);
    interval_->addItem(tr("as the logbook"));
    for (const core::RateInterval interval : core::everyRateInterval)
        interval_->addItem(QString::fromUtf8(core::nameOf(interval)), static_cast<int>(interval));
    interval_->setToolTip(tr("Of each arm\u2019s strike rate as counted"));
    showWholeNames(*interval_);
    print_ = new QPushButton(tr("Pri&nt preview\u2026"));
    print_->setObjectName(QStringLiteral("printComparison"));
}

// Two rows, so that nothing is cut off in large type.
void ComparisonChooser::build() {
    const int gap = fontMetrics().height() / 2;
    auto* what = new QGridLayout;
    auto* how = new QGridLayout;
    for (QGridLayout* grid : {what, how}) {
        grid->setHorizontalSpacing(gap);
        grid->setVerticalSpacing(gap / 4);
    }
    addField(*what, 0, tr("&Compare by"), factor_, factor_);
    addField(*what, 1, tr("&Plant"), plant_, plant_);
    addField(*what, 2, tr("&Trial"), trial_, trial_);
    what->setColumnStretch(1, 3);
    what->setColumnStretch(2, 2);
    addField(*how, 0, tr("Hori&zon day"), horizon_, horizon_);
    addField(*how, 1, tr("&Level"), level_, level_);
    addField(*how, 2, tr("&Interval"), interval_, interval_);
    QWidget* margin = makeMargin();
    addField(*how, 3, tr("As &good as, within"), margin, margin_);
    how->addWidget(print_, 1, 5);
    how->setColumnStretch(4, 1);
    horizonReason_ = quietLabel(QStringLiteral("horizonReason"));
    auto* under = new QHBoxLayout;
    under->addWidget(horizonReason_, 1);
    under->addWidget(makeWork());
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(gap / 2);
    layout->addLayout(what);
    layout->addLayout(how);
    layout->addWidget(horizonFault_ = new FaultLabel);
    layout->addWidget(marginFault_ = new FaultLabel);
    layout->addLayout(under);
}

QWidget* ComparisonChooser::makeMargin() {
    margin_ = new QLineEdit;
    margin_->setObjectName(QStringLiteral("margin"));
    margin_->setAccessibleName(tr("As good as, within so many of 100"));
    margin_->setAlignment(Qt::AlignRight);
    margin_->setMaxLength(6);
    margin_->setMaximumWidth(fontMetrics().averageCharWidth() * 9);
    margin_->setToolTip(tr("How many fewer of 100 would not matter to you; blank: not asked"));
    auto* withUnit = new QWidget;
    auto* row = new QHBoxLayout(withUnit);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(margin_);
    row->addWidget(new QLabel(tr("of 100", "unit after a number of cuttings")));
    row->addStretch();
    return withUnit;
}

void ComparisonChooser::setTabOrders() {
    const std::vector<QWidget*> inOrder{factor_,
                                        plant_,
                                        trial_,
                                        horizon_,
                                        level_,
                                        interval_,
                                        margin_,
                                        print_,
                                        work_->stopButton(),
                                        work_->goOnButton()};
    for (std::size_t i = 1; i < inOrder.size(); ++i) setTabOrder(inOrder[i - 1], inOrder[i]);
}

void ComparisonChooser::addField(QGridLayout& grid, int column, const QString& caption, QWidget* field,
                                 QWidget* buddy) {
    auto* label = new QLabel(caption);
    label->setBuddy(buddy);
    grid.addWidget(label, 0, column);
    grid.addWidget(field, 1, column);
}

WorkStrip* ComparisonChooser::makeWork() {
    work_ = new WorkStrip(tr("Working out the comparison"));
    connect(work_, &WorkStrip::stopWanted, &model_, &HeadToHeadModel::stop);
    connect(work_, &WorkStrip::goOnWanted, this, [this] {
        factor_->setFocus(Qt::OtherFocusReason);
        model_.workItOut();
    });
    return work_;
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
    connect(interval_, &QComboBox::currentIndexChanged, this, [this] {
        const QVariant chosen = interval_->currentData();
        model_.setInterval(chosen.isValid() ? std::optional(static_cast<core::RateInterval>(chosen.toInt()))
                                            : std::nullopt);
    });
    connectTyped(*horizon_, typingHorizon_, &ComparisonChooser::readHorizon);
    connectTyped(*margin_, typingMargin_, &ComparisonChooser::readMargin);
    connect(print_, &QPushButton::clicked, this, &ComparisonChooser::printWanted);
    connect(&model_, &HeadToHeadModel::viewChanged, this, &ComparisonChooser::showView);
}

void ComparisonChooser::connectTyped(QLineEdit& field, QTimer& typing, void (ComparisonChooser::*read)()) {
    typing.setSingleShot(true);
    typing.setInterval(untilTyped);
    connect(&field, &QLineEdit::textEdited, &typing, qOverload<>(&QTimer::start));
    connect(&typing, &QTimer::timeout, this, read);
    connect(&field, &QLineEdit::editingFinished, this, read);
}

void ComparisonChooser::readHorizon() {
    typingHorizon_.stop();
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

void ComparisonChooser::readMargin() {
    typingMargin_.stop();
    const QString typed = margin_->text().trimmed();
    const auto points = core::numberFrom(typed.toStdString());
    const bool isFine = typed.isEmpty() || (points && *points >= 1 && *points <= 99);
    marginFault_->setFault(
        isFine ? QString()
               : tr("The margin (as good as, within) is \u201c%1\u201d: it has to be a number of cuttings of 100 "
                    "from 1 to 99, such as 10, or blank.")
                     .arg(typed));
    if (isFine) model_.setMargin(typed.isEmpty() ? std::nullopt : std::optional(*points / 100));
}

void ComparisonChooser::showView() {
    const HeadToHeadView& view = model_.view();
    fillChoices();
    horizonReason_->setText(view.horizon);
    print_->setEnabled(view.comparison != nullptr && !view.isWorking && !view.isStopped &&
                       view.comparison->arms.size() > 1);
    work_->showWork({.isWorking = view.isWorking, .isReading = view.isReading, .isStopped = view.isStopped});
}

void ComparisonChooser::fillChoices() {
    refill(*plant_, tr("all plants"), model_.view().plants, model_.question().plant);
    refill(*trial_, tr("all records"), model_.view().trials, model_.question().trial.value_or(core::TrialId{}));
}

}  // namespace desktop
