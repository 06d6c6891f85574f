// SPDX-License-Identifier: MIT
// What the forms of the shelves have in common: a thing by its id, its title, the buttons that judge it by core's rules and keep it by
// db's verb, and a box to choose another thing by name. Inside shelves only.
#pragma once

#include <QComboBox>
#include <QCoreApplication>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <algorithm>
#include <utility>

#include "app/desktop/shelves/described_shelf.h"
#include "app/desktop/shelves/thing_form.h"
#include "core/shelf_rules.h"

namespace desktop {

struct FormWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::ShelfForm)
};

/// As the logbook has it; a fresh one for an unset id or one that is gone.
template <class Thing>
[[nodiscard]] Thing thingOf(const PageContext& context, std::vector<Thing> core::Shelves::*list, std::int64_t id) {
    const Thing* found = core::find(context.workspace.shelves().*list, decltype(Thing::id){id});
    return found ? *found : Thing{};
}

/// "Hebe albicans", or what a new one is called.
template <class Thing>
[[nodiscard]] QString formTitle(const Thing& thing, const QString& newTitle) {
    return thing.id.isSet() ? shelfNameOf(thing) : newTitle;
}

/// What is read from a form, and what of it can't be read.
template <class Thing>
struct ThingRead {
    Thing thing{};
    core::Refusals faults{};
};

/// Puts each refusal under a field of the form.
using FieldsOf = std::function<core::Refusals(core::Refusals)>;

/// Some rules of core and verbs of db ask what day it is.
template <class Thing>
[[nodiscard]] core::Refusals judgedThing(const Thing& thing, const Workspace& workspace) {
    if constexpr (requires { faultsIn(thing, workspace.shelves()); })
        return faultsIn(thing, workspace.shelves());
    else
        return faultsIn(thing, workspace.shelves(), workspace.today());
}

template <class Thing>
[[nodiscard]] core::Result<db::Changes> keptThing(db::Logbook& logbook, const Thing& thing, core::Date today) {
    if constexpr (requires { keep(logbook, thing); })
        return keep(logbook, thing);
    else
        return keep(logbook, thing, today);
}

/// `read` reads the form. The thing's own faultsIn() of core and keep() of db are found by its type. core judges what could be read; where a field could not, that stands instead of core's sentence about it.
template <class Thing>
void finishForm(
    ThingForm& form, const PageContext& context, std::function<ThingRead<Thing>()> read,
    FieldsOf fieldsOf = [](core::Refusals refusals) { return refusals; }) {
    Workspace& workspace = context.workspace;
    const auto judge = [read, fieldsOf, &workspace] {
        ThingRead<Thing> now = read();
        for (core::Refusal& fault : fieldsOf(judgedThing(now.thing, workspace))) {
            const auto isOfField = [&fault](const core::Refusal& other) { return other.field == fault.field; };
            if (std::ranges::none_of(now.faults, isOfField)) now.faults.push_back(std::move(fault));
        }
        return now.faults;
    };
    const auto keepIt = [read, &workspace] {
        return workspace.run([&](db::Logbook& logbook) { return keptThing(logbook, read().thing, workspace.today()); });
    };
    form.finish(FormWords::tr("&Save"), QStringLiteral("formSave"), {.judge = judge, .keep = keepIt});
}

/// Those in use, and the one that is chosen now; `none` stands first unless it is empty.
template <class Thing, class ThingId>
void fillChoice(QComboBox& box, const std::vector<Thing>& things, ThingId chosen, const QString& none) {
    if (!none.isEmpty()) box.addItem(none, QVariant::fromValue<qlonglong>(0));
    for (const Thing& thing : things)
        if (!thing.isRetired || thing.id == chosen)
            box.addItem(shelfNameOf(thing), QVariant::fromValue<qlonglong>(thing.id.value));
    box.setCurrentIndex(box.findData(QVariant::fromValue<qlonglong>(chosen.value)));
}

[[nodiscard]] inline std::int64_t chosenIn(const QComboBox& box) {
    return box.currentData().toLongLong();
}

[[nodiscard]] inline std::string lineIn(const QLineEdit& edit) {
    return edit.text().simplified().toStdString();
}

[[nodiscard]] inline std::string noteIn(const QPlainTextEdit& edit) {
    return edit.toPlainText().trimmed().toStdString();
}

}  // namespace desktop
