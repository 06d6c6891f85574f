// SPDX-License-Identifier: MIT
#include "app/desktop/losses/suspect_details.h"

#include <QCoreApplication>

#include "app/report/losses_words.h"

namespace desktop {

namespace {

struct SuspectWords {
    Q_DECLARE_TR_FUNCTIONS(SuspectDetails)
};

QString safe(const std::string& text) {
    return QString::fromStdString(text).toHtmlEscaped();
}

void addPart(QString& html, const QString& heading, const std::vector<std::string>& sentences) {
    QString items;
    for (const std::string& sentence : sentences)
        if (!sentence.empty()) items += QStringLiteral("<li>%1</li>").arg(safe(sentence));
    if (!items.isEmpty()) html += QStringLiteral("<h4>%1</h4><ul>%2</ul>").arg(heading.toHtmlEscaped(), items);
}

}  // namespace

QString suspectAsHtml(const core::Suspect& suspect) {
    QString html = QStringLiteral("<h3>%1</h3><p>%2</p><p>%3</p>")
                       .arg(safe(suspect.name), safe(suspect.oddsInWords), report::sharedText(suspect).toHtmlEscaped());
    addPart(html, SuspectWords::tr("For it"), suspect.speaksFor);
    addPart(html, SuspectWords::tr("Against it"), suspect.speaksAgainst);
    if (suspect.speaksAgainst.empty())
        html += QStringLiteral("<h4>%1</h4><p>%2</p>")
                    .arg(SuspectWords::tr("Against it").toHtmlEscaped(),
                         SuspectWords::tr("Nothing on record.").toHtmlEscaped());
    addPart(html, SuspectWords::tr("Always together with it, so the records can't tell them apart"),
            suspect.togetherWith);
    addPart(html, SuspectWords::tr("What to change next time"), {suspect.changeNextTime});
    if (suspect.trial) addPart(html, SuspectWords::tr("To find out: a trial"), {suspect.trial->inWords});
    addPart(html, SuspectWords::tr("Check instead"), {suspect.checkInstead});
    return html;
}

}  // namespace desktop
