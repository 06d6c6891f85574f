// SPDX-License-Identifier: MIT
#include "app/desktop/page_list.h"

#include <QEvent>
#include <QKeySequence>
#include <algorithm>

namespace desktop {

PageList::PageList(const std::vector<PageEntry>& pages, QWidget* parent) : QListWidget(parent) {
    setObjectName("pageList");
    setAccessibleName(tr("Pages"));
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    for (const PageEntry& page : pages) {
        auto* item = new QListWidgetItem(icon(page.icon), page.title, this);
        item->setToolTip(tr("%1 (%2)").arg(page.title, QKeySequence(page.shortcut).toString(QKeySequence::NativeText)));
    }
    fitWidth();
}

void PageList::changeEvent(QEvent* event) {
    QListWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::ApplicationFontChange) fitWidth();
}

void PageList::fitWidth() {
    const int em = fontMetrics().height();
    setIconSize(QSize(em * 5 / 4, em * 5 / 4));
    int widest = 0;
    for (int row = 0; row < count(); ++row) {
        item(row)->setSizeHint(QSize(0, em * 5 / 2));
        widest = std::max(widest, fontMetrics().horizontalAdvance(item(row)->text()));
    }
    setFixedWidth(iconSize().width() + widest + em * 2);
}

}  // namespace desktop
