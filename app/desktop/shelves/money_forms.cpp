// SPDX-License-Identifier: MIT
// The forms of prices and lots.
#include "app/desktop/shelves/form_parts.h"
#include "app/desktop/shelves/price_fields.h"
#include "app/desktop/shelves/shelf_forms.h"
#include "app/desktop/widgets/date_edit.h"
#include "core/money/price_rules.h"
#include "core/treatment/lot_rules.h"

namespace desktop {

namespace {

ThingForm* formOfPrice(const PageContext& context, const core::Price& price, const QString& title, QWidget* parent,
                       bool choosesFigure) {
    auto* form = new ThingForm(&context.prompts, title, parent);
    form->setObjectName("priceForm");
    const auto fields = std::make_shared<PriceFields>(*form, context, price);
    finishForm<core::Price>(
        *form, context, [fields] { return fields->read(); }, PriceFields::underFields);
    if (choosesFigure) fields->chooseFigure();
    return form;
}

/// Treatments with hormone first, the others after them, then media: those in use, and the one that the lot has.
std::vector<PriceOwner> ownersOfLots(const core::Shelves& shelves, const core::Lot& lot) {
    core::Price asked;
    asked.treatment = lot.treatment;
    asked.medium = lot.medium;
    std::vector<PriceOwner> owners = priceOwners(shelves, asked);
    std::erase_if(owners, [](const PriceOwner& owner) { return !owner.treatment.isSet() && !owner.medium.isSet(); });
    std::ranges::stable_partition(owners, [](const PriceOwner& owner) { return owner.treatment.isSet(); });
    std::ranges::stable_partition(owners, [&](const PriceOwner& owner) {
        const core::Treatment* treatment = core::find(shelves.treatments, owner.treatment);
        return treatment != nullptr && !treatment->auxins.empty();
    });
    return owners;
}

void readDay(const DateEdit& edit, const char* field, bool mayBeBlank, std::optional<core::Date>& day,
             core::Refusals& faults) {
    day = edit.date();
    const QString typed = edit.line()->text();
    if (!day && !(mayBeBlank && typed.trimmed().isEmpty()))
        faults.push_back({field, typed.toStdString(), {}, edit.fault().toStdString()});
}

}  // namespace

QDialog* priceForm(const PageContext& context, std::int64_t id, QWidget* parent) {
    core::Price price = thingOf(context, &core::Shelves::prices, id);
    if (!price.id.isSet()) price.from = context.workspace.today();
    return formOfPrice(context, price, formTitle(price, FormWords::tr("New price")), parent, false);
}

QDialog* laterPriceForm(const PageContext& context, std::int64_t id, QWidget* parent) {
    core::Price price = thingOf(context, &core::Shelves::prices, id);
    price.id = {};
    price.from = context.workspace.today();
    if (price.until && *price.until < price.from) price.until.reset();
    return formOfPrice(context, price,
                       FormWords::tr("New price of %1, from today on").arg(QString::fromStdString(price.what)), parent,
                       true);
}

QDialog* lotForm(const PageContext& context, std::int64_t id, QWidget* parent) {
    core::Lot lot = thingOf(context, &core::Shelves::lots, id);
    const core::Date today = context.workspace.today();
    if (!lot.id.isSet()) lot.usedFrom = today;
    auto* form = new ThingForm(&context.prompts, formTitle(lot, FormWords::tr("New lot")), parent);
    form->setObjectName("lotForm");
    QLineEdit* name = form->addLine(
        {FormWords::tr("&Name"), "Name", "lotName", FormWords::tr("what stands on it, or what you call it")}, lot.name);
    const std::vector<PriceOwner> owners = ownersOfLots(context.workspace.shelves(), lot);
    QComboBox* owner = form->addChoice({FormWords::tr("&Of"), "Lot of", "lotOwner"});
    for (const PriceOwner& each : owners) {
        owner->addItem(each.text);
        if (each.treatment == lot.treatment && each.medium == lot.medium) owner->setCurrentIndex(owner->count() - 1);
    }
    DateEdit* from = form->addDay({FormWords::tr("&Used from"), "Used from", "lotFrom",
                                   FormWords::tr("until the day before the next one\u2019s")},
                                  lot.usedFrom, today);
    DateEdit* made = form->addDay(
        {FormWords::tr("&Made on"), "Made on", "lotMade", FormWords::tr("mixed or packed; blank if not known")},
        lot.madeOn, today);
    QPlainTextEdit* note = form->addNote({FormWords::tr("No&te"), "Note", "lotNote"}, lot.note);
    finishForm<core::Lot>(*form, context, [=] {
        ThingRead<core::Lot> now{lot, {}};
        now.thing.name = lineIn(*name);
        if (owner->currentIndex() >= 0) {
            const PriceOwner& chosen = owners[static_cast<std::size_t>(owner->currentIndex())];
            now.thing.treatment = chosen.treatment;
            now.thing.medium = chosen.medium;
        }
        std::optional<core::Date> usedFrom;
        readDay(*from, "Used from", false, usedFrom, now.faults);
        now.thing.usedFrom = usedFrom.value_or(lot.usedFrom);
        readDay(*made, "Made on", true, now.thing.madeOn, now.faults);
        now.thing.note = noteIn(*note);
        return now;
    });
    return form;
}

}  // namespace desktop
