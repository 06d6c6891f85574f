// SPDX-License-Identifier: MIT
#include "tests/desktop/pages/desk.h"

#include <QApplication>
#include <ostream>

#include "db/actions/records_actions.h"

void PrintTo(const QString& text, std::ostream* out) {
    *out << '"' << text.toStdString() << '"';
}

namespace pages {

namespace {

using namespace std::chrono_literals;

db::Clock noonOfToday() {
    return [] { return std::chrono::sys_seconds{std::chrono::sys_days{support::today()} + 12h}; };
}

QtMessageHandler strictly = nullptr;

/// The offscreen platform stacks no windows and grabs no keyboard, and says so whenever a list of offers pops up.
void passOver(QtMsgType kind, const QMessageLogContext& place, const QString& text) {
    if (!text.startsWith(QStringLiteral("This plugin does not support"))) strictly(kind, place, text);
}

}  // namespace

Desk::Desk() : workspace_(noonOfToday(), "Tester") {
    strictly = qInstallMessageHandler(passOver);
    fill(support::recordsOf({}));
}

Desk::~Desk() {
    qInstallMessageHandler(strictly);
}

void Desk::fill(const core::Records& records) {
    db::Logbook logbook = db::Logbook::inMemory(records.shelves.facts, {.clock = noonOfToday(), .author = "Tester"});
    const auto done = db::addRecords(logbook, records, "records of a test", true);
    EXPECT_TRUE(done) << (done ? "" : done.error().front().sentence);
    workspace_.use(std::move(logbook));
}

core::BatchRecord Desk::batch(const std::string& code) {
    return logbook().batch(logbook().batchWithCode(code)).value_or(core::BatchRecord{});
}

void show(QWidget& widget) {
    widget.resize(1110, 720);
    widget.show();
    QApplication::setActiveWindow(&widget);
    EXPECT_TRUE(QTest::qWaitForWindowActive(&widget));
}

void type(const QString& text) {
    // The first letter may open an editor, which takes the focus: each goes to whoever has it then.
    for (const QChar letter : text) {
        QWidget* focus = QApplication::focusWidget();
        ASSERT_NE(focus, nullptr);
        QTest::keyClick(focus, letter.toLatin1());
    }
}

void press(Qt::Key key, Qt::KeyboardModifiers with) {
    QWidget* focus = QApplication::focusWidget();
    ASSERT_NE(focus, nullptr);
    QTest::keyClick(focus, key, with);
    QCoreApplication::processEvents();  // an editor hands over its text after the key was dealt with
}

QRegularExpression aBrace() {
    return QRegularExpression(QStringLiteral("\\{[a-z][a-z0-9_]*\\}"));
}

bool comesTrue(const std::function<bool()>& claim) {
    return QTest::qWaitFor(claim, 5000);
}

}  // namespace pages
