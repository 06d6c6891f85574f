// SPDX-License-Identifier: MIT
// The real window with every page and task of the registry, over an invented season in memory, as a person has it before them.
#pragma once

#include <QTemporaryDir>
#include <memory>

#include "app/desktop/look/appearance.h"
#include "app/desktop/main_window.h"
#include "app/desktop/memory.h"
#include "app/desktop/workspace.h"
#include "gtest/gtest.h"
#include "tests/support/scripted_prompts.h"

namespace whole {

class Window : public testing::Test {
  protected:
    /// `prompts`: who answers instead of a list.
    explicit Window(desktop::Prompts* prompts = nullptr);
    ~Window() override;

    /// Brings a page to the front and lets what it asked for arrive.
    void front(int page);
    [[nodiscard]] int pageCount() const { return static_cast<int>(window_->parts().pages.size()); }

    QTemporaryDir folder_;
    support::ScriptedPrompts prompts_;
    desktop::Memory memory_;
    desktop::SystemTheme system_;
    desktop::Appearance appearance_;
    desktop::Workspace workspace_;
    std::unique_ptr<desktop::MainWindow> window_;
};

void settle();

}  // namespace whole
