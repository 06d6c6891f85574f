// SPDX-License-Identifier: MIT
// What the planning of a trial reads, judges, deals and writes; trial_dialog_layout.cpp puts the fields there.
#include "app/desktop/trials/trial_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <algorithm>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/trials/check_list.h"
#include "app/desktop/trials/trial_map_panel.h"
#include "app/desktop/trials/trial_power_panel.h"
#include "app/desktop/widgets/count_edit.h"
#include "app/plot/number_text.h"
#include "core/trial/station_advice.h"
#include "core/units/number_entry.h"
#include "db/actions/trial_actions.h"

namespace desktop {

namespace {

constexpr double ofHundred = 100;

std::optional<double> shareIn(const QLineEdit& edit) {
    const auto points = core::numberFrom(edit.text().toStdString());
    return points ? std::optional(*points / ofHundred) : std::nullopt;
}

core::Refusal typingFault(const char* field, const QLineEdit& edit, const QString& sentence) {
    return {field, edit.text().toStdString(), {}, sentence.arg(edit.text().trimmed()).toStdString()};
}

bool isByPlant(core::BlockedBy blocks) {
    return blocks == core::BlockedBy::Plant || blocks == core::BlockedBy::StockPlant;
}

}  // namespace

core::Factor TrialDialog::factor() const {
    return static_cast<core::Factor>(factor_->currentData().toInt());
}

core::BlockedBy TrialDialog::blockedBy() const {
    return static_cast<core::BlockedBy>(blockedBy_->currentData().toInt());
}

TrialDraft TrialDialog::draft() const {
    TrialDraft draft{.trial = start_.trial};
    core::Trial& trial = draft.trial;
    trial.name = name_->text().simplified().toStdString();
    trial.question = question_->toPlainText().trimmed().toStdString();
    trial.note = note_->toPlainText().trimmed().toStdString();
    trial.factor = factor();
    trial.arms.clear();
    const auto ticked = arms_->ticked();
    for (const core::TrialArm& arm : armsToChooseFrom(factor(), start_.trial, shelves_))
        if (std::ranges::find(ticked, idOf(arm)) != ticked.end()) trial.arms.push_back(arm);
    trial.blockedBy = blockedBy();
    trial.horizonDay = horizon_->count();
    trial.measure = static_cast<core::TrialMeasure>(measure_->currentData().toInt());
    trial.margin = shareIn(*margin_);
    trial.perArm = perArm_->count();
    trial.isCrossedOver = crossed_->isChecked() && factor() == core::Factor::Method;
    trial.isBlinded = blinded_->isChecked();
    trial.allocationSeed = seed_;
    draft.layout.sessions = sessions_->count().value_or(0);
    draft.layout.isClearedBetween = cleared_->isChecked();
    for (const std::int64_t id : stations_->ticked())
        for (const core::StationRoom& room : rooms_)
            if (room.station.value == id) draft.layout.stations.push_back(room);
    readBlocks(draft);
    draft.expected = shareIn(*expected_);
    return draft;
}

void TrialDialog::readBlocks(TrialDraft& draft) const {
    if (!isByPlant(blockedBy())) {
        const core::PlantId id{plant_->currentData().toLongLong()};
        if (const core::Plant* plant = core::find(shelves_.plants, id))
            draft.layout.blocks.push_back({.name = core::fullName(*plant), .plant = id});
        return;
    }
    for (const std::int64_t id : blocks_->ticked()) {
        if (blockedBy() == core::BlockedBy::Plant) {
            if (const core::Plant* plant = core::find(shelves_.plants, core::PlantId{id}))
                draft.layout.blocks.push_back({.name = core::fullName(*plant), .plant = plant->id});
            continue;
        }
        const core::StockPlant* mother = core::find(shelves_.stockPlants, core::StockPlantId{id});
        const core::Plant* plant = mother == nullptr ? nullptr : core::find(shelves_.plants, mother->plant);
        if (plant != nullptr)
            draft.layout.blocks.push_back(
                {.name = core::fullName(*plant) + ", " + mother->label, .plant = plant->id, .stockPlant = mother->id});
    }
}

core::Refusals TrialDialog::faultsOfTyping() const {
    core::Refusals faults;
    const auto needed = [&](const CountEdit& edit, const char* field, const QString& called) {
        if (!edit.count()) faults.push_back({field, edit.text().toStdString(), {}, edit.fault(called).toStdString()});
    };
    needed(*horizon_, "Horizon day", tr("Horizon day"));
    needed(*perArm_, "Per arm", tr("Cuttings per arm"));
    needed(*sessions_, "Sessions", tr("Sessions"));
    const auto margin = shareIn(*margin_);
    if (!margin || *margin <= 0 || *margin >= 1)
        faults.push_back(
            typingFault("Margin", *margin_,
                        tr("The difference is \u201c%1\u201d; a number of cuttings of 100, more than 0 and "
                           "less than 100, is allowed, such as 20.")));
    const auto expected = shareIn(*expected_);
    if (!expected_->text().trimmed().isEmpty() && (!expected || *expected < 0 || *expected > 1))
        faults.push_back(
            typingFault("Expected", *expected_,
                        tr("Expected of the first arm is \u201c%1\u201d; a number from 0 to 100 is allowed, "
                           "or blank for what is on record.")));
    return faults;
}

core::Refusals TrialDialog::judged() {
    core::Refusals faults = faultsOfTyping();
    const TrialDraft now = draft();
    for (core::Refusal& fault : faultsIn(now, shelves_)) {
        const auto isOfField = [&fault](const core::Refusal& other) { return other.field == fault.field; };
        if (std::ranges::none_of(faults, isOfField)) faults.push_back(std::move(fault));
    }
    return faults;
}

void TrialDialog::changed(const char* field) {
    if (power_ == nullptr) return;  // still being made
    const TrialDraft now = draft();
    power_->ask(now);
    showCautions(*advice_, core::stationAdvice(now.trial, now.layout, shelves_));
    showDeal();
    touch(field);
}

void TrialDialog::deal() {
    seed_ = drawSeed_();
    showDeal();
    touch("Seed");
}

void TrialDialog::showDeal() {
    TrialDraft now = draft();
    const auto dealt =
        seed_ ? core::allocateTrial(now.trial, now.layout, *seed_) : core::Result<std::vector<core::TrialBatch>>();
    now.trial.batches = dealt ? *dealt : std::vector<core::TrialBatch>();
    map_->show(now.trial, true,
               !seed_  ? tr("Nothing is dealt yet. Saving deals it as well.")
               : dealt ? QString()
                       : sentencesOf(underFormFields(dealt.error())));
    dealt_->setText(
        seed_ && dealt
            ? tr("%1, dealt with seed %2, which is kept with the trial. Take what chance gives: whoever deals until it "
                 "looks right has chosen.")
                  .arg(plot::batchesText(static_cast<int>(dealt->size())), QString::number(*seed_))
            : QString());
    dealt_->setVisible(!dealt_->text().isEmpty());
    deal_->setText(seed_ ? tr("Deal b&y chance once more") : tr("Deal b&y chance"));
}

/// What is no arm any more is not added.
core::Shelves TrialDialog::madeFor(const core::Trial& trial) const {
    core::Shelves made;
    const auto keep = [&trial](const auto& things, auto member, auto& kept) {
        for (const auto& thing : things)
            if (std::ranges::find(trial.arms, thing.id, member) != trial.arms.end()) kept.push_back(thing);
    };
    keep(made_.methods, &core::TrialArm::method, made.methods);
    keep(made_.treatments, &core::TrialArm::treatment, made.treatments);
    keep(made_.media, &core::TrialArm::medium, made.media);
    return made;
}

Outcome TrialDialog::write() {
    const TrialDraft now = draft();
    const bool isNew = !now.trial.id.isSet();
    core::TrialId written;
    const Outcome outcome = context_.workspace.run([&](db::Logbook& logbook) -> core::Result<db::Changes> {
        core::Trial trial = now.trial;
        if (!trial.allocationSeed) trial.allocationSeed = drawSeed_();
        auto done = isNew ? db::planTrial(logbook, trial, now.layout, context_.workspace.today(), madeFor(trial))
                          : db::allocateAgain(logbook, trial, now.layout, context_.workspace.today());
        if (!done) return core::refused(underFormFields(std::move(done.error())));
        written = done->trial.id;
        return done->changes;
    });
    if (outcome.isDone) {
        emit planned(written);
        emit said(isNew ? tr("Trial planned: %1.").arg(QString::fromStdString(now.trial.name))
                        : tr("Dealt again: %1.").arg(QString::fromStdString(now.trial.name)));
    }
    return outcome;
}

}  // namespace desktop
