// SPDX-License-Identifier: MIT
#include "app/desktop/printing/label_preview.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/memory.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/widgets/count_edit.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "app/report/labels.h"

namespace desktop {

namespace {

struct LabelPreviewWords {
    Q_DECLARE_TR_FUNCTIONS(LabelPreview)
};

const QString stockChoice = QStringLiteral("labels/stock");

/// Which stock, and where on it to begin.
class LabelChoices : public QWidget {
  public:
    LabelChoices(std::vector<report::Label> labels, const PageContext& context) : memory_(context.memory) {
        print_.labels = std::move(labels);
        stocks_ = report::labelStocks(context.workspace.shelves().facts.paper);
        stock_ = new QComboBox;
        stock_->setObjectName(QStringLiteral("labelStock"));
        for (const report::LabelStock& stock : stocks_) stock_->addItem(stock.name, stock.word);
        if (memory_ != nullptr) stock_->setCurrentIndex(std::max(0, stock_->findData(memory_->choice(stockChoice))));
        start_ = new CountEdit(1, 1);
        start_->setObjectName(QStringLiteral("labelStart"));
        auto* stockLabel = new QLabel(LabelPreviewWords::tr("&Labels"));
        stockLabel->setBuddy(stock_);
        startLabel_ = new QLabel(LabelPreviewWords::tr("Fi&rst label that is left"));
        startLabel_->setBuddy(start_);
        auto* whole = new QVBoxLayout(this);
        whole->setContentsMargins(0, 0, 0, 0);
        auto* row = new QHBoxLayout;
        whole->addLayout(row);
        whole->addWidget(fault_ = new FaultLabel);
        row->addWidget(stockLabel);
        row->addWidget(stock_);
        row->addWidget(startLabel_);
        row->addWidget(start_);
        takeStock();
    }

    void setPreview(PrintPreview* preview) {
        QObject::connect(stock_, &QComboBox::currentIndexChanged, preview, [this, preview] {
            takeStock();
            preview->refresh();
        });
        QObject::connect(start_, &QLineEdit::textEdited, preview, [this, preview] {
            fault_->setFault(start_->fault(LabelPreviewWords::tr("First label that is left")));
            const auto start = start_->count();
            if (!start) return;  // the preview stays at the last one that could be
            print_.start = *start;
            preview->refresh();
        });
    }

    [[nodiscard]] const report::LabelPrint& print() const { return print_; }

  private:
    void takeStock() {
        print_.stock = stocks_[static_cast<std::size_t>(stock_->currentIndex())];
        print_.start = 1;
        start_->setRange(1, print_.stock.perPage());
        start_->setCount(1);
        fault_->setFault({});
        start_->setToolTip(LabelPreviewWords::tr("1 to %1, counted row by row").arg(print_.stock.perPage()));
        const bool isSheet = print_.stock.perPage() > 1;
        start_->setVisible(isSheet);
        startLabel_->setVisible(isSheet);
        if (memory_ != nullptr) memory_->setChoice(stockChoice, print_.stock.word);
    }

    Memory* memory_;
    std::vector<report::LabelStock> stocks_;
    report::LabelPrint print_;
    QComboBox* stock_{};
    CountEdit* start_{};
    QLabel* startLabel_{};
    FaultLabel* fault_{};
};

}  // namespace

PrintPreview* showLabelPreview(const std::vector<core::Batch>& batches, const PageContext& context, QWidget* parent) {
    auto* choices = new LabelChoices(report::labelsOf(batches, context.workspace.shelves()), context);
    const QString title = LabelPreviewWords::tr("Labels");
    auto* preview = new PrintPreview(
        Printout{.title = title,
                 .fileName = batches.empty() ? title
                                             : LabelPreviewWords::tr("Labels %1", "first code")
                                                   .arg(QString::fromStdString(batches.front().code)),
                 .paint = [choices](QPagedPaintDevice& device) { report::printTo(choices->print(), device); },
                 .write = [choices](const QString& file) { report::writePdf(choices->print(), file); },
                 .page = [choices] { return report::pageSizeOf(choices->print().stock); }},
        choices, context, parent);
    choices->setPreview(preview);
    preview->setAttribute(Qt::WA_DeleteOnClose);
    preview->open();
    return preview;
}

}  // namespace desktop
