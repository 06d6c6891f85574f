// SPDX-License-Identifier: MIT
// Keeps what was typed into a round of checks until it is saved or given up: leaving the round asks nothing and loses nothing. One for each
// workspace, for one logbook at a time, as long as the program runs.
#pragma once

#include <QObject>
#include <QString>
#include <filesystem>
#include <optional>
#include <unordered_map>

#include "core/batch/check_entry.h"
#include "core/id.h"
#include "core/units/days.h"

namespace desktop {

class Workspace;

class UnfinishedRound : public QObject {
    Q_OBJECT

  public:
    /// The workspace's own; blank when another logbook is open than the one it was typed for.
    [[nodiscard]] static UnfinishedRound& of(Workspace& workspace);

    [[nodiscard]] QString typedFor(core::BatchId batch) const;
    /// A blank text is nothing typed.
    void keep(core::BatchId batch, const QString& typed);
    [[nodiscard]] bool isBlank() const { return typed_.empty(); }
    [[nodiscard]] const std::unordered_map<core::BatchId, QString>& typed() const { return typed_; }
    void forget();

    std::optional<core::Date> day;                      // of the round, where it was begun
    core::PlainNumber plain{core::PlainNumber::InAll};  // what the numbers typed so far mean

  private:
    using QObject::QObject;
    std::filesystem::path file_;
    std::unordered_map<core::BatchId, QString> typed_;
};

}  // namespace desktop
