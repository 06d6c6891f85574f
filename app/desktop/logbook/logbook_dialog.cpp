// SPDX-License-Identifier: MIT
#include "app/desktop/logbook/logbook_dialog.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/prompts.h"
#include "app/desktop/settings/root_length_edit.h"
#include "app/desktop/settings/unit_choices.h"
#include "app/desktop/workspace.h"
#include "app/plot/unit_text.h"
#include "core/shelf_rules.h"

namespace desktop {

LogbookDialog::LogbookDialog(const PageContext& context, const core::LogbookFacts& facts, const QString& file,
                             QWidget* parent)
    : QDialog(parent),
      context_(context),
      before_(facts),
      name_(new QLineEdit(QString::fromStdString(facts.name), this)),
      grower_(new QLineEdit(QString::fromStdString(facts.grower), this)),
      file_(new QLineEdit(file, this)),
      temperature_(new QComboBox(this)),
      ec_(new QComboBox(this)),
      currency_(new QLineEdit(QString::fromStdString(facts.currency), this)),
      paper_(new QComboBox(this)),
      rootLength_(new RootLengthEdit(this)) {
    setObjectName("logbookDialog");
    setWindowTitle(tr("New logbook"));
    name_->setObjectName("logbookName");
    grower_->setObjectName("logbookGrower");
    auto* form = new QFormLayout(this);
    addRow(form, tr("&Name"), name_, "Name");
    addRow(form, tr("&Grower"), grower_, "Grower", {}, tr("as it stands on print-outs"));
    addFileRow(form);
    addUnitRows(form);
    form->addRow(quietLabelSaying(tr("All of this can be changed later, in the settings.")));
    addButtons(form);
    setMinimumWidth(fontMetrics().averageCharWidth() * 90);
    name_->setFocus();
    name_->selectAll();
}

void LogbookDialog::addUnitRows(QFormLayout* form) {
    temperature_->setObjectName("logbookTemperature");
    offerUnits(*temperature_, before_.units.temperature);
    addRow(form, tr("&Temperature in"), temperature_, "Temperature");
    ec_->setObjectName("logbookEc");
    offerUnits(*ec_, before_.units.ec);
    addRow(form, tr("&EC in"), ec_, "EC", {}, tr("ppm: as your meter\u2019s scale says"));
    currency_->setObjectName("logbookCurrency");
    currency_->setMaximumWidth(rootLength_->maximumWidth());
    addRow(form, tr("C&urrency"), currency_, "Currency", {}, tr("its three letters, such as EUR or USD"));
    paper_->setObjectName("logbookPaper");
    paper_->addItems({"A4", "Letter"});
    paper_->setCurrentText(QString::fromStdString(before_.paper));
    addRow(form, tr("&Paper"), paper_, "Paper");
    rootLength_->setObjectName("logbookRootLength");
    rootLength_->setLength(before_.rootLengthMillimetres, before_.units.length);
    addRow(form, tr("A root &counts from"), rootLength_, "Root length in mm",
           plot::lengthUnitText(before_.units.length));
}

void LogbookDialog::addRow(QFormLayout* form, const QString& label, QWidget* editor, const QString& field,
                           const QString& after, const QString& hint) {
    auto* fault = new FaultLabel(this);
    auto* line = new QHBoxLayout;
    line->addWidget(editor);
    if (!after.isEmpty()) line->addWidget(new QLabel(after, this));
    if (editor->maximumWidth() < QWIDGETSIZE_MAX || qobject_cast<QComboBox*>(editor)) line->addStretch(1);
    auto* cell = new QVBoxLayout;
    cell->addLayout(line);
    if (!hint.isEmpty()) cell->addWidget(quietLabelSaying(hint));
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
    auto* done = new QPushButton(tr("Create &logbook"), this);
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
    setTabOrder(cancel, done);
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
    facts.units.temperature = unitIn<core::TemperatureUnit>(*temperature_);
    facts.units.ec = unitIn<core::EcUnit>(*ec_);
    facts.currency = currency_->text().trimmed().toUpper().toStdString();
    facts.paper = paper_->currentText().toStdString();
    facts.rootLengthMillimetres = rootLength_->millimetres().value_or(before_.rootLengthMillimetres);
    return facts;
}

void LogbookDialog::finish() {
    core::Refusals refusals = core::faultsIn(facts());
    if (const QString fault = rootLength_->fault(); !fault.isEmpty())
        refusals.push_back({.field = "Root length in mm",
                            .value = rootLength_->text().toStdString(),
                            .allowed = {},
                            .sentence = fault.toStdString()});
    if (!marks_.show(refusals)) return;
    Workspace& workspace = context_.workspace;
    if (!workspace.create(file_->text().toStdString(), facts())) {
        marks_.show(
            {{.field = "File", .value = {}, .allowed = {}, .sentence = workspace.openingFault().toStdString()}});
        return;
    }
    accept();
    emit created(file_->text());
}

}  // namespace desktop
