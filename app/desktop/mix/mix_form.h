// SPDX-License-Identifier: MIT
// What one question of the Mix page asks for, a field below the other: figures in the grower's units, choices, lines of like parts. It
// remembers what was typed, so that next time only what has changed is typed; a question's own file says which fields there are
// (mix_questions.h).
#pragma once

#include <QMap>
#include <QWidget>
#include <vector>

#include "app/desktop/mix/mix_field.h"
#include "app/desktop/page.h"
#include "app/desktop/shelves/rows_edit.h"
#include "app/desktop/widgets/fault_label.h"
#include "core/mixing/measured_amount.h"

class QComboBox;
class QFormLayout;
class QLabel;

namespace desktop {

struct MixFieldText {
    const char* name;   // within the form; also "mix_volume" as an object's name
    QString label;      // "&Volume"
    const char* field;  // as refusals of core call it
    QString after{};    // behind the field, where it has no unit of its own
    bool isShared{};    // remembered for all questions together: the grower's water, feed and tools
    bool mayBeBlank{};
    std::size_t leastLines{1};  // of rows
};

struct MixOffer {
    QString word;  // remembered
    QString text;  // shown
};

class MixForm : public QWidget {
    Q_OBJECT

  public:
    MixForm(const PageContext& context, const QString& question, QWidget* parent = nullptr);

    // Before recall(), in the order in which they stand.
    void addNumber(MixField::Kind kind, const MixFieldText& text, std::optional<double> first = {});
    void addChoice(const MixFieldText& text, const std::vector<MixOffer>& offers);
    /// `perVolume`: the column whose figures are in a litre or gallon, -1 for none.
    void addRows(const MixFieldText& text, const std::vector<RowsEdit::Field>& fields, const QString& addText,
                 const QString& lineText, int perVolume = -1);
    void addScale();
    void addSyringe();
    void addJug();

    /// Everything as it was left last time; again for what other questions have changed since.
    void recall();
    [[nodiscard]] QMap<QString, QString> kept() const;
    void restore(const QMap<QString, QString>& kept);

    [[nodiscard]] const core::DisplayUnits& units() const { return units_; }
    /// Not a number where nothing is typed or it can't be read; faults() and missing() say so.
    [[nodiscard]] double number(const char* name) const;
    [[nodiscard]] int count(const char* name) const;  // 0 there
    [[nodiscard]] std::optional<double> given(const char* name) const;
    [[nodiscard]] QString chosen(const char* name) const;
    /// Lines that are not wholly blank.
    [[nodiscard]] std::vector<QStringList> lines(const char* name) const;
    [[nodiscard]] core::MeasuringTools tools() const;
    /// A field that doesn't matter for what is chosen goes, and is neither read nor missed.
    void showField(const char* name, bool isShown);

    /// What can't be read, and of what core says what is no consequence of that or of a blank.
    [[nodiscard]] core::Refusals faults(core::Refusals ofCore) const;
    /// Names of what is still to fill in.
    [[nodiscard]] QStringList missing() const;
    void mark(const core::Refusals& faults);
    /// Into the first field, all of it selected.
    void begin();

  signals:
    void changed();

  private:
    struct Entry {
        MixFieldText text;
        QString label;  // without its mnemonic
        MixField* number{};
        QComboBox* choice{};
        RowsEdit* rows{};
        std::vector<RowsEdit::Field> fields;  // of the rows
        QString lineText;
        int perVolume{-1};
        std::vector<QWidget*> parts;  // label, editor, fault
        bool isShown{true};
    };

    QWidget* addRow(Entry entry, QWidget* editor, QWidget* row);
    [[nodiscard]] const Entry& entry(const char* name) const;
    [[nodiscard]] QString memoryName(const Entry& entry) const;
    [[nodiscard]] QString keptIn(const Entry& entry) const;
    void restoreInto(const Entry& entry, const QString& kept);
    void restoreRows(const Entry& entry, const QString& kept);
    void addRowFaults(core::Refusals& faults, const Entry& entry) const;
    void remember(const Entry& entry);

    PageContext context_;
    QString question_;
    core::DisplayUnits units_;
    QFormLayout* layout_;
    std::vector<Entry> entries_;
    FaultMarks marks_;
    bool isRecalling_{};
};

}  // namespace desktop
