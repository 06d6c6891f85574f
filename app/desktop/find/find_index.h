// SPDX-License-Identifier: MIT
// What can be found by a part of its name or code: batches, plants, stock plants, stations, pages and tasks. Plain text in memory, so that
// a keystroke over 20,000 batches answers at once. Knows no widgets and reads no logbook: see finder.h.
#pragma once

#include <QString>
#include <QStringList>
#include <unordered_map>
#include <vector>

#include "app/desktop/place.h"
#include "core/records.h"

namespace desktop {

enum class FindKind { Plant, StockPlant, Station, Page, Task, Batch };

struct FoundThing {
    FindKind kind{};
    QString title;   // the code or name
    QString plant;   // the full name of the plant that it is or is of
    QString detail;  // what tells it from others of its name
    QString icon;    // a name in :/icons
    Place place;     // but for tasks
    QString task;    // its name in the registry
    bool isExact{};  // what was typed is the whole code or name

    bool operator==(const FoundThing&) const = default;
};

struct FindAnswer {
    std::vector<FoundThing> shown;  // kind by kind, the kind of the best match first, and best first within each
    int total{};                    // with those for which there was no room
};

class FindIndex {
  public:
    static constexpr int mostShown = 50;

    /// Pages and tasks, ready to show.
    void setDoors(std::vector<FoundThing> doors);
    /// Everything of the logbook anew.
    void build(const core::Shelves& shelves, const std::vector<core::BatchLine>& lines);
    /// `lines` are what the logbook has of `touched` now: changed, new, or gone.
    void refresh(const std::vector<core::BatchId>& touched, const std::vector<core::BatchLine>& lines);
    /// What has every word of `typed`, in any order. Nothing for no words.
    [[nodiscard]] FindAnswer find(const QString& typed) const;

    [[nodiscard]] const core::Shelves& shelves() const { return shelves_; }

  private:
    struct Query;
    struct Match;
    struct Sought {
        QString head;  // code or name as searchText()
        QString all;   // the same with everything else that it is found by; begins with a space, so that each word does
    };
    struct Thing : Sought {
        FoundThing found;
    };
    struct BatchEntry : Sought {
        core::BatchId id;
        QString code, note;
        core::PlantId plant;
        core::StockPlantId stockPlant;
        core::StationId station;
        core::Date stuckOn{};
    };
    struct Named {
        QString shown;
        QString searched;
        QString also;  // found by this too, though it isn't in the name that is shown
    };

    void addThing(FoundThing thing, const QString& alsoFoundBy, std::vector<Thing>& things);
    void addShelves();
    [[nodiscard]] BatchEntry entryFor(const core::Batch& batch) const;
    [[nodiscard]] FoundThing shown(const BatchEntry& entry, const Query& query) const;
    static int rankOf(const Sought& sought, const Query& query);
    static void matchThings(const std::vector<Thing>& things, const Query& query, std::vector<Match>& matches);
    void addBatches(const Query& query, FindAnswer& answer, int& bestRank) const;

    core::Shelves shelves_;
    std::vector<Thing> doors_;
    std::vector<Thing> things_;
    std::vector<BatchEntry> batches_;
    std::unordered_map<core::PlantId, Named> plants_;
    std::unordered_map<core::StockPlantId, Named> stockPlants_;
    std::unordered_map<core::StationId, Named> stations_;
};

}  // namespace desktop
