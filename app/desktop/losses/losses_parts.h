// SPDX-License-Identifier: MIT
// The answer of the Losses page, in the order in which a grower asks: which batches, lost to what, when, where, since when, and what went
// with it.
#pragma once

#include <QScrollArea>

#include "app/desktop/page.h"

class QComboBox;
class QLabel;
class QVBoxLayout;

namespace desktop {

class FigurePanel;
class LossesModel;
class UnusualPanel;

class LossesParts : public QScrollArea {
    Q_OBJECT

  public:
    LossesParts(LossesModel& model, const PageContext& context, QWidget* parent = nullptr);

    void showAnswer();
    void showChart();

  signals:
    void said(const QString& sentence);
    void batchWanted(core::BatchId batch);
    void suspectsWanted(core::BatchId batch);

  private:
    FigurePanel* addFigure(const QString& name, QVBoxLayout& layout);
    QLabel* addWords(const QString& name, QVBoxLayout& layout);
    void addHeading(const QString& text, QVBoxLayout& layout);
    void addChartChooser(QVBoxLayout& layout);
    void fillCharts();

    LossesModel& model_;
    PageContext context_;
    QLabel *inWords_{}, *covered_{}, *chartWords_{}, *goesWithWords_{};
    UnusualPanel* unusual_{};
    FigurePanel *pareto_{}, *months_{}, *stations_{}, *chart_{}, *goesWith_{};
    QComboBox* chartChoice_{};
    QWidget* chartRow_{};
};

}  // namespace desktop
