// SPDX-License-Identifier: MIT
// Bad input is marked where it stands: a line of text with a sign in front, under its field, hidden while there is no
// fault; a dialog that is too low for it grows. FaultMarks knows a form's fields by the names that refusals use, shows each refusal under its field and puts
// the focus on the first.
#pragma once

#include <QLabel>
#include <QString>
#include <vector>

#include "core/result.h"

namespace desktop {

class FaultLabel : public QWidget {
    Q_OBJECT

  public:
    explicit FaultLabel(QWidget* parent = nullptr);
    void setFault(const QString& sentence);  // empty: hides
    [[nodiscard]] QString fault() const;

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void colour();
    void makeRoom();

    QLabel* sign_;
    QLabel* text_;
};

class FaultMarks {
  public:
    /// `field` as in Refusal::field. `label` may serve several fields.
    void add(const QString& field, QWidget* editor, FaultLabel* label);
    /// For refusals of fields that no editor stands for.
    void setRest(FaultLabel* label) { rest_ = label; }
    void clear();
    /// Shows all and puts the focus on the first; true when there was none.
    bool show(const core::Refusals& refusals);
    /// Shows all and leaves the focus where it is: while somebody types.
    void mark(const core::Refusals& refusals);

  private:
    struct Mark {
        QString field;
        QWidget* editor;
        FaultLabel* label;
    };
    const Mark* markAll(const core::Refusals& refusals);  // the first of a field that an editor stands for

    std::vector<Mark> marks_;
    FaultLabel* rest_{};
};

}  // namespace desktop
