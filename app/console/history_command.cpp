// SPDX-License-Identifier: MIT
#include "app/console/history_command.h"

#include "app/console/arguments.h"
#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/text_table.h"
#include "app/console/words.h"

namespace console {

namespace {

constexpr int usualNewest = 20;

std::string kindWord(db::HistoryEntry::Kind kind) {
    switch (kind) {
        case db::HistoryEntry::Kind::Action:
            return "action";
        case db::HistoryEntry::Kind::Undo:
            return "undo";
        case db::HistoryEntry::Kind::Redo:
            return "redo";
    }
    return {};
}

Json jsonOf(const db::HistoryEntry& entry) {
    return {{"number", entry.number},
            {"at", entry.at},
            {"author", entry.author},
            {"words", entry.words},
            {"kind", kindWord(entry.kind)},
            {"is_undone", entry.isUndone},
            {"can_be_undone", entry.canBeUndone},
            {"can_be_redone", entry.canBeRedone}};
}

std::string stateOf(const db::HistoryEntry& entry) {
    if (entry.kind == db::HistoryEntry::Kind::Undo) return tr("taken back");
    if (entry.kind == db::HistoryEntry::Kind::Redo) return tr("done again");
    return entry.isUndone ? tr("was taken back") : std::string();
}

void printText(const std::vector<db::HistoryEntry>& entries, std::ostream& out) {
    if (entries.empty()) {
        out << tr("Nothing has been done yet.") << '\n';
        return;
    }
    TextTable table({{tr("when (UTC)"), TextTable::Align::Left},
                     {tr("who"), TextTable::Align::Left},
                     {tr("what"), TextTable::Align::Left},
                     {"", TextTable::Align::Left}});
    for (const db::HistoryEntry& entry : entries) table.addRow({entry.at, entry.author, entry.words, stateOf(entry)});
    table.printTo(out);
}

}  // namespace

std::string HistoryCommand::name() const {
    return "history";
}

std::string HistoryCommand::summary() const {
    return tr("what was done, newest first; take it back or do it again");
}

void HistoryCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook"), file_);
    options.flag("--undo", tr("take back the newest step that stands"), isUndo_);
    options.flag("--redo", tr("do again what was taken back last"), isRedo_);
    options.option("--newest", "N", tr("how many steps to show (20)"), newest_);
    options.flag("--json", tr("for machines"), isJson_);
}

int HistoryCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    if (isUndo_ && isRedo_) throw WrongArgument(tr("--undo and --redo are both given; one of them is allowed."));
    if (!isUndo_ && !isRedo_) {
        const int newest = newest_ ? static_cast<int>(wholeFrom("--newest", *newest_, 1, 1'000'000)) : usualNewest;
        const std::vector<db::HistoryEntry> entries = openToRead(file_, surroundings).history(newest);
        if (!isJson_) {
            printText(entries, out);
            return Done;
        }
        Json json = {{"history", Json::array()}};
        for (const db::HistoryEntry& entry : entries) json["history"].push_back(jsonOf(entry));
        print(json, out);
        return Done;
    }
    db::Logbook logbook = openToWrite(file_, surroundings);
    const std::optional<db::Changes> changes = isUndo_ ? logbook.undo() : logbook.redo();
    if (!changes) {
        err << (isUndo_ ? tr("There is nothing to take back.") : tr("There is nothing to do again.")) << '\n';
        return Refused;
    }
    if (isJson_)
        print({{isUndo_ ? "undone" : "redone", changes->words}}, out);
    else
        out << filled(isUndo_ ? tr("Taken back: %1") : tr("Done again: %1"), {changes->words}) << '\n';
    return Done;
}

}  // namespace console
