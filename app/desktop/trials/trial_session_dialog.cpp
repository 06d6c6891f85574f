// SPDX-License-Identifier: MIT
#include "app/desktop/trials/trial_session_dialog.h"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/session/saved_session.h"
#include "app/desktop/shelves/form_parts.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/plot/number_text.h"
#include "db/actions/trial_actions.h"

namespace desktop {

namespace {

enum DealtColumn { DealtStation, DealtBlock, DealtArm, DealtStuck, DealtPositions, dealtColumns };

QString wordsOfSticking(const std::vector<core::Batch>& batches) {
    QStringList codes;
    for (const core::Batch& batch : batches) codes << QString::fromStdString(batch.code);
    return TrialSessionDialog::tr("%1 stuck: %2.", "3 batches stuck: codes")
        .arg(plot::batchesText(static_cast<int>(batches.size())),
             codes.size() > 6 ? TrialSessionDialog::tr("%1 to %2").arg(codes.front(), codes.back())
                              : codes.join(TrialSessionDialog::tr(", ")));
}

}  // namespace

int sessionToStick(const core::Trial& trial) {
    int first = 0;
    for (const core::TrialBatch& dealt : trial.batches)
        if (!dealt.batch.isSet() && (first == 0 || dealt.session < first)) first = dealt.session;
    return first;
}

TrialSessionDialog::TrialSessionDialog(const PageContext& context, core::TrialId trial, QWidget* parent)
    : QDialog(parent), context_(context), id_(trial) {
    setObjectName(QStringLiteral("trialSessionDialog"));
    setWindowTitle(tr("Stick a session: %1").arg(QString::fromStdString(this->trial()->name)));
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(pages_ = new QStackedWidget);
    pages_->addWidget(makeEntry());
    pages_->addWidget(saved_ = new SavedSession(context_));
    connect(saved_, &SavedSession::closeWanted, this, &QDialog::accept);
    fillSessions();
    day_->line()->setFocus();
    resize(fontMetrics().averageCharWidth() * 110, fontMetrics().height() * 32);
}

const core::Trial* TrialSessionDialog::trial() const {
    return core::find(context_.workspace.shelves().trials, id_);
}

QWidget* TrialSessionDialog::makeEntry() {
    batches_ = new QTableWidget(0, dealtColumns);
    batches_->setObjectName(QStringLiteral("dealtBatches"));
    batches_->setAccessibleName(tr("What was dealt; a batch that is not ticked can be stuck another time"));
    batches_->setHorizontalHeaderLabels({tr("Station"), tr("Block"), tr("Arm"), tr("Stuck"), tr("Positions")});
    giveTableManners(*batches_);
    auto* entry = new QWidget;
    auto* layout = new QVBoxLayout(entry);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(makeHead());
    layout->addWidget(dayFault_ = new FaultLabel);
    layout->addWidget(makeCuttings());
    layout->addWidget(batches_, 1);
    layout->addWidget(fault_ = new FaultLabel);
    layout->addWidget(makeFoot());
    return entry;
}

QWidget* TrialSessionDialog::makeHead() {
    session_ = new QComboBox;
    session_->setObjectName(QStringLiteral("trialSession"));
    day_ = new DateEdit(context_.workspace.today());
    day_->line()->setObjectName(QStringLiteral("trialSessionDay"));
    day_->line()->setAccessibleName(tr("Day"));
    day_->setDate(context_.workspace.today());
    worker_ = new QLineEdit(QString::fromStdString(context_.workspace.shelves().facts.grower));
    worker_->setObjectName(QStringLiteral("trialSessionWorker"));
    note_ = new QLineEdit;
    note_->setObjectName(QStringLiteral("trialSessionNote"));
    auto* head = new QWidget;
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    const auto add = [row](const QString& caption, QWidget* field, QWidget* buddy, int stretch) {
        auto* label = new QLabel(caption);
        label->setBuddy(buddy);
        row->addWidget(label);
        row->addWidget(field, stretch);
    };
    add(tr("S&ession"), session_, session_, 0);
    add(tr("&Day"), day_, day_->line(), 0);
    add(tr("&Who"), worker_, worker_, 1);
    add(tr("N&ote"), note_, note_, 2);
    connect(session_, &QComboBox::currentIndexChanged, this, &TrialSessionDialog::fillBatches);
    return head;
}

QComboBox* TrialSessionDialog::makeChoice(const char* name) {
    auto* box = new QComboBox;
    box->setObjectName(QString::fromLatin1(name));
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(16);
    return box;
}

/// Of the cuttings, what chance did not deal. What an arm gives can't be chosen here.
QWidget* TrialSessionDialog::makeCuttings() {
    const core::Shelves& shelves = context_.workspace.shelves();
    const QString asDealt = tr("as dealt"), notRecorded = tr("not recorded");
    plant_ = makeChoice("trialCuttingsOf");
    stockPlant_ = makeChoice("trialStockPlant");
    treatment_ = makeChoice("trialTreatment");
    medium_ = makeChoice("trialMedium");
    kind_ = makeChoice("trialKind");
    const auto factor = trial()->factor.value_or(core::Factor::Method);
    fillChoice(*treatment_, shelves.treatments, core::TreatmentId{},
               factor == core::Factor::Treatment ? asDealt : notRecorded);
    fillChoice(*medium_, shelves.media, core::MediumId{}, factor == core::Factor::Medium ? asDealt : notRecorded);
    fillChoice(*kind_, shelves.cuttingKinds, core::CuttingKindId{},
               factor == core::Factor::CuttingKind ? asDealt : notRecorded);
    treatment_->setEnabled(factor != core::Factor::Treatment);
    medium_->setEnabled(factor != core::Factor::Medium);
    kind_->setEnabled(factor != core::Factor::CuttingKind);
    auto* cuttings = new QWidget;
    auto* grid = new QGridLayout(cuttings);
    grid->setContentsMargins(0, 0, 0, 0);
    int column = 0;
    for (const auto& [caption, box] :
         {std::pair{tr("C&uttings of"), plant_}, std::pair{tr("Stoc&k plant"), stockPlant_},
          std::pair{tr("&Treatment"), treatment_}, std::pair{tr("&Medium"), medium_},
          std::pair{tr("K&ind of cutting"), kind_}}) {
        auto* label = new QLabel(caption);
        label->setBuddy(box);
        grid->addWidget(label, 0, column);
        grid->addWidget(box, 1, column++);
    }
    connect(plant_, &QComboBox::currentIndexChanged, this, &TrialSessionDialog::fillStockPlants);
    return cuttings;
}

QWidget* TrialSessionDialog::makeFoot() {
    again_ = new QPushButton(tr("Find other free &places"));
    again_->setObjectName(QStringLiteral("placeAgain"));
    again_->setToolTip(tr("Where places were given to other batches meanwhile; how many go to which arm stays"));
    save_ = new QPushButton(tr("&Save session"));
    save_->setObjectName(QStringLiteral("saveTrialSession"));
    auto* close = new QPushButton(tr("Cancel"));
    for (QPushButton* button : {again_, close}) button->setAutoDefault(false);
    save_->setDefault(true);
    connect(again_, &QPushButton::clicked, this, &TrialSessionDialog::placeAgain);
    connect(save_, &QPushButton::clicked, this, &TrialSessionDialog::save);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    auto* foot = new QWidget;
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(again_);
    row->addStretch();
    row->addWidget(save_);
    row->addWidget(close);
    return foot;
}

void TrialSessionDialog::fillSessions() {
    const core::Trial* of = trial();
    {
        const QSignalBlocker quiet(session_);
        session_->clear();
        for (int session = 1; session <= core::sessionsOf(*of); ++session)
            if (!core::batchesToStick(*of, session, context_.workspace.shelves()).empty())
                session_->addItem(plot::countText(session), session);
    }
    fillBatches();
}

void TrialSessionDialog::fillBatches() {
    const core::Shelves& shelves = context_.workspace.shelves();
    const core::Trial* of = trial();
    planned_ = core::batchesToStick(*of, session_->currentData().toInt(), shelves);
    batches_->setRowCount(static_cast<int>(planned_.size()));
    const bool isPlantDealt = std::ranges::all_of(planned_, [](const auto& one) { return one.batch.plant.isSet(); });
    for (int row = 0; row < batches_->rowCount(); ++row) {
        const core::PlannedBatch& planned = planned_[static_cast<std::size_t>(row)];
        const auto dealt = std::ranges::find(of->batches, planned.number, &core::TrialBatch::number);
        const core::Station* station = core::find(shelves.stations, planned.batch.station);
        const auto set = [&](int column, const QString& text) {
            auto* item = new QTableWidgetItem(text);
            item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
            if (column == DealtStuck) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            batches_->setItem(row, column, item);
            return item;
        };
        auto* first = set(DealtStation, station == nullptr ? QString() : QString::fromStdString(station->name));
        first->setFlags(first->flags() | Qt::ItemIsUserCheckable);
        first->setCheckState(Qt::Checked);
        set(DealtBlock, QString::fromStdString(planned.batch.block));
        set(DealtArm,
            QString::fromStdString(core::nameOf(of->arms[static_cast<std::size_t>(dealt->arm)], *of->factor, shelves)));
        set(DealtStuck, plot::countText(planned.batch.stuck));
        set(DealtPositions, QString::fromStdString(planned.batch.positions));
    }
    batches_->resizeColumnsToContents();
    plant_->clear();
    fillChoice(*plant_, isPlantDealt ? std::vector<core::Plant>() : shelves.plants, core::PlantId{},
               isPlantDealt ? tr("as dealt") : tr("choose the plant"));
    plant_->setEnabled(!isPlantDealt);
    fillStockPlants();
}

void TrialSessionDialog::fillStockPlants() {
    const core::PlantId plant{plant_->currentData().toLongLong()};
    std::vector<core::StockPlant> mothers;
    for (const core::StockPlant& mother : context_.workspace.shelves().stockPlants)
        if (mother.plant == plant) mothers.push_back(mother);
    stockPlant_->clear();
    fillChoice(*stockPlant_, mothers, core::StockPlantId{}, plant.isSet() ? tr("not recorded") : tr("as dealt"));
    stockPlant_->setEnabled(plant.isSet());
}

std::vector<core::PlannedBatch> TrialSessionDialog::filledIn() const {
    std::vector<core::PlannedBatch> filled;
    for (int row = 0; row < batches_->rowCount(); ++row) {
        if (batches_->item(row, DealtStation)->checkState() != Qt::Checked) continue;
        core::PlannedBatch planned = planned_[static_cast<std::size_t>(row)];
        core::Batch& batch = planned.batch;
        const auto fill = [](auto& id, const QComboBox& box) {
            if (!id.isSet()) id.value = chosenIn(box);
        };
        if (!batch.plant.isSet()) fill(batch.stockPlant, *stockPlant_);
        fill(batch.plant, *plant_);
        fill(batch.treatment, *treatment_);
        fill(batch.medium, *medium_);
        fill(batch.cuttingKind, *kind_);
        filled.push_back(std::move(planned));
    }
    return filled;
}

void TrialSessionDialog::placeAgain() {
    const int session = session_->currentData().toInt();
    const Outcome outcome = context_.workspace.run([&](db::Logbook& logbook) -> core::Result<db::Changes> {
        auto done = db::placeAgain(logbook, id_, session);
        if (!done) return core::refused(std::move(done.error()));
        return done->changes;
    });
    fault_->setFault(sentencesOf(outcome.refusals));
    if (outcome.isDone) fillBatches();
}

void TrialSessionDialog::save() {
    dayFault_->setFault(day_->date() ? QString() : day_->fault());
    if (!day_->date()) return day_->line()->setFocus();
    db::TrialSessionDraft draft{.trial = id_, .batches = filledIn()};
    if (draft.batches.empty()) return fault_->setFault(tr("No batch is ticked: tick those that are stuck now."));
    draft.session.date = *day_->date();
    draft.session.worker = lineIn(*worker_);
    draft.session.note = lineIn(*note_);
    SessionSaved saved{.isDone = true, .sentence = {}, .session = {}, .batches = {}};
    const Outcome outcome = context_.workspace.run([&](db::Logbook& logbook) -> core::Result<db::Changes> {
        auto done = db::stickTrialSession(logbook, draft, context_.workspace.today());
        if (!done) return core::refused(std::move(done.error()));
        saved.session = done->session;
        saved.batches = done->batches;
        return done->changes;
    });
    fault_->setFault(sentencesOf(outcome.refusals));
    if (!outcome.isDone) {
        if (plant_->isEnabled() && plant_->currentData().toLongLong() == 0) plant_->setFocus();
        return;
    }
    saved.sentence = wordsOfSticking(saved.batches);
    emit said(saved.sentence);
    pages_->setCurrentWidget(saved_);
    saved_->show(saved);
}

}  // namespace desktop
