// SPDX-License-Identifier: MIT
#include "app/desktop/settings/number_format.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <set>

#include "app/plot/number_text.h"

namespace desktop {

namespace {

struct FormatWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::NumberFormat)
};

}  // namespace

void wearNumberFormat(const QString& localeName) {
    QLocale::setDefault(localeName.isEmpty() ? QLocale::system() : QLocale(localeName));
}

std::vector<NumberFormat> numberFormats() {
    std::vector<NumberFormat> formats;
    std::set<QString> seen;
    for (const QLocale& locale :
         QLocale::matchingLocales(QLocale::AnyLanguage, QLocale::AnyScript, QLocale::AnyTerritory)) {
        if (locale.language() == QLocale::C || locale.territory() == QLocale::AnyTerritory) continue;
        const QString title =
            FormatWords::tr("%1 (%2)", "language, country")
                .arg(QLocale::languageToString(locale.language()), QLocale::territoryToString(locale.territory()));
        // Scripts of one language in one country differ in letters, which the texts here don't take from the locale.
        if (seen.insert(title).second) formats.push_back({locale.name(), title});
    }
    std::ranges::sort(formats, {}, &NumberFormat::title);
    return formats;
}

QString numberFormatExample() {
    const core::Date day{std::chrono::year{2026}, std::chrono::month{3}, std::chrono::day{14}};
    return FormatWords::tr("%1, %2, %3, %4", "a date, the same short, a number, a percentage")
        .arg(plot::dateText(day), plot::shortDateText(day), plot::decimalText(1234.5, 1), plot::percentText(18, 24));
}

}  // namespace desktop
