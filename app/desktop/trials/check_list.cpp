// SPDX-License-Identifier: MIT
#include "app/desktop/trials/check_list.h"

#include <algorithm>

namespace desktop {

CheckList::CheckList(QWidget* parent) : QListWidget(parent) {
    setSelectionMode(QAbstractItemView::SingleSelection);
    setTabKeyNavigation(false);
    setUniformItemSizes(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    connect(this, &QListWidget::itemChanged, this, &CheckList::tickedChanged);
}

void CheckList::setThings(const std::vector<ThingToTick>& things, const std::vector<std::int64_t>& ticked) {
    const QSignalBlocker quiet(this);
    clear();
    for (const ThingToTick& thing : things) {
        auto* item = new QListWidgetItem(thing.name, this);
        item->setData(Qt::UserRole, static_cast<qlonglong>(thing.id));
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(std::ranges::find(ticked, thing.id) != ticked.end() ? Qt::Checked : Qt::Unchecked);
        item->setToolTip(thing.name);
    }
    if (count() > 0) setCurrentRow(0);
    updateGeometry();
}

std::vector<std::int64_t> CheckList::ticked() const {
    std::vector<std::int64_t> ids;
    for (int row = 0; row < count(); ++row)
        if (item(row)->checkState() == Qt::Checked) ids.push_back(item(row)->data(Qt::UserRole).toLongLong());
    return ids;
}

void CheckList::tick(std::int64_t id, bool isTicked) {
    for (int row = 0; row < count(); ++row)
        if (item(row)->data(Qt::UserRole).toLongLong() == id)
            item(row)->setCheckState(isTicked ? Qt::Checked : Qt::Unchecked);
}

QSize CheckList::sizeHint() const {
    constexpr int fewest = 2, most = 6;
    const int lines = std::clamp(count(), fewest, most);
    const int line = count() > 0 ? sizeHintForRow(0) : fontMetrics().height();
    return {fontMetrics().averageCharWidth() * 30, lines * line + 2 * frameWidth() + fontMetrics().height() / 4};
}

QSize CheckList::minimumSizeHint() const {
    return {fontMetrics().averageCharWidth() * 16, sizeHint().height()};
}

}  // namespace desktop
