// SPDX-License-Identifier: MIT
#include "app/desktop/head_to_head/head_to_head_page.h"

#include <QVBoxLayout>

#include "app/desktop/head_to_head/comparison_chooser.h"
#include "app/desktop/head_to_head/comparison_view.h"
#include "app/desktop/head_to_head/head_to_head_model.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/registry.h"
#include "app/report/sheet.h"

namespace desktop {

HeadToHeadPage::HeadToHeadPage(const PageContext& context, QWidget* parent)
    : Page(parent),
      context_(context),
      model_(new HeadToHeadModel(context.workspace, this)),
      chooser_(new ComparisonChooser(*model_)),
      view_(new ComparisonView(*model_, context)) {
    setObjectName(QStringLiteral("headToHeadPage"));
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(chooser_);
    layout->addWidget(view_, 1);
    connect(chooser_, &ComparisonChooser::printWanted, this, &HeadToHeadPage::print);
    connect(view_, &ComparisonView::said, this, &Page::said);
    connect(view_, &ComparisonView::sessionWanted, this, [this] { emit taskWanted(task::session); });
    connect(model_, &HeadToHeadModel::viewChanged, this, &Page::sheetChanged);
}

void HeadToHeadPage::activated() {
    chooser_->focusFirst();
}

std::shared_ptr<const report::Sheet> HeadToHeadPage::sheet() const {
    return model_->sheet();
}

void HeadToHeadPage::showEvent(QShowEvent* event) {
    Page::showEvent(event);
    model_->setWatched(true);
}

void HeadToHeadPage::hideEvent(QHideEvent* event) {
    Page::hideEvent(event);
    model_->setWatched(false);
}

void HeadToHeadPage::print() {
    const auto sheet = model_->sheet();
    if (sheet == nullptr) return;
    connect(showPrintPreview(sheet, sheet->title, context_, this), &PrintPreview::said, this, &Page::said);
}

}  // namespace desktop
