// SPDX-License-Identifier: MIT
// What a session needs to know of the stations that it fills: how much room each has, which positions are free, and which medium is usual there.
// Reads a station's batches only when a row names it.
#pragma once

#include <QString>
#include <QStringList>
#include <unordered_map>
#include <vector>

#include "app/desktop/session/session_reading.h"
#include "core/batch/position_rules.h"

namespace desktop {

class Workspace;

class SessionStations {
  public:
    explicit SessionStations(Workspace& workspace);

    [[nodiscard]] QString usualMediumOf(core::StationId station) const;  // of the newest batch there

    /// Gives every batch of `reading` its positions: those typed, or the next that are free. What is wrong with typed ones becomes a fault
    /// of their cell. One text a row of the sheet, as it fills itself in; empty where something was typed or nothing is known.
    [[nodiscard]] std::vector<QString> place(const SessionSheet& sheet, const core::Shelves& shelves,
                                             SessionReading& reading);

    /// "Free after this session: Tub north 12 of 36"; empty when no station has described positions.
    [[nodiscard]] QString roomText(const SessionReading& reading, const core::Shelves& shelves) const;
    /// A sentence for each station that is too full.
    [[nodiscard]] QStringList fullStations(const SessionReading& reading, const core::Shelves& shelves) const;

  private:
    struct Use {
        int undecided{};
        QString medium;                   // of the newest batch there
        std::vector<core::BatchId> open;  // batches that are not closed
        bool isRead{};                    // held and isKnown are filled in
        bool isKnown{true};               // every open batch says where it stands
        std::vector<core::HeldPosition> held;
    };

    Use& useOf(core::StationId station);
    void placeTyped(const QString& typed, const core::Shelves& shelves, core::Batch& batch, int row,
                    SessionReading& reading, std::vector<core::HeldPosition>& held) const;

    Workspace& workspace_;
    std::unordered_map<core::StationId, Use> stations_;
};

}  // namespace desktop
