// SPDX-License-Identifier: MIT
// How the dialog of a look hole by hole is laid out.
#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/desktop/look/look.h"
#include "app/desktop/memory.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/positions/mark_buttons.h"
#include "app/desktop/positions/position_look_dialog.h"
#include "app/desktop/positions/position_look_model.h"
#include "app/desktop/positions/position_map_model.h"
#include "app/desktop/positions/position_map_panel.h"
#include "app/desktop/positions/position_mark_view.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"

namespace desktop {

namespace {

const QString snakeChoice = QStringLiteral("positions/snake");

QLabel* labelFor(const QString& text, QWidget* buddy) {
    auto* label = new QLabel(text);
    label->setBuddy(buddy);
    return label;
}

QPushButton* makeLookButton(const QString& text, const QString& name, const QString& tip) {
    auto* button = new QPushButton(text);
    button->setObjectName(name);
    button->setToolTip(tip);
    button->setAutoDefault(false);
    return button;
}

}  // namespace

void PositionLookDialog::build() {
    setObjectName(QStringLiteral("positionLookDialog"));
    setWindowTitle(tr("Look hole by hole"));
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(makeHead());
    dayFault_ = new FaultLabel(this);
    layout->addWidget(dayFault_);
    layout->addWidget(makeLeftovers());
    pages_ = new QStackedWidget(this);
    pages_->addWidget(makeMap());
    pages_->addWidget(makeNothing());
    layout->addWidget(pages_, 1);
    note_ = new QLineEdit(this);
    note_->setObjectName(QStringLiteral("lookNote"));
    auto* notes = new QHBoxLayout;
    notes->addWidget(labelFor(tr("N&ote"), note_));
    notes->addWidget(note_, 1);
    layout->addLayout(notes);
    fault_ = new FaultLabel(this);
    fault_->setObjectName(QStringLiteral("lookFault"));
    layout->addWidget(fault_);
    layout->addLayout(makeFoot());
    connect(new QShortcut(QKeySequence("Ctrl+Return"), this), &QShortcut::activated, this, &PositionLookDialog::save);
    connect(new QShortcut(QKeySequence("Ctrl+Enter"), this), &QShortcut::activated, this, &PositionLookDialog::save);
    resize(fontMetrics().averageCharWidth() * 168, fontMetrics().height() * 42);
    view_->setFocus();
}

QHBoxLayout* PositionLookDialog::makeHead() {
    stations_ = new QComboBox(this);
    stations_->setObjectName(QStringLiteral("lookStation"));
    batches_ = new QComboBox(this);
    batches_->setObjectName(QStringLiteral("lookBatch"));
    batches_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    batches_->setMinimumContentsLength(28);
    day_ = new DateEdit(context_.workspace.today(), this);
    day_->line()->setObjectName(QStringLiteral("lookDay"));
    day_->line()->setAccessibleName(tr("Checked on"));
    day_->setDate(context_.workspace.today());
    auto* head = new QHBoxLayout;
    head->addWidget(labelFor(tr("&Station"), stations_));
    head->addWidget(stations_);
    head->addWidget(labelFor(tr("&Batches"), batches_));
    head->addWidget(batches_, 1);
    head->addWidget(labelFor(tr("&Checked on"), day_->line()));
    head->addWidget(day_);
    return head;
}

QWidget* PositionLookDialog::makeLeftovers() {
    leftovers_ = new QWidget(this);
    auto* words = new QLabel(tr("You marked some of these earlier and have not saved it yet."), leftovers_);
    auto* afresh = makeLookButton(tr("Start a&fresh"), QStringLiteral("lookAfresh"), tr("Takes all these marks away"));
    connect(afresh, &QPushButton::clicked, model_, &PositionLookModel::startAfresh);
    auto* layout = new QHBoxLayout(leftovers_);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(words, 1);
    layout->addWidget(afresh);
    leftovers_->hide();
    return leftovers_;
}

QWidget* PositionLookDialog::makeMap() {
    auto* page = new QWidget(this);
    view_ = new PositionMarkView(*model_, page);
    auto* panel = new PositionMapPanel(view_, page);
    panel->setLegendShown(false);  // the buttons are it
    QLabel* keys = quietLabel(QStringLiteral("lookKeys"));
    keys->setText(
        tr("Arrows move, Shift and arrows take several, Space marks as before, Ctrl and arrows go to "
           "the next undecided."));
    auto* row = new QHBoxLayout;
    row->addWidget(panel, 1);
    row->addWidget(makeSide());
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(row, 1);
    layout->addWidget(keys);
    return page;
}

QWidget* PositionLookDialog::makeSide() {
    auto* side = new QWidget(this);
    buttons_ = new MarkButtons(markKeysFor(context_.workspace.shelves().lossCauses), side);
    jump_ = new QLineEdit(side);
    jump_->setObjectName(QStringLiteral("lookJump"));
    jump_->setMaxLength(8);
    jumpFault_ = new FaultLabel(side);
    auto* snake = new QCheckBox(tr("Back a&nd forth"), side);
    snake->setObjectName(QStringLiteral("lookSnake"));
    snake->setToolTip(tr("Steps follow a hand that goes along one row and back along the next."));
    connect(snake, &QCheckBox::toggled, this, [this](bool isSnake) {
        view_->setSnake(isSnake);
        if (context_.memory != nullptr) context_.memory->setChoice(snakeChoice, isSnake ? "yes" : "no");
    });
    snake->setChecked(context_.memory != nullptr && context_.memory->choice(snakeChoice) == QStringLiteral("yes"));
    wasCounted_ = new QCheckBox(tr("Counte&d before"), side);
    wasCounted_->setObjectName(QStringLiteral("lookWasCounted"));
    wasCounted_->setToolTip(tr("Marks show where cuttings are that an earlier check counted; its counts stay."));
    auto* jumps = new QHBoxLayout;
    jumps->addWidget(labelFor(tr("&Go to  /"), jump_));
    jumps->addWidget(jump_, 1);
    auto* layout = new QVBoxLayout(side);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(buttons_);
    layout->addLayout(jumps);
    layout->addWidget(jumpFault_);
    layout->addWidget(snake);
    layout->addWidget(wasCounted_);
    layout->addStretch();
    side->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Preferred);
    return side;
}

QWidget* PositionLookDialog::makeNothing() {
    auto* page = new QWidget(this);
    why_ = new QLabel(page);
    why_->setObjectName(QStringLiteral("lookWhyNot"));
    why_->setWordWrap(true);
    place_ = makeLookButton(tr("Give it &positions…"), QStringLiteral("lookPlace"), tr("Free ones are proposed"));
    describe_ = makeLookButton(tr("Describe the &layout…"), QStringLiteral("lookDescribe"),
                               tr("Rows, columns and blocked positions of the station"));
    auto* layout = new QVBoxLayout(page);
    layout->addStretch();
    layout->addWidget(why_, 0);
    layout->addWidget(place_, 0, Qt::AlignLeft);
    layout->addWidget(describe_, 0, Qt::AlignLeft);
    layout->addStretch();
    return page;
}

QVBoxLayout* PositionLookDialog::makeFoot() {
    reminder_ = quietLabel(QStringLiteral("lookReminder"));
    reminder_->setWordWrap(true);
    looksAtAll_ = new QCheckBox(tr("Batches &without a mark were looked at too"), this);
    looksAtAll_->setObjectName(QStringLiteral("lookAtAll"));
    looksAtAll_->setToolTip(tr("They get a check that says nothing is new."));
    counts_ = answerLabel(QStringLiteral("lookCounts"));
    takeBack_ =
        makeLookButton(tr("&Take back"), QStringLiteral("lookTakeBack"), tr("The last mark; Ctrl+Z does the same"));
    // Not the button's own shortcut, which would take its mnemonic away.
    connect(new QShortcut(QKeySequence("Ctrl+Z"), this), &QShortcut::activated, takeBack_, &QPushButton::click);
    takeBack_->setIcon(icon(QStringLiteral("undo")));
    auto* leave = makeLookButton(tr("&Leave without saving"), QStringLiteral("lookLeave"),
                                 tr("Esc; what was marked stands here again the next time"));
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    print_ = makeLookButton(tr("Print &map…"), QStringLiteral("lookPrintMap"),
                            tr("As the logbook has it, without marks that are not saved yet"));
    connect(print_, &QPushButton::clicked, this, &PositionLookDialog::printMap);
    save_ = makeLookButton(tr("Sa&ve look"), QStringLiteral("lookSave"), tr("Enter on the map, or Ctrl+Return"));
    save_->setIcon(icon(QStringLiteral("done")));
    save_->setDefault(true);
    auto* line = new QHBoxLayout;
    line->addWidget(counts_, 1);
    for (QPushButton* button : {takeBack_, print_, leave, save_}) line->addWidget(button, 0, Qt::AlignBottom);
    auto* foot = new QVBoxLayout;
    foot->addWidget(reminder_);
    foot->addWidget(looksAtAll_);
    foot->addLayout(line);
    return foot;
}

}  // namespace desktop
