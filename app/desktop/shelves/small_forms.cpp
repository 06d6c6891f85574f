// SPDX-License-Identifier: MIT
// The forms of methods, stations, kinds of cutting, causes of loss, trials and check schedules.
#include <QLabel>

#include "app/desktop/shelves/form_parts.h"
#include "app/desktop/shelves/shelf_forms.h"
#include "app/desktop/stations/station_dialog.h"
#include "app/desktop/widgets/count_edit.h"

namespace desktop {

namespace {

constexpr int longestHorizonOfTrial = 3650;  // days
constexpr int longestSchedule = 365;         // days

ThingForm* emptyForm(const PageContext& context, const QString& title, const char* name, QWidget* parent) {
    auto* form = new ThingForm(&context.prompts, title, parent);
    form->setObjectName(name);
    return form;
}

core::Refusals faultsInCount(const CountEdit& edit, const std::string& field) {
    if (edit.count()) return {};
    return {{.field = field,
             .value = edit.text().toStdString(),
             .allowed = {},
             .sentence = edit.fault(QString::fromStdString(field)).toStdString()}};
}

}  // namespace

QDialog* methodForm(const PageContext& context, std::int64_t id, QWidget* parent) {
    const auto method = thingOf(context, &core::Shelves::methods, id);
    ThingForm* form = emptyForm(context, formTitle(method, FormWords::tr("New method")), "methodForm", parent);
    QLineEdit* name = form->addLine({FormWords::tr("&Name"), "Name", "methodName"}, method.name);
    QComboBox* schedule = form->addChoice({FormWords::tr("&Looked at"), "Check schedule", "methodSchedule"});
    fillChoice(*schedule, context.workspace.shelves().checkSchedules, method.checkSchedule,
               FormWords::tr("as the logbook says"));
    finishForm<core::Method>(*form, context, [=] {
        core::Method now = method;
        now.name = lineIn(*name);
        now.checkSchedule = {chosenIn(*schedule)};
        return ThingRead<core::Method>{now, {}};
    });
    return form;
}

QDialog* stationForm(const PageContext& context, std::int64_t id, QWidget* parent) {
    return StationDialog::keeping(context, {id}, parent);
}

QDialog* cuttingKindForm(const PageContext& context, std::int64_t id, QWidget* parent) {
    const auto kind = thingOf(context, &core::Shelves::cuttingKinds, id);
    ThingForm* form =
        emptyForm(context, formTitle(kind, FormWords::tr("New kind of cutting")), "cuttingKindForm", parent);
    QLineEdit* name = form->addLine({FormWords::tr("&Name"), "Name", "cuttingKindName"}, kind.name);
    finishForm<core::CuttingKind>(*form, context, [=] {
        core::CuttingKind now = kind;
        now.name = lineIn(*name);
        return ThingRead<core::CuttingKind>{now, {}};
    });
    return form;
}

QDialog* lossCauseForm(const PageContext& context, std::int64_t id, QWidget* parent) {
    const auto cause = thingOf(context, &core::Shelves::lossCauses, id);
    ThingForm* form = emptyForm(context, formTitle(cause, FormWords::tr("New cause of loss")), "lossCauseForm", parent);
    QLineEdit* name = form->addLine({FormWords::tr("&Name"), "Name", "lossCauseName"}, cause.name);
    QLineEdit* key =
        form->addLine({FormWords::tr("&Key in a round"), "Key", "lossCauseKey", FormWords::tr("one letter, or blank")},
                      cause.key == '\0' ? std::string() : std::string(1, cause.key));
    finishForm<core::LossCause>(*form, context, [=] {
        ThingRead<core::LossCause> now{cause, {}};
        now.thing.name = lineIn(*name);
        const std::string typed = key->text().trimmed().toLower().toStdString();
        now.thing.key = typed.size() == 1 ? typed.front() : '\0';
        if (typed.size() > 1)
            now.faults.push_back(
                {"Key",
                 typed,
                 {},
                 FormWords::tr("Key is \u201c%1\u201d; one letter from a to z but w is allowed, or none.")
                     .arg(key->text())
                     .toStdString()});
        return now;
    });
    return form;
}

QDialog* trialForm(const PageContext& context, std::int64_t id, QWidget* parent) {
    const auto trial = thingOf(context, &core::Shelves::trials, id);
    ThingForm* form = emptyForm(context, formTitle(trial, FormWords::tr("New trial")), "trialForm", parent);
    QLineEdit* name = form->addLine({FormWords::tr("&Name"), "Name", "trialName"}, trial.name);
    CountEdit* horizon =
        form->addCount({FormWords::tr("Decided on &day"), "Horizon day", "trialHorizon",
                        FormWords::tr("after sticking; blank: the plants\u2019 or the logbook\u2019s")},
                       trial.horizonDay, 1, longestHorizonOfTrial);
    QLabel* words = form->addWords("trialWords");
    words->setText(trial.allocationSeed
                       ? FormWords::tr("Dealt by chance. Set the day before looking: a day chosen after it decides "
                                       "nothing.")
                       : FormWords::tr("Set the day before looking: a day chosen after it decides nothing."));
    QPlainTextEdit* note = form->addNote({FormWords::tr("No&te"), "Note", "trialNote"}, trial.note);
    finishForm<core::Trial>(*form, context, [=] {
        core::Trial now = trial;
        now.name = lineIn(*name);
        now.horizonDay = horizon->count();
        now.note = noteIn(*note);
        return ThingRead<core::Trial>{now, faultsInOptionalCount(*horizon, "Horizon day")};
    });
    return form;
}

QDialog* checkScheduleForm(const PageContext& context, std::int64_t id, QWidget* parent) {
    const auto schedule = thingOf(context, &core::Shelves::checkSchedules, id);
    ThingForm* form =
        emptyForm(context, formTitle(schedule, FormWords::tr("New check schedule")), "checkScheduleForm", parent);
    QLineEdit* name = form->addLine({FormWords::tr("&Name"), "Name", "scheduleName"}, schedule.name);
    CountEdit* first = form->addCount(
        {FormWords::tr("&First look after"), "Days to the first check", "scheduleFirst", FormWords::tr("days")},
        schedule.firstAfterDays, 1, longestSchedule);
    CountEdit* every = form->addCount(
        {FormWords::tr("Then a look &every"), "Days between checks", "scheduleEvery", FormWords::tr("days")},
        schedule.everyDays, 1, longestSchedule);
    finishForm<core::CheckSchedule>(*form, context, [=] {
        ThingRead<core::CheckSchedule> now{schedule, faultsInCount(*first, "Days to the first check")};
        for (core::Refusal& fault : faultsInCount(*every, "Days between checks"))
            now.faults.push_back(std::move(fault));
        now.thing.name = lineIn(*name);
        now.thing.firstAfterDays = first->count().value_or(schedule.firstAfterDays);
        now.thing.everyDays = every->count().value_or(schedule.everyDays);
        return now;
    });
    return form;
}

}  // namespace desktop
