// SPDX-License-Identifier: MIT
// Takes the pictures that the manual shows: each page and dialog at 1280 x 800, light, dark and with text at 150 %, from a real logbook. What
// `strikebook --pictures FOLDER LOGBOOK` runs.
#pragma once

#include <QString>

namespace desktop {

class Appearance;
class MainWindow;

/// Writes NAME_light.png, NAME_dark.png and NAME_large.png for each; false when one could not be written. The window has an open logbook.
bool takePictures(MainWindow& window, Appearance& appearance, const QString& folder);

}  // namespace desktop
