// SPDX-License-Identifier: MIT
#include <cerrno>
#include <optional>
#include <system_error>

#include "db/failure.h"
#include "db/inside.h"
#include "db/safekeeping/backup.h"
#include "db/safekeeping/checked_copy.h"
#include "db/safekeeping/untrusted_open.h"

namespace db {

namespace {

std::filesystem::path journalOf(const std::filesystem::path& file) {
    return file.string() + "-journal";
}

void copyAsItIs(const std::filesystem::path& from, const std::filesystem::path& to) {
    PartFile part(to, "The copy");
    std::error_code failure;
    std::filesystem::copy_file(from, part.path(), std::filesystem::copy_options::overwrite_existing, failure);
    if (failure) throw systemFailure(failure.value(), "The copy " + quotedName(to) + " could not be written");
    part.publish(IfThere::Refuse);
}

std::optional<Logbook> openIfSound(const std::filesystem::path& logbook, const Clock& clock) {
    try {
        return Logbook::open(logbook, {.clock = clock, .author = {}});
    } catch (const LogbookError&) {  // that it can't be opened may be why it is being replaced
        return std::nullopt;
    }
}

std::filesystem::path nameForDamaged(const std::filesystem::path& logbook) {
    const auto named = [&](const std::string& number) {
        return backupFolder(logbook) / (logbook.stem().string() + " damaged" + number + logbook.extension().string());
    };
    auto name = named("");
    for (int number = 2; std::filesystem::exists(name); ++number) name = named(' ' + std::to_string(number));
    return name;
}

/// What is there now is kept, whatever state it is in: a sound logbook as an ordinary backup, anything else byte for byte. False: it was
/// called off.
bool keepWhatIsThere(const std::filesystem::path& logbook, const Clock& clock, const Waiting& waiting) {
    if (!std::filesystem::exists(logbook)) return true;
    if (const auto sound = openIfSound(logbook, clock))
        return !backUpAutomatically(*sound, true, backupsKept, waiting).empty();
    std::error_code failure;
    std::filesystem::create_directories(backupFolder(logbook), failure);
    if (failure) throw systemFailure(failure.value(), "The folder for backups could not be made");
    const auto name = nameForDamaged(logbook);
    copyAsItIs(logbook, name);
    if (std::filesystem::exists(journalOf(logbook))) copyAsItIs(journalOf(logbook), journalOf(name));
    return true;
}

}  // namespace

bool restore(const std::filesystem::path& backup, const std::filesystem::path& named, const Clock& clock,
             const Waiting& waiting) {
    const auto logbook = std::filesystem::weakly_canonical(named);  // a link stays a link
    const WindowLock lock(logbook);
    if (lock.isHeldElsewhere())
        throw LogbookError(quotedName(logbook) + " is open in another window. Close that window, then restore again.");
    OpenedFile source = openUntrusted(backup, true, std::chrono::seconds(3));
    const std::string deed = quotedName(logbook) + " could not be restored";
    PartFile part(logbook, "The restored logbook");
    std::error_code failure;
    std::filesystem::remove(part.path(), failure);
    if (!writeCheckedCopy(*source.connection, part.path(), IfThere::Refuse, "The restored logbook",
                          waiting.forPiece(0, 0.5)) ||
        !keepWhatIsThere(logbook, clock, waiting.forPiece(0.5, 1)))
        return false;
    // A journal of the file that goes would be rolled back into the one that comes.
    std::filesystem::remove(journalOf(logbook), failure);
    if (failure) throw systemFailure(failure.value(), deed);
    part.publish(IfThere::Replace);
    return true;
}

}  // namespace db
