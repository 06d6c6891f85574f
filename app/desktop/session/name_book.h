// SPDX-License-Identifier: MIT
// Finds the thing that a person means by the name they typed, among what the logbook has and what was made on the spot. Upper and lower
// case and doubled blanks make no difference; a plant also answers to its common name when only one plant has it.
#pragma once

#include <QString>
#include <QStringList>

#include "core/records.h"

namespace desktop {

class NameBook {
  public:
    explicit NameBook(core::Shelves shelves) : shelves_(std::move(shelves)) {}
    /// The same with what was made since.
    NameBook(core::Shelves shelves, const core::Shelves& made);

    [[nodiscard]] const core::Plant* plant(const QString& typed) const;
    [[nodiscard]] const core::StockPlant* stockPlant(const QString& typed, core::PlantId of) const;
    [[nodiscard]] const core::CuttingKind* cuttingKind(const QString& typed) const;
    [[nodiscard]] const core::Treatment* treatment(const QString& typed) const;
    [[nodiscard]] const core::Station* station(const QString& typed) const;
    [[nodiscard]] const core::Medium* medium(const QString& typed) const;
    [[nodiscard]] const core::Method* method(const QString& typed) const;

    /// Names to offer, without those retired, by name.
    [[nodiscard]] QStringList plants() const;
    [[nodiscard]] QStringList stockPlants(core::PlantId of) const;
    [[nodiscard]] QStringList cuttingKinds() const;
    [[nodiscard]] QStringList treatments() const;
    [[nodiscard]] QStringList stations() const;
    [[nodiscard]] QStringList media() const;
    [[nodiscard]] QStringList methods() const;

    [[nodiscard]] const core::Shelves& shelves() const { return shelves_; }

  private:
    core::Shelves shelves_;
};

/// "Salvia rosmarinus 'Tall Blue'" in its parts; the common name stays empty. An ASCII apostrophe or a typographic one ends the cultivar.
[[nodiscard]] core::Plant plantFromTyped(const QString& typed);
/// "coir 3 : perlite 2" in its parts; nothing where a part has no figure.
[[nodiscard]] std::vector<core::MediumComponent> componentsFromTyped(const QString& typed);

}  // namespace desktop
