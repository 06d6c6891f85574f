// SPDX-License-Identifier: MIT
#include "core/records.h"

namespace core {

Shelves startingShelves() {
    Shelves shelves;
    for (const char* name : {"aerated water", "media tray"}) shelves.methods.push_back({.name = name});
    // The trade's own kinds; common practice, no source.
    for (const char* name :
         {"stem tip", "nodal", "softwood", "semi-ripe", "hardwood", "heel", "basal", "leaf bud", "leaf", "root"})
        shelves.cuttingKinds.push_back({.name = name});
    shelves.lossCauses = {{.name = "rotted", .key = 'r'},
                          {.name = "dried out", .key = 'd'},
                          {.name = "pests", .key = 'p'},
                          {.name = "broken", .key = 'b'},
                          {.name = "other", .key = 'o'}};
    return shelves;
}

}  // namespace core
