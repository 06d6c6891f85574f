// SPDX-License-Identifier: MIT
#include "app/desktop/round/round_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "app/plot/number_text.h"

namespace desktop {

namespace {

struct RoundWords {
    Q_DECLARE_TR_FUNCTIONS(RoundWords)
};

QString rootedText(int before, int isNew, core::PlainNumber plain) {
    const QString all = plot::countText(before + isNew), added = plot::countText(isNew);
    if (before == 0) return RoundWords::tr("%1 rooted").arg(all);
    if (plain == core::PlainNumber::New) return RoundWords::tr("%1 newly rooted (%2 in all)").arg(added, all);
    return isNew > 0 ? RoundWords::tr("%1 rooted (+%2)").arg(all, added) : RoundWords::tr("%1 rooted").arg(all);
}

QString lossText(const core::Loss& loss, std::span<const core::LossCause> causes) {
    const QString count = plot::countText(loss.count);
    const auto cause = std::ranges::find(causes, loss.cause, &core::LossCause::id);
    return cause == causes.end() || !loss.cause.isSet()
               ? RoundWords::tr("%1 lost").arg(count)
               : RoundWords::tr("%1 lost (%2)").arg(count, QString::fromStdString(cause->name));
}

}  // namespace

QString meaningText(const core::CheckEntry& entry, const core::Tally& before, std::span<const core::LossCause> causes,
                    core::PlainNumber plain) {
    QStringList parts{rootedText(before.rooted, entry.rooted, plain)};
    for (const core::Loss& loss : entry.losses) parts << lossText(loss, causes);
    if (entry.withdrawn > 0) parts << RoundWords::tr("%1 withdrawn").arg(plot::countText(entry.withdrawn));
    const QString left = plot::countText(before.undecided() - entry.rooted - entry.lost() - entry.withdrawn);
    parts << (entry.closesBatch ? RoundWords::tr("%1 undecided, closed").arg(left)
                                : RoundWords::tr("%1 undecided").arg(left));
    if (!entry.note.empty()) parts << RoundWords::tr("“%1”").arg(QString::fromStdString(entry.note));
    return parts.join(RoundWords::tr(", ", "between the parts of what an entry means"));
}

QString countCell(int before, int isNew, core::PlainNumber plain) {
    const QString all = plot::countText(before + isNew), added = plot::countText(isNew);
    if (plain == core::PlainNumber::New)
        return isNew > 0 ? RoundWords::tr("+%1 (%2)", "new count, in all").arg(added, all)
                         : RoundWords::tr("(%1)", "in all, nothing new").arg(all);
    return isNew > 0 ? RoundWords::tr("%1 (+%2)", "in all, new count").arg(all, added) : all;
}

}  // namespace desktop
