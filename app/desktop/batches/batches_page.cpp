// SPDX-License-Identifier: MIT
#include "app/desktop/batches/batches_page.h"

#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/desktop/batches/batch_list_page.h"
#include "app/desktop/batches/batch_page.h"
#include "app/desktop/registry.h"
#include "app/desktop/workspace.h"
#include "app/report/sheet.h"

namespace desktop {

namespace {

/// Only the one in front says how much room is wanted: the table needs less than a batch's page.
void wantRoomForFront(const QStackedWidget& stack) {
    for (int place = 0; place < stack.count(); ++place) {
        const QSizePolicy::Policy policy =
            place == stack.currentIndex() ? QSizePolicy::Preferred : QSizePolicy::Ignored;
        stack.widget(place)->setSizePolicy(policy, policy);
    }
}

}  // namespace

BatchesPage::BatchesPage(const PageContext& context, QWidget* parent)
    : Page(parent), stack_(new QStackedWidget), list_(new BatchListPage(context)), batch_(new BatchPage(context)) {
    setObjectName(QStringLiteral("batchesPage"));
    stack_->addWidget(list_);
    stack_->addWidget(batch_);
    wantRoomForFront(*stack_);
    connect(stack_, &QStackedWidget::currentChanged, this, [this] { wantRoomForFront(*stack_); });
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(stack_);
    connect(list_, &BatchListPage::batchChosen, this, &BatchesPage::showBatch);
    connect(list_, &BatchListPage::sessionWanted, this, [this] { emit taskWanted(task::session); });
    connect(list_, &BatchListPage::said, this, &Page::said);
    connect(list_, &BatchListPage::onlyChanged, this, &Page::placeChanged);
    connect(list_, &BatchListPage::placeWanted, this, &Page::placeWanted);
    connect(batch_, &BatchPage::backWanted, this, &BatchesPage::showList);
    connect(batch_, &BatchPage::said, this, &Page::said);
    connect(batch_, &BatchPage::sheetChanged, this, &Page::sheetChanged);
}

void BatchesPage::activated() {
    if (stack_->currentWidget() == batch_)
        batch_->focusChecks();
    else
        list_->focusTable();
}

bool BatchesPage::showPlace(const Place& place) {
    if (place.kind == Place::Kind::Batch) return showBatch({place.id});
    if (!list_->showOnly(place)) return false;
    showList();
    return true;
}

Place BatchesPage::place() const {
    return stack_->currentWidget() == batch_ ? placeOf(shown_) : list_->only();
}

bool BatchesPage::showBatch(core::BatchId batch) {
    if (!batch_->show(batch)) {
        showList();
        return false;
    }
    shown_ = batch;
    stack_->setCurrentWidget(batch_);
    batch_->focusChecks();
    emit sheetChanged();
    emit placeChanged();
    return true;
}

std::shared_ptr<const report::Sheet> BatchesPage::sheet() const {
    return stack_->currentWidget() == batch_ ? batch_->sheet() : nullptr;
}

void BatchesPage::focusFilter() {
    showList();
    list_->focusFilter();
}

void BatchesPage::showList() {
    batch_->clear();
    stack_->setCurrentWidget(list_);
    list_->focusTable();
    emit sheetChanged();
    emit placeChanged();
}

}  // namespace desktop
