// SPDX-License-Identifier: MIT
// The narrow list of pages at the left of the main window.
#pragma once

#include <QListWidget>
#include <vector>

#include "app/desktop/look/look.h"
#include "app/desktop/registry.h"

namespace desktop {

class PageList : public QListWidget {
    Q_OBJECT

  public:
    explicit PageList(const std::vector<PageEntry>& pages, QWidget* parent = nullptr);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void fitWidth();
};

}  // namespace desktop
