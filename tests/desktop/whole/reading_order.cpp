// SPDX-License-Identifier: MIT
#include "tests/desktop/whole/reading_order.h"

#include <QAccessible>
#include <QApplication>
#include <QTest>
#include <algorithm>
#include <optional>

#include "tests/desktop/whole/shown_texts.h"

namespace whole {

namespace {

bool isLabelled(QAccessibleInterface* control) {
    const auto relations = control->relations(QAccessible::Label);
    return std::ranges::any_of(relations, [](const auto& relation) {
        return relation.first != nullptr && !relation.first->text(QAccessible::Name).trimmed().isEmpty();
    });
}

void collectNameless(QAccessibleInterface* here, QStringList& nameless) {
    if (here == nullptr || !here->isValid()) return;
    const QAccessible::State state = here->state();
    const auto* widget = qobject_cast<QWidget*>(here->object());
    if (widget != nullptr && !widget->isVisible()) return;
    // Who hands the focus on needs no name: the one who gets it does.
    const bool isControl =
        state.focusable && widget != nullptr && widget->focusPolicy() != Qt::NoFocus && widget->focusProxy() == nullptr;
    if (isControl && here->text(QAccessible::Name).trimmed().isEmpty() && !isLabelled(here))
        nameless << called(*widget);
    // The cells of tables and lists have names by their texts and are many.
    if (here->tableInterface() != nullptr) return;
    for (int child = 0; child < here->childCount(); ++child) collectNameless(here->child(child), nameless);
}

/// As the reader's eye meets it: where one reads from right to left, as in a mirror.
QRect placeIn(const QWidget& top, const QWidget* widget) {
    QRect place(widget->mapTo(&top, QPoint()), widget->size());
    if (QGuiApplication::isRightToLeft()) place.moveLeft(top.width() - 1 - place.right());
    return place;
}

bool takesTab(const QWidget* widget) {
    return (widget->focusPolicy() & Qt::TabFocus) != 0 && widget->isVisible() && widget->isEnabled() &&
           widget->focusProxy() == nullptr;
}

/// One button of a group of radio buttons takes Tab for all of them.
bool isSpokenFor(const QWidget* widget, const std::vector<Stop>& walk) {
    if (!widget->inherits("QRadioButton")) return false;
    return std::ranges::any_of(walk, [&](const Stop& stop) {
        return stop.widget->inherits("QRadioButton") && stop.widget->parentWidget() == widget->parentWidget();
    });
}

}  // namespace

QStringList namelessControls(QWidget& top) {
    QStringList nameless;
    collectNameless(QAccessible::queryAccessibleInterface(&top), nameless);
    return nameless;
}

std::vector<Stop> tabWalk(QWidget& top) {
    std::vector<Stop> walk;
    constexpr int mostSteps = 300;
    for (int step = 0; step < mostSteps; ++step) {
        QWidget* focus = QApplication::focusWidget();
        if (focus == nullptr || !top.isAncestorOf(focus)) break;
        // A text with links has a stop at each of them.
        const bool isWithin = !walk.empty() && walk.back().widget == focus;
        if (!isWithin && std::ranges::find(walk, focus, &Stop::widget) != walk.end()) {
            if (focus == walk.front().widget)
                walk.front() = {focus, placeIn(top, focus), placeIn(top, walk.back().widget)};
            break;
        }
        if (!isWithin)
            walk.push_back({focus, placeIn(top, focus), placeIn(top, walk.empty() ? focus : walk.back().widget)});
        QTest::keyClick(focus, Qt::Key_Tab);
        QApplication::processEvents();
    }
    return walk;
}

QString inOrder(const std::vector<Stop>& walk) {
    QStringList stops;
    for (const Stop& stop : walk) stops << called(*stop.widget);
    return stops.join(" > ");
}

QStringList unreached(QWidget& top, const std::vector<Stop>& walk) {
    QStringList missing;
    const QList<QWidget*> widgets = top.findChildren<QWidget*>();
    for (const QWidget* widget : widgets)
        if (widget->window() == top.window() && takesTab(widget) &&
            std::ranges::find(walk, widget, &Stop::widget) == walk.end() && !isSpokenFor(widget, walk))
            missing << called(*widget);
    return missing;
}

namespace {

QString text(const QRect& place) {
    return QStringLiteral("(%1, %2) to (%3, %4)")
        .arg(place.left())
        .arg(place.top())
        .arg(place.right())
        .arg(place.bottom());
}

/// How far up a step goes, when it goes against the eye: back within a row, or up within a column. Else nothing.
std::optional<int> wayBack(const QRect& from, const QRect& to) {
    const int leeway = std::min(from.height(), to.height()) / 2;
    const int down = to.center().y() - from.center().y();
    const bool goesBack = std::abs(down) < leeway && to.right() < from.left();
    const bool goesUp = down <= -leeway && to.bottom() < from.center().y() && to.left() < from.right();
    return goesBack || goesUp ? std::optional(std::max(0, -down)) : std::nullopt;
}

}  // namespace

QStringList stepsAgainstTheEye(const std::vector<Stop>& walk) {
    QStringList against;
    int furthest = -1;
    qsizetype wrapping = 0;
    for (std::size_t step = 0; step < walk.size(); ++step) {
        const QWidget& before = *walk[step == 0 ? walk.size() - 1 : step - 1].widget;
        const std::optional<int> up = wayBack(walk[step].placeBefore, walk[step].place);
        // Into what scrolls is no way up.
        if (!up || before.isAncestorOf(walk[step].widget)) continue;
        if (*up > furthest) wrapping = against.size();
        furthest = std::max(furthest, *up);
        against << QStringLiteral("%1 at %2 to %3 at %4")
                       .arg(called(before), text(walk[step].placeBefore), called(*walk[step].widget),
                            text(walk[step].place));
    }
    // A round has to begin anew once.
    if (!against.isEmpty()) against.removeAt(wrapping);
    return against;
}

}  // namespace whole
