// SPDX-License-Identifier: MIT
// Where the manual's pictures go, and the patience that taking them needs: figures arrive from threads of their own. Tests go through the
// same scenes.
#pragma once

#include <QString>
#include <functional>

class QWidget;

namespace desktop {

class MainWindow;
class Page;
struct DialogScene;

class Album {
  public:
    /// What is done with each scene that stands; `dialog` is nullptr when it is the window itself. False when that went wrong.
    using Shutter = std::function<bool(const QString& name, QWidget* dialog)>;

    /// Pictures in a folder; `look` ends the files' names: "light", "dark", "large".
    Album(MainWindow& window, const QString& folder, const QString& look);
    /// The same scenes for anything else, such as a walk through each.
    Album(MainWindow& window, Shutter shutter);

    /// The window, with the dialog where a person would see it.
    void take(const QString& name, QWidget* dialog = nullptr);
    void takeScene(const DialogScene& scene);
    /// With a part of what scrolls on top.
    void takePart(QWidget& page, const char* scrollArea, const char* part, const QString& name);

    [[nodiscard]] MainWindow& window() { return window_; }
    /// The page by this object name where it is in front; else nullptr.
    [[nodiscard]] Page* front(const char* name);
    [[nodiscard]] bool isWhole() const { return isWhole_; }

  private:
    MainWindow& window_;
    Shutter shutter_;
    bool isWhole_{true};
};

}  // namespace desktop
