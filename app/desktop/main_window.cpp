// SPDX-License-Identifier: MIT
#include "app/desktop/main_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDateTime>
#include <QDialog>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QLocale>
#include <QScreen>
#include <QScrollArea>
#include <QStackedWidget>
#include <QStatusBar>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/first_run/first_run_page.h"
#include "app/desktop/logbook/logbook_commands.h"
#include "app/desktop/logbook/restore_dialog.h"
#include "app/desktop/look/appearance.h"
#include "app/desktop/main_menus.h"
#include "app/desktop/memory.h"
#include "app/desktop/page_list.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/widgets/message_bar.h"
#include "app/desktop/workspace.h"
#include "db/safekeeping/backup.h"

namespace desktop {

namespace {

WindowParts remembering(WindowParts parts) {
    parts.context.memory = &parts.memory;
    return parts;
}

/// At a large text size a page may want more room than the screen has: then it scrolls, and the window stays as it is.
QScrollArea* scrolling(QWidget* content, QWidget* parent) {
    auto* frame = new QScrollArea(parent);
    frame->setWidgetResizable(true);
    frame->setFrameShape(QFrame::NoFrame);
    frame->setFocusPolicy(Qt::NoFocus);
    frame->setWidget(content);
    // By itself it follows Tab within the page, but not Tab into it. Where the mouse went can be seen already.
    QObject::connect(qApp, &QApplication::focusChanged, frame, [frame](QWidget*, QWidget* now) {
        if (now && frame->isAncestorOf(now) && QApplication::mouseButtons() == Qt::NoButton)
            frame->ensureWidgetVisible(now);
    });
    return frame;
}

}  // namespace

MainWindow::MainWindow(WindowParts parts)
    : parts_(remembering(std::move(parts))),
      commands_(new LogbookCommands(parts_.context, parts_.memory, this)),
      built_(parts_.pages.size()) {
    setObjectName("mainWindow");
    setWindowIcon(QIcon(":/icons/strikebook.svg"));
    setCentralWidget(makeCentre());
    makeStatusBar();
    connectWorkspace();
    catchStrayLetters();
    menus_ = new MainMenus(*this);
    if (!restoreGeometry(parts_.memory.shape("main_window")))
        resize(QSize(1280, 800).boundedTo(screen()->availableSize() - QSize(0, 2 * fontMetrics().height())));
    showSituation();
}

MainWindow::~MainWindow() = default;

QWidget* MainWindow::makeCentre() {
    auto* centre = new QWidget(this);
    list_ = new PageList(parts_.pages, centre);
    invented_ = new QLabel(tr("Sample logbook: everything in it is invented."), centre);
    invented_->setObjectName("inventedMark");
    invented_->setAutoFillBackground(true);
    invented_->setBackgroundRole(QPalette::ToolTipBase);
    invented_->setForegroundRole(QPalette::ToolTipText);
    invented_->setAlignment(Qt::AlignCenter);
    invented_->setMargin(fontMetrics().height() / 4);
    invented_->setWordWrap(true);
    pages_ = new QStackedWidget(centre);
    stack_ = new QStackedWidget(centre);
    makeFirstRun();
    stack_->addWidget(scrolling(firstRun_, stack_));
    stack_->addWidget(pages_);
    bar_ = new MessageBar(centre);

    auto* right = new QVBoxLayout;
    right->setSpacing(0);
    right->addWidget(head_ = makeHead());
    right->addWidget(invented_);
    right->addWidget(stack_, 1);
    right->addWidget(bar_);
    auto* layout = new QHBoxLayout(centre);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(list_);
    layout->addLayout(right, 1);
    connect(list_, &PageList::currentRowChanged, this, &MainWindow::showPage);
    return centre;
}

void MainWindow::makeFirstRun() {
    firstRun_ = new FirstRunPage(this);
    connect(firstRun_, &FirstRunPage::sampleWanted, commands_, &LogbookCommands::openSample);
    connect(firstRun_, &FirstRunPage::newWanted, commands_, &LogbookCommands::makeNew);
    connect(firstRun_, &FirstRunPage::tablesWanted, commands_, &LogbookCommands::importTables);
    connect(firstRun_, &FirstRunPage::openWanted, commands_, &LogbookCommands::openPicked);
    connect(firstRun_, &FirstRunPage::backupWanted, this, [this] {
        std::vector<db::BackupFile> backups;
        parts_.context.workspace.attemptWithout([&] { backups = db::backupsOf(faultyFile_.toStdString()); });
        if (!backups.empty()) commands_->restore(backups.front().file, faultyFile_);
    });
    connect(commands_, &LogbookCommands::said, this, &MainWindow::say);
    connect(commands_, &LogbookCommands::openingFailed, this, &MainWindow::showOpeningFault);
}

void MainWindow::makeStatusBar() {
    saved_ = new QLabel(this);
    saved_->setObjectName("savedMark");
    place_ = new QLabel(this);
    place_->setObjectName("logbookPlace");
    statusBar()->addWidget(saved_);
    statusBar()->addPermanentWidget(place_);
    statusBar()->setSizeGripEnabled(false);
    statusBar()->setContentsMargins(fontMetrics().averageCharWidth(), 0, fontMetrics().averageCharWidth(), 0);
}

void MainWindow::connectWorkspace() {
    const Workspace& workspace = parts_.context.workspace;
    connect(&workspace, &Workspace::logbookReplaced, this, &MainWindow::showSituation);
    connect(&workspace, &Workspace::logbookChanged, this, &MainWindow::showSaved);
    connect(&workspace, &Workspace::failed, this,
            [this](const QString& sentence) { bar_->say(sentence, MessageBar::Tone::Fault); });
    connect(&workspace, &Workspace::takenBack, this, [this](const QString& words) {
        bar_->offer(tr("Taken back: %1.").arg(words), tr("&Do again"), [this] { redo(); });
    });
    connect(&workspace, &Workspace::doneAgain, this, [this](const QString& words) {
        bar_->offer(tr("Done again: %1.").arg(words), tr("Un&do"), [this] { undo(); });
    });
    connect(&workspace, &Workspace::changedOutsideSeen, this, [this] {
        bar_->say(tr("Another window or program has changed this logbook; what you see now is the newest."));
    });
}

Page* MainWindow::builtPage(int number) {
    BuiltPage& built = built_[static_cast<std::size_t>(number)];
    if (built.page) return built.page;
    Page* page = built.page = parts_.pages[static_cast<std::size_t>(number)].make(parts_.context, nullptr);
    pages_->addWidget(built.frame = scrolling(page, pages_));
    connect(page, &Page::batchWanted, this, &MainWindow::showBatch);
    connect(page, &Page::placeWanted, this, &MainWindow::goTo);
    connect(page, &Page::placeChanged, this, [this, page] {
        if (page == front_) noteWhere();
    });
    connect(page, &Page::taskWanted, this, &MainWindow::startTask);
    connect(page, &Page::tablesWanted, commands_, &LogbookCommands::importTables);
    connect(page, &Page::said, this, &MainWindow::say);
    connect(page, &Page::sheetChanged, this, &MainWindow::situationChanged);
    return page;
}

Page* MainWindow::currentPage() const {
    return parts_.context.workspace.hasLogbook() ? front_ : nullptr;
}

QDialog* MainWindow::startTask(const QString& name) {
    const auto task = std::ranges::find(parts_.tasks, name, &TaskEntry::name);
    if (task == parts_.tasks.end() || parts_.context.workspace.isReadOnly()) return nullptr;
    QDialog* dialog = task->make(parts_.context, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    if (dialog->metaObject()->indexOfSignal("said(QString)") >= 0)
        connect(dialog, SIGNAL(said(QString)), this, SLOT(say(QString)));
    dialog->open();
    return dialog;
}

void MainWindow::printPage() {
    const Page* page = currentPage();
    if (const auto sheet = page ? page->sheet() : nullptr) {
        const QString name = parts_.pages[static_cast<std::size_t>(list_->currentRow())].title;
        connect(showPrintPreview(sheet, name, parts_.context, this), &PrintPreview::said, this, &MainWindow::say);
    }
}

void MainWindow::undo() {
    parts_.context.workspace.undo();
}

void MainWindow::redo() {
    parts_.context.workspace.redo();
}

void MainWindow::togglePageList() {
    list_->setVisible(!list_->isVisible());
}

void MainWindow::toggleFullScreen() {
    setWindowState(windowState() ^ Qt::WindowFullScreen);
}

void MainWindow::say(const QString& sentence) {
    bar_->say(sentence);
}

void MainWindow::showEvent(QShowEvent* event) {
    QMainWindow::showEvent(event);
    if (Page* page = currentPage()) page->activated();
}

void MainWindow::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::ActivationChange && isActiveWindow()) parts_.context.workspace.lookOutside();
}

void MainWindow::closeEvent(QCloseEvent* event) {
    parts_.memory.setShape("main_window", saveGeometry());
    QMainWindow::closeEvent(event);
}

}  // namespace desktop
