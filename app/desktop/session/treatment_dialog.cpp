// SPDX-License-Identifier: MIT
#include "app/desktop/session/treatment_dialog.h"

#include <algorithm>

#include "app/desktop/session/session_model.h"
#include "app/desktop/shelves/treatment_fields.h"
#include "core/shelf_rules.h"

namespace desktop {

namespace {

core::Treatment treatmentCalled(const QString& name) {
    core::Treatment treatment;
    treatment.name = name.toStdString();
    return treatment;
}

}  // namespace

TreatmentDialog::TreatmentDialog(SessionModel& model, const QString& name, QWidget* parent)
    : ThingForm(nullptr, tr("New treatment"), parent) {
    setObjectName(QStringLiteral("treatmentDialog"));
    const auto read = addTreatmentFields(*this, treatmentCalled(name));
    const auto judge = [read] {
        TreatmentRead now = read();
        for (core::Refusal& fault : underAuxins(core::faultsIn(now.treatment, core::Shelves{}))) {
            const auto isOfField = [&fault](const core::Refusal& other) { return other.field == fault.field; };
            if (std::ranges::none_of(now.faults, isOfField)) now.faults.push_back(std::move(fault));
        }
        return now.faults;
    };
    const auto keep = [this, read, &model] {
        core::Treatment treatment = read().treatment;
        const QString called = QString::fromStdString(treatment.name);
        const QString fault = model.describe(std::move(treatment));
        Outcome outcome;
        outcome.isDone = fault.isEmpty();
        if (!fault.isEmpty()) outcome.refusals = {{"Name", called.toStdString(), {}, fault.toStdString()}};
        if (outcome.isDone) emit described(called);
        return outcome;
    };
    finish(tr("Use this treatment"), QStringLiteral("describeTreatment"), {.judge = judge, .keep = keep});
}

}  // namespace desktop
