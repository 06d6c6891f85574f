// SPDX-License-Identifier: MIT
// The first rows of a logger's file, and above each column what it is: time, or a quantity of a station in a unit. Tab goes column by column,
// from top to bottom.
#pragma once

#include <QTableWidget>
#include <vector>

#include "app/logger/file_look.h"

class QComboBox;
class QLineEdit;

namespace desktop {

class ColumnChoosers : public QTableWidget {
    Q_OBJECT

  public:
    explicit ColumnChoosers(QWidget* parent = nullptr);

    /// Another file: its columns and rows.
    void showFile(const logger::FileLook& look, const core::Shelves& shelves);
    void showMapping(const core::LoggerMapping& mapping);
    /// Puts its fields behind `before` in the order of Tab; the last of them, or `before` where there are none.
    QWidget* followInTab(QWidget* before);
    bool eventFilter(QObject* watched, QEvent* event) override;

  signals:
    void meant(int column, const core::LoggerColumn& meaning);

  private:
    struct Choosers {
        QComboBox* what{};
        QComboBox* station{};
        QComboBox* unit{};
        QLineEdit* lux{};
    };

    Choosers makeChoosers(int column, const QString& name, const core::Shelves& shelves);
    void offerUnits(const Choosers& choosers, core::Quantity quantity) const;
    void choose(int column);
    [[nodiscard]] core::LoggerColumn meaningIn(int column) const;

    std::vector<Choosers> columns_;
    core::LoggerMapping mapping_;
    bool isShowing_{};
};

}  // namespace desktop
