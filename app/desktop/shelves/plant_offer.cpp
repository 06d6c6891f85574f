// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/plant_offer.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <cmath>

#include "app/plot/number_text.h"
#include "core/plants/plant_reference.h"

namespace desktop {

namespace {

struct OfferWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::PlantOffer)
};

class EnterFilter : public QObject {
  public:
    EnterFilter(QLineEdit& line, std::function<bool()> act) : QObject(&line), act_(std::move(act)) {
        line.installEventFilter(this);
    }

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::KeyPress) {
            const int key = static_cast<QKeyEvent*>(event)->key();
            if ((key == Qt::Key_Return || key == Qt::Key_Enter) && act_()) return true;
        }
        return QObject::eventFilter(watched, event);
    }

  private:
    std::function<bool()> act_;
};

}  // namespace

QString PlantOffer::words() const {
    const QString day = days ? OfferWords::tr("usually rooted by %1", "day 28").arg(plot::dayText(*days)) : QString();
    const QString both = commonName.isEmpty() ? day
                         : day.isEmpty()      ? commonName
                                              : OfferWords::tr("%1, %2", "common name, days").arg(commonName, day);
    return OfferWords::tr("Take from the reference table: %1").arg(both);
}

PlantOffer offerFor(const core::Plant& typed) {
    const core::PlantReference* reference = core::plantReferenceFor(typed.botanicalName, typed.cultivar);
    if (reference == nullptr) return {};
    PlantOffer offer;
    if (typed.commonName.empty()) offer.commonName = QString::fromUtf8(reference->commonName);
    if (!typed.usualRootingDaysHigh && reference->days.high)
        offer.days = static_cast<int>(std::ceil(*reference->days.high));
    return offer;
}

void onEnter(QLineEdit& line, std::function<bool()> act) {
    new EnterFilter(line, std::move(act));
}

}  // namespace desktop
