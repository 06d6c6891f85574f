// SPDX-License-Identifier: MIT
// Where each line of the keyboard list is tried: the page or dialog brought to where its keys mean something.
#pragma once

#include <QImage>
#include <QString>
#include <QStringList>
#include <QWidget>
#include <functional>
#include <map>

#include "app/desktop/main_window.h"

namespace help {

/// Brings the place to the front and returns what then has the keyboard; nullptr when it could not.
using Stage = std::function<QWidget*(desktop::MainWindow& window)>;

/// By the place's name in the list.
[[nodiscard]] const std::map<QString, Stage>& stages();

/// All that a person notices: what is on the screen, where the keyboard is, what was copied.
struct Sight {
    QWidget* focus{};
    QStringList windows;
    QList<QImage> pictures;
    QString copied;

    bool operator==(const Sight&) const = default;
};

/// Once nothing moves any more.
[[nodiscard]] Sight settledSight();

}  // namespace help
