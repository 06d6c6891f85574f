// SPDX-License-Identifier: MIT
// A main window as a person has it before them, on files of its own, on a day of its own: 30 March 2026, 10:42 UTC.
#pragma once

#include <QTemporaryDir>
#include <memory>
#include <ostream>
#include <vector>

#include "app/desktop/look/appearance.h"
#include "app/desktop/main_window.h"
#include "app/desktop/memory.h"
#include "app/desktop/widgets/message_bar.h"
#include "app/desktop/workspace.h"
#include "core/records.h"
#include "gtest/gtest.h"
#include "tests/support/scripted_prompts.h"

/// So that a failure shows the text; found by argument-dependent lookup.
inline void PrintTo(const QString& text, std::ostream* out) {
    *out << '"' << text.toStdString() << '"';
}

namespace support {

class Desk : public testing::Test {
  protected:
    Desk();
    ~Desk() override;

    [[nodiscard]] static core::Date today();
    [[nodiscard]] QString path(const QString& name) const { return folder_.filePath(name); }
    /// A logbook file with these batches in it; its whole path.
    QString fileWith(const QString& name, std::vector<core::BatchRecord> batches) const;
    /// `count` batches of 24 cuttings that want their first look today.
    [[nodiscard]] static std::vector<core::BatchRecord> dueBatches(int count);

    /// Unless a test says otherwise the bench and the history, without pages that have tests of their own.
    [[nodiscard]] virtual std::vector<desktop::PageEntry> pages() const;
    /// With pages() and the round. Made on first use.
    desktop::MainWindow& window();
    /// As if the program had ended and started again.
    void startAgain();
    void show();

    template <class Widget = QWidget>
    [[nodiscard]] Widget* find(const char* name) {
        auto* found = window().findChild<Widget*>(name);
        EXPECT_TRUE(found) << name << " is not there";
        return found;
    }
    QAction* action(const char* name) { return find<QAction>(name); }

    /// Opens season.strikebook with these batches in it.
    void open(std::vector<core::BatchRecord> batches = dueBatches(3));
    /// Some edit, to be taken back.
    desktop::Outcome renameGrower(const std::string& grower);
    [[nodiscard]] std::string grower() { return workspace_->shelves().facts.grower; }
    [[nodiscard]] static std::string growerOnFile();  // as fileWith() wrote it
    [[nodiscard]] QString barText() { return window().bar().sentence(); }

    QString file_;
    QTemporaryDir folder_;
    ScriptedPrompts prompts_;
    std::unique_ptr<desktop::Memory> memory_;
    std::unique_ptr<desktop::SystemTheme> system_;
    std::unique_ptr<desktop::Appearance> appearance_;
    std::unique_ptr<desktop::Workspace> workspace_;
    std::unique_ptr<desktop::MainWindow> window_;
};

/// Lets everything queued happen.
void settle();

}  // namespace support
