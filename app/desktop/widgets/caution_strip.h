// SPDX-License-Identifier: MIT
// What to mind, where the hand is: each caution with a sign, its name and its words, to read and to copy. As tall as its words, up to a few
// lines; then it scrolls. Gone while there is nothing to mind. It says, it never asks: nobody has to click it away.
//
//   form->addRow(strip = new CautionStrip);
//   strip->mind(core::cautionsOnCare(kind));
#pragma once

#include <QTextEdit>
#include <vector>

#include "core/mixing/trade_cautions.h"

namespace desktop {

class CautionStrip : public QTextEdit {
    Q_OBJECT

  public:
    explicit CautionStrip(QWidget* parent = nullptr) : CautionStrip({}, parent) {}
    /// One whose words stay.
    [[nodiscard]] static CautionStrip* saying(std::vector<core::CautionTopic> topics);

    void mind(std::vector<core::CautionTopic> topics);
    [[nodiscard]] const std::vector<core::CautionTopic>& topics() const { return topics_; }

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    CautionStrip(std::vector<core::CautionTopic> topics, QWidget* parent);
    void write();
    void dressUp();
    void fit();

    std::vector<core::CautionTopic> topics_;
    bool isDressing_{};
};

}  // namespace desktop
