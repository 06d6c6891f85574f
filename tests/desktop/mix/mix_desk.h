// SPDX-License-Identifier: MIT
// The Mix page as a grower has it in front, with files of its own to remember in. Fields are filled in by typing.
#pragma once

#include <QTemporaryDir>
#include <memory>

#include "app/desktop/memory.h"
#include "app/desktop/mix/mix_page.h"
#include "app/desktop/mix/mix_view.h"
#include "tests/desktop/pages/desk.h"
#include "tests/support/horticulture_checks.h"

class QLineEdit;

namespace mixing {

class MixDesk : public pages::Desk {
  protected:
    MixDesk();

    /// A new page, as after a start of the program.
    void openPage();
    /// By its word in the list: "nutrient".
    void ask(const QString& question);
    [[nodiscard]] desktop::MixView& view() const;
    [[nodiscard]] QLineEdit& field(const char* name) const;
    /// Types over what is there.
    void fill(const char* name, const QString& text);
    void choose(const char* name, const QString& word);
    /// One line of rows, line by line: objects "mixPart1", "mixDose1".
    void fillCells(const std::vector<std::pair<QString, QString>>& cells);

    [[nodiscard]] std::string words(const char* label) const;  // empty while it is hidden
    [[nodiscard]] std::string taken(int row) const;            // "7.0 g"
    [[nodiscard]] QStringList faults() const;
    void useUnits(const core::DisplayUnits& units);

    /// Two parts of 1.2 g/L, EC 2.4 at full strength, in water of EC 0.3.
    void fillFeed();

    QTemporaryDir folder_;
    std::unique_ptr<desktop::Memory> memory_;
    std::unique_ptr<desktop::MixPage> page_;
};

/// A check of the reference data on propagation by its id.
[[nodiscard]] support::HorticultureCheck reference(const std::string& function, const std::string& id);

}  // namespace mixing
