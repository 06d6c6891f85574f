// SPDX-License-Identifier: MIT
#include "app/report/batch_summary_sheet.h"

#include <QCoreApplication>
#include <QStringList>
#include <utility>

#include "app/plot/number_text.h"
#include "app/plot/rooted_by_day_figure.h"
#include "app/plot/strike_chart_figure.h"
#include "app/plot/unit_text.h"
#include "app/report/caution_words.h"
#include "app/report/map_sheet.h"
#include "app/report/sheet_words.h"
#include "core/batch/licence.h"
#include "core/mixing/cautions_in_place.h"

namespace report {
namespace {

using plot::countText;

constexpr double kPictureHeight = 68;  // millimetres

class BatchSheetMaker {
    Q_DECLARE_TR_FUNCTIONS(BatchSummarySheet)

  public:
    BatchSheetMaker(const core::BatchRecord& record, const core::Session& session, const core::BatchSummary& summary,
                    const core::Shelves& shelves, const BatchEvents& events)
        : record_(record),
          batch_(record.batch),
          session_(session),
          summary_(summary),
          shelves_(shelves),
          events_(events) {}

    Sheet make(const QDateTime& printedAt) {
        sheet_ = sheetFor(shelves_.facts, printedAt);
        sheet_.title = tr("Batch %1").arg(text(batch_.code));
        sheet_.subtitle = tr("%1 stuck on %2", "24 cuttings, date")
                              .arg(plot::cuttingsText(batch_.stuck), plot::dateText(batch_.stuckOn));
        const std::vector<Block> map = mapBlocks(record_, shelves_);
        sheet_.fitsOnePage = events_.isEmpty() && map.empty();
        addAnswer();
        sheet_.blocks.emplace_back(Heading{tr("What was stuck, where, how, by whom")});
        sheet_.blocks.emplace_back(facts());
        if (!batch_.note.empty())
            sheet_.blocks.emplace_back(Paragraph{tr("Note: %1").arg(text(batch_.note)), Tone::Plain});
        if (!session_.note.empty())
            sheet_.blocks.emplace_back(Paragraph{tr("That day: %1").arg(text(session_.note)), Tone::Plain});
        sheet_.blocks.emplace_back(Heading{tr("Rooted by day")});
        sheet_.blocks.emplace_back(Picture{plot::rootedByDayFigure(summary_, text(batch_.code)), kPictureHeight});
        sheet_.blocks.emplace_back(Heading{tr("Checks")});
        if (record_.checks.empty())
            sheet_.blocks.emplace_back(Paragraph{tr("Nobody has looked at this batch yet."), Tone::Plain});
        else
            sheet_.blocks.emplace_back(checks());
        sheet_.blocks.emplace_back(Heading{tr("Losses, and the grower's own past")});
        sheet_.blocks.emplace_back(Paragraph{losses(), Tone::Plain});
        sheet_.blocks.emplace_back(Paragraph{past(), Tone::Plain});
        addPlaceAmongBatches();
        sheet_.blocks.insert(sheet_.blocks.end(), map.begin(), map.end());
        for (Block& block : eventBlocks(events_, summary_, batch_, shelves_)) sheet_.blocks.push_back(std::move(block));
        addCautions();
        sheet_.blocks.emplace_back(Heading{tr("How this was worked out")});
        sheet_.blocks.emplace_back(Paragraph{method(), Tone::Quiet});
        sheet_.blocks.emplace_back(SignatureLine{{tr("Checked by"), tr("Date"), tr("Signature")}});
        return std::move(sheet_);
    }

  private:
    static QString text(const std::string& words) { return QString::fromStdString(words); }

    template <class Thing, class ThingId>
    static QString nameIn(const std::vector<Thing>& things, ThingId id) {
        const Thing* thing = core::find(things, id);
        return thing ? text(thing->name) : notRecorded();
    }

    static QString notRecorded() { return tr("not recorded"); }

    QString plantName() const {
        const core::Plant* plant = core::find(shelves_.plants, batch_.plant);
        return plant ? text(core::fullName(*plant)) : notRecorded();
    }

    QString withCommonName() const {
        const core::Plant* plant = core::find(shelves_.plants, batch_.plant);
        return plant && !plant->commonName.empty() ? text(plant->commonName) : notRecorded();
    }

    QString stockPlant() const {
        const core::StockPlant* stock = core::find(shelves_.stockPlants, batch_.stockPlant);
        return stock ? text(stock->label) : notRecorded();
    }

    QString medium() const {
        const core::Medium* medium = core::find(shelves_.media, batch_.medium);
        if (!medium) return notRecorded();
        const QString recipe = text(core::recipe(*medium));
        return recipe.isEmpty() || recipe == text(medium->name)
                   ? text(medium->name)
                   : tr("%1 (%2)", "medium, its parts").arg(text(medium->name), recipe);
    }

    QString treatment() const {
        const core::Treatment* treatment = core::find(shelves_.treatments, batch_.treatment);
        if (!treatment) return notRecorded();
        const QString description = text(core::description(*treatment));
        return description == text(treatment->name)
                   ? description
                   : tr("%1 (%2)", "treatment, its dose").arg(text(treatment->name), description);
    }

    QString trial() const {
        const core::Trial* trial = core::find(shelves_.trials, batch_.trial);
        if (!trial) return tr("none");
        return batch_.block.empty() ? text(trial->name) : tr("%1, block %2").arg(text(trial->name), text(batch_.block));
    }

    QString state() const {
        const core::Tally& tally = summary_.tally;
        if (batch_.closedOn) {
            const QString closed = tr("closed %1").arg(plot::dateText(*batch_.closedOn));
            return batch_.closeReason.empty() ? closed
                                              : tr("%1: %2", "closed, reason").arg(closed, text(batch_.closeReason));
        }
        if (tally.undecided() == 0) return tr("closed, nothing undecided");
        return tr("open, %1 undecided").arg(countText(tally.undecided()));
    }

    void addAnswer() {
        const core::Tally& tally = summary_.tally;
        sheet_.blocks.emplace_back(
            Paragraph{tr("Strike rate %1; %2 interval %3 (%4, as counted).")
                          .arg(plot::percentText(tally.rooted, tally.stuck), plot::levelText(summary_.level),
                               plot::limitsText(summary_.asCounted), intervalName()),
                      Tone::Answer});
        sheet_.blocks.emplace_back(
            Paragraph{tr("%1 stuck = %2 rooted + %3 lost + %4 withdrawn + %5 undecided.")
                          .arg(countText(tally.stuck), countText(tally.rooted), countText(tally.lost),
                               countText(tally.withdrawn), countText(tally.undecided())),
                      Tone::Plain});
    }

    Facts facts() const {
        Facts facts{{{tr("Plant"), plantName(), true},
                     {tr("Common name"), withCommonName(), false},
                     {tr("Stock plant"), stockPlant(), false},
                     {tr("Cuttings"),
                      tr("%1, %2", "number, kind")
                          .arg(countText(batch_.stuck), nameIn(shelves_.cuttingKinds, batch_.cuttingKind)),
                      false},
                     {tr("Stuck on"), plot::dateText(batch_.stuckOn), false},
                     {tr("By"), session_.worker.empty() ? notRecorded() : text(session_.worker), false},
                     {tr("Method"), nameIn(shelves_.methods, batch_.method), false},
                     {tr("Station"), nameIn(shelves_.stations, batch_.station), false},
                     {tr("Medium"), medium(), false},
                     {tr("Treatment"), treatment(), false},
                     {tr("Trial"), trial(), false},
                     {tr("State"), state(), false}}};
        if (const std::string licence = core::licenceInWords(batch_, shelves_); !licence.empty())
            facts.facts.push_back({tr("Licence"), text(batch_.licence.empty() ? licence : batch_.licence), false});
        return facts;
    }

    QString causesOf(const core::Check& check) const {
        QStringList parts;
        for (const core::Loss& loss : check.losses) {
            const core::LossCause* cause = core::find(shelves_.lossCauses, loss.cause);
            parts << tr("%1 %2", "count, cause")
                         .arg(countText(loss.count), cause ? text(cause->name) : tr("cause not known"));
        }
        QString words = parts.join(QStringLiteral(", "));
        if (check.note.empty()) return words;
        return words.isEmpty() ? text(check.note) : tr("%1; %2", "causes, note").arg(words, text(check.note));
    }

    Table checks() const {
        Table table{.title = {},
                    .headings = {tr("Day"), tr("Date"), tr("new rooted"), tr("new lost"), tr("new withdrawn"),
                                 tr("rooted so far"), tr("lost so far"), tr("undecided"), tr("Causes and notes")},
                    .aligned = {Align::Right, Align::Right, Align::Right, Align::Right, Align::Right, Align::Right,
                                Align::Right, Align::Right, Align::Left},
                    .rows = {},
                    .mayBeShortened = true,
                    .plantColumn = -1};
        core::Tally running{.stuck = batch_.stuck, .rooted = 0, .lost = 0, .withdrawn = 0, .lastCheckedOn = {}};
        for (const core::Check& check : record_.checks) {
            running.rooted += check.rooted;
            running.lost += check.lost();
            running.withdrawn += check.withdrawn;
            table.rows.push_back({countText(core::daysBetween(batch_.stuckOn, check.checkedOn)),
                                  plot::shortDateText(check.checkedOn), countText(check.rooted),
                                  countText(check.lost()), countText(check.withdrawn), countText(running.rooted),
                                  countText(running.lost), countText(running.undecided()), causesOf(check)});
        }
        return table;
    }

    QString losses() const {
        if (summary_.losses.empty()) return tr("Losses by cause: none lost.");
        QStringList parts;
        for (const core::LossByCause& loss : summary_.losses)
            parts << tr("%1 %2", "cause, count").arg(text(loss.cause), countText(loss.count));
        return tr("Losses by cause: %1; lost in all %2.")
            .arg(parts.join(QStringLiteral(", ")), plot::percentText(summary_.tally.lost, summary_.tally.stuck));
    }

    QString past() const {
        const core::OwnPast& past = summary_.past;
        if (past.batches == 0 || !past.rate)
            return tr("Own past: no earlier batch of this plant by this method to set beside it.");
        QString words =
            tr("Own past, same plant and method: %1 in %2")
                .arg(plot::percentText(*past.rate, past.rooted, past.assessed), plot::batchesText(past.batches));
        if (past.asCounted)
            words += tr("; %1 interval %2 as counted")
                         .arg(plot::levelText(summary_.level), plot::limitsText(*past.asCounted));
        if (past.withSpread)
            words += tr(", %1 allowing for the spread between batches").arg(plot::limitsText(*past.withSpread));
        return words + u'.';
    }

    void addPlaceAmongBatches() {
        if (summary_.againstPast)
            sheet_.blocks.emplace_back(Paragraph{text(summary_.againstPast->inWords), Tone::Plain});
        if (!summary_.chart.centre || summary_.chart.batches.size() < 2) return;
        constexpr double height = 52;  // millimetres
        sheet_.blocks.emplace_back(Picture{plot::strikeChartFigure(summary_.chart, text(batch_.code)), height, true});
    }

    void addCautions() {
        sheet_.blocks.emplace_back(Heading{tr("Cautions")});
        for (const QString& caution : cautionsToPrint(summary_.cautions, shelves_.facts))
            sheet_.blocks.emplace_back(Paragraph{caution, Tone::Caution});
        std::vector<core::CautionTopic> topics = core::cautionsOnSticking({&batch_, 1}, shelves_);
        if (topics.empty()) topics.push_back(core::CautionTopic::Advice);
        topics.insert(topics.end() - 1, core::CautionTopic::PlantHealth);
        QStringList mind;  // in one paragraph, so that the sheet keeps to its page
        for (const core::CautionTopic topic : topics) mind << cautionText(topic);
        sheet_.blocks.emplace_back(Paragraph{mind.join(u' '), Tone::Caution});
    }

    QString intervalName() const { return QString::fromUtf8(core::nameOf(summary_.interval)); }

    QString method() const {
        QString method =
            tr("Strike rate: rooted of stuck, undecided ones included; rooted means a root of %1 or more. "
               "Interval: %3 at "
               "%2, cuttings taken as independent. Curve: nonparametric estimate for days known only to lie between "
               "two checks, with "
               "losses as a fate of their own; a look finds what happened since the look before. Own past: batches "
               "stuck no later, "
               "rooted of those whose fate at the horizon is known.")
                .arg(plot::rootLengthText(shelves_.facts), plot::levelText(summary_.level),
                     summary_.interval == core::RateInterval::Wilson ? tr("Wilson's score") : intervalName());
        if (summary_.againstPast)
            method += u' ' + tr("What earlier batches foretell: beta-binomial, with the likeness within batches of the "
                                "whole logbook.");
        if (summary_.chart.centre && summary_.chart.batches.size() > 1)
            method += u' ' + tr("Chart: limits between which luck and the usual spread keep a batch of that size.");
        return method;
    }

    const core::BatchRecord& record_;
    const core::Batch& batch_;
    const core::Session& session_;
    const core::BatchSummary& summary_;
    const core::Shelves& shelves_;
    const BatchEvents& events_;
    Sheet sheet_;
};

}  // namespace

Sheet batchSummarySheet(const core::BatchRecord& record, const core::Session& session,
                        const core::BatchSummary& summary, const core::Shelves& shelves, const QDateTime& printedAt,
                        const BatchEvents& events) {
    return BatchSheetMaker(record, session, summary, shelves, events).make(printedAt);
}

}  // namespace report
