// SPDX-License-Identifier: MIT
#include "core/medium/medium.h"

#include "core/units/figure_text.h"

namespace core {

std::string recipe(const Medium& medium) {
    std::string text;
    for (const MediumComponent& component : medium.components) {
        if (!text.empty()) text += " : ";
        text += component.name + " " + figureText(component.parts);
    }
    return text;
}

}  // namespace core
