// SPDX-License-Identifier: MIT
#include "app/desktop/session/name_book.h"

#include <QRegularExpression>

#include "core/units/number_entry.h"

namespace desktop {

namespace {

QString key(const QString& name) {
    return name.simplified().toCaseFolded();
}
QString key(const std::string& name) {
    return key(QString::fromStdString(name));
}

template <class Thing>
const Thing* named(const std::vector<Thing>& things, const QString& typed) {
    const QString wanted = key(typed);
    for (const Thing& thing : things)
        if (key(thing.name) == wanted) return &thing;
    return nullptr;
}

template <class Thing>
QStringList namesOf(const std::vector<Thing>& things) {
    QStringList names;
    for (const Thing& thing : things)
        if (!thing.isRetired) names.append(QString::fromStdString(thing.name));
    return names;
}

template <class Thing>
void append(std::vector<Thing>& to, const std::vector<Thing>& more) {
    to.insert(to.end(), more.begin(), more.end());
}

}  // namespace

NameBook::NameBook(core::Shelves shelves, const core::Shelves& made) : shelves_(std::move(shelves)) {
    append(shelves_.plants, made.plants);
    append(shelves_.stockPlants, made.stockPlants);
    append(shelves_.methods, made.methods);
    append(shelves_.stations, made.stations);
    append(shelves_.media, made.media);
    append(shelves_.treatments, made.treatments);
    append(shelves_.cuttingKinds, made.cuttingKinds);
    append(shelves_.trials, made.trials);
}

const core::Plant* NameBook::plant(const QString& typed) const {
    const QString wanted = key(typed);
    for (const core::Plant& plant : shelves_.plants)
        if (key(core::fullName(plant)) == wanted) return &plant;
    const core::Plant* found = nullptr;
    for (const core::Plant& plant : shelves_.plants) {
        if (plant.commonName.empty() || key(plant.commonName) != wanted) continue;
        if (found != nullptr) return nullptr;
        found = &plant;
    }
    return found;
}

const core::StockPlant* NameBook::stockPlant(const QString& typed, core::PlantId of) const {
    const QString wanted = key(typed);
    for (const core::StockPlant& stock : shelves_.stockPlants)
        if (stock.plant == of && key(stock.label) == wanted) return &stock;
    return nullptr;
}

const core::CuttingKind* NameBook::cuttingKind(const QString& typed) const {
    return named(shelves_.cuttingKinds, typed);
}
const core::Treatment* NameBook::treatment(const QString& typed) const {
    return named(shelves_.treatments, typed);
}
const core::Station* NameBook::station(const QString& typed) const {
    return named(shelves_.stations, typed);
}
const core::Medium* NameBook::medium(const QString& typed) const {
    return named(shelves_.media, typed);
}
const core::Method* NameBook::method(const QString& typed) const {
    return named(shelves_.methods, typed);
}

QStringList NameBook::plants() const {
    QStringList names;
    for (const core::Plant& plant : shelves_.plants)
        if (!plant.isRetired) names.append(QString::fromStdString(core::fullName(plant)));
    names.sort(Qt::CaseInsensitive);
    return names;
}

QStringList NameBook::stockPlants(core::PlantId of) const {
    QStringList names;
    for (const core::StockPlant& stock : shelves_.stockPlants)
        if (stock.plant == of && !stock.isRetired) names.append(QString::fromStdString(stock.label));
    return names;
}

QStringList NameBook::cuttingKinds() const {
    return namesOf(shelves_.cuttingKinds);
}
QStringList NameBook::treatments() const {
    return namesOf(shelves_.treatments);
}
QStringList NameBook::stations() const {
    return namesOf(shelves_.stations);
}
QStringList NameBook::media() const {
    return namesOf(shelves_.media);
}
QStringList NameBook::methods() const {
    return namesOf(shelves_.methods);
}

core::Plant plantFromTyped(const QString& typed) {
    static const QRegularExpression withCultivar(QStringLiteral("^(.+?)\\s*['\u2018](.+)['\u2019]$"));
    const QString text = typed.simplified();
    core::Plant plant;
    const QRegularExpressionMatch match = withCultivar.match(text);
    plant.botanicalName = (match.hasMatch() ? match.captured(1) : text).toStdString();
    if (match.hasMatch()) plant.cultivar = match.captured(2).trimmed().toStdString();
    return plant;
}

std::vector<core::MediumComponent> componentsFromTyped(const QString& typed) {
    static const QRegularExpression part(QStringLiteral("^(\\S.*?)\\s+([0-9]+(?:[.,][0-9]+)?)$"));
    std::vector<core::MediumComponent> components;
    for (const QString& piece : typed.simplified().split(QLatin1Char(':'))) {
        const QRegularExpressionMatch match = part.match(piece.trimmed());
        if (!match.hasMatch()) return {};
        const auto parts = core::numberFrom(match.captured(2).toStdString());
        if (!parts || *parts <= 0) return {};
        components.push_back({.name = match.captured(1).toStdString(), .parts = *parts});
    }
    return components;
}

}  // namespace desktop
