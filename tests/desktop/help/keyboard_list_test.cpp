// SPDX-License-Identifier: MIT
// The keyboard list against the windows, both ways: what they listen to is in the list, and what the list names does something.
#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QMenuBar>
#include <QShortcut>
#include <QTest>

#include "app/desktop/help/key_list.h"
#include "app/desktop/pictures/dialog_scene.h"
#include "tests/desktop/help/key_stages.h"
#include "tests/desktop/whole/scenes.h"

namespace {

struct Agreeing {
    whole::AgreeingPrompts agreeing;
};

class KeyboardList : private Agreeing, public whole::Window {
  protected:
    KeyboardList() : Window(&agreeing) { QApplication::setCursorFlashTime(0); }

    [[nodiscard]] std::vector<desktop::KeyLine> lines() const { return desktop::keyLines(*window_->menuBar()); }

    [[nodiscard]] bool isInAMenu(const desktop::KeyLine& line) const {
        const QList<QAction*> actions = window_->findChildren<QAction*>();
        return std::ranges::any_of(actions, [&](const QAction* action) {
            return !line.sequences.isEmpty() && action->shortcuts() == line.sequences;
        });
    }

    /// What the keys are tried on; several places have lines that need a stage of their own.
    [[nodiscard]] static QString stageOf(const desktop::KeyLine& line) {
        if (line.place == "Batches" && line.keys == "Esc") return "Batches, of one plant";
        if (line.place == "Shelves" && line.keys == "Shift+Ins") return "Shelves, prices";
        if (line.place == "A batch" && line.keys == "Ctrl+V") return "A batch, a picture copied";
        if (line.place == "Everywhere" && line.keys == "Esc") return "Filters above tables";
        return line.place;
    }

    /// The stage with the keyboard in it, or nullptr and a failure.
    QWidget* set(const QString& stage) {
        for (QWidget* popup = QApplication::activePopupWidget(); popup; popup = QApplication::activePopupWidget())
            popup->close();
        desktop::endScene(*window_);
        // Offscreen nobody hands the keyboard back to the window behind when a dialog closes.
        window_->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(window_.get()));
        QApplication::clipboard()->clear();
        whole::settle();
        const auto found = help::stages().find(stage);
        QWidget* widget = found == help::stages().end() ? nullptr : found->second(*window_);
        EXPECT_NE(widget, nullptr) << "no stage for " << stage.toStdString();
        return widget;
    }

    void expectEffect(const desktop::KeyLine& line, const std::function<void(QWidget*)>& act) {
        QWidget* widget = set(stageOf(line));
        if (widget == nullptr) return;
        const help::Sight before = help::settledSight();
        act(widget);
        EXPECT_TRUE(QTest::qWaitFor([&] { return help::settledSight() != before; }))
            << line.place.toStdString() << ": " << line.keys.toStdString() << " does nothing";
    }
};

TEST_F(KeyboardList, NamesEveryKeyThatAWindowListensTo) {
    QSet<QString> listed;
    for (const desktop::KeyLine& line : lines())
        for (const QKeySequence& sequence : line.sequences) listed << sequence.toString();
    const auto expectListed = [&](const QList<QKeySequence>& keys, const QObject* where, const QString& scene) {
        for (const QKeySequence& key : keys)
            EXPECT_TRUE(key.isEmpty() || listed.contains(key.toString()))
                << key.toString().toStdString() << " of " << where->metaObject()->className() << " "
                << where->objectName().toStdString() << " in " << scene.toStdString();
    };
    const auto look = [&](const QString& scene, const QWidget& top) {
        for (const QShortcut* shortcut : top.findChildren<QShortcut*>())
            expectListed(shortcut->keys(), shortcut, scene);
        for (const QAction* action : top.findChildren<QAction*>()) expectListed(action->shortcuts(), action, scene);
        for (const QAbstractButton* button : top.findChildren<QAbstractButton*>())
            if (button->shortcut() != QKeySequence::mnemonic(button->text()))
                expectListed({button->shortcut()}, button, scene);
    };
    whole::visitPages(*window_, look);
    whole::visitDialogs(*window_, look);
}

TEST_F(KeyboardList, NamesNoKeyThatDoesNothing) {
    for (const desktop::KeyLine& line : lines()) {
        if (isInAMenu(line)) continue;
        for (const QKeySequence& sequence : line.sequences) {
            desktop::KeyLine one = line;
            one.keys = sequence.toString();
            expectEffect(one, [&](QWidget* widget) { QTest::keySequence(widget, sequence); });
        }
    }
}

TEST_F(KeyboardList, NamesNothingToTypeThatDoesNothing) {
    // What stands in words there is tried with an example.
    const std::map<QString, QStringList> examples{{"letters, digits", {"s"}},
                                                  {"letter of a cause", {"d"}},
                                                  {"14   14.3   -3   t", {"14", "14.3", "-3", "t"}},
                                                  {"-2   -2r", {"-2", "-2r"}},
                                                  {"R   L   W   U", {"r", "l", "w", "u"}}};
    for (const desktop::KeyLine& line : lines()) {
        if (!line.sequences.isEmpty() || line.keys.startsWith("Alt ")) continue;
        const auto found = examples.find(line.keys);
        for (const QString& text : found == examples.end() ? QStringList{line.keys} : found->second)
            expectEffect(line, [&](QWidget* widget) {
                if (auto* field = qobject_cast<QLineEdit*>(widget)) field->clear();
                QTest::keyClicks(widget, text);
            });
    }
}

TEST_F(KeyboardList, HasEveryMenuWithItsKeysAndEveryPlaceOnce) {
    QStringList places;
    for (const desktop::KeyLine& line : lines())
        if (places.isEmpty() || places.back() != line.place) places << line.place;
    EXPECT_EQ(QSet<QString>(places.begin(), places.end()).size(), places.size()) << places.join(", ").toStdString();
    for (const char* menu : {"File", "Record", "Edit", "View", "Help"}) EXPECT_TRUE(places.contains(menu)) << menu;
}

}  // namespace
