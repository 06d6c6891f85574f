// SPDX-License-Identifier: MIT
#include "app/desktop/logbook/restore_dialog.h"

#include <QDateTime>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

namespace desktop {

QString momentText(const std::string& utc) {
    const QDateTime moment = QDateTime::fromString(QString::fromStdString(utc), Qt::ISODate).toLocalTime();
    return RestoreDialog::tr("%1, %2").arg(QLocale().toString(moment.date(), QLocale::LongFormat),
                                           QLocale().toString(moment.time(), QLocale::ShortFormat));
}

RestoreDialog::RestoreDialog(std::vector<db::BackupFile> backups, QWidget* parent)
    : QDialog(parent), backups_(std::move(backups)), list_(new QListWidget(this)) {
    setObjectName("restoreDialog");
    setWindowTitle(tr("Restore a backup"));
    list_->setObjectName("restoreList");
    list_->setAccessibleName(tr("Backups"));
    for (const db::BackupFile& backup : backups_) {
        auto* item = new QListWidgetItem(momentText(backup.madeAt), list_);
        item->setToolTip(QString::fromStdString(backup.file.string()));
    }
    list_->setCurrentRow(0);
    list_->setMinimumWidth(list_->sizeHintForColumn(0) + fontMetrics().height() * 2);
    auto* label = new QLabel(backups_.empty() ? tr("This logbook has no backup yet. File > Back up now makes one.")
                                              : tr("&Backups, newest first"),
                             this);
    label->setBuddy(list_);
    auto* restore = new QPushButton(tr("&Restore…"), this);
    restore->setObjectName("restoreButton");
    restore->setDefault(true);
    restore->setEnabled(!backups_.empty());
    auto* cancel = new QPushButton(tr("Cancel"), this);
    cancel->setObjectName("restoreCancel");
    cancel->setAutoDefault(false);
    connect(restore, &QPushButton::clicked, this, &QDialog::accept);
    connect(list_, &QListWidget::itemActivated, this, &QDialog::accept);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);

    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(cancel);
    buttons->addWidget(restore);
    setTabOrder(cancel, restore);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(label);
    layout->addWidget(list_);
    layout->addLayout(buttons);
}

const db::BackupFile& RestoreDialog::chosen() const {
    return backups_[static_cast<std::size_t>(list_->currentRow())];
}

}  // namespace desktop
