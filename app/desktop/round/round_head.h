// SPDX-License-Identifier: MIT
// What stands over a round: its day, whether batches that are not due yet are in it, what a plain number says, and the small grammar in a line.
#pragma once

#include <QWidget>
#include <optional>

#include "core/batch/check_entry.h"
#include "core/units/days.h"

class QButtonGroup;
class QCheckBox;
class QHBoxLayout;
class QLabel;

namespace desktop {

class DateEdit;
class FaultLabel;
class Workspace;

class RoundHead : public QWidget {
    Q_OBJECT

  public:
    RoundHead(const Workspace& workspace, core::Date day, core::PlainNumber plain, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<core::Date> day() const;
    void setDay(core::Date day);
    void focusDay();
    [[nodiscard]] bool showsAll() const;
    void showAll();
    void setPlainNumber(core::PlainNumber plain);

  signals:
    void dayChanged(core::Date day);
    void showsAllChanged();
    void plainNumberChosen(core::PlainNumber plain);

  private:
    QHBoxLayout* makeReading();
    void takeDay();
    [[nodiscard]] QString grammarText(core::PlainNumber plain) const;

    const Workspace& workspace_;
    DateEdit* day_{};
    FaultLabel* dayFault_{};
    QCheckBox* all_{};
    QButtonGroup* reading_{};
    QLabel* grammar_{};
};

}  // namespace desktop
