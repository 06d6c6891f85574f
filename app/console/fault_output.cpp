// SPDX-License-Identifier: MIT
#include "app/console/fault_output.h"

#include "app/console/json_text.h"
#include "app/console/words.h"

namespace console {

namespace {

std::string placeOf(const db::ImportFault& fault) {
    std::string place = fault.file;
    if (fault.row > 0) place += filled(tr(", row %1"), {std::to_string(fault.row)});
    if (!fault.column.empty()) place += filled(tr(", column %1"), {fault.column});
    return place;
}

}  // namespace

void printFaults(const std::vector<db::ImportFault>& faults, std::int64_t more, bool isJson, std::ostream& out,
                 std::ostream& err) {
    if (isJson) {
        Json json = {{"imported", false}, {"faults", Json::array()}, {"more_faults", more != 0}};
        for (const db::ImportFault& fault : faults)
            json["faults"].push_back(
                {{"file", fault.file}, {"row", fault.row}, {"column", fault.column}, {"reason", fault.reason}});
        return print(json, out);
    }
    for (const db::ImportFault& fault : faults) err << placeOf(fault) << ": " << fault.reason << '\n';
    if (more < 0) err << tr("And more; these are the first.") << '\n';
    if (more > 0) err << filled(tr("And %1 more; these are the first."), {std::to_string(more)}) << '\n';
    err << tr("Nothing was imported.") << '\n';
}

}  // namespace console
