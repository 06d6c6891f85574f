// SPDX-License-Identifier: MIT
#include "tests/support/scripted_prompts.h"

#include "gtest/gtest.h"

namespace support {

ScriptedPrompts::~ScriptedPrompts() {
    for (const Answer& answer : answers_)
        ADD_FAILURE() << "Nobody asked for the answer “" << answer.text.toStdString() << "”.";
}

QString ScriptedPrompts::next(Kind kind, const QString& question) {
    asked_ << question;
    if (answers_.empty() || answers_.front().kind != kind) {
        ADD_FAILURE() << "Nobody expected the question “" << question.toStdString() << "”.";
        return {};
    }
    const QString text = answers_.front().text;
    answers_.pop_front();
    return text;
}

bool ScriptedPrompts::confirm(QWidget*, const desktop::Question& question) {
    return !next(Kind::Confirm, question.title + ": " + question.sentence).isEmpty();
}

QString ScriptedPrompts::pickFileToOpen(QWidget*, const desktop::FileWish& wish) {
    return next(Kind::Open, wish.title);
}

QStringList ScriptedPrompts::pickFilesToOpen(QWidget*, const desktop::FileWish& wish) {
    return next(Kind::OpenSeveral, wish.title).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
}

QString ScriptedPrompts::pickFileToSave(QWidget*, const desktop::FileWish& wish) {
    return next(Kind::Save, wish.title);
}

QString ScriptedPrompts::pickFolder(QWidget*, const desktop::FileWish& wish) {
    return next(Kind::Folder, wish.title);
}

QString ScriptedPrompts::askForText(QWidget*, const QString& title, const QString& label, const QString&) {
    return next(Kind::Text, title + ": " + label);
}

}  // namespace support
