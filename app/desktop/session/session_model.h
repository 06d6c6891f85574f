// SPDX-License-Identifier: MIT
// The session that is being typed: what stands in it, what is wrong with it, what it would do, and the verbs that change it. No
// widgets. What was typed lives with the workspace, so that closing the dialog loses nothing.
#pragma once

#include <QObject>
#include <QStringList>
#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "app/desktop/session/name_book.h"
#include "app/desktop/session/session_grid_model.h"
#include "app/desktop/session/session_reading.h"
#include "app/desktop/session/session_stations.h"
#include "core/mixing/trade_cautions.h"

namespace desktop {

class Workspace;
class UnfinishedSession;

/// A protected plant on the sheet.
struct AskedLicence {
    core::PlantId plant{};
    QString name;
    QString text;
};

struct SessionView {
    QString sums;       // "3 batches, 72 cuttings"
    QString room;       // positions that stay free at the stations it fills
    QStringList notes;  // stations that are too full, what will be made on the spot
    QString dayFault;
    QString headerFault;      // of who or note, or of the session as a whole
    bool hasLeftovers{};      // it stood here already when the dialog was opened
    bool canStartFromLast{};  // there is a last session, and nothing stands here yet
    int offered{};            // rows that are only offered
    std::vector<core::CautionTopic> cautions{};
    std::vector<AskedLicence> licences{};  // in the order of the rows
};

/// What the split dialog starts from.
struct SplitQuestion {
    int row{};
    QString plant;
    int cuttings{};
    QString station;    // of the row
    QString treatment;  // of the row
    QStringList stations;
    QStringList treatments;
    QString trialName;
    int horizonDay{};
    std::uint32_t seed{};
};

struct SessionSaved {
    bool isDone{};
    QString sentence;  // the codes that were given
    core::SessionId session{};
    std::vector<core::Batch> batches;  // as written
};

class SessionModel : public QObject {
    Q_OBJECT

  public:
    using SeedSource = std::function<std::uint32_t()>;

    explicit SessionModel(Workspace& workspace, QObject* parent = nullptr);
    /// Where chance comes from; the machine's own source unless a test says otherwise.
    void setSeedSource(SeedSource source) { drawSeed_ = std::move(source); }

    [[nodiscard]] SessionGridModel* grid() const { return grid_; }
    [[nodiscard]] Workspace& workspace() const { return workspace_; }
    [[nodiscard]] const SessionSheet& sheet() const { return sheet_; }
    [[nodiscard]] const SessionView& view() const { return view_; }
    [[nodiscard]] NameBook names() const;
    /// Names to offer while a cell is typed.
    [[nodiscard]] QStringList offersFor(const QModelIndex& cell) const;

    void setDay(std::optional<core::Date> day);
    void setWorker(const QString& worker);
    void setNote(const QString& note);
    void setLicence(core::PlantId plant, const QString& licence);
    void startAfresh();
    /// The rows of the last session, with their counts, only offered: today's date, and nothing is saved that nobody accepts.
    void startFromLast();

    /// A station or treatment described on the spot; a sentence when it can't be, else it may be used at once.
    [[nodiscard]] QString describe(core::Station station, const QString& method);
    [[nodiscard]] QString describe(core::Treatment treatment);

    /// Nothing, and `why` says why, when the row can't be split.
    [[nodiscard]] std::optional<SplitQuestion> splitQuestion(int row, QString& why) const;
    /// A sentence when the name of the trial is blank or taken.
    [[nodiscard]] QString faultInTrialName(const QString& name) const;
    [[nodiscard]] QString methodOf(const QString& station) const;
    /// As they would be stuck now; none for a row that is not read.
    [[nodiscard]] std::vector<core::Batch> batchesOfRow(int row);

    [[nodiscard]] SessionSaved save();
    /// After a save that was refused: the cell to go to.
    [[nodiscard]] std::optional<CellFault> firstFault() const;

  signals:
    void viewChanged();

  private:
    void startRows();
    void judge();
    [[nodiscard]] QString stockPlantFor(const QString& before, const QString& plant, const QString& mother) const;
    [[nodiscard]] QString understood(SessionColumn column, const QString& typed) const;
    [[nodiscard]] SessionReading read();
    [[nodiscard]] std::vector<AskedLicence> takeLicences(SessionReading& reading);
    void mind(const SessionReading& reading, const core::Shelves& all);
    [[nodiscard]] QString sentenceFor(const std::vector<core::Batch>& batches) const;

    Workspace& workspace_;
    SessionSheet& sheet_;
    SessionGridModel* grid_;
    SessionView view_;
    SeedSource drawSeed_;
    SessionStations stations_;
    bool showsBlanks_{};  // once somebody has tried to save, cells left blank are faults too
};

}  // namespace desktop
