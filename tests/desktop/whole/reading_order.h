// SPDX-License-Identifier: MIT
// What a person who can't see the window, or can't use a mouse, depends on: names, reachability, order.
#pragma once

#include <QRect>
#include <QStringList>
#include <QWidget>
#include <vector>

namespace whole {

/// Everything in the accessible tree below `top` that can have the focus and has neither a name nor a label; each as "class objectName".
[[nodiscard]] QStringList namelessControls(QWidget& top);

/// A widget that Tab came to; where it stood then, and where the one before it stood then: what scrolls moves with the focus.
struct Stop {
    QWidget* widget{};
    QRect place;
    QRect placeBefore;
};

/// Where Tab goes from the widget that has the focus, until it comes back to one that it has visited.
[[nodiscard]] std::vector<Stop> tabWalk(QWidget& top);
/// For messages.
[[nodiscard]] QString inOrder(const std::vector<Stop>& walk);
/// Visible enabled widgets that take the focus by Tab and that the walk never comes to: it is trapped before, or leaves them out.
[[nodiscard]] QStringList unreached(QWidget& top, const std::vector<Stop>& walk);
/// Steps of the round that go against the eye: back within a row, or up within a column. One has to: where it begins anew.
[[nodiscard]] QStringList stepsAgainstTheEye(const std::vector<Stop>& walk);

}  // namespace whole
