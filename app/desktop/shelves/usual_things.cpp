// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/usual_things.h"

#include <QCoreApplication>

#include "app/desktop/shelves/money_words.h"
#include "core/records.h"

namespace desktop {

namespace {

struct UsualWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::UsualThings)
};

core::Price named(core::PriceKind kind, const QString& what, core::PriceBasis basis = core::PriceBasis::Batch) {
    core::Price price;
    price.kind = kind;
    price.what = what.toStdString();
    price.basis = basis;
    return price;
}

std::string ofWater() {
    return core::startingShelves().methods.front().name;
}
std::string ofTrays() {
    return core::startingShelves().methods.back().name;
}

void addLasting(std::vector<UsualThing>& things, const QString& money) {
    const QString group = UsualWords::tr("Things that last");
    const auto add = [&](const QString& what, const std::string& method) {
        things.push_back({.group = group,
                          .price = named(core::PriceKind::Lasting, what),
                          .unitOfAmount = money,
                          .unitOfFigure = UsualWords::tr("years"),
                          .between = UsualWords::tr("lasts"),
                          .method = method});
    };
    for (const QString& what :
         {UsualWords::tr("tub"), UsualWords::tr("air pump"), UsualWords::tr("air stone"), UsualWords::tr("collars")})
        add(what, ofWater());
    add(UsualWords::tr("dome"), ofTrays());
    add(UsualWords::tr("lamp"), {});
    add(UsualWords::tr("trays"), ofTrays());
}

void addUsedUp(std::vector<UsualThing>& things, const QString& money) {
    const QString group = UsualWords::tr("Used up");
    const QString pack = UsualWords::tr("%1 a pack", "EUR").arg(money);
    const auto add = [&](const QString& what, core::PriceBasis basis, const QString& unit,
                         const std::string& method = {}) {
        things.push_back({.group = group,
                          .price = named(core::PriceKind::UsedUp, what, basis),
                          .unitOfAmount = pack,
                          .unitOfFigure = unit,
                          .between = UsualWords::tr("does for"),
                          .method = method});
    };
    add(UsualWords::tr("medium"), core::PriceBasis::Cutting, UsualWords::tr("cuttings"), ofTrays());
    add(UsualWords::tr("hormone"), core::PriceBasis::Cutting, UsualWords::tr("cuttings"));
    add(UsualWords::tr("nutrient"), core::PriceBasis::Batch, UsualWords::tr("batches"));
    add(UsualWords::tr("labels"), core::PriceBasis::Batch, UsualWords::tr("batches"));
}

void addElectricity(std::vector<UsualThing>& things, const QString& money) {
    const QString group = UsualWords::tr("Electricity");
    const auto add = [&](const QString& what, const std::string& method) {
        things.push_back({.group = group,
                          .price = named(core::PriceKind::Electricity, what),
                          .unitOfFigure = UsualWords::tr("W", "watts"),
                          .secondUnit = UsualWords::tr("hours a day"),
                          .between = UsualWords::tr("for", "5 W, for 24 hours a day"),
                          .method = method});
    };
    add(UsualWords::tr("air pump"), ofWater());
    add(UsualWords::tr("lamp"), {});
    things.push_back({.group = group,
                      .price = named(core::PriceKind::Tariff, usualNameOf(core::PriceKind::Tariff)),
                      .unitOfAmount = UsualWords::tr("%1 a kWh", "EUR").arg(money)});
}

void addWork(std::vector<UsualThing>& things, const QString& money) {
    const QString group = UsualWords::tr("Your work");
    const auto add = [&](const QString& what, core::PriceBasis basis) {
        things.push_back({.group = group,
                          .price = named(core::PriceKind::WorkTime, what, basis),
                          .unitOfFigure = UsualWords::tr("minutes")});
    };
    add(UsualWords::tr("a session"), core::PriceBasis::Session);
    add(UsualWords::tr("a check of a batch"), core::PriceBasis::Check);
    add(UsualWords::tr("care of a station"), core::PriceBasis::Care);
    things.push_back({.group = group,
                      .price = named(core::PriceKind::HourOfWork, usualNameOf(core::PriceKind::HourOfWork)),
                      .unitOfAmount = UsualWords::tr("%1 an hour, 0 for none", "EUR").arg(money)});
}

}  // namespace

std::vector<UsualThing> usualThings(const std::string& currency) {
    const QString money = QString::fromStdString(currency);
    std::vector<UsualThing> things;
    addLasting(things, money);
    addUsedUp(things, money);
    addElectricity(things, money);
    addWork(things, money);
    return things;
}

}  // namespace desktop
