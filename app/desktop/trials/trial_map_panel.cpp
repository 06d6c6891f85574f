// SPDX-License-Identifier: MIT
#include "app/desktop/trials/trial_map_panel.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"
#include "app/report/trial_map.h"
#include "core/trial/trial_rules.h"

namespace desktop {

TrialMapPanel::TrialMapPanel(const PageContext& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      choices_(new QWidget),
      session_(new QComboBox),
      station_(new QComboBox),
      map_(new FigurePanel(QStringLiteral("trialMap"), context)),
      why_(quietLabel(QStringLiteral("trialMapWhy"))) {
    session_->setObjectName(QStringLiteral("mapSession"));
    station_->setObjectName(QStringLiteral("mapStation"));
    auto* row = new QHBoxLayout(choices_);
    row->setContentsMargins(0, 0, 0, 0);
    const auto add = [row](const QString& caption, QComboBox* box) {
        auto* label = new QLabel(caption);
        label->setBuddy(box);
        row->addWidget(label);
        row->addWidget(box);
        box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    };
    add(tr("Session"), session_);
    add(tr("Station"), station_);
    row->addStretch();
    map_->setMinimumHeight(fontMetrics().height() * 16);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    for (QWidget* part : std::initializer_list<QWidget*>{choices_, map_, why_}) layout->addWidget(part);
    connect(session_, &QComboBox::currentIndexChanged, this, &TrialMapPanel::fillStations);
    connect(station_, &QComboBox::currentIndexChanged, this, &TrialMapPanel::showMap);
    connect(map_, &FigurePanel::said, this, &TrialMapPanel::said);
}

void TrialMapPanel::show(const core::Trial& trial, bool isTold, const QString& why) {
    trial_ = trial;
    const int before = session_->currentData().toInt();
    {
        const QSignalBlocker quiet(session_);
        session_->clear();
        for (int session = 1; session <= core::sessionsOf(trial_); ++session)
            if (isShown(session, isTold)) session_->addItem(plot::countText(session), session);
        session_->setCurrentIndex(std::max(0, session_->findData(before)));
    }
    const bool hasMap = session_->count() > 0;
    choices_->setVisible(hasMap);
    map_->setVisible(hasMap);
    why_->setVisible(!hasMap);
    why_->setText(why);
    fillStations();
}

bool TrialMapPanel::isShown(int session, bool isTold) const {
    return std::ranges::any_of(trial_.batches, [&](const core::TrialBatch& dealt) {
        return dealt.session == session && (isTold || !dealt.batch.isSet());
    });
}

void TrialMapPanel::fillStations() {
    const qlonglong before = station_->currentData().toLongLong();
    {
        const QSignalBlocker quiet(station_);
        station_->clear();
        if (session_->count() > 0)
            for (const core::Station& station :
                 report::stationsOf(trial_, session_->currentData().toInt(), context_.workspace.shelves()))
                station_->addItem(QString::fromStdString(station.name), static_cast<qlonglong>(station.id.value));
        station_->setCurrentIndex(std::max(0, station_->findData(before)));
    }
    showMap();
}

void TrialMapPanel::showMap() {
    const core::Shelves& shelves = context_.workspace.shelves();
    const core::Station* station = core::find(shelves.stations, core::StationId{station_->currentData().toLongLong()});
    if (station == nullptr) return map_->setFigure(nullptr);
    const int session = session_->currentData().toInt();
    map_->setFileName(QString::fromStdString(trial_.name + " " + station->name));
    map_->setFigure(report::trialMapFigure(trial_, session, *station, shelves));
}

}  // namespace desktop
