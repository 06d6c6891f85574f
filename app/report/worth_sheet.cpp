// SPDX-License-Identifier: MIT
#include "app/report/worth_sheet.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/plot/chance_figure.h"
#include "app/plot/cost_parts_figure.h"
#include "app/plot/cost_text.h"
#include "app/plot/number_text.h"
#include "app/plot/strike_plane_figure.h"
#include "app/report/sheet_words.h"
#include "app/report/worth_words.h"

namespace report {
namespace {

class WorthSheetMaker {
    Q_DECLARE_TR_FUNCTIONS(WorthSheet)

  public:
    WorthSheetMaker(const core::Worth& worth, int pair, const std::vector<core::ChanceAfter>& payOff,
                    const core::Shelves& shelves)
        : worth_(worth), payOff_(payOff), shelves_(shelves) {
        if (pair < 0 || pair >= std::ssize(worth.pairs)) return;
        number_ = pair;
        pair_ = &worth.pairs[static_cast<std::size_t>(pair)];
    }

    Sheet make(const QDateTime& printedAt) {
        sheet_ = sheetFor(shelves_.facts, printedAt);
        sheet_.title = pair_ ? tr("Worth it: %1").arg(pairText(*pair_)) : tr("Worth it");
        sheet_.subtitle = tr("At day %1 (%2), intervals at %3")
                              .arg(plot::countText(worth_.horizonDay), QString::fromStdString(worth_.horizonReason),
                                   plot::levelText(worth_.level));
        addAnswer();
        if (worth_.methods.empty()) return std::move(sheet_);
        addMethods();
        if (pair_) addPair();
        addPlants();
        addRest();
        return std::move(sheet_);
    }

  private:
    const std::string& currency() const { return shelves_.facts.currency; }
    void heading(const QString& text) { sheet_.blocks.emplace_back(Heading{text}); }
    void say(const QString& text, Tone tone = Tone::Plain) { sheet_.blocks.emplace_back(Paragraph{text, tone}); }
    void picture(std::shared_ptr<const plot::Figure> figure, double height) {
        sheet_.blocks.emplace_back(Picture{std::move(figure), height});
    }

    /// What was asked about, where it isn't everything.
    QString askedAbout() const {
        QStringList parts;
        const core::WorthQuestion& question = worth_.question;
        if (const core::Plant* plant = core::find(shelves_.plants, question.plant))
            parts << QString::fromStdString(core::fullName(*plant));
        if (question.from && question.to)
            parts << tr("stuck from %1 to %2").arg(plot::dateText(*question.from), plot::dateText(*question.to));
        else if (question.from)
            parts << tr("stuck from %1 on").arg(plot::dateText(*question.from));
        else if (question.to)
            parts << tr("stuck up to %1").arg(plot::dateText(*question.to));
        return parts.join(QStringLiteral(", "));
    }

    void addAnswer() {
        if (const QString asked = askedAbout(); !asked.isEmpty()) say(asked);
        if (pair_ != nullptr) heading(verdictHeadline(*pair_));
        const QString answer = QString::fromStdString(pair_ ? pair_->inWords : worth_.inWords);
        for (const QString& paragraph : answer.split('\n', Qt::SkipEmptyParts)) say(paragraph, Tone::Answer);
        for (const QString& caution : cautionsToPrint(worth_.cautions, shelves_.facts)) say(caution, Tone::Caution);
        for (const std::string& sentence : worth_.missing) say(QString::fromStdString(sentence), Tone::Caution);
    }

    static Table printed(const plot::FigureTable& figures, int leftColumns) {
        Table table{.title = {}, .headings = figures.headings, .aligned = {}, .rows = figures.rows};
        table.aligned.assign(static_cast<std::size_t>(figures.headings.size()), Align::Right);
        for (int column = 0; column < leftColumns; ++column)
            table.aligned[static_cast<std::size_t>(column)] = Align::Left;
        return table;
    }

    /// What fits across the page: the rest of the figures stands in a second table.
    static plot::FigureTable columnsOf(const plot::FigureTable& table, const std::vector<int>& columns) {
        plot::FigureTable part;
        for (const int column : columns) part.headings << table.headings[column];
        for (const QStringList& row : table.rows) {
            QStringList cells;
            for (const int column : columns) cells << row[column];
            part.rows.push_back(cells);
        }
        return part;
    }

    void addTables(const std::vector<core::WorthOfMethod>& methods, bool hasPlants) {
        const plot::FigureTable all = worthTable(methods, hasPlants, worth_.level, currency());
        const int names = hasPlants ? 2 : 1;
        const auto add = [&](const std::vector<int>& figures) {
            std::vector<int> columns;
            for (int name = 0; name < names; ++name) columns.push_back(name);
            for (const int figure : figures) columns.push_back(names - 1 + figure);
            Table table = printed(columnsOf(all, columns), names);
            if (hasPlants) table.plantColumn = 0, table.breaksPlantNames = true;
            sheet_.blocks.emplace_back(std::move(table));
        };
        add({1, 2, 3, 4, 5, 6});
        add({7, 8, 9, 10, 11, 12});
    }

    void addCostParts(std::vector<core::WorthOfMethod> methods, bool hasPlants) {
        constexpr double perRow = 9, around = 34, most = 180;  // millimetres
        const double height = std::min(most, around + perRow * static_cast<double>(methods.size()));
        picture(
            plot::costPartsFigure(
                {.methods = std::move(methods), .hasPlants = hasPlants, .currency = currency(), .level = worth_.level}),
            height);
    }

    void addMethods() {
        const std::vector<core::WorthOfMethod> methods = methodsToShow(worth_, number_);
        heading(tr("What a plant costs"));
        addCostParts(methods, false);
        addTables(methods, false);
    }

    void addPair() {
        constexpr double planeHeight = 85, curveHeight = 70;  // millimetres
        heading(tr("What would turn the answer"));
        picture(plot::strikePlaneFigure(*pair_, worth_.level), planeHeight);
        if (!pair_->breakEven) return;
        heading(tr("When its own things are paid for"));
        picture(plot::chanceFigure(paidOffCurve(*pair_, payOff_, worth_.level)), curveHeight);
    }

    void addPlants() {
        if (worth_.byPlant.empty()) return;
        heading(tr("By plant"));
        addCostParts(worth_.byPlant, true);
        addTables(worth_.byPlant, true);
    }

    void addRest() {
        if (!worth_.stoodEmpty.empty()) {
            heading(tr("What stood empty"));
            say(tr("%1 in all: on these days no cutting stood where it belongs. No batch bears that.")
                    .arg(plot::costText(sumOf(worth_.stoodEmpty), currency())));
            sheet_.blocks.emplace_back(printed(stoodEmptyTable(worth_.stoodEmpty, shelves_), 2));
        }
        heading(tr("How this was worked out"));
        say(method(), Tone::Quiet);
    }

    QString method() const {
        QString text = tr(
            "Each batch bears its share of lasting things, what it used up, electricity, work and what was written "
            "down "
            "for it, at the prices of its own days. A rooted plant costs what a cutting costs, divided by the strike "
            "rate; its interval is that of the strike rate, the spread between batches counted. Batches not yet at "
            "the horizon nor closed are in no cost.");
        text += u' ' + (worth_.isSpreadFromRecords
                            ? tr("Likeness within batches: intra-class correlation %1, from the records.")
                            : tr("Likeness within batches: intra-class correlation %1, as is usual."))
                           .arg(plot::decimalText(worth_.correlation, 3));
        return text;
    }

    const core::Worth& worth_;
    const std::vector<core::ChanceAfter>& payOff_;
    const core::Shelves& shelves_;
    int number_{-1};  // of the pair
    const core::WorthOfPair* pair_{};
    Sheet sheet_;
};

}  // namespace

Sheet worthSheet(const core::Worth& worth, int pair, const std::vector<core::ChanceAfter>& payOff,
                 const core::Shelves& shelves, const QDateTime& printedAt) {
    return WorthSheetMaker(worth, pair, payOff, shelves).make(printedAt);
}

}  // namespace report
