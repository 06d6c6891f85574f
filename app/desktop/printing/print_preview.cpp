// SPDX-License-Identifier: MIT
#include "app/desktop/printing/print_preview.h"

#include <QAbstractScrollArea>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPageLayout>
#include <QPageSize>
#include <QPrintDialog>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QPushButton>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QVBoxLayout>

#include "app/desktop/prompts.h"
#include "app/desktop/workspace.h"
#include "app/report/sheet.h"

namespace desktop {

namespace {

QString asFileName(const QString& words) {
    static const QRegularExpression unfit(QStringLiteral("[\\\\/:*?\"<>|\\x{0}-\\x{1f}]+"));
    return QString(words).replace(unfit, QStringLiteral(" ")).simplified().left(80);
}

}  // namespace

PrintPreview::PrintPreview(std::shared_ptr<const report::Sheet> sheet, const QString& fileName,
                           const PageContext& context, QWidget* parent)
    : PrintPreview(
          PaperPrintout{
              .title = sheet->title,
              .fileName = fileName,
              .paint = [sheet](QPagedPaintDevice& device, report::Paper) { report::printTo(*sheet, device); },
              .write = [sheet](const QString& file, report::Paper paper) { report::writePdf(*sheet, file, paper); }},
          context, parent) {}

PrintPreview::PrintPreview(PaperPrintout printout, const PageContext& context, QWidget* parent)
    : QDialog(parent),
      context_(context),
      printout_{.title = printout.title,
                .fileName = asFileName(printout.fileName),
                .paint = [this, paint = printout.paint](QPagedPaintDevice& device) { paint(device, paper()); },
                .write = [this, write = printout.write](const QString& file) { write(file, paper()); },
                .page = [this] { return QPageSize(paper() == report::Paper::A4 ? QPageSize::A4 : QPageSize::Letter); }},
      printer_(std::make_unique<QPrinter>(QPrinter::HighResolution)) {
    build(makePaperChoice());
}

PrintPreview::PrintPreview(Printout printout, QWidget* choices, const PageContext& context, QWidget* parent)
    : QDialog(parent),
      context_(context),
      printout_(std::move(printout)),
      printer_(std::make_unique<QPrinter>(QPrinter::HighResolution)) {
    printout_.fileName = asFileName(printout_.fileName);
    build(choices);
}

PrintPreview::~PrintPreview() = default;

report::Paper PrintPreview::paper() const {
    return static_cast<report::Paper>(paper_->currentData().toInt());
}

void PrintPreview::build(QWidget* choices) {
    setObjectName(QStringLiteral("printPreview"));
    setWindowTitle(tr("Print preview: %1").arg(printout_.title));
    pages_ = new QPrintPreviewWidget(printer_.get(), this);
    pages_->setObjectName(QStringLiteral("pages"));
    pages_->setAccessibleName(tr("The pages as they will be printed"));
    // What takes the focus is a part of it.
    for (auto* part : pages_->findChildren<QAbstractScrollArea*>()) part->setAccessibleName(pages_->accessibleName());
    pages_->setViewMode(QPrintPreviewWidget::SinglePageView);
    pages_->setZoomMode(QPrintPreviewWidget::FitToWidth);
    connect(pages_, &QPrintPreviewWidget::previewChanged, this, &PrintPreview::showPaging);
    connect(pages_, &QPrintPreviewWidget::paintRequested, this,
            [this](QPrinter* printer) { printout_.paint(*printer); });
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(makeBar(choices));
    layout->addWidget(pages_, 1);
    save_->setFocus();
    refresh();
    const int em = fontMetrics().height();
    resize(em * 46, em * 42);
}

QWidget* PrintPreview::makePaperChoice() {
    paper_ = new QComboBox;
    paper_->setObjectName(QStringLiteral("paper"));
    paper_->addItem(tr("A4"), static_cast<int>(report::Paper::A4));
    paper_->addItem(tr("Letter"), static_cast<int>(report::Paper::Letter));
    const QString usual = QString::fromStdString(context_.workspace.shelves().facts.paper);
    paper_->setCurrentIndex(paper_->findData(static_cast<int>(report::paperFrom(usual))));
    connect(paper_, &QComboBox::currentIndexChanged, this, &PrintPreview::refresh);
    auto* label = new QLabel(tr("P&aper"));
    label->setBuddy(paper_);
    auto* choice = new QWidget;
    auto* row = new QHBoxLayout(choice);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(label);
    row->addWidget(paper_);
    return choice;
}

QWidget* PrintPreview::makeBar(QWidget* choices) {
    save_ = new QPushButton(tr("&Save as PDF\u2026"));
    save_->setObjectName(QStringLiteral("savePdf"));
    save_->setDefault(true);
    connect(save_, &QPushButton::clicked, this, &PrintPreview::savePdf);
    auto* print = new QPushButton(tr("&Print\u2026"));
    print->setObjectName(QStringLiteral("print"));
    connect(print, &QPushButton::clicked, this, &PrintPreview::print);
    auto* close = new QPushButton(tr("Close"));
    connect(close, &QPushButton::clicked, this, &QDialog::reject);

    auto* bar = new QWidget;
    auto* row = new QHBoxLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(choices);
    row->addSpacing(fontMetrics().height());
    row->addWidget(makePaging());
    row->addStretch();
    row->addWidget(save_);
    row->addWidget(print);
    row->addWidget(close);
    return bar;
}

QWidget* PrintPreview::makePaging() {
    pageNumber_ = new QLabel;
    earlier_ = new QPushButton(tr("\u2190 &Earlier"));
    later_ = new QPushButton(tr("&Later \u2192"));
    earlier_->setAutoDefault(false);
    later_->setAutoDefault(false);
    connect(earlier_, &QPushButton::clicked, this, [this] { turnTo(pages_->currentPage() - 1); });
    connect(later_, &QPushButton::clicked, this, [this] { turnTo(pages_->currentPage() + 1); });
    paging_ = new QWidget;
    auto* row = new QHBoxLayout(paging_);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(earlier_);
    row->addWidget(pageNumber_);
    row->addWidget(later_);
    return paging_;
}

// The widget says nothing when it is told to turn a page.
void PrintPreview::turnTo(int page) {
    pages_->setCurrentPage(page);
    showPaging();
}

void PrintPreview::showPaging() {
    pageNumber_->setText(tr("Page %1 of %2").arg(pages_->currentPage()).arg(pages_->pageCount()));
    paging_->setVisible(pages_->pageCount() > 1);
    earlier_->setEnabled(pages_->currentPage() > 1);
    later_->setEnabled(pages_->currentPage() < pages_->pageCount());
}

void PrintPreview::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    // The preview takes its zoom from a size that it has only now.
    pages_->setZoomMode(QPrintPreviewWidget::FitToWidth);
    pages_->fitToWidth();
}

void PrintPreview::refresh() {
    printer_->setPageSize(printout_.page());
    printer_->setPageOrientation(QPageLayout::Portrait);
    pages_->updatePreview();
}

void PrintPreview::savePdf() {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString file = context_.prompts.pickFileToSave(
        this, {.title = tr("Save as PDF"),
               .place = tr("%1/%2.pdf", "folder and file name").arg(folder, printout_.fileName),
               .filter = tr("PDF documents (*.pdf)"),
               .suffix = QStringLiteral("pdf")});
    if (file.isEmpty()) return;
    if (!context_.workspace.attemptWithout([&] { printout_.write(file); })) return;
    emit said(tr("Saved %1.").arg(QFileInfo(file).fileName()));
    accept();
}

void PrintPreview::print() {
    auto* dialog = new QPrintDialog(printer_.get(), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, qOverload<>(&QDialog::accepted), this, [this] {
        printout_.paint(*printer_);
        emit said(tr("Sent to the printer %1.").arg(printer_->printerName()));
        accept();
    });
    dialog->open();
}

namespace {

PrintPreview* openedPreview(PrintPreview* preview) {
    preview->setAttribute(Qt::WA_DeleteOnClose);
    preview->open();
    return preview;
}

}  // namespace

PrintPreview* showPrintPreview(std::shared_ptr<const report::Sheet> sheet, const QString& fileName,
                               const PageContext& context, QWidget* parent) {
    return openedPreview(new PrintPreview(std::move(sheet), fileName, context, parent));
}

PrintPreview* showPrintPreview(PaperPrintout printout, const PageContext& context, QWidget* parent) {
    return openedPreview(new PrintPreview(std::move(printout), context, parent));
}

}  // namespace desktop
