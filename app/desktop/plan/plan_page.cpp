// SPDX-License-Identifier: MIT
#include "app/desktop/plan/plan_page.h"

#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

#include "app/desktop/plan/plans_view.h"
#include "app/desktop/trials/trials_view.h"
#include "app/report/sheet.h"

namespace desktop {

PlanPage::PlanPage(const PageContext& context, QWidget* parent)
    : Page(parent), tabs_(new QTabWidget), plans_(new PlansView(context)), trials_(new TrialsView(context)) {
    setObjectName(QStringLiteral("planPage"));
    tabs_->setObjectName(QStringLiteral("planTabs"));
    tabs_->setDocumentMode(true);
    tabs_->setAccessibleName(tr("Parts of the plan"));
    tabs_->tabBar()->setAccessibleName(tr("Parts of the plan"));
    tabs_->addTab(plans_, tr("How many, and &when"));
    tabs_->addTab(trials_, tr("Fair &trials"));
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(tabs_);
    connect(plans_, &PlansView::said, this, &Page::said);
    connect(plans_, &PlansView::sheetChanged, this, &Page::sheetChanged);
    connect(trials_, &TrialsView::said, this, &Page::said);
    connect(trials_, &TrialsView::sheetChanged, this, &Page::sheetChanged);
    connect(trials_, &TrialsView::placeWanted, this, &Page::placeWanted);
    connect(tabs_, &QTabWidget::currentChanged, this, &Page::sheetChanged);
}

void PlanPage::activated() {
    tabs_->currentWidget() == trials_ ? trials_->activated() : plans_->activated();
}

std::shared_ptr<const report::Sheet> PlanPage::sheet() const {
    return tabs_->currentWidget() == trials_ ? trials_->sheet() : plans_->sheet();
}

}  // namespace desktop
