// SPDX-License-Identifier: MIT
#include "tests/desktop/whole/reading_order.h"

#include <QAccessible>
#include <QApplication>
#include <QTest>
#include <algorithm>

namespace whole {

namespace {

QString called(const QWidget* widget) {
    return QStringLiteral("%1 \"%2\"").arg(widget->metaObject()->className(), widget->objectName());
}

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
    const bool isControl = state.focusable && widget != nullptr && widget->focusPolicy() != Qt::NoFocus;
    if (isControl && here->text(QAccessible::Name).trimmed().isEmpty() && !isLabelled(here)) nameless << called(widget);
    // The cells of tables and lists have names by their texts and are many.
    if (here->tableInterface() != nullptr) return;
    for (int child = 0; child < here->childCount(); ++child) collectNameless(here->child(child), nameless);
}

QRect placeIn(const QWidget& top, const QWidget* widget) {
    return {widget->mapTo(&top, QPoint()), widget->size()};
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
        if (focus == nullptr || !top.isAncestorOf(focus) || std::ranges::find(walk, focus, &Stop::widget) != walk.end())
            break;
        walk.push_back({focus, placeIn(top, focus), placeIn(top, walk.empty() ? focus : walk.back().widget)});
        QTest::keyClick(focus, Qt::Key_Tab);
        QApplication::processEvents();
    }
    return walk;
}

QStringList unreached(QWidget& top, const std::vector<Stop>& walk) {
    QStringList missing;
    const QList<QWidget*> widgets = top.findChildren<QWidget*>();
    for (const QWidget* widget : widgets)
        if (widget->window() == top.window() && takesTab(widget) &&
            std::ranges::find(walk, widget, &Stop::widget) == walk.end() && !isSpokenFor(widget, walk))
            missing << called(widget);
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

/// The step with which Tab begins anew after the last: a round has to go up once, and no step goes up further.
std::size_t stepOfWrapping(const std::vector<Stop>& walk) {
    std::size_t wrapping = 0;
    int furthest = 0;
    for (std::size_t step = 1; step < walk.size(); ++step) {
        const int up = walk[step].placeBefore.top() - walk[step].place.top();
        if (up > furthest) wrapping = step;
        furthest = std::max(furthest, up);
    }
    return wrapping;
}

}  // namespace

QStringList stepsAgainstTheEye(const std::vector<Stop>& walk) {
    QStringList against;
    const std::size_t wrapping = stepOfWrapping(walk);
    for (std::size_t step = 1; step < walk.size(); ++step) {
        const QRect from = walk[step].placeBefore, to = walk[step].place;
        const int leeway = std::min(from.height(), to.height()) / 2;
        const int down = to.center().y() - from.center().y();
        const bool goesBack = std::abs(down) < leeway && to.right() < from.left();
        const bool goesUp = down <= -leeway && to.bottom() < from.center().y() && to.left() < from.right();
        if (step != wrapping && (goesBack || goesUp))
            against << QStringLiteral("%1 at %2 to %3 at %4")
                           .arg(called(walk[step - 1].widget), text(from), called(walk[step].widget), text(to));
    }
    return against;
}

}  // namespace whole
