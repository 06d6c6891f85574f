// SPDX-License-Identifier: MIT
#include "app/console/json_text.h"

#include <cmath>

namespace console {

Json figure(double value) {
    if (std::isnan(value)) return {};
    if (std::isinf(value)) return value > 0 ? "Infinity" : "-Infinity";
    return value;
}

Json figure(const std::optional<double>& value) {
    return value ? figure(*value) : Json();
}

void print(const Json& json, std::ostream& out) {
    out << json.dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
}

}  // namespace console
