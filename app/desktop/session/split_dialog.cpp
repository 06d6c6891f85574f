// SPDX-License-Identifier: MIT
#include "app/desktop/session/split_dialog.h"

#include <QButtonGroup>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QRadioButton>
#include <QTableView>
#include <QVBoxLayout>

#include "app/desktop/methods/method_dialog.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/printing/printed_at.h"
#include "app/desktop/session/allocation_table_model.h"
#include "app/desktop/session/arm_letter.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"
#include "app/report/allocation_sheet.h"
#include "app/report/methods/notes.h"

namespace desktop {

namespace {

QLabel* captionOf(const QString& text, QWidget* buddy) {
    auto* label = new QLabel(text);
    label->setBuddy(buddy);
    return label;
}

}  // namespace

SplitDialog::SplitDialog(SessionModel& model, SplitQuestion question, const PageContext& context, QWidget* parent)
    : QDialog(parent), model_(model), context_(context), map_(new AllocationTableModel(this)) {
    draft_.trialName = question.trialName;
    draft_.horizonDay = QString::number(question.horizonDay);
    draft_.question = std::move(question);
    setObjectName(QStringLiteral("splitDialog"));
    setWindowTitle(tr("Split by chance"));
    build();
    fillArms();
    const int em = fontMetrics().height();
    resize(em * 58, em * 30);
}

void SplitDialog::build() {
    auto* intro =
        new QLabel(tr("%1 of %2 are shared out by chance, so that the arms differ in nothing but what you choose here.")
                       .arg(plot::cuttingsText(draft_.question.cuttings), draft_.question.plant));
    intro->setTextFormat(Qt::PlainText);
    intro->setWordWrap(true);
    auto* sides = new QHBoxLayout;
    sides->addLayout(makeChoices(), 2);
    sides->addSpacing(fontMetrics().height());
    sides->addLayout(makeMap(), 3);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    agree_ = buttons->addButton(QString(), QDialogButtonBox::AcceptRole);
    agree_->setObjectName(QStringLiteral("agree"));
    agree_->setDefault(true);
    print_ = buttons->addButton(tr("&Print\u2026"), QDialogButtonBox::ActionRole);
    print_->setObjectName(QStringLiteral("printAllocation"));
    method_ = buttons->addButton(tr("&How is this worked out?"), QDialogButtonBox::HelpRole);
    method_->setObjectName(QStringLiteral("howWorkedOut"));
    connect(method_, &QPushButton::clicked, this,
            [this] { showMethods(report::notesOnSplit(draft_.allocation(), draft_.question.seed), {}, this); });
    connect(agree_, &QPushButton::clicked, this, &SplitDialog::agree);
    connect(print_, &QPushButton::clicked, this, &SplitDialog::print);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* layout = new QVBoxLayout(this);
    layout->addWidget(intro);
    layout->addLayout(sides, 1);
    layout->addWidget(buttons);
}

QVBoxLayout* SplitDialog::makeChoices() {
    auto* byStation = new QRadioButton(tr("&Stations"));
    auto* byTreatment = new QRadioButton(tr("Trea&tments"));
    byStation->setObjectName(QStringLiteral("byStation"));
    byTreatment->setObjectName(QStringLiteral("byTreatment"));
    byStation->setChecked(true);
    factor_ = new QButtonGroup(this);
    factor_->addButton(byStation, static_cast<int>(SessionColumn::Station));
    factor_->addButton(byTreatment, static_cast<int>(SessionColumn::Treatment));
    connect(factor_, &QButtonGroup::idClicked, this, &SplitDialog::fillArms);
    auto* factors = new QHBoxLayout;
    factors->addWidget(byStation);
    factors->addWidget(byTreatment);
    factors->addStretch();

    arms_ = new QListWidget;
    arms_->setObjectName(QStringLiteral("arms"));
    arms_->setAccessibleName(tr("Share between"));
    connect(arms_, &QListWidget::itemChanged, this, &SplitDialog::readArms);
    trial_ = new QLineEdit(draft_.trialName);
    trial_->setObjectName(QStringLiteral("trialName"));
    trial_->setCursorPosition(0);  // the plant's name is what tells trials apart
    connect(trial_, &QLineEdit::textEdited, this, [this](const QString& name) { draft_.trialName = name; });
    horizon_ = new QLineEdit(draft_.horizonDay);
    horizon_->setObjectName(QStringLiteral("horizonDay"));
    horizon_->setAlignment(Qt::AlignRight);
    horizon_->setMaximumWidth(fontMetrics().horizontalAdvance(QStringLiteral("000000000")));
    connect(horizon_, &QLineEdit::textEdited, this, [this](const QString& day) { draft_.horizonDay = day; });
    auto* days = new QHBoxLayout;
    days->addWidget(horizon_);
    days->addWidget(new QLabel(tr("days after sticking, set before looking")), 1);

    auto* layout = new QVBoxLayout;
    layout->addWidget(captionOf(tr("Share &between"), arms_));
    layout->addLayout(factors);
    layout->addWidget(arms_, 1);
    layout->addWidget(armsFault_ = new FaultLabel);
    layout->addWidget(captionOf(tr("&Name of the trial"), trial_));
    layout->addWidget(trial_);
    layout->addWidget(trialFault_ = new FaultLabel);
    layout->addWidget(captionOf(tr("&Horizon day"), horizon_));
    layout->addLayout(days);
    layout->addWidget(horizonFault_ = new FaultLabel);
    return layout;
}

QVBoxLayout* SplitDialog::makeMap() {
    table_ = new QTableView;
    table_->setObjectName(QStringLiteral("allocation"));
    table_->setAccessibleName(tr("Which cutting goes where, in the order in which they are cut"));
    table_->setModel(map_);
    table_->setLayoutDirection(Qt::LeftToRight);  // a list that is walked along at the bench
    table_->horizontalHeader()->hide();
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table_->setSelectionMode(QAbstractItemView::NoSelection);
    table_->setTabKeyNavigation(false);
    table_->setWordWrap(false);
    legend_ = new QLabel;
    legend_->setObjectName(QStringLiteral("legend"));
    legend_->setTextFormat(Qt::PlainText);
    legend_->setWordWrap(true);
    auto* seed = new QLabel(tr("Drawn with seed %1, which is kept with the trial.").arg(draft_.question.seed));
    seed->setWordWrap(true);
    auto* layout = new QVBoxLayout;
    layout->addWidget(captionOf(tr("Cuttings in the order in which they are &cut"), table_));
    layout->addWidget(table_, 1);
    layout->addWidget(legend_);
    layout->addWidget(seed);
    return layout;
}

void SplitDialog::fillArms() {
    draft_.factor = static_cast<SessionColumn>(factor_->checkedId());
    const bool isByStation = draft_.factor == SessionColumn::Station;
    const QString own = isByStation ? draft_.question.station : draft_.question.treatment;
    const QSignalBlocker quiet(arms_);
    arms_->clear();
    for (const QString& name : isByStation ? draft_.question.stations : draft_.question.treatments) {
        const QString method = isByStation ? model_.methodOf(name) : QString();
        auto* item =
            new QListWidgetItem(isByStation ? tr("%1 (%2)", "station (method)").arg(name, method) : name, arms_);
        item->setData(Qt::UserRole, name);
        item->setCheckState(name == own ? Qt::Checked : Qt::Unchecked);
    }
    if (arms_->count() > 0) arms_->setCurrentRow(0);
    readArms();
}

void SplitDialog::readArms() {
    draft_.arms.clear();
    for (int row = 0; row < arms_->count(); ++row)
        if (arms_->item(row)->checkState() == Qt::Checked)
            draft_.arms.append(arms_->item(row)->data(Qt::UserRole).toString());
    armsFault_->setFault(QString());
    showDraft();
}

void SplitDialog::showDraft() {
    const bool isReady = draft_.faultInArms().isEmpty();
    agree_->setText(isReady ? tr("Split into %n batches", nullptr, static_cast<int>(draft_.arms.size())) : tr("Split"));
    print_->setEnabled(isReady);
    method_->setEnabled(isReady);
    if (!isReady) {
        map_->clear();
        legend_->setText(draft_.faultInArms());
        return;
    }
    const core::Allocation allocation = draft_.allocation();
    QStringList lines;
    for (int arm = 0; arm < draft_.arms.size(); ++arm)
        lines.append(tr("%1 = %2: %3", "letter = station: 12 cuttings")
                         .arg(armLetter(arm), draft_.arms[arm],
                              plot::cuttingsText(allocation.perArm[static_cast<std::size_t>(arm)])));
    legend_->setText(lines.join(QLatin1Char('\n')));
    map_->show(allocation, draft_.arms);
}

void SplitDialog::agree() {
    armsFault_->setFault(draft_.faultInArms());
    trialFault_->setFault(model_.faultInTrialName(draft_.trialName));
    horizonFault_->setFault(draft_.faultInHorizon());
    if (!armsFault_->fault().isEmpty()) return arms_->setFocus();
    if (!trialFault_->fault().isEmpty()) return trial_->setFocus();
    if (!horizonFault_->fault().isEmpty()) return horizon_->setFocus();
    emit splitWanted(draft_.question.row, draft_.result());
    accept();
}

void SplitDialog::print() {
    const report::AllocationPlan plan{.trial = draft_.trialName,
                                      .plant = draft_.question.plant,
                                      .stuckOn = model_.sheet().day.value_or(context_.workspace.today()),
                                      .arms = draft_.arms,
                                      .allocation = draft_.allocation(),
                                      .seed = draft_.question.seed,
                                      .batches = model_.batchesOfRow(draft_.question.row)};
    auto sheet = std::make_shared<report::Sheet>(
        report::allocationSheet(plan, context_.workspace.shelves(), printedAt(context_.workspace)));
    showPrintPreview(std::move(sheet), draft_.trialName, context_, this);
}

}  // namespace desktop
