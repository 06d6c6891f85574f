// SPDX-License-Identifier: MIT
#include "app/report/season_review_sheet.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

#include "app/plot/cost_parts_figure.h"
#include "app/plot/loss_pareto_figure.h"
#include "app/plot/number_text.h"
#include "app/plot/season_rates_figure.h"
#include "app/report/pdf.h"
#include "app/report/season_review_words.h"
#include "app/report/sheet_words.h"
#include "app/report/worth_words.h"

namespace report {
namespace {

/// How much of each is printed. The first that makes four pages or fewer is taken.
struct ReviewRoom {
    int rateLines{};
    std::size_t plants{}, sentences{}, lessons{}, unusual{}, costRows{}, emptyThings{};
};

constexpr std::array reviewRooms{
    ReviewRoom{
        .rateLines = 26, .plants = 14, .sentences = 6, .lessons = 8, .unusual = 8, .costRows = 8, .emptyThings = 5},
    ReviewRoom{
        .rateLines = 20, .plants = 10, .sentences = 4, .lessons = 6, .unusual = 6, .costRows = 6, .emptyThings = 4},
    ReviewRoom{
        .rateLines = 14, .plants = 8, .sentences = 3, .lessons = 4, .unusual = 4, .costRows = 4, .emptyThings = 3},
    ReviewRoom{
        .rateLines = 9, .plants = 6, .sentences = 2, .lessons = 3, .unusual = 3, .costRows = 3, .emptyThings = 2}};

constexpr int mostPages = 4;

class SeasonReviewMaker {
    Q_DECLARE_TR_FUNCTIONS(SeasonReview)

  public:
    SeasonReviewMaker(const core::SeasonReview& review, const core::Shelves& shelves, const ReviewRoom& room)
        : review_(review), shelves_(shelves), room_(room) {}

    Sheet make(const QDateTime& printedAt) {
        sheet_ = sheetFor(shelves_.facts, printedAt);
        sheet_.title = tr("Season review: %1").arg(spanText(review_.from, review_.until));
        sheet_.subtitle = tr("Batches stuck from %1 to %2, as known on %3; intervals at %4")
                              .arg(plot::dateText(review_.from), plot::dateText(review_.until),
                                   plot::dateText(review_.today), plot::levelText(review_.level));
        say(QString::fromStdString(review_.inWords), Tone::Answer);
        if (review_.counts.batches == 0) return std::move(sheet_);
        addNext();
        addCounts();
        addRates();
        addLosses();
        addLessons();
        addMoney();
        addMethod();
        return std::move(sheet_);
    }

  private:
    void heading(const QString& text) { sheet_.blocks.emplace_back(Heading{text}); }
    void say(const QString& text, Tone tone = Tone::Plain) {
        if (!text.isEmpty()) sheet_.blocks.emplace_back(Paragraph{text, tone});
    }
    void picture(std::shared_ptr<const plot::Figure> figure, double height) {
        sheet_.blocks.emplace_back(Picture{std::move(figure), height});
    }

    void addNext() {
        if (review_.next.empty()) return;
        heading(tr("What to try next"));
        int number = 0;
        for (const core::Advice& advice : review_.next)
            say(tr("%1. %2", "a number in a list, a sentence")
                    .arg(plot::countText(++number), QString::fromStdString(advice.inWords)));
    }

    void addCounts() {
        heading(tr("What was stuck and what became of it"));
        say(tr("Stuck in %1: %2 of %3.", "sessions, batches, plants")
                .arg(review_.sessions == 1 ? tr("1 session") : tr("%n sessions", nullptr, review_.sessions),
                     plot::batchesText(review_.counts.batches),
                     plot::plantsText(static_cast<int>(review_.plants.size()))));
        sheet_.blocks.emplace_back(reviewMonthsTable(review_));
        if (review_.until < review_.today && review_.undecidedAtEnd != review_.counts.undecided)
            say(tr("At the end of the span %1 were undecided still.").arg(plot::cuttingsText(review_.undecidedAtEnd)));
        for (const QString& sentence : leftOutOfRates(review_)) say(sentence, Tone::Quiet);
    }

    /// Plants with most cuttings stuck, as long as their lines find room.
    std::vector<core::PlantInReview> plantsDrawn() const {
        std::vector<core::PlantInReview> drawn;
        int lines = 0;
        for (const core::PlantInReview& plant : review_.plants) {
            lines += plot::linesOfSeasonRates(plant);
            if (lines > room_.rateLines && !drawn.empty()) break;
            drawn.push_back(plant);
        }
        return drawn;
    }

    void addRates() {
        constexpr double perLine = 5, around = 26;  // millimetres
        heading(tr("Strike rates by plant and method"));
        const std::vector<core::PlantInReview> drawn = plantsDrawn();
        int lines = 0;
        for (const core::PlantInReview& plant : drawn) lines += plot::linesOfSeasonRates(plant);
        picture(plot::seasonRatesFigure({.plants = drawn, .level = review_.level, .interval = review_.interval}),
                around + perLine * std::min(lines, room_.rateLines));
        if (drawn.size() < review_.plants.size())
            say(tr("Drawn are those with most cuttings stuck.") + u' ' +
                    notPrintedText(drawn.size(), review_.plants.size()),
                Tone::Quiet);
        heading(tr("The best method by plant, and how sure"));
        say(tr("This describes what is on record. A span is no planned comparison: it was looked at while it grew, its "
               "methods were not dealt by chance, and whoever looks through many plants finds a difference in some by "
               "luck. A trial decides."),
            Tone::Quiet);
        sheet_.blocks.emplace_back(bestMethodsTable(review_.plants, room_.plants));
        say(notPrintedText(room_.plants, review_.plants.size()), Tone::Quiet);
        addWhatWouldTell();
    }

    void addWhatWouldTell() {
        std::size_t shown = 0;
        for (const core::PlantInReview& plant : review_.plants) {
            if (plant.best.sure < core::HowSure::CannotTell || shown == room_.sentences) continue;
            say(tr("%1: %2", "plant, sentence")
                    .arg(QString::fromStdString(plant.name), QString::fromStdString(plant.best.inWords)));
            ++shown;
        }
    }

    void addLosses() {
        constexpr double perRow = 6.5, around = 25, most = 80;  // millimetres
        heading(tr("Lost by cause"));
        say(QString::fromStdString(review_.losses.inWords));
        if (review_.losses.rows.empty()) return;
        picture(plot::lossParetoFigure(review_.losses),
                std::min(most, around + perRow * static_cast<double>(review_.losses.rows.size())));
    }

    void addLessons() {
        heading(tr("What was learned"));
        if (review_.lessons.empty() && review_.unusual.empty())
            say(
                tr("No trial was decided in this span, no two methods differ clearly and no batch is out of the "
                   "ordinary."));
        std::size_t shown = 0;
        for (const core::Lesson& lesson : review_.lessons) {
            if (shown++ == room_.lessons) break;
            const QString about = QString::fromStdString(lesson.about);
            say(tr("%1: %2", "trial or plant, sentence")
                    .arg(lesson.kind == core::LessonKind::Trial ? tr("Trial \"%1\"").arg(about) : about,
                         QString::fromStdString(lesson.inWords)));
        }
        say(notPrintedText(room_.lessons, review_.lessons.size()), Tone::Quiet);
        addUnusual();
    }

    void addUnusual() {
        if (review_.unusual.empty()) return;
        const int found = static_cast<int>(review_.unusual.size());
        const QString rare = plot::amountText(1000 * review_.falseAlarmRate);
        say((found == 1 ? tr("1 batch did so much worse than earlier ones of its plant by its method that luck alone "
                             "would do it to fewer than %1 of 1000.")
                        : tr("%n batches did so much worse than earlier ones of their plant by their method that luck "
                             "alone would do it to fewer than %1 of 1000.",
                             nullptr, found))
                .arg(rare));
        sheet_.blocks.emplace_back(unusualTable(review_, shelves_, room_.unusual));
        say(notPrintedText(room_.unusual, review_.unusual.size()), Tone::Quiet);
    }

    void addMoney() {
        heading(tr("Money"));
        if (!review_.money)
            return say(
                tr("No price and no expense is on record, so nothing can be said of what a rooted plant costs."));
        const core::ReviewMoney& money = *review_.money;
        sheet_.blocks.emplace_back(spentTable(money, shelves_.facts.currency));
        for (const std::string& sentence : money.missing) say(QString::fromStdString(sentence), Tone::Caution);
        addCostFigure(money);
        if (money.stoodEmpty.empty()) return;
        say(tr("These cost something on days of the span on which no cutting stood there. No batch bears it."));
        std::vector<core::StoodEmpty> dearest = money.stoodEmpty;
        if (dearest.size() > room_.emptyThings) dearest.resize(room_.emptyThings);
        sheet_.blocks.emplace_back(printed(stoodEmptyTable(dearest, shelves_)));
        say(notPrintedText(room_.emptyThings, money.stoodEmpty.size()), Tone::Quiet);
    }

    void addCostFigure(const core::ReviewMoney& money) {
        constexpr double perRow = 9, around = 34;  // millimetres
        if (money.worth.methods.empty()) return;
        std::vector<core::WorthOfMethod> methods = money.worth.methods;
        if (methods.size() > room_.costRows) methods.resize(room_.costRows);
        const double height = around + perRow * static_cast<double>(methods.size());
        picture(plot::costPartsFigure({.methods = std::move(methods),
                                       .hasPlants = false,
                                       .currency = shelves_.facts.currency,
                                       .level = money.worth.level}),
                height);
        say(notPrintedText(room_.costRows, money.worth.methods.size()), Tone::Quiet);
        for (const QString& paragraph : QString::fromStdString(money.worth.inWords).split('\n', Qt::SkipEmptyParts))
            say(paragraph);
    }

    static Table printed(const plot::FigureTable& figures) {
        Table table{.title = {}, .headings = figures.headings, .aligned = {}, .rows = figures.rows};
        table.aligned.assign(static_cast<std::size_t>(figures.headings.size()), Align::Right);
        std::fill_n(table.aligned.begin(), 2, Align::Left);
        return table;
    }

    void addMethod() {
        heading(tr("How this was worked out"));
        say(tr("The sums hold every batch that was stuck in the span, with all that is known of it today. Rates are "
               "rooted of those assessed: cuttings whose fate at the plant's day of counting is known, of batches "
               "watched to the end. Intervals as counted take cuttings as independent; those with spread allow for "
               "batches that differ. Which method is better is judged on batch rates, never on pooled counts; from one "
               "station or from fewer than three batches it isn't judged. The chance that a method roots more than the "
               "next is that of the t distribution of the difference of batch rates."),
            Tone::Quiet);
    }

    const core::SeasonReview& review_;
    const core::Shelves& shelves_;
    const ReviewRoom& room_;
    Sheet sheet_;
};

}  // namespace

Sheet seasonReviewSheet(const core::SeasonReview& review, const core::Shelves& shelves, const QDateTime& printedAt) {
    Sheet sheet;
    for (const ReviewRoom& room : reviewRooms) {
        sheet = SeasonReviewMaker(review, shelves, room).make(printedAt);
        if (std::max(pageCount(sheet, Paper::A4), pageCount(sheet, Paper::Letter)) <= mostPages) break;
    }
    return sheet;
}

}  // namespace report
