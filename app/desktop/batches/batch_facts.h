// SPDX-License-Identifier: MIT
// The left side of a batch's page: what the records say, cautions, the facts, what it cost, its note.
#pragma once

#include <QScrollArea>

class QFormLayout;
class QLabel;

namespace desktop {

class BatchPageModel;
class NoteEdit;

class BatchFacts : public QScrollArea {
    Q_OBJECT

  public:
    explicit BatchFacts(BatchPageModel& model, QWidget* parent = nullptr);

    void show(bool isWritable);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void fitWidth();
    void addFact(const QString& name, const QString& text, const QString& objectName = {});

    BatchPageModel& model_;
    QLabel* inWords_;
    QLabel* cautions_;
    QFormLayout* facts_;
    QLabel* costs_;
    NoteEdit* note_;
};

}  // namespace desktop
