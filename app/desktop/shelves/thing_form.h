// SPDX-License-Identifier: MIT
// A form for one thing: labelled rows, each judged while one types, with the sentence under the field. It holds no rules: whoever makes it
// hands over what judges and what keeps. A field is marked once somebody has typed in it, all of them from the first try to save on.
#pragma once

#include <QDialog>
#include <QHash>
#include <QSet>
#include <functional>
#include <optional>

#include "app/desktop/page.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "core/units/days.h"

class QBoxLayout;
class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace desktop {

class CautionStrip;
class CountEdit;
class DateEdit;

class ThingForm : public QDialog {
    Q_OBJECT

  public:
    struct Row {
        QString label;      // with mnemonic
        std::string field;  // as Refusal::field
        QString objectName;
        QString after{};  // words after the editor, such as a unit
    };
    struct Verbs {
        std::function<core::Refusals()> judge;  // what stands there now
        std::function<Outcome()> keep;
    };

    ThingForm(Prompts* prompts, const QString& title, QWidget* parent);

    QLineEdit* addLine(const Row& row, const std::string& text);
    /// A short one with its text at the right.
    QLineEdit* addNumber(const Row& row, const QString& text);
    DateEdit* addDay(const Row& row, std::optional<core::Date> day, core::Date today);
    CountEdit* addCount(const Row& row, std::optional<int> count, int least, int most);
    QPlainTextEdit* addNote(const Row& row, const std::string& text);
    QComboBox* addChoice(const Row& row, bool isEditable = false);
    QCheckBox* addTick(const QString& text, const QString& objectName, bool isTicked);
    /// Any other editor; it says that it was touched through touch().
    void addEditor(const Row& row, QWidget* editor);
    /// For fields that only some of its things have.
    void showRow(QWidget* editor, bool isShown);
    void sayAfter(QWidget* editor, const QString& words);  // of a row that has words after it
    /// Words under the row before.
    QLabel* addWords(const QString& objectName);
    /// Under the row before; hidden until there is something to press it for.
    QPushButton* addButton(const QString& objectName);
    /// What to mind of it, at the foot of the rows so far.
    CautionStrip* addCautions();
    /// The buttons; from now on it judges.
    void finish(const QString& saveText, const QString& saveName, Verbs verbs);

    void touch(const std::string& field);

    void reject() override;

  private:
    struct Cell {
        QBoxLayout* layout{};
        QLabel* after{};
        FaultLabel* fault{};
    };

    void judge();
    void save();

    Prompts* prompts_;
    QFormLayout* form_;
    QHash<QWidget*, Cell> cells_;
    FaultMarks marks_;
    Verbs verbs_;
    QSet<QString> touched_;
    bool showsAll_{};
    FaultLabel* rest_{};
    bool hasWarned_{};
};

/// A refusal where the field holds something that is not blank and no count; nothing typed may become "not given" in silence.
[[nodiscard]] core::Refusals faultsInOptionalCount(const CountEdit& edit, const std::string& field);

}  // namespace desktop
