// SPDX-License-Identifier: MIT
// A few lines of like parts in a form: components of a medium, auxins of a treatment. Each line has the same fields and a button that takes
// it away; one more button adds a line.
#pragma once

#include <QStringList>
#include <QWidget>
#include <vector>

class QGridLayout;
class QLabel;
class QPushButton;

namespace desktop {

class RowsEdit : public QWidget {
    Q_OBJECT

  public:
    enum class Kind { Text, Number, Choice };
    struct Field {
        QString title;
        QString objectName;  // with the number of the line behind it
        Kind kind{Kind::Text};
        QStringList offers{};  // of a choice; or words to offer while text is typed
        QString unit{};        // after the field
    };

    /// `addText` is on the button that adds a line, `lineText` what one line is called: "Component".
    RowsEdit(std::vector<Field> fields, const QString& addText, const QString& lineText, QWidget* parent = nullptr);

    void setLines(const std::vector<QStringList>& lines);
    /// As they stand, lines that are wholly blank left out (a choice alone fills none).
    [[nodiscard]] std::vector<QStringList> lines() const;

  signals:
    void changed();

  private:
    struct Line {
        std::vector<QWidget*> editors;
        std::vector<QWidget*> others;  // unit labels and the button
    };

    void addLine(const QStringList& texts);
    QWidget* makeEditor(const Field& field, const QString& text);
    void takeAway(const QWidget* button);
    void nameLines();
    [[nodiscard]] static QString textIn(const QWidget* editor);
    static void write(QWidget* editor, const QString& text);

    std::vector<Field> fields_;
    QString lineText_;
    QGridLayout* grid_;
    std::vector<QLabel*> titles_;
    QPushButton* add_;
    std::vector<Line> lines_;
    int nextRow_{1};
};

}  // namespace desktop
