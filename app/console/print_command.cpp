// SPDX-License-Identifier: MIT
#include "app/console/print_command.h"

#include <QDateTime>
#include <QGuiApplication>
#include <iostream>
#include <memory>

#include "app/console/arguments.h"
#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/words.h"
#include "app/report/batch_summary_sheet.h"
#include "app/report/pdf.h"
#include "core/comparison/batch_summary.h"

namespace console {

namespace {

/// The error stream is for what a person should read: not for Qt's remarks on a machine without a desktop session.
void sayOnlyWhatIsGrave(QtMsgType type, const QMessageLogContext&, const QString& words) {
    if (type == QtCriticalMsg || type == QtFatalMsg) std::cerr << words.toStdString() << '\n';
}

/// Fonts need an application object; the only command that does. Without a window, on any machine.
class PaintingApplication {
  public:
    PaintingApplication() {
        if (QGuiApplication::instance() != nullptr) return;
        // Asked for even where there is a display: nothing is shown, and a display that refuses us must not matter.
        qputenv("QT_QPA_PLATFORM", "offscreen");
        const QtMessageHandler usual = qInstallMessageHandler(sayOnlyWhatIsGrave);
        application_ = std::make_unique<QGuiApplication>(count_, words_);
        qInstallMessageHandler(usual);
    }

  private:
    int count_{1};
    char name_[15]{"strikebook-cli"};
    char* words_[2]{name_, nullptr};
    std::unique_ptr<QGuiApplication> application_;
};

QDateTime momentFrom(const db::Clock& clock) {
    return QDateTime::fromSecsSinceEpoch(clock().time_since_epoch().count());
}

core::Session sessionOf(const db::Logbook& logbook, const core::Batch& batch) {
    const std::vector<core::Session> sessions = logbook.sessions();
    const core::Session* session = core::find(sessions, batch.session);
    return session == nullptr ? core::Session{.id = {}, .date = batch.stuckOn, .worker = {}, .note = {}} : *session;
}

}  // namespace

std::string PrintCommand::name() const {
    return "print";
}

std::string PrintCommand::summary() const {
    return tr("a batch's summary on one page of PDF");
}

void PrintCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook"), file_);
    options.neededOption("--batch", "CODE", tr("which batch"), code_);
    options.neededOption("--to", "FILE.pdf", tr("the file to write; an older one is replaced"), to_);
    options.option("--paper", "A4|Letter", tr("(as the logbook says)"), paper_);
    options.flag("--json", tr("for machines"), isJson_);
}

int PrintCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    const std::string &code = *code_, &to = *to_;
    if (!to.ends_with(".pdf") && !to.ends_with(".PDF"))
        throw WrongArgument(filled(tr("--to is %1; a file whose name ends in .pdf is allowed."), {shown(to)}));
    if (paper_ && *paper_ != "A4" && *paper_ != "Letter")
        throw WrongArgument(filled(tr("--paper is %1; A4 or Letter is allowed."), {shown(*paper_)}));
    const db::Logbook logbook = openToRead(file_, surroundings);
    const std::optional<core::BatchRecord> record = logbook.batch(logbook.batchWithCode(code));
    if (!record) {
        err << filled(tr("There is no batch %1 in %2."), {shown(code), file_}) << '\n';
        return Refused;
    }
    const core::Shelves shelves = logbook.shelves();
    const std::vector<core::BatchRecord> all = logbook.batchRecords(record->batch.plant);
    const core::BatchSummary summary = core::summaryOf(*record, shelves, all, surroundings.today);
    const PaintingApplication application;
    const report::Sheet sheet = report::batchSummarySheet(*record, sessionOf(logbook, record->batch), summary, shelves,
                                                          momentFrom(surroundings.clock));
    report::writePdf(sheet, QString::fromStdString(to),
                     report::paperFrom(QString::fromStdString(paper_.value_or(shelves.facts.paper))));
    if (isJson_)
        print({{"batch", code}, {"file", to}}, out);
    else
        out << filled(tr("Printed %1 to %2."), {code, to}) << '\n';
    return Done;
}

}  // namespace console
