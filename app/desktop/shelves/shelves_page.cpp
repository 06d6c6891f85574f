// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/shelves_page.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/shelves/shelf_list.h"
#include "app/desktop/shelves/shelf_view.h"
#include "app/desktop/widgets/headline.h"
#include "app/desktop/workspace.h"

namespace desktop {

namespace {

/// As wide as its longest entry, with rows that a wet finger hits, also after the text size was changed.
class ShelfNames : public QListWidget {
  public:
    explicit ShelfNames(const std::vector<Shelf>& shelves) {
        for (const Shelf& shelf : shelves) addItem(shelf.title);
        space();
    }
    [[nodiscard]] QSize sizeHint() const override {
        return {sizeHintForColumn(0) + 2 * fontMetrics().height(), QListWidget::sizeHint().height()};
    }
    [[nodiscard]] QSize minimumSizeHint() const override {
        return {sizeHintForColumn(0) + fontMetrics().height(), QListWidget::minimumSizeHint().height()};
    }

  protected:
    void changeEvent(QEvent* event) override {
        QListWidget::changeEvent(event);
        if (event->type() == QEvent::FontChange) space();
    }

  private:
    void space() {
        for (int number = 0; number < count(); ++number)
            item(number)->setSizeHint({fontMetrics().horizontalAdvance(item(number)->text()) + fontMetrics().height(),
                                       std::max(24, fontMetrics().height() * 2)});
        updateGeometry();
    }
};

}  // namespace

ShelvesPage::ShelvesPage(const PageContext& context, QWidget* parent)
    : Page(parent),
      context_(context),
      shelves_(allShelves()),
      views_(shelves_.size()),
      list_(new ShelfNames(shelves_)),
      stack_(new QStackedWidget),
      title_(new Headline) {
    setObjectName(QStringLiteral("shelvesPage"));
    list_->setObjectName(QStringLiteral("shelfList"));
    list_->setAccessibleName(tr("Shelves"));
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
    auto* caption = new QLabel(tr("&Shelves"));
    caption->setBuddy(list_);

    auto* left = new QVBoxLayout;
    left->addWidget(caption);
    left->addWidget(list_, 1);
    auto* right = new QVBoxLayout;
    right->addWidget(title_);
    right->addWidget(stack_, 1);
    auto* layout = new QHBoxLayout(this);
    layout->addLayout(left);
    layout->addSpacing(fontMetrics().height() / 2);
    layout->addLayout(right, 1);
    connect(list_, &QListWidget::currentRowChanged, this, &ShelvesPage::showShelf);
    connect(&context_.workspace, &Workspace::logbookChanged, this, &ShelvesPage::refresh);
    connect(&context_.workspace, &Workspace::logbookReplaced, this, &ShelvesPage::refresh);
    list_->setCurrentRow(0);
}

ShelfView* ShelvesPage::view(int number) {
    ShelfView*& made = views_[static_cast<std::size_t>(number)];
    if (made) return made;
    made = new ShelfView(context_, shelves_[static_cast<std::size_t>(number)]);
    stack_->addWidget(made);
    connect(made, &ShelfView::said, this, &Page::said);
    connect(made, &ShelfView::placeWanted, this, &Page::placeWanted);
    return made;
}

void ShelvesPage::showShelf(int number) {
    if (number < 0) return;
    stack_->setCurrentWidget(view(number));
    title_->setText(shelves_[static_cast<std::size_t>(number)].title);
    emit placeChanged();
}

void ShelvesPage::refresh() {
    for (ShelfView* each : views_)
        if (each) each->refresh();
}

void ShelvesPage::activated() {
    view(list_->currentRow())->focusTable();
}

void ShelvesPage::focusFilter() {
    view(list_->currentRow())->focusFilter();
}

bool ShelvesPage::showPlace(const Place& place) {
    if (place.kind == Place::Kind::Page) return true;
    int number = static_cast<int>(place.id);
    if (place.kind != Place::Kind::Shelf) {
        const auto found =
            std::ranges::find_if(shelves_, [&](const Shelf& shelf) { return shelf.place == place.kind; });
        if (found == shelves_.end() || !view(static_cast<int>(found - shelves_.begin()))->showThing(place.id))
            return false;
        number = static_cast<int>(found - shelves_.begin());
    }
    if (number < 0 || number >= list_->count()) return false;
    list_->setCurrentRow(number);
    return true;
}

Place ShelvesPage::place() const {
    return {.page = {}, .kind = Place::Kind::Shelf, .id = list_->currentRow()};
}

}  // namespace desktop
