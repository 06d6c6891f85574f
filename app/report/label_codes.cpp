// SPDX-License-Identifier: MIT
#include "app/report/label_codes.h"

#include <algorithm>
#include <cmath>

namespace report {
namespace {

constexpr double kMostOfWidth = 0.57;
constexpr double kLeastForText = 26;  // millimetres: a code of ours in ten points, and margins
constexpr int kMostSymbols = 6;       // more gain nothing that can be measured

struct Grid {
    int columns{};
    int rows{};

    [[nodiscard]] int count() const { return columns * rows; }
};

/// How many symbols stand beside each other in so many millimetres: neighbours share the light between them.
int fitting(double room, int side, double module) {
    constexpr double hair = 1e-6;
    return static_cast<int>(std::floor((room / module - quietModules + hair) / (side + quietModules)));
}

double extent(int symbols, int side, double module) {
    return (symbols * (side + quietModules) + quietModules) * module;
}

Grid gridOf(const QrCode& code, const QSizeF& label, double module) {
    if (code.side == 0) return {};
    const double room = std::min(kMostOfWidth * label.width(), label.width() - kLeastForText);
    Grid grid{.columns = std::max(0, fitting(room, code.side, module)),
              .rows = std::max(0, fitting(label.height(), code.side, module))};
    while (grid.count() > kMostSymbols) --(grid.columns > 1 ? grid.columns : grid.rows);
    return grid;
}

}  // namespace

LabelCodes codesOn(const QString& text, const QSizeF& label, double module) {
    LabelCodes codes{.code = qrCodeOf(text, 2), .module = module, .places = {}, .width = 0};
    Grid grid = gridOf(codes.code, label, module);
    if (grid.count() < 2) {
        QrCode smaller = qrCodeOf(text);
        const Grid ofSmaller = gridOf(smaller, label, module);
        if (ofSmaller.count() > grid.count()) {
            codes.code = std::move(smaller);
            grid = ofSmaller;
        }
    }
    if (grid.count() == 0) return codes;
    const int side = codes.code.side;
    const double top = (label.height() - extent(grid.rows, side, module)) / 2;
    const double pitch = (side + quietModules) * module;
    for (int row = 0; row < grid.rows; ++row)
        for (int column = 0; column < grid.columns; ++column)
            codes.places.emplace_back(quietModules * module + column * pitch,
                                      top + quietModules * module + row * pitch);
    codes.width = extent(grid.columns, side, module);
    return codes;
}

}  // namespace report
