// SPDX-License-Identifier: MIT
// A map with what goes with it: below, what stands at the current position in words, and what the shapes mean.
#pragma once

#include <QWidget>

class QLabel;

namespace desktop {

class PositionMapModel;
class PositionMapView;

class PositionMapPanel : public QWidget {
    Q_OBJECT

  public:
    /// A map to look at.
    explicit PositionMapPanel(PositionMapModel& model, QWidget* parent = nullptr);
    /// Around a map that can do more; takes it over.
    PositionMapPanel(PositionMapView* view, QWidget* parent);

    [[nodiscard]] PositionMapView& view() const { return *view_; }
    void setLegendShown(bool isShown);

  private:
    void build();
    void showWords();
    void showLegend();

    PositionMapView* view_;
    QLabel* words_;
    QLabel* legend_;
};

}  // namespace desktop
