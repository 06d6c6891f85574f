// SPDX-License-Identifier: MIT
#include "app/desktop/worth_it/worth_it_page.h"

#include <QVBoxLayout>

#include "app/desktop/printing/print_preview.h"
#include "app/desktop/registry.h"
#include "app/desktop/worth_it/prices_place.h"
#include "app/desktop/worth_it/worth_it_chooser.h"
#include "app/desktop/worth_it/worth_it_model.h"
#include "app/desktop/worth_it/worth_it_view.h"
#include "app/report/sheet.h"

namespace desktop {

WorthItPage::WorthItPage(const PageContext& context, QWidget* parent)
    : Page(parent),
      context_(context),
      model_(new WorthItModel(context.workspace, this)),
      chooser_(new WorthItChooser(*model_)),
      view_(new WorthItView(*model_, context)) {
    setObjectName(QStringLiteral("worthItPage"));
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(chooser_);
    layout->addWidget(view_, 1);
    const auto goToPrices = [this] { emit placeWanted(pricesPlace()); };
    connect(chooser_, &WorthItChooser::printWanted, this, &WorthItPage::print);
    connect(chooser_, &WorthItChooser::pricesWanted, this, goToPrices);
    connect(view_, &WorthItView::pricesWanted, this, goToPrices);
    connect(view_, &WorthItView::said, this, &Page::said);
    connect(view_, &WorthItView::sessionWanted, this, [this] { emit taskWanted(task::session); });
    connect(model_, &WorthItModel::stateChanged, this, &Page::sheetChanged);
}

void WorthItPage::activated() {
    chooser_->focusFirst();
}

std::shared_ptr<const report::Sheet> WorthItPage::sheet() const {
    return model_->sheet();
}

void WorthItPage::showEvent(QShowEvent* event) {
    Page::showEvent(event);
    model_->setWatched(true);
}

void WorthItPage::hideEvent(QHideEvent* event) {
    Page::hideEvent(event);
    model_->setWatched(false);
}

void WorthItPage::print() {
    const auto sheet = model_->sheet();
    if (sheet == nullptr) return;
    connect(showPrintPreview(sheet, sheet->title, context_, this), &PrintPreview::said, this, &Page::said);
}

}  // namespace desktop
