// SPDX-License-Identifier: MIT
#include "app/report/climate_sheet.h"

#include <QCoreApplication>

#include "app/plot/climate_chart.h"
#include "app/plot/climate_text.h"
#include "app/plot/number_text.h"
#include "app/report/sheet_words.h"

namespace report {
namespace {

struct ClimateSheetWords {
    Q_DECLARE_TR_FUNCTIONS(ClimateSheet)
};

constexpr double kChartHeight = 62;  // millimetres

class LivedRow {
  public:
    LivedRow(const core::LivedQuantity& lived, const core::DisplayUnits& units) : lived_(lived), units_(units) {}

    QStringList cells() const {
        const core::LivedFigures& all = lived_.all;
        QStringList row{name()};
        for (const auto& first : lived_.first) row << (first ? mean(*first) : ClimateSheetWords::tr("\u2013"));
        row << mean(all)
            << ClimateSheetWords::tr("%1 to %2", "lowest, highest").arg(number(all.lowest), number(all.highest))
            << outside(all) << plot::shareText(all.covered()) << plot::countText(all.readings);
        return row;
    }

  private:
    QString name() const {
        const QString unit = plot::climateUnit(lived_.quantity, units_), what = plot::climateName(lived_.quantity);
        return unit.isEmpty() ? what : ClimateSheetWords::tr("%1, %2", "quantity, unit").arg(what, unit);
    }
    QString number(double stored) const { return plot::climateNumber(stored, lived_.quantity, units_); }
    QString mean(const core::LivedFigures& figures) const {
        // A mean of single readings is marked: it is not one over time.
        return figures.isMeanOfReadings
                   ? ClimateSheetWords::tr("(%1)", "a mean of single readings").arg(number(figures.mean))
                   : number(figures.mean);
    }
    static QString outside(const core::LivedFigures& figures) {
        if (figures.hoursWithBand <= 0) return ClimateSheetWords::tr("\u2013");
        return ClimateSheetWords::tr("%1 of %2", "hours outside of hours known")
            .arg(plot::hoursText(figures.hoursOutside()), plot::hoursText(figures.hoursWithBand));
    }

    const core::LivedQuantity& lived_;
    const core::DisplayUnits& units_;
};

}  // namespace

Table livedTable(const std::vector<core::LivedQuantity>& lived, const core::DisplayUnits& units) {
    Table table{.title = {},
                .headings = {ClimateSheetWords::tr("Mean of"), ClimateSheetWords::tr("first 3 days"),
                             ClimateSheetWords::tr("first 7"), ClimateSheetWords::tr("first 14"),
                             ClimateSheetWords::tr("in all"), ClimateSheetWords::tr("lowest to highest"),
                             ClimateSheetWords::tr("outside its band"), ClimateSheetWords::tr("covered"),
                             ClimateSheetWords::tr("readings")},
                .aligned = {Align::Left, Align::Right, Align::Right, Align::Right, Align::Right, Align::Right,
                            Align::Right, Align::Right, Align::Right},
                .rows = {},
                .mayBeShortened = true};
    for (const core::LivedQuantity& each : lived) table.rows.push_back(LivedRow(each, units).cells());
    return table;
}

QString livedMethod() {
    return ClimateSheetWords::tr(
        "Means over the time that readings cover, on straight lines between them; nothing is filled in for gaps, and "
        "what "
        "a gap held is in no figure. In brackets: a mean of single readings too far apart for a line. Outside its "
        "band: "
        "hours below or above what cuttings of that stage do well at, of the hours for which both are known.");
}

Sheet climateSheet(const ClimatePaper& paper, const core::Shelves& shelves, const QDateTime& printedAt) {
    Sheet sheet = sheetFor(shelves.facts, printedAt);
    sheet.title = ClimateSheetWords::tr("Climate of %1", "station").arg(paper.station);
    sheet.subtitle =
        ClimateSheetWords::tr("%1; bands of %2", "span of time, batch or stage").arg(paper.span, paper.bands);
    for (const ClimatePaper::Part& part : paper.parts) {
        sheet.blocks.emplace_back(Paragraph{part.words, Tone::Plain});
        sheet.blocks.emplace_back(Picture{part.figure, kChartHeight});
    }
    sheet.blocks.emplace_back(Heading{ClimateSheetWords::tr("How this was worked out")});
    sheet.blocks.emplace_back(Paragraph{
        ClimateSheetWords::tr(
            "Hours and sums are those of straight lines between readings; across a gap nothing is counted. A band is a "
            "guide, not an alarm; where it comes from stands with the figures of each chart."),
        Tone::Quiet});
    return sheet;
}

}  // namespace report
