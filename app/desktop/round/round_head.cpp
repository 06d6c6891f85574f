// SPDX-License-Identifier: MIT
#include "app/desktop/round/round_head.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QRadioButton>
#include <QStringList>
#include <QVBoxLayout>

#include "app/desktop/widgets/date_edit.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"

namespace desktop {

RoundHead::RoundHead(const Workspace& workspace, core::Date day, core::PlainNumber plain, QWidget* parent)
    : QWidget(parent), workspace_(workspace) {
    day_ = new DateEdit(workspace.today(), this);
    day_->setDate(day);
    day_->line()->setObjectName("roundDay");
    day_->line()->setAccessibleName(tr("Day of the round"));
    auto* dayLabel = new QLabel(tr("&Day of the round"), this);
    dayLabel->setBuddy(day_->line());
    dayFault_ = new FaultLabel(this);
    all_ = new QCheckBox(tr("&Also batches that are not due yet"), this);
    all_->setObjectName("roundAll");
    connect(day_, &DateEdit::dateChanged, this, &RoundHead::takeDay);
    connect(all_, &QCheckBox::toggled, this, &RoundHead::showsAllChanged);

    auto* first = new QHBoxLayout;
    first->addWidget(dayLabel);
    first->addWidget(day_);
    first->addSpacing(fontMetrics().height());
    first->addWidget(all_);
    first->addStretch();
    first->addLayout(makeReading());
    grammar_ = new QLabel(this);
    grammar_->setObjectName("roundGrammar");
    grammar_->setWordWrap(true);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(first);
    layout->addWidget(dayFault_);
    layout->addWidget(grammar_);
    setPlainNumber(plain);
}

QHBoxLayout* RoundHead::makeReading() {
    reading_ = new QButtonGroup(this);
    auto* layout = new QHBoxLayout;
    layout->addWidget(new QLabel(tr("A plain number says"), this));
    const auto offer = [&](core::PlainNumber plain, const QString& text, const QString& name) {
        auto* button = new QRadioButton(text, this);
        button->setObjectName(name);
        button->setAccessibleDescription(tr("A plain number says"));
        reading_->addButton(button, static_cast<int>(plain));
        layout->addWidget(button);
    };
    offer(core::PlainNumber::InAll, tr("rooted &in all"), "roundInAll");
    offer(core::PlainNumber::New, tr("newly roo&ted"), "roundNew");
    connect(reading_, &QButtonGroup::idClicked, this,
            [this](int plain) { emit plainNumberChosen(static_cast<core::PlainNumber>(plain)); });
    return layout;
}

void RoundHead::setPlainNumber(core::PlainNumber plain) {
    reading_->button(static_cast<int>(plain))->setChecked(true);
    grammar_->setText(grammarText(plain));
}

QString RoundHead::grammarText(core::PlainNumber plain) const {
    QStringList causes;
    for (const core::LossCause& cause : workspace_.shelves().lossCauses)
        if (cause.key != '\0' && !cause.isRetired)
            causes << tr("%1\u00a0%2").arg(QLatin1Char(cause.key)).arg(QString::fromStdString(cause.name));
    const QString numbers =
        plain == core::PlainNumber::InAll
            ? tr("12\u00a0rooted\u00a0in\u00a0all · +3\u00a0three\u00a0more\u00a0rooted")
            : tr("3\u00a0or\u00a0+3\u00a0three\u00a0more\u00a0rooted · =12\u00a0rooted\u00a0in\u00a0all");
    // No-break spaces and word joiners keep a key and what it means on one line.
    return tr("*\u00a0or\u00a0space\u00a0nothing\u00a0new\u00a0and\u00a0on · %1 · "
              "-2\u00a0two\u00a0lost, with a letter for the cause (%2) · w2\u00a0two\u00a0withdrawn · "
              ".\u00a0close\u00a0the\u00a0batch · /\u2060words\u00a0a\u00a0note. "
              "Together: +3-1r/\u2060second\u00a0flush. Enter goes down; a blank row stays due.")
        .arg(numbers, causes.join(", "));
}

std::optional<core::Date> RoundHead::day() const {
    return day_->date();
}

void RoundHead::setDay(core::Date day) {
    day_->setDate(day);
    takeDay();
}

void RoundHead::focusDay() {
    day_->line()->setFocus();
}

bool RoundHead::showsAll() const {
    return all_->isChecked();
}

void RoundHead::showAll() {
    all_->setChecked(true);
}

void RoundHead::takeDay() {
    dayFault_->setFault(day_->fault());
    if (const std::optional<core::Date> day = day_->date()) emit dayChanged(*day);
}

}  // namespace desktop
