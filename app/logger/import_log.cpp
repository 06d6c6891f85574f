// SPDX-License-Identifier: MIT
#include "app/logger/import_log.h"

#include "app/logger/logger_text.h"
#include "app/logger/logger_words.h"
#include "core/units/entered_text.h"

namespace logger {

core::Result<db::LoggerAdded> importLog(db::Logbook& logbook, const LogContents& contents, const std::string& fileName,
                                        core::Moment now, const std::optional<core::LoggerFormat>& remembered,
                                        const db::LoggerProgress& progress) {
    return db::addLoggerDays(logbook, contents.days, "values of a logger from " + core::quotable(fileName), now, {},
                             progress, remembered ? &*remembered : nullptr);
}

QString addedText(const db::LoggerAdded& added) {
    const auto fresh = static_cast<int>(added.added), known = static_cast<int>(added.known),
               differing = static_cast<int>(added.differing);
    if (fresh == 0 && differing == 0)
        return known == 1 ? LoggerWords::tr("Nothing new: the 1 value was there already.")
                          : LoggerWords::tr("Nothing new: all %n values were there already.", nullptr, known);
    QString text = fresh == 1 ? LoggerWords::tr("1 new value.") : LoggerWords::tr("%n new values.", nullptr, fresh);
    if (known > 0)
        text += u' ' + (known == 1 ? LoggerWords::tr("1 was there already.")
                                   : LoggerWords::tr("%n were there already.", nullptr, known));
    if (differing > 0)
        text +=
            u' ' + (differing == 1 ? LoggerWords::tr("1 differs from what is there at the same moment, which stays.")
                                   : LoggerWords::tr("%n differ from what is there at the same moment, which stays.",
                                                     nullptr, differing));
    return text;
}

}  // namespace logger
