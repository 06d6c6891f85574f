// SPDX-License-Identifier: MIT
#include "app/desktop/first_run/first_run_page.h"

#include <QCommandLinkButton>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/desktop/look/look.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/widgets/headline.h"

namespace desktop {

FirstRunPage::FirstRunPage(QWidget* parent)
    : QWidget(parent), fault_(new FaultLabel(this)), backup_(new QPushButton(this)) {
    setObjectName("firstRunPage");
    fault_->setObjectName("openingFault");
    backup_->setObjectName("openBackup");
    backup_->hide();

    auto* column = new QVBoxLayout;
    auto* words = new QLabel(
        tr("A logbook is one file of yours. It holds what you stuck, what rooted, and what the counts can tell you."),
        this);
    words->setWordWrap(true);
    auto* picture = new QLabel(this);
    picture->setPixmap(QIcon(":/icons/strikebook.svg").pixmap(fontMetrics().height() * 5));
    column->addWidget(picture);
    column->addWidget(new Headline(tr("Strikebook"), this));
    column->addWidget(words);
    column->addSpacing(fontMetrics().height());
    column->addWidget(fault_);
    column->addWidget(backup_, 0, Qt::AlignLeft);
    QCommandLinkButton* sample = addChoice("chooseSample", "sample", tr("Look round in a &sample logbook"),
                                           tr("Two invented seasons, copied into your documents. Try anything in it."));
    QCommandLinkButton* fresh =
        addChoice("chooseNew", "new_logbook", tr("&New logbook"), tr("Empty, ready for your first session."));
    QCommandLinkButton* tables = addChoice("chooseTables", "tables", tr("&Bring in tables"),
                                           tr("A folder with batches.csv and checks.csv becomes a new logbook."));
    for (QCommandLinkButton* choice : {sample, fresh, tables}) column->addWidget(choice);
    first_ = sample;
    auto* open = new QPushButton(tr("&Open a logbook…"), this);
    open->setObjectName("chooseOpen");
    column->addSpacing(fontMetrics().height());
    column->addWidget(open, 0, Qt::AlignLeft);

    connect(sample, &QCommandLinkButton::clicked, this, &FirstRunPage::sampleWanted);
    connect(fresh, &QCommandLinkButton::clicked, this, &FirstRunPage::newWanted);
    connect(tables, &QCommandLinkButton::clicked, this, &FirstRunPage::tablesWanted);
    connect(open, &QPushButton::clicked, this, &FirstRunPage::openWanted);
    connect(backup_, &QPushButton::clicked, this, &FirstRunPage::backupWanted);

    auto* rows = new QVBoxLayout;
    rows->addStretch(1);
    rows->addLayout(column);
    rows->addStretch(2);
    auto* layout = new QHBoxLayout(this);
    layout->addStretch(1);
    layout->addLayout(rows, 2);
    layout->addStretch(1);
}

QCommandLinkButton* FirstRunPage::addChoice(const QString& name, const QString& iconName, const QString& title,
                                            const QString& what) {
    auto* choice = new QCommandLinkButton(title, what, this);
    choice->setObjectName(name);
    choice->setIcon(icon(iconName));
    choice->setIconSize(QSize(fontMetrics().height() * 2, fontMetrics().height() * 2));
    choice->setAccessibleDescription(what);
    choice->setAutoDefault(true);  // Enter does what Space does
    return choice;
}

void FirstRunPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    first_->setFocus(Qt::OtherFocusReason);
}

void FirstRunPage::showFault(const QString& sentence, const QString& backupTime) {
    fault_->setFault(sentence);
    backup_->setText(tr("&Go back to the backup of %1").arg(backupTime));
    backup_->setVisible(!backupTime.isEmpty());
}

void FirstRunPage::clearFault() {
    fault_->setFault({});
    backup_->hide();
}

}  // namespace desktop
