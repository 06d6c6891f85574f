// SPDX-License-Identifier: MIT
#include "app/desktop/logbook/logbook_dialog.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/desktop/prompts.h"
#include "app/desktop/widgets/count_edit.h"
#include "app/desktop/workspace.h"
#include "core/shelf_rules.h"
#include "db/actions/shelf_actions.h"

namespace desktop {

LogbookDialog::LogbookDialog(Purpose purpose, const PageContext& context, const core::LogbookFacts& facts,
                             const QString& file, QWidget* parent)
    : QDialog(parent),
      purpose_(purpose),
      context_(context),
      before_(facts),
      name_(new QLineEdit(QString::fromStdString(facts.name), this)),
      grower_(new QLineEdit(QString::fromStdString(facts.grower), this)),
      paper_(new QComboBox(this)),
      rootLength_(new CountEdit(1, 1000, this)),
      firstCheck_(new CountEdit(1, 365, this)),
      checkEvery_(new CountEdit(1, 365, this)),
      horizon_(new CountEdit(1, 3650, this)) {
    setObjectName("logbookDialog");
    setWindowTitle(purpose == Purpose::New ? tr("New logbook") : tr("About this logbook"));
    name_->setObjectName("logbookName");
    grower_->setObjectName("logbookGrower");
    auto* form = new QFormLayout(this);
    addRow(form, tr("&Name"), name_, "Name");
    addRow(form, tr("&Grower"), grower_, "Grower", tr("as it stands on print-outs"));
    if (purpose == Purpose::New) {
        file_ = new QLineEdit(file, this);
        addFileRow(form);
    }
    paper_->setObjectName("logbookPaper");
    paper_->addItems({"A4", "Letter"});
    paper_->setCurrentText(QString::fromStdString(facts.paper));
    addRow(form, tr("&Paper"), paper_, "Paper");
    addDayRows(form);
    addButtons(form);
    setMinimumWidth(fontMetrics().averageCharWidth() * 90);
    name_->setFocus();
    name_->selectAll();
}

void LogbookDialog::addDayRows(QFormLayout* form) {
    rootLength_->setObjectName("logbookRootLength");
    rootLength_->setCount(before_.rootLengthMillimetres);
    firstCheck_->setObjectName("logbookFirstCheck");
    firstCheck_->setCount(before_.firstCheckAfterDays);
    checkEvery_->setObjectName("logbookCheckEvery");
    checkEvery_->setCount(before_.checkEveryDays);
    horizon_->setObjectName("logbookHorizon");
    horizon_->setCount(before_.horizonDay);
    addRow(form, tr("A root &counts from"), rootLength_, "Root length in mm", tr("mm"));
    addRow(form, tr("&First look after"), firstCheck_, "Days to the first check", tr("days"));
    addRow(form, tr("Then a look &every"), checkEvery_, "Days between checks", tr("days"));
    addRow(form, tr("Methods are compared on &day"), horizon_, "Horizon day",
           tr("after sticking, where a plant or trial sets no other"));
}

void LogbookDialog::addRow(QFormLayout* form, const QString& label, QWidget* editor, const QString& field,
                           const QString& after) {
    auto* fault = new FaultLabel(this);
    auto* line = new QHBoxLayout;
    line->addWidget(editor);
    if (!after.isEmpty()) line->addWidget(new QLabel(after, this));
    if (qobject_cast<CountEdit*>(editor) || qobject_cast<QComboBox*>(editor)) line->addStretch(1);
    auto* cell = new QVBoxLayout;
    cell->addLayout(line);
    cell->addWidget(fault);
    auto* name = new QLabel(label, this);
    name->setBuddy(editor);
    form->addRow(name, cell);
    marks_.add(field, editor, fault);
}

void LogbookDialog::addFileRow(QFormLayout* form) {
    file_->setObjectName("logbookFile");
    auto* choose = new QPushButton(tr("&Choose…"), this);
    choose->setObjectName("logbookChoose");
    choose->setAutoDefault(false);
    connect(choose, &QPushButton::clicked, this, &LogbookDialog::chooseFile);
    auto* fault = new FaultLabel(this);
    fault->setObjectName("logbookFileFault");
    auto* line = new QHBoxLayout;
    line->addWidget(file_, 1);
    line->addWidget(choose);
    auto* cell = new QVBoxLayout;
    cell->addLayout(line);
    cell->addWidget(fault);
    auto* label = new QLabel(tr("F&ile"), this);
    label->setBuddy(file_);
    form->addRow(label, cell);
    marks_.add("File", file_, fault);
}

void LogbookDialog::addButtons(QFormLayout* form) {
    auto* rest = new FaultLabel(this);
    marks_.setRest(rest);
    auto* done = new QPushButton(purpose_ == Purpose::New ? tr("Create &logbook") : tr("&Save"), this);
    done->setObjectName("logbookDone");
    done->setDefault(true);
    auto* cancel = new QPushButton(tr("Cancel"), this);
    cancel->setObjectName("logbookCancel");
    cancel->setAutoDefault(false);
    connect(done, &QPushButton::clicked, this, &LogbookDialog::finish);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(cancel);
    buttons->addWidget(done);
    form->addRow(rest);
    form->addRow(buttons);
}

void LogbookDialog::chooseFile() {
    const QString file = context_.prompts.pickFileToSave(this, {.title = tr("Where the new logbook goes"),
                                                                .place = file_->text(),
                                                                .filter = tr("Logbooks (*.strikebook)"),
                                                                .suffix = "strikebook"});
    if (!file.isEmpty()) file_->setText(file);
}

core::LogbookFacts LogbookDialog::facts() const {
    core::LogbookFacts facts = before_;
    facts.name = name_->text().trimmed().toStdString();
    facts.grower = grower_->text().trimmed().toStdString();
    facts.paper = paper_->currentText().toStdString();
    facts.rootLengthMillimetres = rootLength_->count().value_or(0);
    facts.firstCheckAfterDays = firstCheck_->count().value_or(0);
    facts.checkEveryDays = checkEvery_->count().value_or(0);
    facts.horizonDay = horizon_->count().value_or(0);
    return facts;
}

core::Refusals LogbookDialog::blanks() const {
    core::Refusals refusals;
    const auto look = [&](const CountEdit* edit, const char* field) {
        const QString fault = edit->fault(tr(field));
        if (!fault.isEmpty()) refusals.push_back({field, edit->text().toStdString(), {}, fault.toStdString()});
    };
    look(rootLength_, QT_TR_NOOP("Root length in mm"));
    look(firstCheck_, QT_TR_NOOP("Days to the first check"));
    look(checkEvery_, QT_TR_NOOP("Days between checks"));
    look(horizon_, QT_TR_NOOP("Horizon day"));
    return refusals;
}

void LogbookDialog::finish() {
    core::Refusals refusals = blanks();
    if (refusals.empty()) refusals = core::faultsIn(facts());
    if (!marks_.show(refusals)) return;
    Workspace& workspace = context_.workspace;
    if (purpose_ == Purpose::Change) {
        const Outcome outcome = workspace.run([this](db::Logbook& logbook) { return db::keep(logbook, facts()); });
        if (marks_.show(outcome.refusals) && outcome.isDone) accept();
        return;
    }
    if (!workspace.create(file_->text().toStdString(), facts())) {
        marks_.show(
            {{.field = "File", .value = {}, .allowed = {}, .sentence = workspace.openingFault().toStdString()}});
        return;
    }
    accept();
    emit created(file_->text());
}

}  // namespace desktop
