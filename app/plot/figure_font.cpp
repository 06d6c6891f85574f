// SPDX-License-Identifier: MIT
#include "app/plot/figure_font.h"

#include <QFontDatabase>
#include <QString>

// The macro must be called outside of any namespace; without it a static library's resources are left out by the linker.
static void loadFigureFontResource() {
    Q_INIT_RESOURCE(figure_fonts);
}

namespace plot {
namespace {

bool addBundledFonts() {
    loadFigureFontResource();
    const int regular = QFontDatabase::addApplicationFont(QStringLiteral(":/fonts/DejaVuSans.ttf"));
    const int bold = QFontDatabase::addApplicationFont(QStringLiteral(":/fonts/DejaVuSans-Bold.ttf"));
    return regular >= 0 && bold >= 0;
}

}  // namespace

QFont figureFont(double pointSize) {
    [[maybe_unused]] static const bool isAdded = addBundledFonts();
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPointSizeF(pointSize);
    return font;
}

}  // namespace plot
