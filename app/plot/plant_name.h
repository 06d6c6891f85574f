// SPDX-License-Identifier: MIT
// How a plant's name is set (Cultivated Plant Code): botanical name in italics, cultivar upright in single quotes, ×
// and ranks upright.
#pragma once

#include <QString>
#include <vector>

namespace plot {

struct NamePart {
    QString text;
    bool isItalic{};

    bool operator==(const NamePart&) const = default;
};

/// Splits "Salvia rosmarinus 'Name'" as core::fullName() writes it; the parts joined give the name back. What doesn't read as a botanical
/// name, such as a trade name, is upright.
[[nodiscard]] std::vector<NamePart> partsOfPlantName(const QString& fullName);

}  // namespace plot
