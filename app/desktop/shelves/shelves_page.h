// SPDX-License-Identifier: MIT
// "What do I have?": the short lists that batches refer to, one at a time: plants, stock plants, stations, media and so on.
#pragma once

#include "app/desktop/page.h"
#include "app/desktop/shelves/shelf.h"

class QListWidget;
class QStackedWidget;

namespace desktop {

class Headline;
class ShelfView;

class ShelvesPage : public Page {
    Q_OBJECT

  public:
    explicit ShelvesPage(const PageContext& context, QWidget* parent = nullptr);

    void activated() override;
    bool showPlace(const Place& place) override;
    [[nodiscard]] Place place() const override;
    void focusFilter() override;

  private:
    ShelfView* view(int number);
    void showShelf(int number);
    void refresh();

    PageContext context_;
    std::vector<Shelf> shelves_;
    std::vector<ShelfView*> views_;  // nullptr: not visited yet
    QListWidget* list_;
    QStackedWidget* stack_;
    Headline* title_;
};

}  // namespace desktop
