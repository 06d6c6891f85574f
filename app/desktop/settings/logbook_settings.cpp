// SPDX-License-Identifier: MIT
#include "app/desktop/settings/logbook_settings.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>

#include "app/desktop/methods/method_dialog.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/settings/interval_words.h"
#include "app/desktop/settings/root_length_edit.h"
#include "app/desktop/settings/unit_choices.h"
#include "app/desktop/widgets/count_edit.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"
#include "app/plot/unit_text.h"
#include "core/shelf_rules.h"
#include "core/units/number_entry.h"
#include "db/actions/shelf_actions.h"

namespace desktop {

LogbookSettings::LogbookSettings(const PageContext& context, QWidget* parent) : QWidget(parent), context_(context) {
    setObjectName(QStringLiteral("logbookSettings"));
    auto* form = new QFormLayout(this);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    addWho(*form);
    addUnits(*form);
    addFigures(*form);
    addRooted(*form);
    addBench(*form);
    addPaper(*form);
    auto* rest = new FaultLabel;
    rest->setObjectName(QStringLiteral("settingsFault"));
    marks_.setRest(rest);
    form->addRow(rest);
    connect(&context_.workspace, &Workspace::logbookChanged, this, &LogbookSettings::refresh);
    connect(&context_.workspace, &Workspace::logbookReplaced, this, [this] {
        refused_.clear();
        markRefused();
        refresh();
    });
    refresh();
}

QLayout* LogbookSettings::cellFor(const QString& field, QWidget* editor, const QString& after) {
    auto* fault = new FaultLabel;
    auto* line = new QHBoxLayout;
    const auto* typed = qobject_cast<QLineEdit*>(editor);
    const bool isLong = typed && typed->maximumWidth() == QWIDGETSIZE_MAX;
    line->addWidget(editor, isLong ? 1 : 0);
    auto* words = new QLabel(after);
    words->setObjectName(editor->objectName() + QStringLiteral("After"));
    words->setWordWrap(!isLong);
    line->addWidget(words, isLong ? 0 : 1);
    words->setHidden(after.isEmpty() && isLong);
    auto* cell = new QVBoxLayout;
    cell->addLayout(line);
    cell->addWidget(fault);
    marks_.add(field, editor, fault);
    return cell;
}

void LogbookSettings::addRow(QFormLayout& form, const QString& label, const QString& field, QWidget* editor,
                             const QString& after) {
    auto* caption = new QLabel(label);
    caption->setBuddy(editor);
    form.addRow(caption, cellFor(field, editor, after));
}

void LogbookSettings::addLine(QFormLayout& form, const QString& label, const QString& field, QLineEdit* edit,
                              std::string core::LogbookFacts::*fact, const QString& after) {
    addRow(form, label, field, edit, after);
    takeFrom(*edit, [this, field, edit, fact] {
        change(field, [&](core::LogbookFacts& facts) { facts.*fact = edit->text().simplified().toStdString(); });
    });
}

void LogbookSettings::addDays(QFormLayout& form, const QString& label, const QString& field, CountEdit* edit,
                              int core::LogbookFacts::*fact, const QString& after) {
    addRow(form, label, field, edit, after);
    takeFrom(*edit, [this, field, edit, fact] {
        if (!edit->count()) return refuse(field, edit->fault(field));
        change(field, [&](core::LogbookFacts& facts) { facts.*fact = *edit->count(); });
    });
}

/// Until it is taken, nothing else overwrites what is typed there.
void LogbookSettings::takeFrom(QLineEdit& edit, const std::function<void()>& take) {
    const auto takeOnce = [&edit, take] {
        if (!edit.isModified()) return;
        edit.setModified(false);
        take();
    };
    connect(&edit, &QLineEdit::editingFinished, this, takeOnce);
    takers_.emplace_back(takeOnce);
}

void LogbookSettings::onChoice(QComboBox& box, Setting setting) {
    connect(&box, &QComboBox::currentIndexChanged, this, [this, setting = std::move(setting)] { change({}, setting); });
}

void LogbookSettings::finishTyping() {
    if (isEnabled())
        for (const auto& take : takers_) take();
}

void LogbookSettings::takeLevel() {
    const auto typed = core::numberFrom(level_->text().toStdString());
    const QString field = QStringLiteral("Level");
    if (!typed || *typed < 50 || *typed > 99.9)
        return refuse(field, tr("The level is \u201c%1\u201d; 50 to 99.9 % is allowed.").arg(level_->text()));
    change(field, [&](core::LogbookFacts& facts) { facts.level = *typed / 100; });
}

void LogbookSettings::takeRootLength() {
    const QString field = QStringLiteral("Root length in mm");
    if (!rootLength_->millimetres()) return refuse(field, rootLength_->fault());
    change(field, [&](core::LogbookFacts& facts) { facts.rootLengthMillimetres = *rootLength_->millimetres(); });
}

void LogbookSettings::refuse(const QString& field, const QString& sentence) {
    refused_[field] = {.field = field.toStdString(), .value = {}, .allowed = {}, .sentence = sentence.toStdString()};
    markRefused();
}

void LogbookSettings::markRefused() {
    core::Refusals refusals;
    for (const auto& [field, refusal] : refused_) refusals.push_back(refusal);
    marks_.mark(refusals);
}

void LogbookSettings::change(const QString& field, const Setting& setting) {
    Workspace& workspace = context_.workspace;
    if (!workspace.hasLogbook() || workspace.isReadOnly()) return;
    core::LogbookFacts facts = workspace.shelves().facts;
    setting(facts);
    refused_.erase(field);
    Outcome outcome;
    if (!(facts == workspace.shelves().facts))
        outcome = workspace.run([&](db::Logbook& logbook) { return db::keep(logbook, facts); });
    for (const core::Refusal& refusal : outcome.refusals) refused_[field] = refusal;
    markRefused();
    showFacts(workspace.shelves().facts);
}

void LogbookSettings::explain() {
    const core::LogbookFacts& facts = context_.workspace.shelves().facts;
    showMethods({intervalExampleNote(core::intervalOf(facts), facts.level)}, {}, this);
}

void LogbookSettings::refresh() {
    const Workspace& workspace = context_.workspace;
    setEnabled(workspace.hasLogbook() && !workspace.isReadOnly());
    if (workspace.hasLogbook()) showFacts(workspace.shelves().facts);
}

/// What was typed and refused stands, with its sentence, until it is right.
void LogbookSettings::show(QLineEdit& edit, const QString& field, const QString& text) {
    if (!refused_.contains(field) && !edit.isModified() && edit.text() != text) edit.setText(text);
}

void LogbookSettings::showFacts(const core::LogbookFacts& facts) {
    show(*name_, QStringLiteral("Name"), QString::fromStdString(facts.name));
    show(*grower_, QStringLiteral("Grower"), QString::fromStdString(facts.grower));
    show(*currency_, QStringLiteral("Currency"), QString::fromStdString(facts.currency));
    offerUnits(*temperature_, facts.units.temperature);
    offerUnits(*ec_, facts.units.ec);
    offerUnits(*volume_, facts.units.volume);
    offerUnits(*length_, facts.units.length);
    const core::RateInterval interval = core::intervalOf(facts);
    const QSignalBlocker quietInterval(interval_);
    interval_->setCurrentIndex(interval_->findData(static_cast<int>(interval)));
    intervalWords_->setText(intervalWords(interval) + u' ' + intervalExample(interval, facts.level));
    show(*level_, QStringLiteral("Level"), plot::amountText(facts.level * 100));
    levelWords_->setText(levelWords(facts.level));
    if (!refused_.contains(QStringLiteral("Root length in mm")) && !rootLength_->isModified())
        rootLength_->setLength(facts.rootLengthMillimetres, facts.units.length);
    findChild<QLabel*>(QStringLiteral("settingsRootLengthAfter"))
        ->setText(tr("%1, kept in whole millimetres", "mm").arg(plot::lengthUnitText(facts.units.length)));
    show(*firstCheck_, QStringLiteral("Days to the first check"), QString::number(facts.firstCheckAfterDays));
    show(*checkEvery_, QStringLiteral("Days between checks"), QString::number(facts.checkEveryDays));
    show(*horizon_, QStringLiteral("Horizon day"), QString::number(facts.horizonDay));
    showBench(facts);
    const QSignalBlocker quietPaper(paper_);
    paper_->setCurrentIndex(paper_->findData(QString::fromStdString(facts.paper)));
}

}  // namespace desktop
