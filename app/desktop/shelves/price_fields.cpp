// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/price_fields.h"

#include "app/desktop/mix/mix_field.h"
#include "app/desktop/shelves/figure_and_unit.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/plot/money_text.h"
#include "core/money/amount_entry.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

enum LifeUnit { LifeYears, LifeBatches };

constexpr double wholeShare = 100;  // per cent

/// What stands behind the amount: "EUR a kWh".
QString unitOfAmount(core::PriceKind kind, const std::string& currency) {
    const QString money = QString::fromStdString(currency);
    switch (kind) {
        case core::PriceKind::UsedUp:
            return FormWords::tr("%1 for a pack", "EUR").arg(money);
        case core::PriceKind::Tariff:
            return FormWords::tr("%1 a kWh; up to four decimals", "EUR").arg(money);
        case core::PriceKind::HourOfWork:
            return FormWords::tr("%1 an hour; 0 if your time is not to count", "EUR").arg(money);
        case core::PriceKind::DaySooner:
            return FormWords::tr("%1 a day for each rooted plant", "EUR").arg(money);
        default:
            return money;
    }
}

QString hintFor(core::PriceKind kind) {
    switch (kind) {
        case core::PriceKind::Lasting:
            return FormWords::tr(
                "A tub, a pump, a lamp. Over years, each day\u2019s share is borne by the cuttings that stand there on "
                "the day; "
                "over batches, each bears as much.");
        case core::PriceKind::UsedUp:
            return FormWords::tr("Medium, hormone, nutrient, labels: what a pack costs and for how many it does.");
        case core::PriceKind::Electricity:
            return FormWords::tr(
                "What draws power. The tariff, which is a price of its own, makes money of it. Runs: how much of "
                "these "
                "hours it really runs, such as a heater on a thermostat.");
        case core::PriceKind::Tariff:
            return FormWords::tr("What a kilowatt-hour costs you.");
        case core::PriceKind::WorkTime:
            return FormWords::tr(
                "How long it usually takes. The worth of an hour, which is a price of its own, makes money of it. A "
                "session "
                "whose minutes are written down takes those.");
        case core::PriceKind::HourOfWork:
            return FormWords::tr("What an hour of your work is worth to you. It may be nothing.");
        case core::PriceKind::DaySooner:
            return FormWords::tr(
                "What it is worth to have one rooted plant a day sooner. Only the Worth it page asks.");
    }
    return {};
}

core::Refusal noNumber(const char* field, const QString& label, const QString& typed) {
    const QString sentence =
        typed.trimmed().isEmpty()
            ? FormWords::tr("%1 is blank; a number is allowed, such as 1.5.").arg(label)
            : FormWords::tr("%1 is \u201c%2\u201d; a number is allowed, such as 1.5.").arg(label, typed.trimmed());
    return {field, typed.toStdString(), {}, sentence.toStdString()};
}

/// Nothing, with a refusal, when it can't be read.
std::optional<double> figureIn(const QString& typed, const char* field, const QString& label, core::Refusals& faults) {
    const std::optional<double> figure = core::numberFrom(typed.toStdString());
    if (!figure) faults.push_back(noNumber(field, label, typed));
    return figure;
}

QString shownFigure(double figure) {
    return figure == 0 ? QString() : typedText(figure);
}

}  // namespace

PriceFields::PriceFields(ThingForm& form, const PageContext& context, const core::Price& price)
    : form_(form), before_(price), currency_(context.workspace.shelves().facts.currency) {
    kind_ = form.addChoice({FormWords::tr("&Kind"), "Kind", "priceKind"});
    for (const core::PriceKind each : core::allPriceKinds) kind_->addItem(priceKindText(each), static_cast<int>(each));
    kind_->setCurrentIndex(kind_->findData(static_cast<int>(price.kind)));
    addNameAndOwner(context.workspace.shelves());
    addFigures();
    addPower();
    addDaysAndNote(context.workspace.today());
    QObject::connect(kind_, &QComboBox::currentIndexChanged, &form, [this] { showKind(); });
    showKind();
}

void PriceFields::addNameAndOwner(const core::Shelves& shelves) {
    hint_ = form_.addWords("priceHint");
    what_ = form_.addLine({FormWords::tr("&What"), "Name", "priceWhat"}, before_.what);
    owners_ = priceOwners(shelves, before_);
    owner_ = form_.addChoice({FormWords::tr("W&hose"), "Belongs to", "priceOwner"});
    for (const PriceOwner& owner : owners_) owner_->addItem(owner.text);
    for (std::size_t number = 0; number < owners_.size(); ++number)
        if (owners_[number].isOwnerOf(before_)) owner_->setCurrentIndex(static_cast<int>(number));
}

void PriceFields::addFigures() {
    const bool isNew = !before_.id.isSet() && before_.what.empty();
    amount_ = form_.addNumber({FormWords::tr("&Amount"), "Amount", "priceAmount", QStringLiteral(" ")},
                              isNew ? QString() : plot::priceFigure(before_.tenThousandths));
    const auto add = [this](FigureAndUnit*& made, const char* field, const QString& label, const QString& name,
                            const char* objectName, const std::vector<FigureAndUnit::Unit>& units) {
        made = new FigureAndUnit(name, QLatin1String(objectName), units);
        form_.addEditor({label, field, QLatin1String(objectName)}, made);
        QObject::connect(made, &FigureAndUnit::edited, &form_, [form = &form_, field] { form->touch(field); });
    };
    add(lasts_, "Lasts", FormWords::tr("&Lasts"), FormWords::tr("Lasts"), "priceLasts",
        {{FormWords::tr("years"), LifeYears}, {FormWords::tr("batches"), LifeBatches}});
    add(pack_, "A pack does for", FormWords::tr("A &pack does for"), FormWords::tr("A pack does for"), "pricePack",
        {{FormWords::tr("cuttings"), static_cast<int>(core::PriceBasis::Cutting)},
         {FormWords::tr("batches"), static_cast<int>(core::PriceBasis::Batch)},
         {FormWords::tr("sessions"), static_cast<int>(core::PriceBasis::Session)}});
    add(work_, "Minutes", FormWords::tr("&Minutes"), FormWords::tr("Minutes"), "priceMinutes",
        {{FormWords::tr("for each session"), static_cast<int>(core::PriceBasis::Session)},
         {FormWords::tr("for each check"), static_cast<int>(core::PriceBasis::Check)},
         {FormWords::tr("for each care"), static_cast<int>(core::PriceBasis::Care)},
         {FormWords::tr("for each batch"), static_cast<int>(core::PriceBasis::Batch)},
         {FormWords::tr("for each cutting"), static_cast<int>(core::PriceBasis::Cutting)}});
    lasts_->set(shownFigure(before_.lastsYears.value_or(before_.lastsFor.value_or(0))),
                before_.kind == core::PriceKind::Lasting && before_.lastsFor ? LifeBatches : LifeYears);
    pack_->set(shownFigure(before_.lastsFor.value_or(0)),
               static_cast<int>(before_.kind == core::PriceKind::UsedUp ? before_.basis : core::PriceBasis::Cutting));
    work_->set(shownFigure(before_.minutes),
               static_cast<int>(before_.kind == core::PriceKind::WorkTime ? before_.basis : core::PriceBasis::Session));
}

void PriceFields::addPower() {
    watts_ = form_.addNumber({FormWords::tr("&Power"), "Power", "priceWatts", FormWords::tr("W", "watts")},
                             shownFigure(before_.watts));
    hours_ = form_.addNumber({FormWords::tr("H&ours"), "Hours a day", "priceHours", FormWords::tr("hours a day")},
                             shownFigure(before_.hoursADay));
    share_ = form_.addNumber(
        {FormWords::tr("&Runs"), "Share of the time", "priceShare", FormWords::tr("% of these hours; 100 for all")},
        typedText(before_.duty * wholeShare));
}

void PriceFields::addDaysAndNote(core::Date today) {
    from_ =
        form_.addDay({FormWords::tr("&From"), "From", "priceFrom", FormWords::tr("the first day on which it holds")},
                     before_.from, today);
    until_ = form_.addDay(
        {FormWords::tr("&Until"), "Until", "priceUntil", FormWords::tr("blank: until the next price of its name")},
        before_.until, today);
    note_ = form_.addNote({FormWords::tr("No&te"), "Note", "priceNote"}, before_.note);
}

core::PriceKind PriceFields::kind() const {
    return static_cast<core::PriceKind>(kind_->currentData().toInt());
}

void PriceFields::showKind() {
    const core::PriceKind now = kind();
    hint_->setText(hintFor(now));
    form_.showRow(what_, !isNamedByItsKind(now));
    form_.showRow(owner_, !isNamedByItsKind(now));
    form_.showRow(amount_, hasAmount(now));
    form_.sayAfter(amount_, unitOfAmount(now, currency_));
    form_.showRow(lasts_, now == core::PriceKind::Lasting);
    form_.showRow(pack_, now == core::PriceKind::UsedUp);
    form_.showRow(work_, now == core::PriceKind::WorkTime);
    for (QLineEdit* each : {watts_, hours_, share_}) form_.showRow(each, now == core::PriceKind::Electricity);
}

void PriceFields::chooseFigure() {
    QLineEdit* first = kind() == core::PriceKind::Electricity ? watts_
                       : kind() == core::PriceKind::WorkTime  ? work_->line()
                                                              : amount_;
    first->setFocus(Qt::OtherFocusReason);
    first->selectAll();
}

ThingRead<core::Price> PriceFields::read() const {
    ThingRead<core::Price> now{before_, {}};
    now.thing.kind = kind();
    if (isNamedByItsKind(now.thing.kind)) {
        const bool isNamed = before_.kind == now.thing.kind && !before_.what.empty();
        if (!isNamed) now.thing.what = usualNameOf(now.thing.kind).toStdString();
        PriceOwner().give(now.thing);
    } else {
        now.thing.what = lineIn(*what_);
        owners_[static_cast<std::size_t>(owner_->currentIndex())].give(now.thing);
    }
    readAmount(now);
    readFigures(now);
    readPower(now);
    readDays(now);
    now.thing.note = noteIn(*note_);
    now.thing = core::tidied(std::move(now.thing));
    return now;
}

void PriceFields::readAmount(ThingRead<core::Price>& now) const {
    if (!hasAmount(now.thing.kind)) return;
    const int mostDecimals = now.thing.kind == core::PriceKind::Tariff ? 4 : 2;
    const auto amount = core::tenThousandthsFrom(amount_->text().toStdString(), mostDecimals);
    if (amount)
        now.thing.tenThousandths = *amount;
    else
        now.faults.insert(now.faults.end(), amount.error().begin(), amount.error().end());
}

void PriceFields::readFigures(ThingRead<core::Price>& now) const {
    core::Price& price = now.thing;
    if (price.kind == core::PriceKind::Lasting) {
        const auto lasts = figureIn(lasts_->figure(), "Lasts", FormWords::tr("Lasts"), now.faults);
        price.lastsYears = lasts_->unit() == LifeYears ? lasts : std::nullopt;
        price.lastsFor = lasts_->unit() == LifeBatches ? lasts : std::nullopt;
    } else if (price.kind == core::PriceKind::UsedUp) {
        price.lastsFor = figureIn(pack_->figure(), "A pack does for", FormWords::tr("A pack does for"), now.faults);
        price.basis = static_cast<core::PriceBasis>(pack_->unit());
    } else if (price.kind == core::PriceKind::WorkTime) {
        price.minutes = figureIn(work_->figure(), "Minutes", FormWords::tr("Minutes"), now.faults).value_or(0);
        price.basis = static_cast<core::PriceBasis>(work_->unit());
    }
}

void PriceFields::readPower(ThingRead<core::Price>& now) const {
    if (now.thing.kind != core::PriceKind::Electricity) return;
    now.thing.watts = figureIn(watts_->text(), "Power", FormWords::tr("Power"), now.faults).value_or(0);
    now.thing.hoursADay = figureIn(hours_->text(), "Hours a day", FormWords::tr("Hours"), now.faults).value_or(0);
    const auto share = figureIn(share_->text(), "Share of the time", FormWords::tr("Runs"), now.faults);
    if (!share) return;
    now.thing.duty = *share / wholeShare;
    if (*share < 0 || *share > wholeShare)
        now.faults.push_back({"Share of the time", share_->text().toStdString(), "0 to 100",
                              FormWords::tr("Runs is %1; 0 to 100 of 100 of these hours is allowed.")
                                  .arg(share_->text().trimmed())
                                  .toStdString()});
}

void PriceFields::readDays(ThingRead<core::Price>& now) const {
    if (from_->date())
        now.thing.from = *from_->date();
    else
        now.faults.push_back({"From", from_->line()->text().toStdString(), {}, from_->fault().toStdString()});
    now.thing.until = until_->date();
    if (!until_->date() && !until_->line()->text().trimmed().isEmpty())
        now.faults.push_back({"Until", until_->line()->text().toStdString(), {}, until_->fault().toStdString()});
}

core::Refusals PriceFields::underFields(core::Refusals refusals) {
    for (core::Refusal& refusal : refusals) {
        if (refusal.field.starts_with("Lasts for ")) refusal.field = "Lasts";
        if (refusal.field == "For each") refusal.field = "A pack does for";
    }
    return refusals;
}

}  // namespace desktop
