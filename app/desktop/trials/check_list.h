// SPDX-License-Identifier: MIT
// A short list of things to tick: Space ticks, arrows move, Tab leaves.
#pragma once

#include <QListWidget>
#include <cstdint>
#include <vector>

namespace desktop {

struct ThingToTick {
    std::int64_t id{};
    QString name;
};

class CheckList : public QListWidget {
    Q_OBJECT

  public:
    explicit CheckList(QWidget* parent = nullptr);

    void setThings(const std::vector<ThingToTick>& things, const std::vector<std::int64_t>& ticked);
    /// In the order of the list.
    [[nodiscard]] std::vector<std::int64_t> ticked() const;
    void tick(std::int64_t id, bool isTicked);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  signals:
    void tickedChanged();
};

}  // namespace desktop
