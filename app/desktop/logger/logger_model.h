// SPDX-License-Identifier: MIT
// One logger's file on its way into the logbook: looked at and read away from the window's thread, read anew whenever something about it is
// said, brought in as one step. No widgets.
#pragma once

#include <QObject>
#include <QString>
#include <future>
#include <memory>
#include <optional>
#include <vector>

#include "app/desktop/background/latest_answer.h"
#include "app/desktop/workspace.h"
#include "app/logger/file_look.h"
#include "app/logger/import_log.h"
#include "app/logger/mapping_text.h"

namespace desktop {

class LoggerModel : public QObject {
    Q_OBJECT

  public:
    enum class State {
        NoFile,
        Looking,
        NoTable,  // fault() says why
        Unsaid,   // refusals() say what about the columns still has to be said
        Reading,
        Faulty,  // contents() has the faults
        Saving,
        Ready,      // contents() can be brought in
        NothingNew  // it was brought in, and all of it was there before
    };

    explicit LoggerModel(Workspace& workspace, QObject* parent = nullptr);

    void setFile(const QString& file);
    /// One of known(); -1: match the columns anew, from the guess.
    void readAs(int known);
    void setColumn(int column, const core::LoggerColumn& meaning);
    void setTimeForm(core::TimeForm form);
    void setDecimalSign(core::DecimalSign sign);
    void setZone(const std::string& zone);
    void setTwiceHour(core::TwiceHour twice);
    void setWordsMeanNoReading(bool yes);
    /// Remembers the columns under `name` where they were matched anew and the name isn't blank. False: refusals() or failed() say why, or
    /// there was nothing new.
    bool bringIn(const QString& name);

    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] const QString& file() const { return file_; }
    [[nodiscard]] QString fileName() const;
    [[nodiscard]] const QString& fault() const { return fault_; }
    [[nodiscard]] const logger::FileLook& look() const { return look_; }
    [[nodiscard]] const std::vector<logger::KnownFormat>& known() const { return known_; }
    [[nodiscard]] int chosenFormat() const { return chosen_; }
    [[nodiscard]] const core::LoggerMapping& mapping() const { return mapping_; }
    [[nodiscard]] const core::Refusals& refusals() const { return refusals_; }
    [[nodiscard]] const logger::LogContents& contents() const { return contents_; }
    /// Shown whenever the rows go, or may go, only once through the hour that comes twice.
    [[nodiscard]] bool asksForTwiceHour() const { return asksForTwiceHour_; }
    /// What was remembered was put right, for this file only.
    [[nodiscard]] bool isMendedForThisFile() const;
    [[nodiscard]] QString nameToRemember() const;
    [[nodiscard]] QString broughtIn() const { return broughtIn_; }  // a sentence

  signals:
    /// A file was looked at: columns and formats are others.
    void looked();
    void changed();
    void progressed(int percent);

  private:
    template <class Answer>
    using Promised = std::shared_ptr<std::future<Answer>>;

    [[nodiscard]] db::Waiting waitingFor(std::stop_token stop);
    void takeLook(const Promised<logger::FileLook>& promised);
    void takeContents(const Promised<logger::LogContents>& promised);
    void takeForm(const Promised<core::TimeForm>& promised);
    void findForm();
    void readAnew();
    void become(State state);
    [[nodiscard]] Outcome importNow(const std::optional<core::LoggerFormat>& remembered, db::LoggerAdded& added);

    Workspace& workspace_;
    QString file_;
    QString fault_;
    State state_{State::NoFile};
    logger::FileLook look_;
    std::vector<logger::KnownFormat> known_;
    int chosen_{-1};
    core::LoggerMapping mapping_;
    core::Refusals refusals_;
    logger::LogContents contents_;
    bool asksForTwiceHour_{};
    QString broughtIn_;
    LatestAnswer<Promised<logger::FileLook>> looking_{this};
    LatestAnswer<Promised<core::TimeForm>> ordering_{this};
    LatestAnswer<Promised<logger::LogContents>> reading_{this};
};

}  // namespace desktop
