// SPDX-License-Identifier: MIT
#include "app/desktop/batches/batch_figures.h"

#include "app/desktop/batches/batch_conditions.h"
#include "app/desktop/batches/batch_map.h"
#include "app/desktop/batches/batch_page_model.h"
#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/photos/photo_wall.h"
#include "app/plot/batch_strip_figure.h"
#include "app/plot/number_text.h"
#include "app/plot/rooted_by_day_figure.h"
#include "app/plot/strike_chart_figure.h"
#include "app/report/methods/notes.h"

namespace desktop {

BatchFigures::BatchFigures(BatchPageModel& model, const PageContext& context, QWidget* parent)
    : QTabWidget(parent),
      model_(model),
      strip_(new FigurePanel(QStringLiteral("batchStrip"), context)),
      curve_(new FigurePanel(QStringLiteral("batchCurve"), context)),
      chart_(new FigurePanel(QStringLiteral("batchChart"), context)),
      photos_(new PhotoWall(model, context)),
      conditions_(new BatchConditions(model, context)),
      map_(new BatchMap(model, context)) {
    setObjectName(QStringLiteral("batchFigures"));
    setAccessibleName(tr("Pictures of this batch"));
    setDocumentMode(true);
    addTab(strip_, tr("&Strip"));
    addTab(curve_, tr("Rooted by da&y"));
    addTab(chart_, tr("Besi&de other batches"));
    addTab(conditions_, tr("Conditions"));
    addTab(photos_, tr("Photos"));
    addTab(map_, tr("&Map"));
    // A figure is drawn into the room there is; what it would like to have must not make the page scroll sideways.
    for (int tab = 0; tab < count(); ++tab) widget(tab)->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    for (FigurePanel* figure : {strip_, curve_, chart_}) connect(figure, &FigurePanel::said, this, &BatchFigures::said);
    connect(conditions_, &BatchConditions::said, this, &BatchFigures::said);
    connect(photos_, &PhotoWall::said, this, &BatchFigures::said);
    connect(photos_, &PhotoWall::wanted, this, &BatchFigures::bringPhotosToFront);
}

void BatchFigures::start() {
    for (FigurePanel* figure : {strip_, curve_, chart_}) figure->showTable(false);
}

void BatchFigures::showPictures() {
    const BatchView& view = model_.view();
    strip_->setFileName(tr("%1 over its life", "a file's name").arg(view.code));
    curve_->setFileName(view.code);
    chart_->setFileName(tr("%1 beside other batches", "a file's name").arg(view.code));
    if (!view.summary) {
        for (FigurePanel* figure : {strip_, curve_, chart_}) figure->setFigure(nullptr);
        return;
    }
    strip_->setFigure(plot::batchStripFigure(*view.summary, view.record.batch, view.life, model_.shelves().facts.units),
                      report::notesOnBatch(*view.summary));
    curve_->setFigure(plot::rootedByDayFigure(*view.summary, view.code), report::notesOnBatch(*view.summary));
    chart_->setFigure(plot::strikeChartFigure(view.summary->chart, view.code),
                      report::notesOnChart(view.summary->chart));
}

void BatchFigures::showPhotos(bool isWritable) {
    conditions_->forget();
    photos_->show(isWritable);
    const auto count = static_cast<int>(model_.view().life.photos.size());
    setTabText(indexOf(photos_), count == 0 ? tr("Photos") : tr("Photos (%1)").arg(plot::countText(count)));
}

void BatchFigures::showMap(bool isWritable) {
    setTabVisible(indexOf(map_), map_->show(isWritable));
}

void BatchFigures::bringPhotosToFront() {
    setCurrentWidget(photos_);
}

}  // namespace desktop
