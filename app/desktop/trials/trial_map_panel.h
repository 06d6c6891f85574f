// SPDX-License-Identifier: MIT
// Where a trial's cuttings go: session and station to choose, and the map with the number of the arm at each place.
#pragma once

#include <QWidget>
#include <vector>

#include "app/desktop/page.h"
#include "core/trial/trial.h"

class QComboBox;
class QLabel;

namespace desktop {

class FigurePanel;

class TrialMapPanel : public QWidget {
    Q_OBJECT

  public:
    explicit TrialMapPanel(const PageContext& context, QWidget* parent = nullptr);

    /// While arms are not told, only sessions that are still to be stuck. `why` stands there when there is nothing to show.
    void show(const core::Trial& trial, bool isTold, const QString& why);

  signals:
    void said(const QString& sentence);

  private:
    void fillStations();
    void showMap();
    [[nodiscard]] bool isShown(int session, bool isTold) const;

    PageContext context_;
    core::Trial trial_;
    QWidget* choices_;
    QComboBox *session_, *station_;
    FigurePanel* map_;
    QLabel* why_;
};

}  // namespace desktop
