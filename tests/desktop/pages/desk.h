// SPDX-License-Identifier: MIT
// A desk to test pages on: a workspace over a logbook in memory with the records that a test wants, on 30 June 2026, and prompts that answer
// from a list. Widgets are looked up by their object names, as a person would by what is written on them.
#pragma once

#include <QAbstractItemModelTester>
#include <QRegularExpression>
#include <QTest>
#include <QWidget>
#include <string>
#include <vector>

#include "app/desktop/page.h"
#include "app/desktop/workspace.h"
#include "gtest/gtest.h"
#include "tests/support/builders.h"
#include "tests/support/scripted_prompts.h"

void PrintTo(const QString& text, std::ostream* out);

namespace pages {

class Desk : public testing::Test {
  protected:
    Desk();
    ~Desk() override;

    /// The logbook gets these and forgets that it did: there is nothing to undo about it for a test.
    void fill(const core::Records& records);
    [[nodiscard]] desktop::PageContext context() { return {workspace_, prompts_}; }
    [[nodiscard]] db::Logbook& logbook() { return workspace_.logbook(); }
    [[nodiscard]] core::BatchRecord batch(const std::string& code);

    support::ScriptedPrompts prompts_;
    desktop::Workspace workspace_;
};

template <class Widget>
[[nodiscard]] Widget& named(const QWidget& within, const char* name) {
    auto* found = within.findChild<Widget*>(QString::fromLatin1(name));
    if (found == nullptr) throw std::logic_error(std::string("no widget named ") + name);
    return *found;
}

/// The dialog that was opened last in front of `within`.
template <class Dialog>
[[nodiscard]] Dialog* opened(const QWidget& within) {
    const QList<Dialog*> dialogs = within.findChildren<Dialog*>();
    return dialogs.isEmpty() ? nullptr : dialogs.back();
}

/// Puts a page on the screen as the main window would.
void show(QWidget& widget);
/// Types into whatever has the focus, as a person at a keyboard does.
void type(const QString& text);
void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
/// A number in braces that a page of the methods was not given. R has braces of its own.
[[nodiscard]] QRegularExpression aBrace();
/// Waits until `claim` holds, at most five seconds.
[[nodiscard]] bool comesTrue(const std::function<bool()>& claim);

/// Every rule of item models, each breach a test failure (qt_main.cpp turns warnings into them).
class Obeys {
  public:
    explicit Obeys(QAbstractItemModel* model)
        : tester_(model, QAbstractItemModelTester::FailureReportingMode::Warning) {}

  private:
    QAbstractItemModelTester tester_;
};

}  // namespace pages
