// SPDX-License-Identifier: MIT
// Answers the windows' questions from a list, in order; a question that nobody expected fails the test and is answered
// by "changed my mind".
#pragma once

#include <QStringList>
#include <deque>

#include "app/desktop/prompts.h"

namespace support {

class ScriptedPrompts : public desktop::Prompts {
  public:
    ~ScriptedPrompts() override;  // fails on answers that nobody asked for

    void willConfirm(bool yes) { answers_.push_back({Kind::Confirm, yes ? QStringLiteral("yes") : QString()}); }
    void willPickFileToOpen(const QString& file) { answers_.push_back({Kind::Open, file}); }
    void willPickFilesToOpen(const QStringList& files) {
        answers_.push_back({Kind::OpenSeveral, files.join(QLatin1Char('\n'))});
    }
    void willPickFileToSave(const QString& file) { answers_.push_back({Kind::Save, file}); }
    void willPickFolder(const QString& folder) { answers_.push_back({Kind::Folder, folder}); }
    void willEnterText(const QString& text) { answers_.push_back({Kind::Text, text}); }
    [[nodiscard]] const QStringList& asked() const { return asked_; }  // titles and sentences, in order

    [[nodiscard]] bool confirm(QWidget* parent, const desktop::Question& question) override;
    [[nodiscard]] QString pickFileToOpen(QWidget* parent, const desktop::FileWish& wish) override;
    [[nodiscard]] QStringList pickFilesToOpen(QWidget* parent, const desktop::FileWish& wish) override;
    [[nodiscard]] QString pickFileToSave(QWidget* parent, const desktop::FileWish& wish) override;
    [[nodiscard]] QString pickFolder(QWidget* parent, const desktop::FileWish& wish) override;
    [[nodiscard]] QString askForText(QWidget* parent, const QString& title, const QString& label,
                                     const QString& before) override;

  private:
    enum class Kind { Confirm, Open, OpenSeveral, Save, Folder, Text };
    struct Answer {
        Kind kind;
        QString text;
    };
    QString next(Kind kind, const QString& question);

    std::deque<Answer> answers_;
    QStringList asked_;
};

}  // namespace support
