// SPDX-License-Identifier: MIT
#include "app/desktop/logger/logger_model.h"

#include <QFileInfo>
#include <atomic>
#include <utility>

#include "app/logger/logger_zone.h"

namespace desktop {

namespace {

/// Runs the work at once; what it throws comes out of the future, where it is caught like everything else.
template <class Work>
auto promised(Work work) {
    using Answer = decltype(work());
    std::packaged_task<Answer()> task(std::move(work));
    task();
    return std::make_shared<std::future<Answer>>(task.get_future());
}

bool isTimeRole(core::ColumnRole role) {
    return role != core::ColumnRole::LeftOut && role != core::ColumnRole::Values;
}

bool goTogether(core::ColumnRole a, core::ColumnRole b) {
    return a != b && a != core::ColumnRole::DayAndTime && b != core::ColumnRole::DayAndTime;
}

}  // namespace

LoggerModel::LoggerModel(Workspace& workspace, QObject* parent) : QObject(parent), workspace_(workspace) {}

QString LoggerModel::fileName() const {
    return QFileInfo(file_).fileName();
}

void LoggerModel::become(State state) {
    state_ = state;
    emit changed();
}

/// The thread that works is ended before this is.
db::Waiting LoggerModel::waitingFor(std::stop_token stop) {
    auto told = std::make_shared<std::atomic<int>>(0);
    return {.stop = std::move(stop), .tell = [this, told](double share) {
                const int percent = static_cast<int>(share * 100);
                if (told->exchange(percent) == percent) return;
                QMetaObject::invokeMethod(
                    this, [this, percent] { emit progressed(percent); }, Qt::QueuedConnection);
            }};
}

void LoggerModel::setFile(const QString& file) {
    file_ = file;
    ordering_.stop();
    reading_.stop();
    known_.clear();
    look_ = {};
    contents_ = {};
    refusals_.clear();
    asksForTwiceHour_ = false;
    become(State::Looking);
    looking_.ask(
        [this, path = std::filesystem::path(file.toStdString()), shelves = workspace_.shelves()](std::stop_token stop) {
            return promised([&] { return logger::lookAt(path, shelves, waitingFor(stop)); });
        },
        [this](const auto& answer) { takeLook(answer); });
}

void LoggerModel::takeLook(const Promised<logger::FileLook>& answer) {
    const bool isRead = workspace_.attemptWithout([&] { look_ = answer->get(); });
    fault_ = isRead ? QString::fromStdString(look_.fault) : tr("%1 can't be read.").arg(fileName());
    if (!isRead || !look_.isTable()) return become(State::NoTable);
    workspace_.attempt(
        [&](db::Logbook& logbook) { known_ = logger::formatsFor(look_.top.form, logbook.loggerFormats()); });
    emit looked();
    readAs(known_.empty() ? -1 : 0);
}

void LoggerModel::readAs(int known) {
    chosen_ = known;
    mapping_ = known < 0 ? look_.guess : known_[static_cast<std::size_t>(known)].mapping;
    asksForTwiceHour_ = false;
    readAnew();
}

void LoggerModel::setColumn(int column, const core::LoggerColumn& meaning) {
    using core::ColumnRole;
    core::LoggerColumn& here = mapping_.columns[static_cast<std::size_t>(column)];
    const bool isOfTime = isTimeRole(meaning.role) || isTimeRole(here.role);
    for (core::LoggerColumn& other : mapping_.columns) {
        if (&other != &here && isTimeRole(meaning.role) && isTimeRole(other.role) &&
            !goTogether(meaning.role, other.role))
            other = {};
        // The first station that is named is meant for all that have none yet.
        if (other.role == ColumnRole::Values && !other.station.isSet()) other.station = meaning.station;
    }
    here = meaning;
    for (const core::LoggerColumn& other : mapping_.columns)
        if (here.role == ColumnRole::Values && !here.station.isSet()) here.station = other.station;
    if (isOfTime)
        findForm();
    else
        readAnew();
}

/// Another column has the time, and may write it another way.
void LoggerModel::findForm() {
    reading_.stop();
    contents_ = {};
    mapping_.timeForm = core::TimeForm::NotSettled;
    refusals_.clear();
    become(State::Reading);
    ordering_.ask(
        [this, path = std::filesystem::path(file_.toStdString()), form = look_.top.form,
         mapping = mapping_](std::stop_token stop) {
            return promised([&] { return logger::timeFormIn(path, form, mapping, waitingFor(stop)); });
        },
        [this](const auto& answer) { takeForm(answer); });
}

void LoggerModel::takeForm(const Promised<core::TimeForm>& answer) {
    if (workspace_.attemptWithout([&] { mapping_.timeForm = answer->get(); })) return readAnew();
    fault_ = tr("%1 can't be read.").arg(fileName());
    become(State::NoTable);
}

void LoggerModel::setTimeForm(core::TimeForm form) {
    mapping_.timeForm = form;
    readAnew();
}

void LoggerModel::setDecimalSign(core::DecimalSign sign) {
    mapping_.decimalSign = sign;
    readAnew();
}

void LoggerModel::setZone(const std::string& zone) {
    mapping_.zone = zone;
    readAnew();
}

void LoggerModel::setTwiceHour(core::TwiceHour twice) {
    mapping_.twiceHour = twice;
    readAnew();
}

void LoggerModel::setWordsMeanNoReading(bool yes) {
    mapping_.wordsMeanNoReading = yes;
    readAnew();
}

void LoggerModel::readAnew() {
    ordering_.stop();
    reading_.stop();
    contents_ = {};
    refusals_ = core::faultsIn(mapping_, look_.top.form.names, workspace_.shelves());
    if (refusals_.empty() && mapping_.timeForm != core::TimeForm::UnixSeconds &&
        !logger::LoggerZone::from(mapping_.zone))
        refusals_.push_back({.field = "Zone",
                             .value = mapping_.zone,
                             .allowed = {},
                             .sentence = tr("The time zone %1 is not known on this computer; choose another.")
                                             .arg(QString::fromStdString(mapping_.zone))
                                             .toStdString()});
    if (!refusals_.empty()) return become(State::Unsaid);
    become(State::Reading);
    reading_.ask(
        [this, path = std::filesystem::path(file_.toStdString()), form = look_.top.form, mapping = mapping_,
         now = workspace_.clock()()](std::stop_token stop) {
            return promised([&] { return logger::readLog(path, form, mapping, now, waitingFor(stop)); });
        },
        [this](const auto& answer) { takeContents(answer); });
}

void LoggerModel::takeContents(const Promised<logger::LogContents>& answer) {
    if (!workspace_.attemptWithout([&] { contents_ = answer->get(); })) {
        fault_ = tr("%1 can't be read.").arg(fileName());
        return become(State::NoTable);
    }
    asksForTwiceHour_ = contents_.goesOnceThroughTwiceHour || mapping_.twiceHour != core::TwiceHour::NotSettled;
    become(contents_.faults.empty() && contents_.summary.rows > 0 ? State::Ready : State::Faulty);
}

bool LoggerModel::isMendedForThisFile() const {
    return chosen_ >= 0 && mapping_ != known_[static_cast<std::size_t>(chosen_)].mapping;
}

QString LoggerModel::nameToRemember() const {
    std::string name = QFileInfo(file_).completeBaseName().simplified().toStdString();
    workspace_.attempt([&](db::Logbook& logbook) { name = logger::freeName(name, logbook.loggerFormats()); });
    return QString::fromStdString(name);
}

/// SQLite stays on the window's thread: a million rows take a second, with the bar going on.
Outcome LoggerModel::importNow(const std::optional<core::LoggerFormat>& remembered, db::LoggerAdded& added) {
    const auto tell = [this](std::size_t done, std::size_t all) {
        emit progressed(static_cast<int>(100 * done / all));
    };
    return workspace_.run([&](db::Logbook& logbook) -> core::Result<db::Changes> {
        auto done =
            logger::importLog(logbook, contents_, fileName().toStdString(), workspace_.clock()(), remembered, tell);
        if (!done) return core::refused(std::move(done.error()));
        added = std::move(*done);
        return added.changes;
    });
}

bool LoggerModel::bringIn(const QString& name) {
    if (state_ != State::Ready) return false;
    std::optional<core::LoggerFormat> remembered;
    if (chosen_ < 0 && !name.trimmed().isEmpty())
        remembered = logger::formatOf(look_.top.form, mapping_, name.simplified().toStdString());
    become(State::Saving);
    db::LoggerAdded added;
    const Outcome outcome = importNow(remembered, added);
    refusals_ = outcome.refusals;
    if (!outcome.isDone) {
        become(State::Ready);
        return false;
    }
    broughtIn_ = logger::addedText(added);
    if (added.added > 0) return true;
    become(State::NothingNew);
    return false;
}

}  // namespace desktop
