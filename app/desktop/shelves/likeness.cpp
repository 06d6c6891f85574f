// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/likeness.h"

#include <algorithm>
#include <numeric>
#include <vector>

#include "app/desktop/find/search_text.h"

namespace desktop {

int lettersApart(const QString& one, const QString& other) {
    const QString down = searchText(one);
    const QString across = searchText(other);
    std::vector<int> row(static_cast<std::size_t>(across.size()) + 1);
    std::iota(row.begin(), row.end(), 0);
    for (qsizetype line = 0; line < down.size(); ++line) {
        int diagonal = row[0];
        row[0] = static_cast<int>(line) + 1;
        for (qsizetype column = 0; column < across.size(); ++column) {
            int& here = row[static_cast<std::size_t>(column) + 1];
            const int changed = diagonal + (down[line] == across[column] ? 0 : 1);
            diagonal = here;
            here = std::min({changed, here + 1, row[static_cast<std::size_t>(column)] + 1});
        }
    }
    return row.back();
}

}  // namespace desktop
