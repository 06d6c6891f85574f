// SPDX-License-Identifier: MIT
#include "app/desktop/logbook/import_dialog.h"

#include <QClipboard>
#include <QDir>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "app/desktop/logbook/import_reader.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"

namespace desktop {

ImportDialog::ImportDialog(const PageContext& context, const QString& folder, QWidget* parent)
    : QDialog(parent),
      context_(context),
      folder_(folder),
      reader_(new ImportReader(this)),
      sentence_(new QLabel(tr("Reading %1 …").arg(QDir::toNativeSeparators(folder)), this)),
      progress_(new QProgressBar(this)),
      faults_(new QTableWidget(this)),
      copy_(new QPushButton(tr("&Copy the list"), this)),
      bringIn_(new QPushButton(tr("&Bring in"), this)),
      cancel_(new QPushButton(tr("Cancel"), this)) {
    setObjectName("importDialog");
    setWindowTitle(tr("Bring in tables"));
    sentence_->setObjectName("importSentence");
    sentence_->setWordWrap(true);
    progress_->setRange(0, 0);
    progress_->setObjectName("importProgress");
    progress_->setAccessibleName(tr("Reading"));
    faults_->setObjectName("importFaults");
    faults_->setAccessibleName(tr("Faults"));
    faults_->hide();
    copy_->setObjectName("importCopy");
    copy_->setAutoDefault(false);
    copy_->hide();
    bringIn_->setObjectName("importBringIn");
    bringIn_->setDefault(true);
    bringIn_->setEnabled(false);
    cancel_->setObjectName("importCancel");
    cancel_->setAutoDefault(false);

    auto* buttons = new QHBoxLayout;
    buttons->addWidget(copy_);
    buttons->addStretch(1);
    buttons->addWidget(cancel_);
    buttons->addWidget(bringIn_);
    setTabOrder(cancel_, bringIn_);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(sentence_);
    layout->addWidget(progress_);
    layout->addWidget(faults_, 1);
    layout->addLayout(buttons);
    resize(fontMetrics().averageCharWidth() * 110, fontMetrics().height() * 10);

    connect(reader_, &ImportReader::finished, this, &ImportDialog::showContents);
    connect(copy_, &QPushButton::clicked, this, &ImportDialog::copyFaults);
    connect(bringIn_, &QPushButton::clicked, this, &QDialog::accept);
    connect(cancel_, &QPushButton::clicked, this, &QDialog::reject);
    connect(this, &QDialog::rejected, reader_, &ImportReader::stop);
    reader_->start(folder.toStdString(), context.workspace.today());
}

void ImportDialog::showContents() {
    progress_->hide();
    if (!context_.workspace.attemptWithout([this] { contents_ = reader_->contents(); })) return reject();
    if (contents_.faults.empty())
        showNews();
    else
        showFaults();
}

void ImportDialog::showNews() {
    int checks = 0;
    for (const core::BatchRecord& record : contents_.records.batches) checks += static_cast<int>(record.checks.size());
    sentence_->setText(
        tr("The tables are in order: %1 with %2.")
            .arg(plot::batchesText(static_cast<int>(contents_.records.batches.size())), plot::checksText(checks)));
    bringIn_->setEnabled(true);
    bringIn_->setFocus();
}

void ImportDialog::showFaults() {
    const auto count = static_cast<int>(contents_.faults.size());
    sentence_->setText(
        contents_.moreFaults
            ? tr("Nothing was brought in. These are the first %1 faults; mend them in the tables and try again.")
                  .arg(count)
            : tr("Nothing was brought in. Faults found: %1. Mend them in the tables and try again.").arg(count));
    faults_->setColumnCount(4);
    faults_->setHorizontalHeaderLabels({tr("File"), tr("Row"), tr("Column"), tr("What is wrong")});
    faults_->setRowCount(count);
    for (int row = 0; row < count; ++row) {
        const db::ImportFault& fault = contents_.faults[static_cast<std::size_t>(row)];
        const QStringList cells{QString::fromStdString(fault.file),
                                fault.row > 0 ? QString::number(fault.row) : QString(),
                                QString::fromStdString(fault.column), QString::fromStdString(fault.reason)};
        for (int column = 0; column < cells.size(); ++column) {
            auto* cell = new QTableWidgetItem(cells[column]);
            cell->setToolTip(cells[column]);
            faults_->setItem(row, column, cell);
        }
    }
    faults_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    faults_->setTabKeyNavigation(false);
    faults_->setWordWrap(false);
    faults_->verticalHeader()->hide();
    faults_->horizontalHeader()->setStretchLastSection(true);
    faults_->resizeColumnsToContents();
    faults_->show();
    copy_->show();
    bringIn_->hide();
    cancel_->setText(tr("Close"));
    resize(width(), fontMetrics().height() * 30);
}

void ImportDialog::copyFaults() {
    QStringList lines;
    for (int row = 0; row < faults_->rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < faults_->columnCount(); ++column) cells << faults_->item(row, column)->text();
        lines << cells.join('\t');
    }
    QGuiApplication::clipboard()->setText(lines.join('\n'));
}

}  // namespace desktop
