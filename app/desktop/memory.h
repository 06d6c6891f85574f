// SPDX-License-Identifier: MIT
// What the program remembers between two starts, in two plain files: settings that a person chose (XDG config) and the
// state that things were left in (XDG state): recent logbooks, the window's place, columns of tables. Never a figure of
// a logbook.
#pragma once

#include <QByteArray>
#include <QSettings>
#include <QString>
#include <QStringList>

#include "app/desktop/look/look.h"

namespace desktop {

struct MemoryFiles {
    QString settings;
    QString state;
};

/// Where the desktop's rules (XDG base directories) want them.
[[nodiscard]] MemoryFiles memoryFiles();

/// Names of choices that more than one place knows.
namespace choice {
inline const QString plainNumber = QStringLiteral("round/plain_number");  // "in all" or "new": see round_of_checks.md
}  // namespace choice

class Memory {
  public:
    explicit Memory(const MemoryFiles& files);

    [[nodiscard]] Theme theme() const;
    void setTheme(Theme theme);
    [[nodiscard]] int textPercent() const;  // 80 to 200
    void setTextPercent(int percent);
    [[nodiscard]] QString numberFormat() const;  // a locale's name; empty: the system's
    void setNumberFormat(const QString& localeName);
    [[nodiscard]] QString grower() const;  // proposed for a new logbook
    void setGrower(const QString& grower);

    /// A choice made on a page or dialog, by a name of the caller's; empty when none was made.
    [[nodiscard]] QString choice(const QString& name) const;
    void setChoice(const QString& name, const QString& choice);

    /// Newest first, at most ten.
    [[nodiscard]] QStringList recentLogbooks() const;
    void addRecentLogbook(const QString& file);
    /// The one that was open at the end; empty when none was.
    [[nodiscard]] QString lastLogbook() const;
    void setLastLogbook(const QString& file);

    /// Geometry of windows, headers of tables, by a name of the caller's.
    [[nodiscard]] QByteArray shape(const QString& name) const;
    void setShape(const QString& name, const QByteArray& shape);

  private:
    QSettings settings_;
    QSettings state_;
};

}  // namespace desktop
