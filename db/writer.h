// SPDX-License-Identifier: MIT
// Puts rows into the logbook from within Logbook::act(), which alone can make one: a write that leaves no history doesn't compile.
// No rules in here: the verbs in actions/ ask core's rules first.
#pragma once

#include "core/records.h"
#include "db/logbook.h"

namespace db {

class Writer {
  public:
    // add: gives the row a new random id when the value's is unset, returns the id. change: the row with that id, which must exist.
    core::PlantId add(core::Plant plant);
    core::StockPlantId add(core::StockPlant stockPlant);
    core::MethodId add(core::Method method);
    core::StationId add(core::Station station);
    core::MediumId add(core::Medium medium);
    core::TreatmentId add(core::Treatment treatment);
    core::CuttingKindId add(core::CuttingKind kind);
    core::LossCauseId add(core::LossCause cause);
    core::TrialId add(core::Trial trial);
    core::SessionId add(core::Session session);
    core::BatchId add(core::Batch batch);
    core::CheckId add(core::Check check);
    core::CheckScheduleId add(core::CheckSchedule schedule);
    core::ReadingId add(core::Reading reading);
    core::CareId add(core::Care care);
    core::PhotoId add(core::PhotoRecord photo);
    core::ExpenseId add(core::Expense expense);
    core::PlanId add(core::Plan plan);
    core::KeptMixId add(core::KeptMix mix);
    core::OwnBandId add(core::OwnBand band);
    core::LoggerFormatId add(core::LoggerFormat format);
    core::PriceId add(core::Price price);
    core::LotId add(core::Lot lot);
    core::PottingId add(core::Potting potting);
    void put(const core::LoggerDay& day);  // in place of what that day had

    void change(const core::LogbookFacts& facts);
    void change(const core::Plant& plant);
    void change(const core::StockPlant& stockPlant);
    void change(const core::Method& method);
    void change(const core::Station& station);
    void change(const core::Medium& medium);
    void change(const core::Treatment& treatment);
    void change(const core::CuttingKind& kind);
    void change(const core::LossCause& cause);
    void change(const core::Trial& trial);
    void change(const core::Session& session);
    void change(const core::Batch& batch);
    void change(const core::Check& check);
    void change(const core::CheckSchedule& schedule);
    void change(const core::Reading& reading);
    void change(const core::Care& care);
    void change(const core::Photo& photo);  // its day and caption
    void change(const core::Expense& expense);
    void change(const core::Plan& plan);
    void change(const core::KeptMix& mix);
    void change(const core::OwnBand& band);
    void change(const core::LoggerFormat& format);
    void change(const core::Price& price);
    void change(const core::Lot& lot);
    void change(const core::Potting& potting);

    // Children first, explicitly: there are no cascades.
    void remove(core::PlantId id);
    void remove(core::StockPlantId id);
    void remove(core::MethodId id);
    void remove(core::StationId id);
    void remove(core::MediumId id);
    void remove(core::TreatmentId id);
    void remove(core::CuttingKindId id);
    void remove(core::LossCauseId id);
    void remove(core::TrialId id);
    void remove(core::SessionId id);  // with its mixes and expenses
    void remove(
        core::BatchId id);  // with its checks, photos, expenses and pottings; what a trial dealt is to be stuck again
    void remove(core::CheckId id);
    void remove(core::CheckScheduleId id);
    void remove(core::ReadingId id);
    void remove(core::CareId id);  // with its mixes
    void remove(core::PhotoId id);
    void remove(core::ExpenseId id);
    void remove(core::PlanId id);
    void remove(core::KeptMixId id);
    void remove(core::OwnBandId id);
    void remove(core::LoggerFormatId id);
    void remove(core::PriceId id);
    void remove(core::LotId id);
    void remove(core::PottingId id);
    void remove(core::StationId station, core::Quantity quantity, core::Date day);  // what a logger recorded

  private:
    friend class Logbook;
    explicit Writer(Logbook::Inside& inside) : inside_(inside) {}
    Logbook::Inside& inside_;
};

}  // namespace db
