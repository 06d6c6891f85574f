// SPDX-License-Identifier: MIT
// The lid to drill: its measures, how many holes it holds in square and in staggered rows, drawn while they are typed; then the template, to
// be printed at true scale. It changes no record; from a station's form the layout can be taken over into the form.
#pragma once

#include <QDialog>
#include <optional>

#include "app/desktop/page.h"
#include "app/desktop/widgets/fault_label.h"
#include "core/station/lid_layout.h"

class QBoxLayout;
class QComboBox;
class QFormLayout;
class QLabel;
class QPushButton;
class QRadioButton;

namespace desktop {

class LengthEdit;
class LidView;

class DrillingDialog : public QDialog {
    Q_OBJECT

  public:
    explicit DrillingDialog(const PageContext& context, QWidget* parent = nullptr);
    /// With these measures instead of the last ones.
    void begin(const core::Lid& lid);
    /// For a station's form: the layout can be taken.
    void offerToTake(const QString& station);

    [[nodiscard]] const core::LidLayout& layoutShown() const { return layout_; }

  signals:
    void layoutTaken(const core::LidLayout& layout);
    void said(const QString& sentence);

  private:
    void makeFields();
    void build();
    QWidget* makeForm();
    QBoxLayout* makePatterns();
    void remember() const;
    void recall();
    [[nodiscard]] core::Lid lid() const;
    [[nodiscard]] core::Refusals unreadable() const;
    void judge();
    void showLayouts(const core::LidLayout& square, const core::LidLayout& staggered);
    void preview();

    PageContext context_;
    core::LengthUnit unit_;
    QString station_;
    core::LidLayout layout_;
    std::optional<core::RowPattern> chosen_;  // by hand; else whichever holds more
    FaultMarks marks_;
    QFormLayout* form_{};
    QComboBox* shape_{};
    QLabel* lengthLabel_{};
    LengthEdit* length_{};
    LengthEdit* width_{};
    LengthEdit* hole_{};
    LengthEdit* web_{};
    LengthEdit* edge_{};
    QRadioButton* square_{};
    QRadioButton* staggered_{};
    LidView* view_{};
    QLabel* sum_{};
    QPushButton* take_{};
    QPushButton* preview_{};
};

}  // namespace desktop
