// SPDX-License-Identifier: MIT
#include "app/desktop/help/keys_in_place.h"

#include <QCoreApplication>
#include <array>

#define IN_KEY_LIST(text) QT_TRANSLATE_NOOP("desktop::KeyList", text)

namespace desktop {

namespace {

namespace where {
constexpr const char* everywhere = IN_KEY_LIST("Everywhere");
constexpr const char* find = IN_KEY_LIST("Find");
constexpr const char* filters = IN_KEY_LIST("Filters above tables");
constexpr const char* tables = IN_KEY_LIST("Tables");
constexpr const char* days = IN_KEY_LIST("Days");
constexpr const char* bench = IN_KEY_LIST("Bench");
constexpr const char* batches = IN_KEY_LIST("Batches");
constexpr const char* batch = IN_KEY_LIST("A batch");
constexpr const char* timeline = IN_KEY_LIST("A batch: timeline");
constexpr const char* photos = IN_KEY_LIST("A batch: photos");
constexpr const char* note = IN_KEY_LIST("A batch: note");
constexpr const char* plan = IN_KEY_LIST("Plan");
constexpr const char* shelves = IN_KEY_LIST("Shelves");
constexpr const char* usual = IN_KEY_LIST("The usual prices");
constexpr const char* expenses = IN_KEY_LIST("Expenses of a session");
constexpr const char* round = IN_KEY_LIST("Round of checks");
constexpr const char* session = IN_KEY_LIST("New session");
constexpr const char* readings = IN_KEY_LIST("New reading");
constexpr const char* map = IN_KEY_LIST("Hole by hole");
constexpr const char* places = IN_KEY_LIST("Positions of a batch");
constexpr const char* settings = IN_KEY_LIST("Settings");
constexpr const char* keyboard = IN_KEY_LIST("Keyboard list");
}  // namespace where

constexpr std::array allKeysInPlace{
    KeyInPlace{where::everywhere, IN_KEY_LIST("letters, digits"),
               IN_KEY_LIST("Where no field has the focus: begin to find; a scanned label opens its batch"), true},
    KeyInPlace{where::everywhere, "Tab; Shift+Tab",
               IN_KEY_LIST("On to what comes next, and back; out of a table, too")},
    KeyInPlace{where::everywhere, IN_KEY_LIST("Alt and an underlined letter"),
               IN_KEY_LIST("Go to that field, press that button, open that menu"), true},
    KeyInPlace{where::everywhere, "Esc", IN_KEY_LIST("Back out of the innermost thing: a list, a filter, a window")},

    KeyInPlace{where::find, "Up; Down; PgUp; PgDown", IN_KEY_LIST("Choose in the list")},
    KeyInPlace{where::find, "Return; Enter", IN_KEY_LIST("Open what is chosen; the first when nothing is")},
    KeyInPlace{where::find, "Esc", IN_KEY_LIST("Clear the field and go back to where the focus was")},

    KeyInPlace{where::filters, "Return; Enter; Down", IN_KEY_LIST("On to the table")},
    KeyInPlace{where::filters, "Esc", IN_KEY_LIST("Clear the filter")},

    KeyInPlace{where::tables, "Ctrl+C",
               IN_KEY_LIST("Batches, plans, trials, shelves, timeline: copy the rows with their headings")},
    KeyInPlace{where::tables, "Shift+F10", IN_KEY_LIST("Batches, plans, trials, shelves: the menu of columns")},

    KeyInPlace{where::days, "Up; Down", IN_KEY_LIST("One day on or back")},
    KeyInPlace{where::days, "14   14.3   -3   t",
               IN_KEY_LIST("A day of this month, a day and month, three days ago, today"), true},

    KeyInPlace{where::bench, "Return; Enter", IN_KEY_LIST("Open the batch, or the batches of the station")},

    KeyInPlace{where::batches, "Return; Enter", IN_KEY_LIST("Open the batch")},
    KeyInPlace{where::batches, "Esc", IN_KEY_LIST("With the batches of one plant or station: show all again")},

    KeyInPlace{where::batch, "Esc", IN_KEY_LIST("Back to the list of batches")},
    KeyInPlace{where::batch, "Ctrl+V", IN_KEY_LIST("Add the photo that was copied")},
    KeyInPlace{where::timeline, "Return; Enter; F2", IN_KEY_LIST("Change the row")},
    KeyInPlace{where::timeline, "Del", IN_KEY_LIST("Delete the row")},
    KeyInPlace{where::photos, "Return; Enter", IN_KEY_LIST("Show large; of two chosen, both side by side")},
    KeyInPlace{where::photos, "F2", IN_KEY_LIST("Change caption and day")},
    KeyInPlace{where::photos, "Del", IN_KEY_LIST("Delete the photo")},
    KeyInPlace{where::note, "Ctrl+Return; Ctrl+Enter", IN_KEY_LIST("Keep the note")},
    KeyInPlace{where::note, "Esc", IN_KEY_LIST("Give back what stood there before")},

    KeyInPlace{where::plan, "Return; Enter; F2", IN_KEY_LIST("Change the plan or the trial of the row")},
    KeyInPlace{where::plan, "Ins", IN_KEY_LIST("Make a new one")},
    KeyInPlace{where::plan, "Del", IN_KEY_LIST("Remove it; a trial as long as nothing of it is stuck")},

    KeyInPlace{where::shelves, "Return; Enter; F2", IN_KEY_LIST("Change the row")},
    KeyInPlace{where::shelves, "Ins", IN_KEY_LIST("Make a new one")},
    KeyInPlace{where::shelves, "Shift+Ins", IN_KEY_LIST("Prices: a new one with all that the row has, from today on")},
    KeyInPlace{where::shelves, "Del", IN_KEY_LIST("Delete the row, where nothing uses it")},

    KeyInPlace{where::usual, "Return; Enter", IN_KEY_LIST("On to the next figure; after the last: keep")},
    KeyInPlace{where::usual, "Ctrl+Return; Ctrl+Enter", IN_KEY_LIST("Keep")},

    KeyInPlace{where::expenses, "Ins", IN_KEY_LIST("Add one")},
    KeyInPlace{where::expenses, "F2", IN_KEY_LIST("Change it")},
    KeyInPlace{where::expenses, "Del", IN_KEY_LIST("Remove it")},

    KeyInPlace{where::round, "*", IN_KEY_LIST("Looked, nothing new; goes on to the next row"), true},
    KeyInPlace{where::round, "Space", IN_KEY_LIST("The same; a row that has an entry keeps it")},
    KeyInPlace{where::round, "+3", IN_KEY_LIST("Newly rooted"), true},
    KeyInPlace{where::round, "12", IN_KEY_LIST("Rooted in all, or newly rooted: as the switch at the top says"), true},
    KeyInPlace{where::round, "=12", IN_KEY_LIST("Rooted in all"), true},
    KeyInPlace{where::round, "-2   -2r", IN_KEY_LIST("Lost; lost with the letter of its cause"), true},
    KeyInPlace{where::round, "w2", IN_KEY_LIST("Withdrawn"), true},
    KeyInPlace{where::round, ".", IN_KEY_LIST("Close the batch"), true},
    KeyInPlace{where::round, "/", IN_KEY_LIST("A note, after any of these or alone"), true},
    KeyInPlace{where::round, "B260047K", IN_KEY_LIST("A code, typed or scanned: go to its row"), true},
    KeyInPlace{where::round, "Return; Enter",
               IN_KEY_LIST("Down to the next row; after the last, with all rows entered: save")},
    KeyInPlace{where::round, "F2", IN_KEY_LIST("Change what stands in the row")},
    KeyInPlace{where::round, "Ctrl+Return; Ctrl+Enter", IN_KEY_LIST("Save")},

    KeyInPlace{where::session, "Return; Enter", IN_KEY_LIST("On to the next cell; takes the name that is marked")},
    KeyInPlace{where::session, "\"", IN_KEY_LIST("As in the row above"), true},
    KeyInPlace{where::session, "F2", IN_KEY_LIST("Change the cell")},
    KeyInPlace{where::session, "Del", IN_KEY_LIST("Empty the cell")},
    KeyInPlace{where::session, "Ctrl+Del", IN_KEY_LIST("Take the row out")},
    KeyInPlace{where::session, "Ctrl+Return; Ctrl+Enter", IN_KEY_LIST("Save")},

    KeyInPlace{where::readings, IN_KEY_LIST("0.6 6.1 21"),
               IN_KEY_LIST("Figures of this field and those behind it, typed at once"), true},
    KeyInPlace{where::readings, "Return; Enter",
               IN_KEY_LIST("On to the next figure; after a line's last, keep the line")},

    KeyInPlace{where::map, "R   L   W   U", IN_KEY_LIST("Rooted, lost, withdrawn, undecided"), true},
    KeyInPlace{where::map, IN_KEY_LIST("letter of a cause"), IN_KEY_LIST("Lost to it"), true},
    KeyInPlace{where::map, "Space", IN_KEY_LIST("The same as before")},
    KeyInPlace{where::map, "Left; Right; Up; Down", IN_KEY_LIST("One position on")},
    KeyInPlace{where::map, "Shift+Left; Shift+Right; Shift+Up; Shift+Down", IN_KEY_LIST("Select a block")},
    KeyInPlace{where::map, "Ctrl+Left; Ctrl+Right; Ctrl+Up; Ctrl+Down", IN_KEY_LIST("The next undecided one")},
    KeyInPlace{where::map, "Home; End", IN_KEY_LIST("Ends of the row")},
    KeyInPlace{where::map, "/", IN_KEY_LIST("Go to a position by its name"), true},
    KeyInPlace{where::map, "Shift+F10; Menu", IN_KEY_LIST("The list of states and causes")},
    KeyInPlace{where::map, "Ctrl+Z", IN_KEY_LIST("Take back the last mark")},
    KeyInPlace{where::map, "Return; Enter; Ctrl+Return; Ctrl+Enter", IN_KEY_LIST("Save")},

    KeyInPlace{where::places, "Space", IN_KEY_LIST("Take or free the position")},

    KeyInPlace{where::settings, "Ctrl+Z", IN_KEY_LIST("Take back the last change of the logbook")},
    KeyInPlace{where::settings, "Ctrl+Shift+Z; Ctrl+Y", IN_KEY_LIST("Do it again")},

    KeyInPlace{where::keyboard, "Return; Enter; Down", IN_KEY_LIST("From the search on to the list")},
};

}  // namespace

std::span<const KeyInPlace> keysInPlace() {
    return allKeysInPlace;
}

QString inKeyList(const char* text) {
    return QCoreApplication::translate("desktop::KeyList", text);
}

}  // namespace desktop
