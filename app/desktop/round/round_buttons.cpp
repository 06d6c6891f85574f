// SPDX-License-Identifier: MIT
#include "app/desktop/round/round_buttons.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/look/look.h"
#include "app/desktop/round/round_model.h"
#include "app/desktop/round/round_words.h"
#include "app/desktop/widgets/wrapping_row.h"
#include "app/desktop/workspace.h"

namespace desktop {

namespace {

// Wide enough for a wet finger also where the text is small.
constexpr int leastTarget = 32;
constexpr int leastStep = 44;

}  // namespace

RoundButtons::RoundButtons(RoundModel& model, const Workspace& workspace, QWidget* parent)
    : QWidget(parent), model_(model) {
    setObjectName("roundButtons");
    batch_ = new QLabel(this);
    batch_->setObjectName("roundButtonsRow");
    batch_->setTextFormat(Qt::PlainText);
    QFont bold = batch_->font();
    bold.setBold(true);
    batch_->setFont(bold);

    auto* steps = new WrappingRow;
    addStepper(*steps, tr("Rooted"), "Rooted", rooted_, [this](int more) { return model_.addRooted(row_, more); });
    addStepper(*steps, tr("Lost"), "Lost", lost_, [this](int more) { return model_.addLost(row_, more); });
    addStepper(*steps, tr("Withdrawn"), "Withdrawn", withdrawn_,
               [this](int more) { return model_.addWithdrawn(row_, more); });
    nothing_ = makeButton(tr("Nothing ne&w  *"), "roundNothingNew",
                          tr("Looked, nothing changed; goes on to the next row. The keys * and space do the same."));
    connect(nothing_, &QPushButton::clicked, this, [this] {
        emit aboutToAct();
        emit nothingNew();
    });
    steps->addWidget(nothing_);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(batch_);
    layout->addLayout(steps);
    layout->addLayout(makeCauses(workspace));
    connect(&model_, &QAbstractItemModel::dataChanged, this, &RoundButtons::refresh);
    connect(&model_, &QAbstractItemModel::modelReset, this, [this] { showRow(-1); });
    refresh();
}

QPushButton* RoundButtons::makeButton(const QString& text, const QString& name, const QString& meaning) {
    auto* button = new QPushButton(text, this);
    button->setObjectName(name);
    button->setToolTip(meaning);
    button->setAutoDefault(false);
    // A press must not take the keys away from the table.
    button->setFocusPolicy(Qt::TabFocus);
    const int target = std::max(leastTarget, fontMetrics().height() * 2);
    button->setMinimumSize(target, target);
    buttons_.push_back(button);
    return button;
}

void RoundButtons::addStepper(WrappingRow& steps, const QString& caption, const QString& name, QLabel*& count,
                              const std::function<QString(int)>& step) {
    auto* stepper = new QWidget(this);
    auto* row = new QHBoxLayout(stepper);
    row->setContentsMargins(0, 0, fontMetrics().height() / 2, 0);
    const auto addButton = [&](const QString& sign, const QString& end, const QString& meaning, int more) {
        QPushButton* button = makeButton(sign, "round" + end + name, meaning);
        button->setAccessibleName(meaning);
        button->setFixedWidth(std::max(leastStep, fontMetrics().height() * 2));
        button->setAutoRepeat(true);
        connect(button, &QPushButton::clicked, this, [this, step, more] { act([&] { return step(more); }); });
        row->addWidget(button);
    };
    row->addWidget(new QLabel(caption, this));
    addButton(QStringLiteral("\u2212"), "Fewer", tr("One fewer: %1").arg(caption), -1);
    count = new QLabel(this);
    count->setObjectName("round" + name + "Count");
    count->setAlignment(Qt::AlignCenter);
    count->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("+000 (000)")));
    row->addWidget(count);
    addButton(QStringLiteral("+"), "More", tr("One more: %1").arg(caption), 1);
    steps.addWidget(stepper);
}

WrappingRow* RoundButtons::makeCauses(const Workspace& workspace) {
    auto* row = new WrappingRow;
    row->addWidget(new QLabel(tr("Lost to"), this));
    for (const core::LossCause& cause : workspace.shelves().lossCauses) {
        if (cause.key == '\0' || cause.isRetired) continue;
        const QString letter = QString(QLatin1Char(cause.key)), name = QString::fromStdString(cause.name);
        QPushButton* button = makeButton(
            tr("%1  %2", "letter, cause of loss").arg(letter, QString(name).replace('&', "&&")), "roundCause_" + letter,
            tr("Gives this cause to what was lost, or one more lost to it. Typed: the letter %1 after the count, -2%1.")
                .arg(letter));
        connect(button, &QPushButton::clicked, this,
                [this, id = cause.id] { act([&] { return model_.blame(row_, id); }); });
        row->addWidget(button);
    }
    return row;
}

void RoundButtons::act(const Step& step) {
    emit aboutToAct();
    if (row_ < 0) return;
    emit refused(step());
}

void RoundButtons::showRow(int row) {
    row_ = row < model_.rowCount() ? row : -1;
    refresh();
}

void RoundButtons::refresh() {
    const bool isThere = row_ >= 0 && row_ < model_.rowCount();
    for (QPushButton* button : buttons_) button->setEnabled(isThere && !model_.isFault(row_));
    nothing_->setEnabled(nothing_->isEnabled() && !model_.isEntered(row_));
    if (!isThere) return batch_->setText({});
    const auto text = [this](RoundModel::Column column) { return model_.index(row_, column).data().toString(); };
    batch_->setText(tr("%1 · %2 · %3", "batch, plant, station")
                        .arg(text(RoundModel::Code), text(RoundModel::Plant), text(RoundModel::Station)));
    rooted_->setText(text(RoundModel::Rooted));
    lost_->setText(text(RoundModel::Lost));
    withdrawn_->setText(text(RoundModel::Withdrawn));
}

}  // namespace desktop
