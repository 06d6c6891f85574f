// SPDX-License-Identifier: MIT
// The settings that belong to the logbook and are kept in it: who, units, currency, intervals, what counts as rooted, when to look, paper.
// Each takes effect at once and is one step of history; a figure that can't be is marked, and the one before stays in force.
#pragma once

#include <QWidget>
#include <functional>
#include <map>
#include <vector>

#include "app/desktop/page.h"
#include "app/desktop/widgets/fault_label.h"
#include "core/records.h"

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;

namespace desktop {

class CountEdit;
class RootLengthEdit;

class LogbookSettings : public QWidget {
    Q_OBJECT

  public:
    explicit LogbookSettings(const PageContext& context, QWidget* parent = nullptr);

    /// Takes what is still being typed.
    void finishTyping();

  private:
    using Setting = std::function<void(core::LogbookFacts&)>;

    void addWho(QFormLayout& form);
    void addUnits(QFormLayout& form);
    void addFigures(QFormLayout& form);
    void addRooted(QFormLayout& form);
    void addBench(QFormLayout& form);
    void addPaper(QFormLayout& form);
    QLayout* cellFor(const QString& field, QWidget* editor, const QString& after);
    void addRow(QFormLayout& form, const QString& label, const QString& field, QWidget* editor,
                const QString& after = {});
    void addLine(QFormLayout& form, const QString& label, const QString& field, QLineEdit* edit,
                 std::string core::LogbookFacts::*fact, const QString& after = {});
    void addDays(QFormLayout& form, const QString& label, const QString& field, CountEdit* edit,
                 int core::LogbookFacts::*fact, const QString& after);
    void takeFrom(QLineEdit& edit, const std::function<void()>& take);
    void onChoice(QComboBox& box, Setting setting);
    void takeLevel();
    void takeRootLength();
    /// A figure between two ends, in the unit that stands behind it; `set` puts it into the facts.
    void takeFigure(const QString& field, const QString& name, const QLineEdit& edit, double low, double high,
                    const std::function<void(core::LogbookFacts&, double)>& set);
    void showBench(const core::LogbookFacts& facts);
    void refuse(const QString& field, const QString& sentence);
    void markRefused();
    void change(const QString& field, const Setting& setting);
    void explain();
    void refresh();
    void showFacts(const core::LogbookFacts& facts);
    void show(QLineEdit& edit, const QString& field, const QString& text);

    PageContext context_;
    FaultMarks marks_;
    std::map<QString, core::Refusal> refused_;  // by field: what stands there and can't be
    QLineEdit *name_{}, *grower_{}, *currency_{}, *level_{};
    QComboBox *temperature_{}, *ec_{}, *volume_{}, *length_{}, *interval_{}, *paper_{};
    QLabel *intervalWords_{}, *levelWords_{};
    RootLengthEdit* rootLength_{};
    CountEdit *firstCheck_{}, *checkEvery_{}, *horizon_{};
    QLineEdit *altitude_{}, *degreeDayBase_{}, *falseAlarms_{};
    std::vector<std::function<void()>> takers_;  // of what stands in the typed fields
};

}  // namespace desktop
