// SPDX-License-Identifier: MIT
#include "app/report/page_layout.h"

#include <cstddef>

namespace report {
namespace {

// Pieces from `first` on that must stand on one page.
std::size_t endOfGroup(const std::vector<Piece>& pieces, std::size_t first) {
    std::size_t last = first;
    while (last + 1 < pieces.size() && pieces[last].staysWithNext) ++last;
    return last + 1;
}

double heightOf(const std::vector<Piece>& pieces, std::size_t first, std::size_t end) {
    double height = 0;
    for (std::size_t i = first; i < end; ++i) height += pieces[i].height;
    return height;
}

}  // namespace

std::vector<Page> pagesOf(const std::vector<Piece>& pieces, double firstHeight, double height) {
    std::vector<Page> pages(1);
    double top = 0, room = firstHeight;
    for (std::size_t first = 0; first < pieces.size();) {
        const std::size_t end = endOfGroup(pieces, first);
        if (top + heightOf(pieces, first, end) > room && !pages.back().empty()) {
            pages.emplace_back();
            top = 0, room = height;
            if (const Piece* heading = pieces[first].repeated.get()) {
                pages.back().push_back({heading, top});
                top += heading->height;
            }
        }
        for (std::size_t i = first; i < end; ++i) {
            pages.back().push_back({&pieces[i], top});
            top += pieces[i].height;
        }
        first = end;
    }
    return pages;
}

const std::vector<Squeeze>& squeezes() {
    static const std::vector<Squeeze> all{{.pointSize = 9,
                                           .pictureScale = 1,
                                           .mostRows = 1 << 20,
                                           .mostLines = 12,
                                           .mostCellLines = 3,
                                           .leavesPicturesOut = false},
                                          {.pointSize = 9,
                                           .pictureScale = 0.9,
                                           .mostRows = 16,
                                           .mostLines = 6,
                                           .mostCellLines = 2,
                                           .leavesPicturesOut = false},
                                          {.pointSize = 9,
                                           .pictureScale = 0.85,
                                           .mostRows = 12,
                                           .mostLines = 4,
                                           .mostCellLines = 1,
                                           .leavesPicturesOut = false},
                                          {.pointSize = 8.5,
                                           .pictureScale = 0.8,
                                           .mostRows = 10,
                                           .mostLines = 4,
                                           .mostCellLines = 1,
                                           .leavesPicturesOut = false},
                                          {.pointSize = 8,
                                           .pictureScale = 0.75,
                                           .mostRows = 8,
                                           .mostLines = 3,
                                           .mostCellLines = 1,
                                           .leavesPicturesOut = true},
                                          {.pointSize = 7.5,
                                           .pictureScale = 0.7,
                                           .mostRows = 6,
                                           .mostLines = 3,
                                           .mostCellLines = 1,
                                           .leavesPicturesOut = true},
                                          {.pointSize = 7,
                                           .pictureScale = 0.6,
                                           .mostRows = 4,
                                           .mostLines = 2,
                                           .mostCellLines = 1,
                                           .leavesPicturesOut = true},
                                          {.pointSize = 7,
                                           .pictureScale = 0.45,
                                           .mostRows = 4,
                                           .mostLines = 2,
                                           .mostCellLines = 1,
                                           .leavesPicturesOut = true}};
    return all;
}

}  // namespace report
