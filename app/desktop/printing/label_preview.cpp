// SPDX-License-Identifier: MIT
#include "app/desktop/printing/label_preview.h"

#include <QCheckBox>
#include <QComboBox>
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/memory.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/widgets/caution_strip.h"
#include "app/desktop/widgets/count_edit.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"
#include "app/report/labels.h"
#include "core/mixing/cautions_in_place.h"

namespace desktop {

namespace {

struct LabelPreviewWords {
    Q_DECLARE_TR_FUNCTIONS(LabelPreview)
};

const QString stockChoice = QStringLiteral("labels/stock");
const QString offsetChoice = QStringLiteral("labels/offset");  // "3 -1": half millimetres to the right and down

report::LabelOffset offsetFrom(const QString& words) {
    const QStringList halves = words.split(u' ');
    if (halves.size() != 2) return {};
    const auto read = [](const QString& word) {
        return std::clamp(word.toInt(), -report::mostHalfMillimetres, report::mostHalfMillimetres);
    };
    return {.right = read(halves[0]), .down = read(halves[1])};
}

/// Every offset that there is, in steps of half a millimetre.
QComboBox* makeOffset(const char* name, int half) {
    auto* choice = new QComboBox;
    choice->setObjectName(QString::fromLatin1(name));
    for (int each = -report::mostHalfMillimetres; each <= report::mostHalfMillimetres; ++each)
        choice->addItem(LabelPreviewWords::tr("%1 mm").arg(plot::decimalText(each * 0.5, 1)), each);
    choice->setCurrentIndex(choice->findData(half));
    return choice;
}

/// Which stock, where on it to begin, and how far off the printer feeds it.
class LabelChoices : public QWidget {
  public:
    LabelChoices(std::vector<report::Label> labels, std::vector<core::CautionTopic> cautions,
                 const PageContext& context)
        : memory_(context.memory) {
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
        row->addStretch();
        whole->insertLayout(1, makeOffsets());
        whole->addWidget(CautionStrip::saying(std::move(cautions)));
        takeStock();
    }

    void setPreview(PrintPreview* preview) {
        for (QComboBox* offset : {right_, down_})
            QObject::connect(offset, &QComboBox::currentIndexChanged, preview, [this, preview] {
                takeOffset();
                preview->refresh();
            });
        QObject::connect(calibration_, &QCheckBox::toggled, preview, &PrintPreview::refresh);
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

    [[nodiscard]] QPageSize page() const { return report::pageSizeOf(print_.stock); }
    void paint(QPagedPaintDevice& device) const {
        if (calibration_->isChecked())
            report::printTo(report::LabelCalibration{.stock = print_.stock, .offset = print_.offset}, device);
        else
            report::printTo(print_, device);
    }
    void write(const QString& file) const {
        if (calibration_->isChecked())
            report::writePdf(report::LabelCalibration{.stock = print_.stock, .offset = print_.offset}, file);
        else
            report::writePdf(print_, file);
    }

  private:
    QHBoxLayout* makeOffsets() {
        if (memory_ != nullptr) print_.offset = offsetFrom(memory_->choice(offsetChoice));
        right_ = makeOffset("labelRight", print_.offset.right);
        down_ = makeOffset("labelDown", print_.offset.down);
        calibration_ = new QCheckBox(LabelPreviewWords::tr("&Calibration page"));
        calibration_->setObjectName(QStringLiteral("labelCalibration"));
        calibration_->setToolTip(
            LabelPreviewWords::tr("Instead of labels: their outlines and scales, to print on plain paper and hold "
                                  "against the light with a label sheet"));
        auto* row = new QHBoxLayout;
        const auto add = [row](const QString& text, QComboBox* offset) {
            auto* label = new QLabel(text);
            label->setBuddy(offset);
            row->addWidget(label);
            row->addWidget(offset);
        };
        add(LabelPreviewWords::tr("&Move right"), right_);
        add(LabelPreviewWords::tr("do&wn"), down_);
        row->addWidget(calibration_);
        row->addStretch();
        return row;
    }

    void takeOffset() {
        print_.offset = {.right = right_->currentData().toInt(), .down = down_->currentData().toInt()};
        if (memory_ != nullptr)
            memory_->setChoice(offsetChoice, QStringLiteral("%1 %2").arg(print_.offset.right).arg(print_.offset.down));
    }

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
    QComboBox* right_{};
    QComboBox* down_{};
    QCheckBox* calibration_{};
};

}  // namespace

PrintPreview* showLabelPreview(const std::vector<core::Batch>& batches, const PageContext& context, QWidget* parent) {
    const core::Shelves& shelves = context.workspace.shelves();
    auto* choices =
        new LabelChoices(report::labelsOf(batches, shelves), core::cautionsOnLeaving(batches, shelves), context);
    const QString title = LabelPreviewWords::tr("Labels");
    auto* preview =
        new PrintPreview(Printout{.title = title,
                                  .fileName = batches.empty() ? title
                                                              : LabelPreviewWords::tr("Labels %1", "first code")
                                                                    .arg(QString::fromStdString(batches.front().code)),
                                  .paint = [choices](QPagedPaintDevice& device) { choices->paint(device); },
                                  .write = [choices](const QString& file) { choices->write(file); },
                                  .page = [choices] { return choices->page(); }},
                         choices, context, parent);
    choices->setPreview(preview);
    preview->setAttribute(Qt::WA_DeleteOnClose);
    preview->open();
    return preview;
}

}  // namespace desktop
