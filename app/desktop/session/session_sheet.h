// SPDX-License-Identifier: MIT
// What stands on the session's screen, as typed: nothing here is checked yet, so nothing typed is ever lost. session_reading.h makes
// batches of it or says where it can't.
#pragma once

#include <QString>
#include <array>
#include <map>
#include <optional>
#include <vector>

#include "core/records.h"
#include "core/trial/allocation.h"

namespace desktop {

// Method isn't typed: the station gives it. Positions fill themselves until something is typed there.
enum class SessionColumn { Plant, StockPlant, CuttingKind, Treatment, Station, Method, Medium, Count, Positions, Note };
inline constexpr int sessionColumns = 10;

struct SessionRow {
    std::array<QString, sessionColumns> cells;
    QString filled{};  // positions that nobody typed
    bool isOffered{};  // a copy that nobody has touched yet, of the row above or of the last session: it isn't saved
    int split{-1};     // index into SessionSheet::splits; -1: not split

    [[nodiscard]] QString& at(SessionColumn column) { return cells[static_cast<std::size_t>(column)]; }
    [[nodiscard]] const QString& at(SessionColumn column) const { return cells[static_cast<std::size_t>(column)]; }
    [[nodiscard]] bool isBlank() const;
    bool operator==(const SessionRow&) const = default;
};

/// A row's count, divided over arms by chance. The arms are the rows with its index, in order.
struct SplitByChance {
    core::Trial trial;  // its id is drawn when the split is made
    SessionColumn factor{SessionColumn::Station};
    SessionRow whole;  // the row as it was, for joining it again
    std::vector<QString> arms;
    core::Allocation allocation;
    bool isJoined{};  // taken back: kept so that the indices stay
};

struct SessionSheet {
    std::optional<core::Date> day;
    QString worker;
    QString note;
    std::vector<SessionRow> rows;
    std::vector<SplitByChance> splits;
    std::map<core::PlantId, QString> licences{};  // of protected plants, as typed or as the newest batch has it
    core::Shelves made;  // stations and treatments described while the session was typed; ids are drawn

    /// Rows that will be saved.
    [[nodiscard]] int batches() const;
    [[nodiscard]] bool isBlank() const;
};

}  // namespace desktop
