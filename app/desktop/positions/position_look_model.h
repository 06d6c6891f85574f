// SPDX-License-Identifier: MIT
// A look hole by hole: which station or batch is looked at, what is marked, what is wrong with it, and what it comes to. No widgets. Marks
// live with the workspace until they are saved, so that leaving loses nothing.
#pragma once

#include <QObject>
#include <QString>
#include <optional>
#include <vector>

#include "app/desktop/positions/position_look.h"
#include "app/desktop/workspace.h"

namespace desktop {

class PositionMapModel;

struct PositionLookView {
    QString counts;       // "12 rooted (+3), 1 lost (+1), 11 undecided"
    QString reminder;     // what earlier checks count without saying where
    QString fault;        // what the rules refuse, as it stands
    QString why;          // why there is nothing to mark; empty: there is
    bool canBePlaced{};   // the one batch has no positions, and its station has a layout to give it some
    bool lacksLayout{};   // the station's positions are not described
    bool hasLeftovers{};  // marked at an earlier look that was left
    bool hasUnplaced{};   // earlier checks count something without saying where
    bool isWholeStation{};
};

class PositionLookModel : public QObject {
    Q_OBJECT

  public:
    explicit PositionLookModel(Workspace& workspace, QObject* parent = nullptr);

    /// All open batches of a station that say where they stand, or the one.
    void lookAt(core::StationId station, core::BatchId batch = {});
    [[nodiscard]] core::StationId station() const { return station_; }
    [[nodiscard]] core::BatchId batch() const { return batch_; }

    [[nodiscard]] PositionMapModel& map() const { return *map_; }
    [[nodiscard]] const PositionLook& look() const { return look_; }
    [[nodiscard]] const PositionLookView& view() const { return view_; }

    void setDay(core::Date day);
    void setNote(const QString& note);
    void setLooksAtAll(bool looksAtAll);
    /// Marks from now on say where cuttings are that were counted before.
    void setWasCounted(bool wasCounted) { wasCounted_ = wasCounted; }

    /// One step to take back, unless it goes on with the one before.
    void mark(const std::vector<core::Position>& positions, const Mark& mark, bool goesOn = false);
    void takeBack();
    [[nodiscard]] bool canTakeBack() const { return !before_.empty(); }
    void startAfresh();

    /// Marks stay where they are when it is refused.
    Outcome save();

  signals:
    void viewChanged();
    /// Something marked that can't be; the reason.
    void refused(const QString& sentence);

  private:
    void show();
    void showMap();
    [[nodiscard]] QString whyNot(const core::Station* station) const;
    [[nodiscard]] QString countsText() const;
    [[nodiscard]] QString reminderText() const;
    void keepMarks();

    Workspace& workspace_;
    PositionMapModel* map_;
    core::StationId station_{};
    core::BatchId batch_{};
    std::vector<core::BatchRecord> here_;  // all that stand at the station
    PositionLook look_;
    PositionLookView view_;
    std::vector<LookMarks> before_;
    core::Date day_;
    bool wasCounted_{};
    bool looksAtAll_{};
};

}  // namespace desktop
