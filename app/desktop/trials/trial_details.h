// SPDX-License-Identifier: MIT
// One trial: its answer or how far it is, the counts, how it was planned, where its cuttings go, and what was changed on the way.
#pragma once

#include <QScrollArea>

#include "app/desktop/page.h"

class QLabel;
class QTableView;
class QVBoxLayout;

namespace desktop {

class FigurePanel;
class FigureTableModel;
class TrialMapPanel;
class TrialsModel;

class TrialDetails : public QScrollArea {
    Q_OBJECT

  public:
    TrialDetails(const TrialsModel& model, const PageContext& context, QWidget* parent = nullptr);

    void show();

  signals:
    void said(const QString& sentence);

  private:
    struct Counts {
        FigureTableModel* rows;
        QTableView* table;
    };

    void build();
    QLabel* addHeading(QVBoxLayout& layout, const QString& text);
    Counts addCounts(QVBoxLayout& layout, const char* name, const QString& accessibleName);
    void showResult();
    void showCounts();
    void showDesign();
    void showLessons();

    const TrialsModel& model_;
    PageContext context_;
    QLabel *title_{}, *question_{}, *inWords_{}, *howFar_{}, *cautions_{}, *countsHeading_{}, *blinded_{}, *design_{},
        *changes_{}, *notShown_{}, *next_{};
    FigurePanel *rates_{}, *difference_{};
    Counts arms_{}, blocks_{};
    TrialMapPanel* map_{};
};

}  // namespace desktop
