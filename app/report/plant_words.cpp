// SPDX-License-Identifier: MIT
#include "app/report/plant_words.h"

#include <QCoreApplication>

#include "app/plot/number_text.h"
#include "core/due/first_look.h"

namespace report {

namespace {

struct InPlantFacts {
    Q_DECLARE_TR_FUNCTIONS(PlantFacts)
};

QString factText(std::string_view words) {
    return QString::fromUtf8(words);
}

QString unknownText() {
    return InPlantFacts::tr("unknown", "a figure");
}

QString practiceText() {
    return InPlantFacts::tr("common practice, no source");
}

QString withCommas(std::string_view keys) {
    QStringList words;
    for (const std::string_view key : core::sourceKeys(keys)) words << factText(key);
    return words.join(QStringLiteral(", "));
}

QString rangeFigure(const core::ReferenceRange& range) {
    if (!range.low && !range.high) return unknownText();
    if (!range.low) return InPlantFacts::tr("up to %1").arg(plot::amountText(*range.high));
    if (!range.high) return InPlantFacts::tr("%1 or more").arg(plot::amountText(*range.low));
    if (*range.low == *range.high) return plot::amountText(*range.low);
    return InPlantFacts::tr("%1 to %2").arg(plot::amountText(*range.low), plot::amountText(*range.high));
}

QString daysFigure(const core::PlantReference& reference) {
    const QString figure = rangeFigure(reference.days);
    switch (reference.daysMeaning) {
        case core::DaysMeaning::Seen:
            return InPlantFacts::tr("%1, when roots were seen").arg(figure);
        case core::DaysMeaning::Scored:
            return InPlantFacts::tr("%1, when it was scored; perhaps long before").arg(figure);
        case core::DaysMeaning::Usual:
            return InPlantFacts::tr("%1, as usual").arg(figure);
        case core::DaysMeaning::Unknown:
            break;
    }
    return figure;
}

QString firstLookFigure(const core::ReferenceRange& days) {
    if (!days.low) return unknownText();
    const auto day = core::usualFirstLook(*days.low);
    return day ? InPlantFacts::tr("from %1 on", "day 11").arg(plot::dayText(*day)) : unknownText();
}

QString strikeFigure(const core::ReferenceRange& strike) {
    if (!strike.low && !strike.high) return unknownText();
    return InPlantFacts::tr("%1 of 100 stuck").arg(rangeFigure(strike));
}

QString auxinFigure(const core::ReferenceRange& auxin) {
    if (!auxin.low && !auxin.high) return unknownText();
    if (auxin.high && *auxin.high == 0) return InPlantFacts::tr("roots without");
    const bool rootsWithout = auxin.low && *auxin.low == 0;
    if (rootsWithout && auxin.high) return InPlantFacts::tr("none, up to %1 mg/L").arg(plot::amountText(*auxin.high));
    return InPlantFacts::tr("%1 mg/L").arg(rangeFigure(auxin));
}

QString waterFigure(core::WaterCulture water) {
    switch (water) {
        case core::WaterCulture::Unknown:
            return unknownText();
        case core::WaterCulture::Better:
            return InPlantFacts::tr("better than in a solid medium under mist");
        case core::WaterCulture::Equal:
            return InPlantFacts::tr("as well as in a solid medium under mist");
        case core::WaterCulture::Worse:
            return InPlantFacts::tr("worse than in a solid medium under mist");
        case core::WaterCulture::Rooted:
            return InPlantFacts::tr("it rooted; not compared");
        case core::WaterCulture::WellByPractice:
            return InPlantFacts::tr("well");
        case core::WaterCulture::PoorlyByPractice:
            return InPlantFacts::tr("poorly");
    }
    return {};
}

QString waterSource(const core::PlantReference& reference) {
    if (reference.water == core::WaterCulture::Unknown) return unknownText();
    const QString keys = withCommas(reference.waterSources);
    return keys.isEmpty() ? practiceText() : InPlantFacts::tr("read in %1").arg(keys);
}

void addPrinted(const core::PlantReference& reference, PlantWords& words) {
    words.heading = InPlantFacts::tr("%1, %2", "common name, family")
                        .arg(factText(reference.commonName), factText(reference.family));
    if (!reference.form.empty())
        words.heading = InPlantFacts::tr("%1; figures of %2", "plant; a cultivar or group")
                            .arg(words.heading, factText(reference.form));
    words.printed = {
        {InPlantFacts::tr("kind of cutting"), factText(reference.cuttingKinds), practiceText()},
        {InPlantFacts::tr("season"), factText(reference.season), practiceText()},
        {InPlantFacts::tr("auxin"), auxinFigure(reference.auxin), howKnownText(reference.auxin)},
        {InPlantFacts::tr("days to root"), daysFigure(reference), howKnownText(reference.days)},
        {InPlantFacts::tr("first look"), firstLookFigure(reference.days),
         reference.days.low ? InPlantFacts::tr("half of the low figure: common practice, no source") : unknownText()},
        {InPlantFacts::tr("strike rate"), strikeFigure(reference.strike), howKnownText(reference.strike)},
        {InPlantFacts::tr("in aerated or sprayed water"), waterFigure(reference.water), waterSource(reference)}};
    for (const core::ReferenceSource& source : core::referenceSources())
        for (const std::string_view keys :
             {reference.auxin.sources, reference.days.sources, reference.strike.sources, reference.waterSources}) {
            const QString citation = InPlantFacts::tr("%1: %2", "key of a source, its citation")
                                         .arg(factText(source.key), factText(source.citation));
            for (const std::string_view key : core::sourceKeys(keys))
                if (key == source.key && !words.citations.contains(citation)) words.citations << citation;
        }
}

QString strikeOfOwn(const core::PlantFacts& facts) {
    const core::PastRecords& records = facts.records;
    if (!facts.asCounted) return unknownText();
    QString words = InPlantFacts::tr("%1 by %2; %3 interval %4", "75 % (18 of 24) by day 28; 95 % interval 55 to 88 %")
                        .arg(plot::percentText(records.rooted, records.assessed), plot::dayText(records.horizonDay),
                             plot::levelText(facts.level), plot::limitsText(*facts.asCounted));
    if (facts.withSpread)
        words = InPlantFacts::tr("%1, %2 allowing for the spread between batches")
                    .arg(words, plot::limitsText(*facts.withSpread));
    return words;
}

void addOwn(const core::PlantFacts& facts, PlantWords& words) {
    const core::PastRecords& records = facts.records;
    words.own.push_back({InPlantFacts::tr("stuck"),
                         InPlantFacts::tr("%1, %2", "3 batches, 72 cuttings")
                             .arg(plot::batchesText(facts.batches), plot::cuttingsText(facts.cuttings)),
                         {}});
    words.own.push_back({InPlantFacts::tr("strike rate"), strikeOfOwn(facts),
                         InPlantFacts::tr("%1 watched to the end", "2 batches")
                             .arg(plot::batchesText(static_cast<int>(records.batches.size())))});
    const bool hasCurve = facts.rooting.restsOn == core::DaysRestOn::OwnCurve;
    words.own.push_back({InPlantFacts::tr("days to root"),
                         hasCurve ? InPlantFacts::tr("half by %1, nine in ten by %2", "day 14, day 21")
                                        .arg(plot::dayText(facts.rooting.middle), plot::dayText(facts.rooting.upper))
                                  : InPlantFacts::tr("too little for a curve yet"),
                         InPlantFacts::tr("%1 rooted", "24 cuttings").arg(plot::cuttingsText(facts.rooted))});
}

}  // namespace

QString howKnownText(const core::ReferenceRange& range) {
    const QString keys = withCommas(range.sources);
    switch (range.how) {
        case core::HowKnown::Unknown:
            return unknownText();
        case core::HowKnown::Read:
            return InPlantFacts::tr("read in %1").arg(keys);
        case core::HowKnown::PartlyRead:
            return InPlantFacts::tr("one end read in %1, the other common practice or from memory").arg(keys);
        case core::HowKnown::FromMemory:
            return InPlantFacts::tr("from memory of %1").arg(keys);
        case core::HowKnown::CommonPractice:
            return practiceText();
    }
    return {};
}

PlantWords plantWords(const core::PlantFacts& facts) {
    PlantWords words;
    words.heading = InPlantFacts::tr("The reference table doesn\u2019t have this plant.");
    if (facts.reference != nullptr) addPrinted(*facts.reference, words);
    addOwn(facts, words);
    words.plannedBy = {QString::fromStdString(facts.rateInWords), QString::fromStdString(facts.daysInWords)};
    return words;
}

}  // namespace report
