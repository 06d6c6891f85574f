// SPDX-License-Identifier: MIT
#include "app/desktop/session/offer_edit.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QKeyEvent>
#include <QSignalBlocker>

namespace desktop {

namespace {

/// How well an offer answers to what was typed; 0 when no word of it begins so.
int fitOf(const QString& offer, const QString& typed) {
    if (offer.compare(typed, Qt::CaseInsensitive) == 0) return 3;
    if (offer.startsWith(typed, Qt::CaseInsensitive)) return 2;
    for (qsizetype at = offer.indexOf(typed, 1, Qt::CaseInsensitive); at > 0;
         at = offer.indexOf(typed, at + 1, Qt::CaseInsensitive))
        if (!offer[at - 1].isLetterOrNumber()) return 1;
    return 0;
}

}  // namespace

int bestOffer(const QStringList& offers, const QString& typed) {
    int best = -1, fit = 0;
    if (typed.isEmpty()) return best;
    for (int offer = 0; offer < offers.size(); ++offer) {
        const int own = fitOf(offers[offer], typed);
        if (own > fit) best = offer, fit = own;
    }
    return best;
}

OfferEdit::OfferEdit(const QStringList& offers, QWidget* parent) : QLineEdit(parent) {
    auto* names = new QCompleter(offers, this);
    names->setCaseSensitivity(Qt::CaseInsensitive);
    names->setFilterMode(Qt::MatchContains);
    names->setMaxVisibleItems(10);
    setCompleter(names);
}

void OfferEdit::keyPressEvent(QKeyEvent* event) {
    QLineEdit::keyPressEvent(event);
    if (!event->text().isEmpty() && completer()->popup()->isVisible()) markOffer();
}

void OfferEdit::markOffer() {
    const QAbstractItemModel& shown = *completer()->completionModel();
    QStringList offers;
    for (int row = 0; row < shown.rowCount(); ++row) offers.append(shown.index(row, 0).data().toString());
    const int best = bestOffer(offers, text().simplified());
    QAbstractItemView& list = *completer()->popup();
    // Told of the mark, the completer would write the name into the field, and the next letter would come after it.
    const QSignalBlocker quiet(list.selectionModel());
    list.setCurrentIndex(best < 0 ? QModelIndex() : shown.index(best, 0));
    list.viewport()->update();
}

}  // namespace desktop
