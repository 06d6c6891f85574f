// SPDX-License-Identifier: MIT
#include "app/desktop/session/session_reading.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/desktop/session/name_book.h"
#include "core/batch/batch_code.h"
#include "core/batch/batch_rules.h"
#include "core/units/entered_text.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

QString sayInSession(const char* text) {
    return QCoreApplication::translate("SessionReading", text);
}

/// Reads row after row; what one row makes on the spot, the next may use.
class SessionReader {
  public:
    SessionReader(const SessionSheet& sheet, const core::Shelves& shelves, core::Date today)
        : sheet_(sheet), shelves_(shelves), today_(today), book_(shelves, sheet.made) {
        reading_.draft.made = sheet.made;
    }

    SessionReading read() {
        readHeader();
        for (const SplitByChance& split : sheet_.splits)
            if (!split.isJoined) made().trials.push_back(split.trial);
        for (int row = 0; row < static_cast<int>(sheet_.rows.size()); ++row) {
            const SessionRow& typed = sheet_.rows[static_cast<std::size_t>(row)];
            if (!typed.isOffered && !typed.isBlank()) readRow(row, typed);
        }
        dropUnusedStations();
        return std::move(reading_);
    }

  private:
    core::Shelves& made() { return reading_.draft.made; }

    void refreshBook() { book_ = NameBook(shelves_, made()); }

    void fault(int row, SessionColumn column, const QString& sentence, bool isBlank = false) {
        reading_.faults.push_back({.row = row, .column = column, .sentence = sentence, .isBlank = isBlank});
    }

    void readHeader() {
        core::Session& session = reading_.draft.session;
        session.worker = sheet_.worker.trimmed().toStdString();
        session.note = sheet_.note.trimmed().toStdString();
        session.date = sheet_.day.value_or(today_);
        for (const core::Refusal& refusal : core::faultsIn(session, today_)) {
            const QString sentence = QString::fromStdString(refusal.sentence);
            const bool isOfDay = refusal.field == "Date";
            QString& place = isOfDay ? reading_.dayFault : reading_.headerFault;
            if (place.isEmpty()) place = sentence;
        }
    }

    void readRow(int row, const SessionRow& typed) {
        core::Batch batch;
        batch.stuckOn = reading_.draft.session.date;
        batch.plant = plantOf(row, typed.at(SessionColumn::Plant));
        batch.stockPlant = stockPlantOf(row, batch.plant, typed.at(SessionColumn::StockPlant));
        batch.cuttingKind = cuttingKindOf(row, typed.at(SessionColumn::CuttingKind));
        batch.treatment = treatmentOf(row, typed.at(SessionColumn::Treatment));
        readStation(row, typed.at(SessionColumn::Station), batch);
        batch.medium = mediumOf(row, typed.at(SessionColumn::Medium));
        batch.stuck = countOf(row, typed.at(SessionColumn::Count));
        batch.note = typed.at(SessionColumn::Note).trimmed().toStdString();
        if (typed.split >= 0) {
            batch.trial = sheet_.splits[static_cast<std::size_t>(typed.split)].trial.id;
            batch.block = "1";
        }
        const bool hasFault = !reading_.faults.empty() && reading_.faults.back().row == row;
        if (!hasFault) askTheRules(row, batch);
        reading_.draft.batches.push_back(std::move(batch));
        reading_.rows.push_back(row);
    }

    /// What is wrong with the name of something new is said in its cell.
    void judgeName(int row, SessionColumn column, const QString& name) {
        const auto refusal = core::faultInName(headingOf(column).toStdString(), name.toStdString());
        if (refusal) fault(row, column, QString::fromStdString(refusal->sentence));
    }

    core::PlantId plantOf(int row, const QString& typed) {
        if (typed.trimmed().isEmpty()) {
            fault(row, SessionColumn::Plant,
                  sayInSession("Plant is blank: type the botanical name, or its common name if the logbook knows it."),
                  true);
            return {};
        }
        if (const core::Plant* known = book_.plant(typed)) return known->id;
        core::Plant plant = plantFromTyped(typed);
        plant.id = {db::newId()};
        judgeName(row, SessionColumn::Plant, typed.simplified());
        news(sayInSession("plant %1"), QString::fromStdString(core::fullName(plant)));
        made().plants.push_back(plant);
        refreshBook();
        return plant.id;
    }

    core::StockPlantId stockPlantOf(int row, core::PlantId plant, const QString& typed) {
        if (typed.trimmed().isEmpty() || !plant.isSet()) return {};
        if (const core::StockPlant* known = book_.stockPlant(typed, plant)) return known->id;
        const core::StockPlant stock{.id = {db::newId()},
                                     .plant = plant,
                                     .label = typed.simplified().toStdString(),
                                     .note = {},
                                     .isRetired = false};
        judgeName(row, SessionColumn::StockPlant, typed.simplified());
        news(sayInSession("stock plant %1"), typed.simplified());
        made().stockPlants.push_back(stock);
        refreshBook();
        return stock.id;
    }

    core::CuttingKindId cuttingKindOf(int row, const QString& typed) {
        if (typed.trimmed().isEmpty()) return {};
        if (const core::CuttingKind* known = book_.cuttingKind(typed)) return known->id;
        const core::CuttingKind kind{.id = {db::newId()}, .name = typed.simplified().toStdString(), .isRetired = false};
        judgeName(row, SessionColumn::CuttingKind, typed.simplified());
        news(sayInSession("kind of cutting %1"), typed.simplified());
        made().cuttingKinds.push_back(kind);
        refreshBook();
        return kind.id;
    }

    core::MediumId mediumOf(int row, const QString& typed) {
        if (typed.trimmed().isEmpty()) return {};
        if (const core::Medium* known = book_.medium(typed)) return known->id;
        core::Medium medium;
        medium.id = {db::newId()};
        medium.name = typed.simplified().toStdString();
        medium.components = componentsFromTyped(typed);
        judgeName(row, SessionColumn::Medium, typed.simplified());
        news(sayInSession("medium %1"), typed.simplified());
        made().media.push_back(medium);
        refreshBook();
        return medium.id;
    }

    core::TreatmentId treatmentOf(int row, const QString& typed) {
        if (typed.trimmed().isEmpty()) return {};
        if (const core::Treatment* known = book_.treatment(typed)) return known->id;
        fault(row, SessionColumn::Treatment,
              sayInSession("There is no treatment \u201c%1\u201d yet: choose one from the list, or describe it with "
                           "New treatment.")
                  .arg(typed.simplified()));
        return {};
    }

    void readStation(int row, const QString& typed, core::Batch& batch) {
        if (typed.trimmed().isEmpty()) {
            fault(row, SessionColumn::Station,
                  sayInSession("Station is blank: it says where the batch stands and by which method it roots."), true);
            return;
        }
        const core::Station* station = book_.station(typed);
        if (station == nullptr) {
            fault(row, SessionColumn::Station,
                  sayInSession("There is no station \u201c%1\u201d yet: choose one from the list, or describe it with "
                               "New station.")
                      .arg(typed.simplified()));
            return;
        }
        batch.station = station->id;
        batch.method = station->method;
    }

    int countOf(int row, const QString& typed) {
        if (typed.trimmed().isEmpty()) {
            fault(row, SessionColumn::Count,
                  sayInSession("Stuck is blank: type how many cuttings, from 1 to 100\u202f000."), true);
            return 0;
        }
        const auto count = core::countFrom(typed.toStdString());
        if (count && *count >= 1 && *count <= 100'000) return *count;
        fault(row, SessionColumn::Count,
              sayInSession("Stuck is \u201c%1\u201d: it has to be a whole number from 1 to 100\u202f000.")
                  .arg(typed.trimmed()));
        return 0;
    }

    void askTheRules(int row, const core::Batch& batch) {
        core::Batch asked = batch;
        asked.code = core::batchCode(static_cast<int>(batch.stuckOn.year()), 1);  // the real one is given on saving
        for (const core::Refusal& refusal : core::faultsIn(asked, {}, book_.shelves(), today_)) {
            const QString field = QString::fromStdString(refusal.field);
            for (int column = 0; column < sessionColumns; ++column)
                if (headingOf(static_cast<SessionColumn>(column)).compare(field, Qt::CaseInsensitive) == 0)
                    fault(row, static_cast<SessionColumn>(column), QString::fromStdString(refusal.sentence));
        }
    }

    void news(const QString& pattern, const QString& name) { reading_.news.append(pattern.arg(name)); }

    /// A station described and then not used by any row would be written for nothing; so would its method.
    void dropUnusedStations() {
        const auto& batches = reading_.draft.batches;
        std::erase_if(made().stations, [&](const core::Station& station) {
            return std::none_of(batches.begin(), batches.end(),
                                [&](const core::Batch& batch) { return batch.station == station.id; });
        });
        std::erase_if(made().methods, [&](const core::Method& method) {
            return std::none_of(batches.begin(), batches.end(),
                                [&](const core::Batch& batch) { return batch.method == method.id; });
        });
        std::erase_if(made().treatments, [&](const core::Treatment& treatment) {
            return std::none_of(batches.begin(), batches.end(),
                                [&](const core::Batch& batch) { return batch.treatment == treatment.id; });
        });
    }

    const SessionSheet& sheet_;
    const core::Shelves& shelves_;
    core::Date today_;
    NameBook book_;
    SessionReading reading_;
};

}  // namespace

SessionReading readSession(const SessionSheet& sheet, const core::Shelves& shelves, core::Date today) {
    SessionReading reading = SessionReader(sheet, shelves, today).read();
    if (!sheet.day && reading.dayFault.isEmpty())
        reading.dayFault =
            sayInSession("Day is not understood: type 14, 14.3, -3 (days ago), t (today) or 2026-03-14.");
    return reading;
}

QString headingOf(SessionColumn column) {
    switch (column) {
        case SessionColumn::Plant:
            return sayInSession("Plant");
        case SessionColumn::StockPlant:
            return sayInSession("Stock plant");
        case SessionColumn::CuttingKind:
            return sayInSession("Kind of cutting");
        case SessionColumn::Treatment:
            return sayInSession("Treatment");
        case SessionColumn::Station:
            return sayInSession("Station");
        case SessionColumn::Method:
            return sayInSession("Method");
        case SessionColumn::Medium:
            return sayInSession("Medium");
        case SessionColumn::Count:
            return sayInSession("Stuck");
        case SessionColumn::Positions:
            return sayInSession("Positions");
        case SessionColumn::Note:
            return sayInSession("Note");
    }
    return {};
}

}  // namespace desktop
