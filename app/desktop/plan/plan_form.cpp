// SPDX-License-Identifier: MIT
#include "app/desktop/plan/plan_form.h"

#include <QLabel>

#include "app/desktop/plan/plans_model.h"
#include "app/desktop/shelves/form_parts.h"
#include "app/desktop/widgets/count_edit.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/plot/number_text.h"
#include "core/planning/plan_rules.h"
#include "core/units/number_entry.h"
#include "db/actions/plan_actions.h"

namespace desktop {

namespace {

constexpr int longestGrowing = 3650;  // days
constexpr const char* sureField = "Assurance";
constexpr const char* pottedField = "Of 100 potted, live";
constexpr const char* needByField = "Needed by";
constexpr const char* growingField = "Days of growing on";
constexpr const char* hardeningField = "Days of hardening";

struct PlanWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::PlanForm)
};

struct PlanFields {
    QComboBox *plant, *method;
    CountEdit* wanted;
    QLineEdit* sure;
    DateEdit* needBy;
    QLineEdit* pottedLive;
    CountEdit *growing, *hardening;
    QLabel* answer;
    QPlainTextEdit* note;
};

/// A plan of one's own begins like the one before it: the same plants are wanted for the same day more often than not.
core::Plan planToEdit(const core::Shelves& shelves, core::PlanId id) {
    if (const core::Plan* kept = core::find(shelves.plans, id)) return *kept;
    core::Plan fresh;
    if (!shelves.plans.empty()) fresh = shelves.plans.back();
    fresh.id = {};
    fresh.plant = {};
    fresh.wanted = 0;
    fresh.note.clear();
    return fresh;
}

QString percentShown(double percent) {
    return plot::decimalText(percent, percent == std::round(percent) ? 0 : 1);
}

DateEdit* addNeedBy(ThingForm& form, const core::Plan& plan, core::Date today) {
    auto* edit = new DateEdit(today);
    edit->lookAhead();
    edit->line()->setObjectName(QStringLiteral("planNeedBy"));
    edit->line()->setAccessibleName(PlanWords::tr("Needed by"));
    edit->setDate(plan.needBy);
    form.addEditor({PlanWords::tr("Needed &by"), needByField, "planNeedByRow", PlanWords::tr("blank: any day")}, edit);
    QObject::connect(edit, &DateEdit::dateChanged, &form, [&form] { form.touch(needByField); });
    return edit;
}

PlanFields addPlanFields(ThingForm& form, const core::Plan& plan, const core::Shelves& shelves, core::Date today) {
    PlanFields fields{};
    fields.plant = form.addChoice({PlanWords::tr("&Plant"), "Plant", "planPlant"});
    fillChoice(*fields.plant, shelves.plants, plan.plant, {});
    fields.method = form.addChoice({PlanWords::tr("&Method"), "Method", "planMethod"});
    fillChoice(*fields.method, shelves.methods, plan.method, PlanWords::tr("not decided"));
    fields.wanted =
        form.addCount({PlanWords::tr("Plants &wanted"), "Wanted", "planWanted"},
                      plan.wanted > 0 ? std::optional(plan.wanted) : std::nullopt, 1, core::mostPlantsWanted);
    fields.sure = form.addLine({PlanWords::tr("Enough, times in &100"), sureField, "planSure",
                                PlanWords::tr("seasons like this one; 50 to 99.9")},
                               percentShown(100 * plan.assurance).toStdString());
    fields.needBy = addNeedBy(form, plan, today);
    fields.pottedLive = form.addLine({PlanWords::tr("Of 100 potted, &live on"), pottedField, "planPottedLive"},
                                     percentShown(plan.pottedLivePercent).toStdString());
    fields.growing = form.addCount(
        {PlanWords::tr("&Growing on"), growingField, "planGrowing", PlanWords::tr("days from potting on to hardening")},
        plan.pottingDays, 0, longestGrowing);
    fields.hardening =
        form.addCount({PlanWords::tr("&Hardening"), hardeningField, "planHardening", PlanWords::tr("days at the end")},
                      plan.hardeningDays, 0, longestGrowing);
    fields.answer = form.addWords("planAnswer");
    fields.answer->setText(PlanWords::tr("How many to stick, and when, stands here as soon as it can be said."));
    fields.note = form.addNote({PlanWords::tr("No&te"), "Note", "planNote"}, plan.note);
    return fields;
}

void addFault(core::Refusals& faults, const std::string& field, const QLineEdit& edit, const QString& sentence) {
    faults.push_back({.field = field,
                      .value = edit.text().toStdString(),
                      .allowed = {},
                      .sentence = sentence.arg(edit.text().trimmed()).toStdString()});
}

core::Refusals faultsOfTyping(const PlanFields& fields) {
    core::Refusals faults;
    if (!fields.wanted->count())
        faults.push_back({.field = "Wanted",
                          .value = fields.wanted->text().toStdString(),
                          .allowed = {},
                          .sentence = fields.wanted->fault(PlanWords::tr("Plants wanted")).toStdString()});
    if (!core::numberFrom(fields.sure->text().toStdString()))
        addFault(faults, sureField, *fields.sure,
                 PlanWords::tr("Enough, times in 100, is \u201c%1\u201d; a number from 50 to 99.9 is allowed."));
    if (!core::numberFrom(fields.pottedLive->text().toStdString()))
        addFault(faults, pottedField, *fields.pottedLive,
                 PlanWords::tr("Of 100 potted, live on, is \u201c%1\u201d; a number from 1 to 100 is allowed."));
    if (!fields.needBy->line()->text().trimmed().isEmpty() && !fields.needBy->date())
        faults.push_back({.field = needByField,
                          .value = fields.needBy->line()->text().toStdString(),
                          .allowed = {},
                          .sentence = fields.needBy->fault().toStdString()});
    for (const auto& [edit, field] :
         {std::pair{fields.growing, growingField}, std::pair{fields.hardening, hardeningField}})
        for (core::Refusal& fault : faultsInOptionalCount(*edit, field)) faults.push_back(std::move(fault));
    return faults;
}

ThingRead<core::Plan> readPlan(const core::Plan& before, const PlanFields& fields) {
    ThingRead<core::Plan> now{before, faultsOfTyping(fields)};
    now.thing.plant = {chosenIn(*fields.plant)};
    now.thing.method = {chosenIn(*fields.method)};
    now.thing.wanted = fields.wanted->count().value_or(0);
    now.thing.assurance = core::numberFrom(fields.sure->text().toStdString()).value_or(0) / 100;
    now.thing.needBy = fields.needBy->date();
    now.thing.pottedLivePercent = core::numberFrom(fields.pottedLive->text().toStdString()).value_or(0);
    now.thing.pottingDays = fields.growing->count().value_or(0);
    now.thing.hardeningDays = fields.hardening->count().value_or(0);
    now.thing.note = noteIn(*fields.note);
    return now;
}

QString answerInWords(const core::PlanAnswer& answer) {
    if (!answer.howMany) return {};
    QString words = QString::fromStdString(answer.howMany->answerInWords);
    if (answer.when && *answer.when) {
        words += u' ' + QString::fromStdString((*answer.when)->answerInWords);
        if (!(*answer.when)->warning.empty()) words += u' ' + QString::fromStdString((*answer.when)->warning);
    }
    return words;
}

}  // namespace

QDialog* planForm(const PageContext& context, PlansModel& model, core::PlanId id, QWidget* parent) {
    const core::Shelves& shelves = context.workspace.shelves();
    const core::Plan plan = planToEdit(shelves, id);
    auto* form =
        new ThingForm(&context.prompts, id.isSet() ? PlanWords::tr("Plan") : PlanWords::tr("New plan"), parent);
    form->setObjectName(QStringLiteral("planForm"));
    const PlanFields fields = addPlanFields(*form, plan, shelves, context.workspace.today());
    QObject::connect(&model, &PlansModel::answered, form, [answer = fields.answer](const core::PlanAnswer& now) {
        const QString words = answerInWords(now);
        if (!words.isEmpty()) answer->setText(words);
    });
    const auto read = [plan, fields] { return readPlan(plan, fields); };
    Workspace* workspace = &context.workspace;
    finishForm<core::Plan>(*form, context, [read, workspace, &model] {
        ThingRead<core::Plan> now = read();
        if (now.faults.empty() && core::faultsIn(now.thing, workspace->shelves()).empty()) model.ask(now.thing);
        return now;
    });
    if (id.isSet()) model.ask(plan);
    return form;
}

}  // namespace desktop
