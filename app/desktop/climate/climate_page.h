// SPDX-License-Identifier: MIT
// "Was it right?": what was measured at a station over a span of time, and what comes of it, beside the bands of what stands there.
#pragma once

#include <map>

#include "app/desktop/climate/climate_model.h"
#include "app/desktop/page.h"

class QComboBox;
class QLabel;
class QPushButton;
class QStackedWidget;
class QVBoxLayout;

namespace desktop {

class FigurePanel;

class ClimatePage : public Page {
    Q_OBJECT

  public:
    explicit ClimatePage(const PageContext& context, QWidget* parent = nullptr);

    void activated() override;
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const override;

  protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

  private:
    struct Part {
        QLabel* words{};
        FigurePanel* figure{};
    };

    QWidget* makeChoosers();
    QWidget* makeButtons();
    QWidget* makeCharts();
    QWidget* makeEmpty();
    QPushButton* makeButton(const QString& name, const QString& text, const QString& hint);
    void showChoices();
    void showView();
    void showEmpty();
    void showParts();
    Part& partOf(core::ClimateQuantity quantity);
    void openCare();
    void openReading();
    void openBands();

    PageContext context_;
    ClimateModel* model_;
    QComboBox* station_{};
    QComboBox* span_{};
    QComboBox* bands_{};
    std::vector<QPushButton*> edits_;
    QLabel* state_{};
    QStackedWidget* stack_{};
    QVBoxLayout* charts_{};
    std::map<core::ClimateQuantity, Part> parts_;
    QLabel* emptyTitle_{};
    QLabel* emptyText_{};
};

}  // namespace desktop
