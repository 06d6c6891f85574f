// SPDX-License-Identifier: MIT
// Things that scroll, beside each other where each has the width that it needs, else one below the other: a form and what it leads to keep
// whole lines in large text.
#pragma once

#include <QWidget>
#include <vector>

class QBoxLayout;
class QScrollArea;

namespace desktop {

class BesideOrBelow : public QWidget {
    Q_OBJECT

  public:
    explicit BesideOrBelow(QWidget* parent = nullptr);

    /// With its share of the room, in parts of that of all.
    void add(QScrollArea& area, int share);

  protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Part {
        QScrollArea* area;
        int share;
    };
    void choose();
    [[nodiscard]] bool fitBeside() const;

    QBoxLayout* layout_;
    std::vector<Part> parts_;
};

}  // namespace desktop
