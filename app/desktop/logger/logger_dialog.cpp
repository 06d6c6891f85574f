// SPDX-License-Identifier: MIT
#include "app/desktop/logger/logger_dialog.h"

#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QFormLayout>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QProgressBar>
#include <QPushButton>
#include <QTableWidget>

#include "app/desktop/logger/column_choosers.h"
#include "app/desktop/logger/logger_model.h"
#include "app/desktop/memory.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/prompts.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "app/logger/logger_text.h"

namespace desktop {

namespace {

using State = LoggerModel::State;

const QString lastFolder = QStringLiteral("logger/folder");

QString fileIn(const QMimeData& data) {
    const QList<QUrl> urls = data.urls();
    return urls.size() == 1 && urls.front().isLocalFile() ? urls.front().toLocalFile() : QString();
}

void chooseItem(QComboBox& box, const QVariant& data) {
    box.setCurrentIndex(box.findData(data));
}

}  // namespace

LoggerDialog::LoggerDialog(const PageContext& context, QWidget* parent)
    : QDialog(parent), context_(context), model_(new LoggerModel(context.workspace, this)) {
    setObjectName(QStringLiteral("loggerDialog"));
    setWindowTitle(tr("Readings of a logger"));
    setAcceptDrops(true);
    makeFields();
    makeChoices();
    build();
    connectFields();
    connect(model_, &LoggerModel::looked, this, &LoggerDialog::showFormats);
    connect(model_, &LoggerModel::changed, this, &LoggerDialog::showState);
    connect(model_, &LoggerModel::progressed, progress_, &QProgressBar::setValue);
    resize(fontMetrics().averageCharWidth() * 110, fontMetrics().height() * 40);
    showState();
    choose_->setFocus();
}

void LoggerDialog::setFile(const QString& file) {
    file_->setText(QDir::toNativeSeparators(file));
    model_->setFile(file);
}

void LoggerDialog::pickFile() {
    QString place = context_.memory == nullptr ? QString() : context_.memory->choice(lastFolder);
    if (place.isEmpty() || !QFileInfo::exists(place)) place = QDir::homePath();
    const QString file =
        context_.prompts.pickFileToOpen(this, {.title = tr("The logger's file"),
                                               .place = place,
                                               .filter = tr("Tables (*.csv *.txt *.tsv *.dat);;All files (*)"),
                                               .suffix = {}});
    if (file.isEmpty()) return;
    if (context_.memory != nullptr) context_.memory->setChoice(lastFolder, QFileInfo(file).absolutePath());
    setFile(file);
}

void LoggerDialog::dragEnterEvent(QDragEnterEvent* event) {
    if (!fileIn(*event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void LoggerDialog::dropEvent(QDropEvent* event) {
    setFile(fileIn(*event->mimeData()));
}

void LoggerDialog::showFormats() {
    columns_->showFile(model_->look(), context_.workspace.shelves());
    format_->clear();
    for (std::size_t i = 0; i < model_->known().size(); ++i)
        format_->addItem(QString::fromStdString(model_->known()[i].name), static_cast<int>(i));
    format_->addItem(tr("columns matched anew"), -1);
    name_->setText(model_->nameToRemember());
    orderTab();
}

void LoggerDialog::showChoices() {
    const core::LoggerMapping& mapping = model_->mapping();
    const bool isTable =
        model_->state() != State::NoFile && model_->state() != State::Looking && model_->state() != State::NoTable;
    const bool isAnew = isTable && model_->chosenFormat() < 0;
    const auto showRow = [&](QWidget* field, bool yes) {
        field->setVisible(yes);
        if (QWidget* label = form_->labelForField(field)) label->setVisible(yes);
    };
    showRow(format_, isTable && !model_->known().empty());
    for (QWidget* field : {order_, decimal_}) showRow(field, isAnew);
    // What was remembered may have to be put right for a file with faults.
    const bool isToMend = isAnew || model_->state() == State::Faulty || model_->state() == State::Unsaid ||
                          (isTable && model_->isMendedForThisFile());
    showRow(noReading_, isTable && isToMend);
    const bool isUnix = mapping.timeForm == core::TimeForm::UnixSeconds;
    showRow(zone_, isTable && isToMend && !isUnix);
    showRow(twice_, isTable && model_->asksForTwiceHour());
    columns_->setVisible(isAnew);
    name_->setVisible(isAnew);
    nameLabel_->setVisible(isAnew);
    if (!isTable) return;
    chooseItem(*format_, model_->chosenFormat());
    chooseItem(*order_, static_cast<int>(mapping.timeForm));
    chooseItem(*decimal_, static_cast<int>(mapping.decimalSign));
    const QString zone = QString::fromStdString(mapping.zone);
    if (zone_->findData(zone) < 0) zone_->addItem(zone, zone);
    chooseItem(*zone_, zone);
    chooseItem(*twice_, static_cast<int>(mapping.twiceHour));
    noReading_->setChecked(mapping.wordsMeanNoReading);
    columns_->showMapping(mapping);
}

QString LoggerDialog::sentence() const {
    const logger::LogContents& contents = model_->contents();
    switch (model_->state()) {
        case State::Looking:
        case State::Reading:
            return tr("Reading %1 …").arg(model_->fileName());
        case State::Saving:
            return tr("Bringing in %1 …").arg(model_->fileName());
        case State::Faulty:
            if (contents.faults.empty()) return logger::summaryText(contents.summary);
            return contents.moreFaults > 0
                       ? tr("Nothing was brought in. These are the first %1 faults of %2.")
                             .arg(contents.faults.size())
                             .arg(static_cast<qint64>(contents.faults.size()) + contents.moreFaults)
                       : tr("Nothing was brought in. Faults found: %1.").arg(contents.faults.size());
        case State::Ready:
            return readySentence();
        case State::NothingNew:
            return model_->broughtIn();
        case State::NoFile:
        case State::NoTable:
        case State::Unsaid:
            break;
    }
    return {};
}

QString LoggerDialog::readySentence() const {
    QString target = logger::targetText(model_->mapping(), context_.workspace.shelves());
    target.replace(0, 1, target.at(0).toUpper());
    return tr("%1: %2", "quantities and station: rows from until")
        .arg(target, logger::summaryText(model_->contents().summary));
}

QString LoggerDialog::gapsText() const {
    constexpr std::size_t mostGaps = 5;
    const auto& gaps = model_->contents().summary.gaps;
    if (model_->state() != State::Ready || gaps.empty()) return {};
    QStringList lines;
    for (std::size_t i = 0; i < std::min(mostGaps, gaps.size()); ++i) lines << logger::gapText(gaps[i]);
    if (gaps.size() > mostGaps) lines << tr("and %1 gaps more", "after the first").arg(gaps.size() - mostGaps);
    return lines.join(u'\n');
}

void LoggerDialog::showState() {
    const State state = model_->state();
    const bool isBusy = state == State::Looking || state == State::Reading || state == State::Saving;
    showChoices();
    if (isBusy) progress_->setValue(0);
    progress_->setVisible(isBusy);
    sentence_->setText(sentence());
    sentence_->setVisible(!sentence_->text().isEmpty());
    gaps_->setText(gapsText());
    gaps_->setVisible(!gaps_->text().isEmpty());
    unsaid_->setFault(state == State::NoTable ? model_->fault() : sentencesOf(model_->refusals()));
    showFaults();
    bringIn_->setEnabled(state == State::Ready);
    bringIn_->setDefault(state == State::Ready);
    choose_->setDefault(state == State::NoFile || state == State::NoTable);
    layout()->activate();  // the bar has its place before saving begins
    cancel_->setText(state == State::NothingNew ? tr("Close") : tr("Cancel"));
    if (state == State::NothingNew) cancel_->setFocus();
    // A known format needs no more than Enter; columns that are being matched keep the focus where it is.
    if (state == State::Ready && (model_->chosenFormat() >= 0 || choose_->hasFocus())) bringIn_->setFocus();
    if (state == State::Ready && model_->known().size() > 1 && model_->chosenFormat() == 0) format_->setFocus();
}

void LoggerDialog::showFaults() {
    const auto& faults = model_->contents().faults;
    const bool isFaulty = model_->state() == State::Faulty && !faults.empty();
    faults_->setVisible(isFaulty);
    copy_->setVisible(isFaulty);
    if (!isFaulty) return;
    faults_->setColumnCount(3);
    faults_->setHorizontalHeaderLabels({tr("Row"), tr("Column"), tr("What is wrong")});
    faults_->setRowCount(static_cast<int>(faults.size()));
    for (int row = 0; row < faults_->rowCount(); ++row) {
        const db::ImportFault& fault = faults[static_cast<std::size_t>(row)];
        const QStringList cells{QString::number(fault.row), QString::fromStdString(fault.column),
                                QString::fromStdString(fault.reason)};
        for (int column = 0; column < cells.size(); ++column) {
            auto* cell = new QTableWidgetItem(cells[column]);
            cell->setToolTip(cells[column]);
            faults_->setItem(row, column, cell);
        }
    }
    faults_->horizontalHeader()->setStretchLastSection(true);
    faults_->resizeColumnsToContents();
}

void LoggerDialog::copyFaults() {
    QStringList lines;
    for (int row = 0; row < faults_->rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < faults_->columnCount(); ++column) cells << faults_->item(row, column)->text();
        lines << cells.join('\t');
    }
    QGuiApplication::clipboard()->setText(lines.join('\n'));
}

void LoggerDialog::bringIn() {
    if (!model_->bringIn(name_->text())) return;
    emit said(model_->broughtIn());
    accept();
}

}  // namespace desktop
