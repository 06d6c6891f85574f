// SPDX-License-Identifier: MIT
#include "app/desktop/template/drilling_dialog.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>
#include <array>

#include "app/desktop/memory.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/printing/printed_at.h"
#include "app/desktop/template/length_edit.h"
#include "app/desktop/template/lid_view.h"
#include "app/desktop/widgets/caution_strip.h"
#include "app/desktop/workspace.h"
#include "app/plot/unit_text.h"
#include "app/report/drilling_template.h"
#include "core/mixing/cautions_in_place.h"

namespace desktop {

namespace {

const QString lidChoice = QStringLiteral("template/lid");

/// A collar of 44 mm (1 3/4 in) is the usual one; the rest is to begin with (common practice, no source).
core::Lid usualLid() {
    return {.isRound = false, .length = 600, .width = 400, .hole = 44, .web = 20, .edge = 20};
}

}  // namespace

DrillingDialog::DrillingDialog(const PageContext& context, QWidget* parent)
    : QDialog(parent), context_(context), unit_(context.workspace.shelves().facts.units.length) {
    setObjectName(QStringLiteral("drillingDialog"));
    setWindowTitle(tr("Drilling template"));
    makeFields();
    build();
    recall();
    resize(fontMetrics().height() * 56, fontMetrics().height() * 32);
    length_->setFocus();
    length_->selectAll();
}

void DrillingDialog::makeFields() {
    shape_ = new QComboBox(this);
    shape_->setObjectName(QStringLiteral("lidShape"));
    shape_->addItem(tr("rectangular"), false);
    shape_->addItem(tr("round"), true);
    const auto make = [this](const char* name) {
        auto* edit = new LengthEdit(unit_, this);
        edit->setObjectName(QString::fromLatin1(name));
        connect(edit, &QLineEdit::textEdited, this, &DrillingDialog::judge);
        return edit;
    };
    length_ = make("lidLength");
    width_ = make("lidWidth");
    hole_ = make("lidHole");
    web_ = make("lidWeb");
    edge_ = make("lidEdge");
    square_ = new QRadioButton(this);
    square_->setObjectName(QStringLiteral("lidSquare"));
    staggered_ = new QRadioButton(this);
    staggered_->setObjectName(QStringLiteral("lidStaggered"));
    view_ = new LidView(this);
    sum_ = answerLabel(QStringLiteral("lidSum"));
    sum_->setWordWrap(true);
    connect(shape_, &QComboBox::currentIndexChanged, this, &DrillingDialog::judge);
    connect(square_, &QRadioButton::clicked, this, [this] {
        chosen_ = core::RowPattern::Square;
        judge();
    });
    connect(staggered_, &QRadioButton::clicked, this, [this] {
        chosen_ = core::RowPattern::Staggered;
        judge();
    });
}

QWidget* DrillingDialog::makeForm() {
    auto* side = new QWidget(this);
    form_ = new QFormLayout(side);
    form_->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& text, const std::vector<QString>& fields, QWidget* editor) {
        auto* label = new QLabel(tr("%1, %2", "label, unit").arg(text, plot::lengthUnitText(unit_)), side);
        label->setBuddy(editor);
        auto* fault = new FaultLabel(side);
        form_->addRow(label, editor);
        form_->addRow(fault);
        for (const QString& field : fields) marks_.add(field, editor, fault);
        return label;
    };
    form_->addRow(tr("&Shape"), shape_);
    lengthLabel_ = add(tr("&Length"), {QStringLiteral("Length"), QStringLiteral("Diameter")}, length_);
    add(tr("W&idth"), {QStringLiteral("Width")}, width_);
    add(tr("&Hole"), {QStringLiteral("Hole")}, hole_);
    add(tr("&Web between holes"), {QStringLiteral("Web")}, web_);
    add(tr("&Edge to hole"), {QStringLiteral("Edge")}, edge_);
    form_->addRow(tr("Rows"), makePatterns());
    return side;
}

QBoxLayout* DrillingDialog::makePatterns() {
    auto* patterns = new QVBoxLayout;
    patterns->addWidget(square_);
    patterns->addWidget(staggered_);
    return patterns;
}

void DrillingDialog::build() {
    take_ = new QPushButton(tr("&Take over for the station"), this);
    take_->setObjectName(QStringLiteral("takeLayout"));
    take_->setToolTip(tr("Rows, columns and pattern go into the station's form; places without a hole are blocked."));
    take_->hide();
    preview_ = new QPushButton(tr("&Preview and print…"), this);
    preview_->setObjectName(QStringLiteral("previewTemplate"));
    preview_->setDefault(true);
    auto* closing = new QPushButton(tr("&Close"), this);
    connect(closing, &QPushButton::clicked, this, &QDialog::reject);
    connect(preview_, &QPushButton::clicked, this, &DrillingDialog::preview);
    connect(take_, &QPushButton::clicked, this, [this] {
        remember();
        emit layoutTaken(layout_);
        accept();
    });
    auto* row = new QHBoxLayout;
    row->addWidget(makeForm());
    row->addWidget(view_, 1);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(row, 1);
    layout->addWidget(sum_);
    layout->addWidget(CautionStrip::saying(core::cautionsOnDrilling()));
    // Not a QDialogButtonBox: in Qt 6.4 Tab would go round between its first two buttons for ever.
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    for (QPushButton* each : {take_, preview_, closing}) buttons->addWidget(each);
    layout->addLayout(buttons);
    const std::array<QWidget*, 11> inOrder{shape_,  length_,    width_, hole_,    web_,   edge_,
                                           square_, staggered_, take_,  preview_, closing};
    for (std::size_t i = 1; i < inOrder.size(); ++i) setTabOrder(inOrder[i - 1], inOrder[i]);
}

void DrillingDialog::offerToTake(const QString& station) {
    station_ = station;
    take_->show();
}

core::Lid DrillingDialog::lid() const {
    return {.isRound = shape_->currentData().toBool(),
            .length = length_->millimetres().value_or(0),
            .width = width_->millimetres().value_or(0),
            .hole = hole_->millimetres().value_or(0),
            .web = web_->millimetres().value_or(0),
            .edge = edge_->millimetres().value_or(0)};
}

core::Refusals DrillingDialog::unreadable() const {
    core::Refusals faults;
    const auto read = [&faults](const LengthEdit& edit, const char* field, const QString& name) {
        if (const QString sentence = edit.fault(name); !sentence.isEmpty())
            faults.push_back({.field = field,
                              .value = edit.text().toStdString(),
                              .allowed = {},
                              .sentence = sentence.toStdString()});
    };
    const bool isRound = shape_->currentData().toBool();
    read(*length_, "Length", isRound ? tr("Diameter") : tr("Length"));
    if (!isRound) read(*width_, "Width", tr("Width"));
    read(*hole_, "Hole", tr("Hole"));
    read(*web_, "Web", tr("Web"));
    read(*edge_, "Edge", tr("Edge"));
    return faults;
}

void DrillingDialog::judge() {
    const core::Lid now = lid();
    const QString unit = plot::lengthUnitText(unit_);
    lengthLabel_->setText(now.isRound ? tr("D&iameter, %1").arg(unit) : tr("&Length, %1").arg(unit));
    const QList<QWidget*> ofWidth{width_, form_->labelForField(width_)};
    for (QWidget* part : ofWidth) part->setVisible(!now.isRound);
    core::Refusals faults = unreadable();
    if (faults.empty()) faults = core::faultsIn(now, unit_);
    marks_.mark(faults);
    if (faults.empty())
        return showLayouts(core::layoutOf(now, core::RowPattern::Square),
                           core::layoutOf(now, core::RowPattern::Staggered));
    showLayouts({}, {});
}

void DrillingDialog::showLayouts(const core::LidLayout& square, const core::LidLayout& staggered) {
    const auto caption = [](const QString& text, const core::LidLayout& layout) {
        //: rows of holes, how many holes
        return layout.count() == 0 ? text : tr("%1: %2").arg(text).arg(layout.count());
    };
    square_->setText(caption(tr("s&quare", "rows of holes"), square));
    staggered_->setText(caption(tr("sta&ggered", "rows of holes"), staggered));
    const core::RowPattern better =
        staggered.count() > square.count() ? core::RowPattern::Staggered : core::RowPattern::Square;
    layout_ = chosen_.value_or(better) == core::RowPattern::Square ? square : staggered;
    (layout_.pattern == core::RowPattern::Square ? square_ : staggered_)->setChecked(true);
    const bool canDrill = layout_.count() > 0;
    preview_->setEnabled(canDrill);
    take_->setEnabled(canDrill);
    QString words;
    if (canDrill)
        words = tr("%1.", "51 holes of 44 mm in staggered rows").arg(report::holesText(lid(), layout_, unit_));
    if (layout_.isTurned) words += u' ' + tr("The rows run along the width.");
    sum_->setText(words);
    view_->show(lid(), layout_, words);
}

void DrillingDialog::preview() {
    remember();
    const report::DrillingTemplate drilling{.lid = lid(),
                                            .layout = layout_,
                                            .unit = unit_,
                                            .station = station_,
                                            .printedAt = printedAt(context_.workspace)};
    const QString title = windowTitle();
    const PrintPreview* preview = showPrintPreview(
        PaperPrintout{
            .title = title,
            .fileName = station_.isEmpty() ? title : tr("%1 %2", "title, station").arg(title, station_),
            .paint = [drilling](QPagedPaintDevice& device,
                                report::Paper paper) { report::printTo(drilling, device, paper); },
            .write = [drilling](const QString& file, report::Paper paper) { report::writePdf(drilling, file, paper); }},
        context_, this);
    connect(preview, &PrintPreview::said, this, &DrillingDialog::said);
}

void DrillingDialog::remember() const {
    if (context_.memory == nullptr) return;
    const core::Lid now = lid();
    QStringList words{now.isRound ? QStringLiteral("round") : QStringLiteral("box")};
    for (const double length : {now.length, now.width, now.hole, now.web, now.edge}) words << QString::number(length);
    context_.memory->setChoice(lidChoice, words.join(u' '));
}

void DrillingDialog::recall() {
    core::Lid last = usualLid();
    const QStringList words =
        context_.memory == nullptr ? QStringList() : context_.memory->choice(lidChoice).split(u' ');
    constexpr qsizetype all = 6;
    if (words.size() == all)
        last = {.isRound = words[0] == QStringLiteral("round"),
                .length = words[1].toDouble(),
                .width = words[2].toDouble(),
                .hole = words[3].toDouble(),
                .web = words[4].toDouble(),
                .edge = words[5].toDouble()};
    begin(last);
}

void DrillingDialog::begin(const core::Lid& lid) {
    shape_->setCurrentIndex(lid.isRound ? 1 : 0);
    length_->setMillimetres(lid.length);
    width_->setMillimetres(lid.width > 0 ? lid.width : usualLid().width);
    hole_->setMillimetres(lid.hole);
    web_->setMillimetres(lid.web);
    edge_->setMillimetres(lid.edge);
    judge();
}

}  // namespace desktop
