// SPDX-License-Identifier: MIT
#include "app/desktop/figures/figure_panel.h"

#include <QFileInfo>
#include <QHeaderView>
#include <QMenu>
#include <QPushButton>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QTableView>
#include <QVBoxLayout>

#include "app/desktop/batches/copied_rows.h"
#include "app/desktop/figures/figure_table_model.h"
#include "app/desktop/methods/method_dialog.h"
#include "app/desktop/prompts.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/desktop/widgets/wrapping_row.h"
#include "app/desktop/workspace.h"
#include "app/plot/figure.h"
#include "app/plot/figure_view.h"

namespace desktop {

FigurePanel::FigurePanel(const QString& name, const PageContext& context, QWidget* parent)
    : QWidget(parent), context_(context), fileName_(name), table_(new FigureTableModel(this)) {
    setObjectName(name);
    build(name);
    setReady(false);
}

void FigurePanel::setFigure(std::shared_ptr<const plot::Figure> figure, std::vector<report::MethodNote> notes) {
    notes_ = std::move(notes);
    table_->show(figure == nullptr ? plot::FigureTable() : figure->table());
    tableView_->resizeColumnsToContents();
    setReady(figure != nullptr);
    view_->setFigure(std::move(figure));
}

void FigurePanel::showTable(bool on) {
    stack_->setCurrentIndex(on ? 1 : 0);
    toggle_->setText(on ? tr("Show picture") : tr("Show figures"));
}

void FigurePanel::build(const QString& name) {
    view_ = new plot::FigureView;
    view_->setObjectName(name + QStringLiteral("View"));
    tableView_ = new QTableView;
    tableView_->setObjectName(name + QStringLiteral("Table"));
    tableView_->setAccessibleName(tr("The figures behind the picture"));
    tableView_->setModel(table_);
    giveTableManners(*tableView_);
    // It scrolls in whatever room the picture has; its own wish for height would leave small pictures blank below.
    tableView_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    tableView_->horizontalHeader()->setStretchLastSection(false);
    copyOnRequest(*tableView_, [this](const QString& sentence) { emit said(sentence); });
    stack_ = new QStackedWidget;
    stack_->addWidget(view_);
    stack_->addWidget(tableView_);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(stack_, 1);
    layout->addWidget(makeButtons(name));
    connect(view_, &plot::FigureView::saveRequested, this, &FigurePanel::save);
    connect(view_, &plot::FigureView::tableRequested, this, [this] { showTable(true); });
}

QWidget* FigurePanel::makeButtons(const QString& name) {
    workedOut_ = new QPushButton(tr("How is this worked out?"));
    workedOut_->setObjectName(name + QStringLiteral("WorkedOut"));
    connect(workedOut_, &QPushButton::clicked, this, [this] { showMethods(notes_, {}, this); });
    toggle_ = new QPushButton(tr("Show figures"));
    toggle_->setObjectName(name + QStringLiteral("Toggle"));
    connect(toggle_, &QPushButton::clicked, this, [this] { showTable(stack_->currentIndex() == 0); });
    copy_ = new QPushButton(tr("Copy"));
    copy_->setObjectName(name + QStringLiteral("Copy"));
    connect(copy_, &QPushButton::clicked, this, &FigurePanel::copy);
    save_ = new QPushButton(tr("Save as"));
    save_->setObjectName(name + QStringLiteral("Save"));
    auto* kinds = new QMenu(save_);
    const auto addKind = [&](const QString& text, plot::FigureFile kind) {
        connect(kinds->addAction(text), &QAction::triggered, this, [this, kind] { save(kind); });
    };
    addKind(tr("PDF\u2026"), plot::FigureFile::Pdf);
    addKind(tr("SVG\u2026"), plot::FigureFile::Svg);
    addKind(tr("PNG\u2026"), plot::FigureFile::Png);
    addKind(tr("Figures as CSV\u2026"), plot::FigureFile::Csv);
    save_->setMenu(kinds);

    auto* buttons = new QWidget;
    auto* row = new WrappingRow(buttons);
    row->pushToEnd();
    for (QPushButton* button : {workedOut_, toggle_, copy_, save_}) row->addWidget(button);
    return buttons;
}

void FigurePanel::copy() {
    if (stack_->currentIndex() == 0) {
        view_->copyPicture();
        emit said(tr("Copied the picture."));
    } else {
        view_->copyTable();
        emit said(tr("Copied the figures."));
    }
}

void FigurePanel::save(plot::FigureFile kind) {
    const QString suffix = plot::extensionOf(kind);
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::PicturesLocation);
    const QString file = context_.prompts.pickFileToSave(
        this, {.title = tr("Save figure"),
               .place = QStringLiteral("%1/%2.%3").arg(folder, fileName_, suffix),
               .filter = tr("%1 files (*.%2)", "SVG files").arg(suffix.toUpper(), suffix),
               .suffix = suffix});
    if (file.isEmpty() || !context_.workspace.attemptWithout([&] { view_->saveAs(file, kind); })) return;
    emit said(tr("Saved %1.").arg(QFileInfo(file).fileName()));
}

void FigurePanel::setReady(bool isReady) {
    for (QPushButton* button : {toggle_, copy_, save_}) button->setVisible(isReady);
    workedOut_->setVisible(isReady && !notes_.empty());
    if (!isReady) showTable(false);
}

}  // namespace desktop
