// SPDX-License-Identifier: MIT
#include "app/desktop/registry.h"

#include <QCoreApplication>

#include "app/desktop/batches/batches_page.h"
#include "app/desktop/bench/bench_page.h"
#include "app/desktop/climate/climate_page.h"
#include "app/desktop/head_to_head/head_to_head_page.h"
#include "app/desktop/history/history_page.h"
#include "app/desktop/logger/logger_dialog.h"
#include "app/desktop/losses/losses_page.h"
#include "app/desktop/mix/mix_page.h"
#include "app/desktop/plan/plan_page.h"
#include "app/desktop/positions/position_look_dialog.h"
#include "app/desktop/printing/session_papers.h"
#include "app/desktop/readings/reading_dialog.h"
#include "app/desktop/round/round_dialog.h"
#include "app/desktop/session/session_dialog.h"
#include "app/desktop/shelves/shelves_page.h"
#include "app/desktop/stations/station_dialog.h"
#include "app/desktop/template/drilling_dialog.h"
#include "app/desktop/worth_it/worth_it_page.h"

namespace desktop {

namespace {

QString inRegistry(const char* text) {
    return QCoreApplication::translate("desktop::Registry", text);
}

template <class Made, class Base>
auto makes() {
    return [](const PageContext& context, QWidget* parent) -> Base* { return new Made(context, parent); };
}

}  // namespace

std::vector<PageEntry> pageEntries() {
    return {
        {.name = "bench",
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "Bench")),
         .icon = "bench",
         .shortcut = "Ctrl+1",
         .make = makes<BenchPage, Page>()},
        {.name = "batches",
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "Batches")),
         .icon = "batches",
         .shortcut = "Ctrl+2",
         .make = makes<BatchesPage, Page>(),
         // Plants and stations: the batches of one.
         .shows = {Place::Kind::Batch, Place::Kind::Plant, Place::Kind::StockPlant, Place::Kind::Station}},
        {.name = "head_to_head",
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "Head to head")),
         .icon = "head_to_head",
         .shortcut = "Ctrl+3",
         .make = makes<HeadToHeadPage, Page>()},
        {.name = "plan",
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "Plan")),
         .icon = "plan",
         .shortcut = "Ctrl+4",
         .make = makes<PlanPage, Page>()},
        {.name = "mix",
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "Mix")),
         .icon = "mix",
         .shortcut = "Ctrl+5",
         .make = makes<MixPage, Page>()},
        {.name = "climate",
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "Climate")),
         .icon = "climate",
         .shortcut = "Ctrl+6",
         .make = makes<ClimatePage, Page>()},
        {.name = "worth_it",
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "Worth it")),
         .icon = "worth_it",
         .shortcut = "Ctrl+7",
         .make = makes<WorthItPage, Page>()},
        {.name = "losses",
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "Losses")),
         .icon = "losses",
         .shortcut = "Ctrl+Shift+L",
         .make = makes<LossesPage, Page>()},
        {.name = "shelves",
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "Shelves")),
         .icon = "shelves",
         .shortcut = "Ctrl+8",
         .make = makes<ShelvesPage, Page>(),
         .shows = {Place::Kind::Shelf}},
        {.name = "history",
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "History")),
         .icon = "history",
         .shortcut = "Ctrl+9",
         .make = makes<HistoryPage, Page>()},
    };
}

std::vector<TaskEntry> taskEntries() {
    return {
        {.name = task::round,
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "Start &round")),
         .icon = "round",
         .shortcut = "Ctrl+R",
         .make = makes<RoundDialog, QDialog>()},
        {.name = task::holeByHole,
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "Look hole by &hole…")),
         .icon = "positions",
         .shortcut = "Ctrl+H",
         .make = makes<PositionLookDialog, QDialog>()},
        {.name = task::session,
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "New &session")),
         .icon = "session",
         .shortcut = "Ctrl+N",
         .make = makes<SessionDialog, QDialog>()},
        {.name = task::reading,
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "New r&eading")),
         .icon = "reading",
         .shortcut = "Ctrl+E",
         .make = makes<ReadingDialog, QDialog>()},
        {.name = task::logger,
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "Readings of a lo&gger…")),
         .icon = "reading",
         .shortcut = "Ctrl+Shift+E",
         .make = makes<LoggerDialog, QDialog>()},
        {.name = task::papers,
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "&Labels and session sheet")),
         .icon = "print",
         .shortcut = "Ctrl+L",
         .make = makes<SessionPapers, QDialog>()},
        {.name = task::drilling,
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "&Drilling template…")),
         .icon = "print",
         .shortcut = "Ctrl+D",
         .make = makes<DrillingDialog, QDialog>()},
        {.name = task::station,
         .title = inRegistry(QT_TRANSLATE_NOOP("desktop::Registry", "New s&tation…")),
         .icon = "station",
         .shortcut = "Ctrl+T",
         .make = [](const PageContext& context, QWidget* parent) -> QDialog* {
             return StationDialog::keeping(context, {}, parent);
         }},
    };
}

}  // namespace desktop
