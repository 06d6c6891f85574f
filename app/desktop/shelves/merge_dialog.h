// SPDX-License-Identifier: MIT
// "Two spellings of one": which is the other, and which one stays. Says in words what will happen before it is done.
#pragma once

#include <QDialog>

#include "app/desktop/page.h"
#include "app/desktop/shelves/shelf.h"

class QComboBox;
class QLabel;
class QPushButton;
class QRadioButton;

namespace desktop {

class FaultLabel;

class MergeDialog : public QDialog {
    Q_OBJECT

  public:
    struct Candidate {
        std::int64_t id{};
        QString name;
        int batches{};
    };

    /// Domain: at least one of `others`.
    MergeDialog(const PageContext& context, const Shelf& shelf, Candidate one, std::vector<Candidate> others,
                QWidget* parent = nullptr);

  signals:
    void merged(std::int64_t stays);

  private:
    void build();
    void showChoice();
    void agree();
    [[nodiscard]] const Candidate& other() const;
    [[nodiscard]] const Candidate& goes() const;
    [[nodiscard]] const Candidate& stays() const;

    PageContext context_;
    Shelf shelf_;
    Candidate one_;
    std::vector<Candidate> others_;  // the likeliest first
    QComboBox* other_;
    QRadioButton* oneStays_;
    QRadioButton* otherStays_;
    QLabel* words_;
    FaultLabel* fault_;
};

}  // namespace desktop
