// SPDX-License-Identifier: MIT
// Every question that the windows put to a person and that blocks them: files to pick, and the few things that can't be
// taken back. Passed in, so that tests answer from a list (tests/support/scripted_prompts.h) and fail on a question
// that nobody expected.
#pragma once

#include <QString>
#include <QStringList>

class QWidget;

namespace desktop {

struct Question {
    QString title;
    QString sentence;  // what will happen
    QString verb;      // on the button that does it; Cancel is the default
};

struct FileWish {
    QString title;
    QString place;   // the folder or file to begin with
    QString filter;  // "Logbooks (*.strikebook)"
    QString suffix;  // added to a name to save under that has none: "strikebook"
};

class Prompts {
  public:
    virtual ~Prompts() = default;
    Prompts() = default;
    Prompts(const Prompts&) = delete;
    Prompts& operator=(const Prompts&) = delete;

    [[nodiscard]] virtual bool confirm(QWidget* parent, const Question& question) = 0;
    // An empty text: the person changed their mind.
    [[nodiscard]] virtual QString pickFileToOpen(QWidget* parent, const FileWish& wish) = 0;
    /// One or more.
    [[nodiscard]] virtual QStringList pickFilesToOpen(QWidget* parent, const FileWish& wish) = 0;
    [[nodiscard]] virtual QString pickFileToSave(QWidget* parent, const FileWish& wish) = 0;
    [[nodiscard]] virtual QString pickFolder(QWidget* parent, const FileWish& wish) = 0;
    /// One line of text, e.g. the reason for closing a batch.
    [[nodiscard]] virtual QString askForText(QWidget* parent, const QString& title, const QString& label,
                                             const QString& before) = 0;
};

/// The real ones: message boxes and the system's file dialogs.
class DialogPrompts : public Prompts {
  public:
    [[nodiscard]] bool confirm(QWidget* parent, const Question& question) override;
    [[nodiscard]] QString pickFileToOpen(QWidget* parent, const FileWish& wish) override;
    [[nodiscard]] QStringList pickFilesToOpen(QWidget* parent, const FileWish& wish) override;
    [[nodiscard]] QString pickFileToSave(QWidget* parent, const FileWish& wish) override;
    [[nodiscard]] QString pickFolder(QWidget* parent, const FileWish& wish) override;
    [[nodiscard]] QString askForText(QWidget* parent, const QString& title, const QString& label,
                                     const QString& before) override;
};

}  // namespace desktop
