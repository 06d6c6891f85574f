// SPDX-License-Identifier: MIT
#include "app/plot/plant_name.h"

#include <QStringList>

namespace plot {
namespace {

bool isUprightWord(const QString& word) {
    static const QStringList upright{QStringLiteral("×"),    QStringLiteral("x"),    QStringLiteral("subsp."),
                                     QStringLiteral("var."), QStringLiteral("ssp."), QStringLiteral("f."),
                                     QStringLiteral("cv."),  QStringLiteral("sp."),  QStringLiteral("spp.")};
    return upright.contains(word);
}

void append(std::vector<NamePart>& parts, const QString& text, bool isItalic) {
    if (text.isEmpty()) return;
    if (!parts.empty() && parts.back().isItalic == isItalic)
        parts.back().text += text;
    else
        parts.push_back({text, isItalic});
}

}  // namespace

std::vector<NamePart> partsOfPlantName(const QString& fullName) {
    const qsizetype cultivar = fullName.indexOf(QStringLiteral(" '"));
    const QString botanical = cultivar < 0 ? fullName : fullName.left(cultivar);
    std::vector<NamePart> parts;
    const QStringList words = botanical.split(u' ');
    for (qsizetype i = 0; i < words.size(); ++i) {
        // The blank goes with the word before it, so that the parts joined give the name back.
        const QString blank = i + 1 < words.size() ? QStringLiteral(" ") : QString();
        append(parts, words[i] + blank, !isUprightWord(words[i]));
    }
    if (cultivar >= 0) append(parts, fullName.mid(cultivar), false);
    return parts;
}

}  // namespace plot
