// SPDX-License-Identifier: MIT
#include "app/report/plain_text.h"

#include <QCoreApplication>
#include <algorithm>
#include <cstddef>

#include "app/report/sheet.h"
#include "app/report/sheet_words.h"

namespace report {
namespace {

struct TextWords {
    Q_DECLARE_TR_FUNCTIONS(PlainText)
};

QString paddedTable(const QStringList& headings, const std::vector<QStringList>& rows,
                    const std::vector<Align>& aligned) {
    std::vector<qsizetype> widths;
    for (qsizetype column = 0; column < headings.size(); ++column) {
        qsizetype widest = headings[column].size();
        for (const QStringList& row : rows) widest = std::max(widest, column < row.size() ? row[column].size() : 0);
        widths.push_back(widest);
    }
    const auto line = [&](const QStringList& cells) {
        QString text;
        for (qsizetype column = 0; column < cells.size() && column < std::ssize(widths); ++column) {
            const auto at = static_cast<std::size_t>(column);
            const bool isRight = at < aligned.size() && aligned[at] == Align::Right;
            if (column > 0) text += QStringLiteral("  ");
            text += isRight ? cells[column].rightJustified(widths[at]) : cells[column].leftJustified(widths[at]);
        }
        while (text.endsWith(u' ')) text.chop(1);
        return text + u'\n';
    };
    QString text = line(headings);
    for (const QStringList& row : rows) text += line(row);
    return text;
}

class TextMaker {
  public:
    void operator()(const Heading& heading) { text_ += heading.text.toUpper() + u'\n'; }

    void operator()(const Paragraph& paragraph) {
        text_ += (paragraph.tone == Tone::Caution ? QStringLiteral("! ") : QString()) + paragraph.text +
                 QStringLiteral("\n\n");
    }

    void operator()(const Facts& facts) {
        for (const Fact& fact : facts.facts)
            text_ += TextWords::tr("%1: %2", "label, value").arg(fact.label, fact.value) + u'\n';
        text_ += u'\n';
    }

    void operator()(const Table& table) {
        if (!table.title.isEmpty()) text_ += table.title + u'\n';
        std::vector<QStringList> rows = table.rows;
        for (QStringList& row : rows)
            for (const int column : table.penColumns)
                if (column < row.size()) row[column] = QStringLiteral("[    ]");
        text_ += paddedTable(table.headings, rows, table.aligned) + u'\n';
    }

    void operator()(const Picture& picture) {
        if (!picture.figure) return;
        const plot::FigureTable table = picture.figure->table();
        text_ += TextWords::tr("[Figure] %1").arg(picture.figure->sentence()) + u'\n';
        if (!picture.figure->method().isEmpty()) text_ += picture.figure->method() + u'\n';
        if (!table.rows.empty()) {
            std::vector<Align> aligned(static_cast<std::size_t>(table.headings.size()), Align::Right);
            aligned.front() = Align::Left;
            text_ += paddedTable(table.headings, table.rows, aligned);
        }
        text_ += u'\n';
    }

    void operator()(const SignatureLine& signature) {
        for (const QString& label : signature.labels) text_ += label + QStringLiteral(": ____________________\n");
        text_ += u'\n';
    }

    QString take() { return std::move(text_); }

  private:
    QString text_;
};

}  // namespace

QString plainText(const Sheet& sheet) {
    QStringList head;
    for (const QString& line : {sheet.grower, sheet.logbook, sheet.title, sheet.subtitle})
        if (!line.isEmpty()) head << line;
    if (sheet.isInvented) head << inventedText();
    TextMaker maker;
    for (const Block& block : sheet.blocks) std::visit(maker, block);
    QString text = head.join(u'\n') + QStringLiteral("\n\n") + maker.take();
    if (!sheet.citation.isEmpty()) text += citationText(sheet) + u'\n';
    return text + printedText(sheet) + u'\n';
}

}  // namespace report
