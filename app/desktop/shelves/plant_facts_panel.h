// SPDX-License-Identifier: MIT
// Under the shelf of plants, for the plant of the current row: what is printed of it and the grower's own records side by side, and which of
// the two plans go by.
#pragma once

#include <QScrollArea>

#include "app/desktop/shelves/shelf.h"
#include "app/report/plant_words.h"

class QBoxLayout;
class QGridLayout;
class QLabel;

namespace desktop {

class PlantFactsModel;

class PlantFactsPanel : public QScrollArea, public ShelfDetails {
    Q_OBJECT

  public:
    explicit PlantFactsPanel(const PageContext& context, QWidget* parent = nullptr);

    void showThing(std::int64_t id) override;
    [[nodiscard]] QWidget* widgetOfDetails() override { return this; }

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void build();
    void fit();
    void tell();
    void showLines(QGridLayout& grid, const std::vector<report::PlantFactLine>& lines, const QString& name);

    PlantFactsModel* model_;
    QBoxLayout* sides_;
    QWidget *printed_{}, *own_{};
    QGridLayout *printedLines_{}, *ownLines_{};
    QLabel *heading_{}, *citations_{}, *plannedBy_{};
};

}  // namespace desktop
