// SPDX-License-Identifier: MIT
// A note written where it is read: kept when one leaves it or with Ctrl+Enter; Esc gives back what was there. Tab leaves.
#pragma once

#include <QPlainTextEdit>
#include <functional>

#include "app/desktop/workspace.h"

namespace desktop {

class FaultLabel;

class NoteEdit : public QPlainTextEdit {
    Q_OBJECT

  public:
    using Keep = std::function<Outcome(const QString&)>;

    /// `fault` says why a note could not be kept; what was typed stays.
    NoteEdit(FaultLabel* fault, Keep keep, QWidget* parent = nullptr);

    /// What the logbook has. Text that is being typed is left alone unless it is of another `owner`.
    void setNote(const QString& note, std::int64_t owner);

  protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    void keep();

    FaultLabel* fault_;
    Keep keep_;
    QString kept_;
    std::int64_t owner_{};
};

}  // namespace desktop
