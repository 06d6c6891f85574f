// SPDX-License-Identifier: MIT
#include "app/plot/plant_name.h"

#include "core/plants/botanical_name.h"

namespace plot {

std::vector<NamePart> partsOfPlantName(const QString& fullName) {
    const qsizetype cultivar = fullName.indexOf(QStringLiteral(" '"));
    const QString botanical = cultivar < 0 ? fullName : fullName.left(cultivar);
    const std::string text = botanical.toStdString();
    const auto name = core::botanicalNameFrom(text);
    std::vector<NamePart> parts;
    if (name && core::textOf(*name) == text)
        for (const core::NameStretch& stretch : core::stretchesOf(*name))
            parts.push_back({QString::fromStdString(stretch.text), stretch.isItalic});
    else if (!botanical.isEmpty())
        parts.push_back({botanical, false});  // a trade name, or half a name that is being typed
    if (cultivar < 0) return parts;
    const QString rest = fullName.mid(cultivar);
    if (!parts.empty() && !parts.back().isItalic)
        parts.back().text += rest;
    else
        parts.push_back({rest, false});
    return parts;
}

}  // namespace plot
