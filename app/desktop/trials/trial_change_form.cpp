// SPDX-License-Identifier: MIT
#include "app/desktop/trials/trial_change_form.h"

#include <QCheckBox>
#include <QLabel>
#include <cmath>

#include "app/desktop/shelves/form_parts.h"
#include "app/desktop/widgets/count_edit.h"
#include "app/plot/number_text.h"
#include "core/trial/trial_rules.h"
#include "core/units/number_entry.h"
#include "db/actions/trial_actions.h"

namespace desktop {

namespace {

constexpr int latestDayToJudge = 3650;

struct ChangeWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::TrialChangeForm)
};

struct ChangeFields {
    QLineEdit* name{};
    QPlainTextEdit* question{};
    CountEdit* horizon{};
    QComboBox* measure{};
    QLineEdit* margin{};
    QCheckBox* blinded{};
    QPlainTextEdit* note{};
    QLineEdit* reason{};
};

QString marginShown(std::optional<double> margin) {
    if (!margin) return {};
    const double points = 100 * *margin;
    return plot::decimalText(points, std::abs(points - std::round(points)) < 1e-9 ? 0 : 1);
}

ChangeFields addChangeFields(ThingForm& form, const core::Trial& trial, bool wasChecked) {
    ChangeFields fields;
    fields.name = form.addLine({ChangeWords::tr("&Name"), "Name", QStringLiteral("changeName")}, trial.name);
    fields.question =
        form.addNote({ChangeWords::tr("&Question"), "Question", QStringLiteral("changeQuestion")}, trial.question);
    fields.horizon = form.addCount({ChangeWords::tr("&Horizon day"), "Horizon day", QStringLiteral("changeHorizon"),
                                    ChangeWords::tr("days after sticking")},
                                   trial.horizonDay, 1, latestDayToJudge);
    fields.measure = form.addChoice({ChangeWords::tr("&What counts"), "Measure", QStringLiteral("changeMeasure")});
    fields.measure->addItem(ChangeWords::tr("more rooted"), static_cast<int>(core::TrialMeasure::MoreRooted));
    fields.measure->addItem(ChangeWords::tr("as good as, within"), static_cast<int>(core::TrialMeasure::AsGoodAs));
    fields.measure->setCurrentIndex(fields.measure->findData(static_cast<int>(trial.measure)));
    fields.margin = form.addLine({ChangeWords::tr("Difference that &matters"), "Margin", QStringLiteral("changeMargin"),
                                  ChangeWords::tr("of 100")},
                                 marginShown(trial.margin).toStdString());
    fields.blinded = form.addTick(ChangeWords::tr("Do not tell arms apart before the hori&zon"),
                                  QStringLiteral("changeBlinded"), trial.isBlinded);
    fields.note = form.addNote({ChangeWords::tr("N&ote"), "Note", QStringLiteral("changeNote")}, trial.note);
    fields.reason = form.addLine({ChangeWords::tr("&Reason"), "Reason", QStringLiteral("changeReason")}, {});
    form.addWords("changeRule")
        ->setText(wasChecked ? ChangeWords::tr(
                                   "Batches of this trial have been checked: a change of horizon day, measure, margin "
                                   "or blinding needs a reason, and the report prints both.")
                             : ChangeWords::tr("Nobody has looked yet, so anything may be changed without a reason."));
    for (QPlainTextEdit* words : {fields.question, fields.note})
        words->setMaximumHeight(words->fontMetrics().height() * 4);
    return fields;
}

void addFieldFault(core::Refusals& faults, const char* field, const QLineEdit& edit, const QString& sentence) {
    faults.push_back({field, edit.text().toStdString(), {}, sentence.arg(edit.text().trimmed()).toStdString()});
}

ThingRead<core::Trial> readChanged(const core::Trial& before, const ChangeFields& fields) {
    ThingRead<core::Trial> now{before, faultsInOptionalCount(*fields.horizon, "Horizon day")};
    now.thing.name = lineIn(*fields.name);
    now.thing.question = noteIn(*fields.question);
    now.thing.note = noteIn(*fields.note);
    if (before.factor && !fields.horizon->count() && now.faults.empty())
        addFieldFault(now.faults, "Horizon day", *fields.horizon,
                      ChangeWords::tr("Horizon day is \u201c%1\u201d; a planned trial needs one, from 1 to 3650."));
    now.thing.horizonDay = fields.horizon->count();
    now.thing.measure = static_cast<core::TrialMeasure>(fields.measure->currentData().toInt());
    const auto points = core::numberFrom(fields.margin->text().toStdString());
    const bool isBlank = fields.margin->text().trimmed().isEmpty();
    if (!isBlank && (!points || *points <= 0 || *points >= 100))
        addFieldFault(
            now.faults, "Margin", *fields.margin,
            ChangeWords::tr("The difference is \u201c%1\u201d; a number of cuttings of 100, more than 0 and less "
                            "than 100, is allowed, such as 20."));
    // What nobody touched stays as it was, to the last digit.
    const bool isSame = fields.margin->text() == marginShown(before.margin);
    if (!isSame) now.thing.margin = points ? std::optional(*points / 100) : std::nullopt;
    now.thing.isBlinded = fields.blinded->isChecked();
    return now;
}

core::Refusals judgeChange(const core::Trial& before, bool wasChecked, const ChangeFields& fields,
                           const core::Shelves& shelves) {
    ThingRead<core::Trial> now = readChanged(before, fields);
    core::Refusals rules = core::faultsIn(now.thing, shelves);
    for (core::Refusal& fault :
         core::faultsInChange(before, now.thing, wasChecked, fields.reason->text().trimmed().toStdString(), shelves))
        rules.push_back(std::move(fault));
    for (core::Refusal& fault : rules) {
        const auto isOfField = [&fault](const core::Refusal& other) { return other.field == fault.field; };
        if (std::ranges::none_of(now.faults, isOfField)) now.faults.push_back(std::move(fault));
    }
    return now.faults;
}

}  // namespace

QDialog* trialChangeForm(const PageContext& context, core::TrialId id, QWidget* parent) {
    const core::Trial trial = thingOf(context, &core::Shelves::trials, id.value);
    Workspace* workspace = &context.workspace;
    bool wasChecked = false;
    workspace->attempt([&](db::Logbook& logbook) { wasChecked = db::wasChecked(logbook, id); });
    auto* form = new ThingForm(&context.prompts,
                               ChangeWords::tr("Change trial: %1").arg(QString::fromStdString(trial.name)), parent);
    form->setObjectName(QStringLiteral("trialChangeForm"));
    const ChangeFields fields = addChangeFields(*form, trial, wasChecked);
    const auto judge = [trial, wasChecked, fields, workspace] {
        return judgeChange(trial, wasChecked, fields, workspace->shelves());
    };
    const auto keep = [trial, fields, workspace] {
        return workspace->run([&](db::Logbook& logbook) {
            return db::changeTrial(logbook, readChanged(trial, fields).thing,
                                   fields.reason->text().trimmed().toStdString(), workspace->today());
        });
    };
    form->finish(ChangeWords::tr("&Save"), QStringLiteral("formSave"), {.judge = judge, .keep = keep});
    return form;
}

}  // namespace desktop
