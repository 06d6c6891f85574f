// SPDX-License-Identifier: MIT
#include "db/exchange/write_conditions.h"

#include <tuple>

#include "db/exchange/in_order.h"

namespace db {

namespace {

using CareLabels = std::unordered_map<std::int64_t, std::string>;

std::string labelIn(const std::unordered_map<std::int64_t, std::string>& labels, std::int64_t id) {
    const auto found = labels.find(id);
    return found == labels.end() ? std::string() : found->second;
}

/// All that a mix says, for an order that comes from it.
std::string contentOf(const core::KeptMix& mix) {
    std::string content = core::isoText(mix.madeAt);
    for (const std::string_view part :
         {core::wordFor(mix.kind), std::string_view(mix.title), std::string_view(mix.amounts),
          std::string_view(mix.workings), std::string_view(mix.cautions)})
        content.append(1, '\0').append(part);
    return content;
}

/// By the id of the care: the content of what was mixed for it.
std::unordered_map<std::int64_t, std::string> mixedFor(const core::Records& records) {
    std::unordered_map<std::int64_t, std::string> mixed;
    for (const core::KeptMix* mix : inOrderOf(records.mixes, contentOf))
        if (mix->care.isSet()) mixed[mix->care.value] += contentOf(*mix) + '\0';
    return mixed;
}

/// Care that something was mixed for is given a number for a label.
CareLabels writeCare(const core::Records& records, const TableFiles& files) {
    const ById station(records.shelves.stations);
    const auto mixed = mixedFor(records);
    const auto all = inOrderOf(records.care, [&](const core::Care& care) {
        return std::tuple(care.doneAt, std::string_view(station(care.station).name), care.kind,
                          std::string_view(care.note), care.litres, labelIn(mixed, care.id.value));
    });
    CareLabels labels;
    files.table("care", [&](CsvWriter& csv) {
        for (const core::Care* care : all) {
            csv.text(station(care->station).name).text(core::isoText(care->doneAt)).text(core::wordFor(care->kind));
            csv.text(care->note).figure(care->litres);
            if (mixed.contains(care->id.value)) labels[care->id.value] = std::to_string(labels.size() + 1);
            csv.text(labelIn(labels, care->id.value)).endRow();
        }
    });
    return labels;
}

void writeMixes(const core::Records& records, const SessionLabels& sessions, const CareLabels& care,
                const TableFiles& files) {
    const auto mixes = inOrderOf(records.mixes, [&](const core::KeptMix& mix) {
        return std::tuple(contentOf(mix), labelIn(sessions, mix.session.value), labelIn(care, mix.care.value));
    });
    files.table("mixes", [&](CsvWriter& csv) {
        for (const core::KeptMix* mix : mixes) {
            csv.text(labelIn(sessions, mix->session.value)).text(labelIn(care, mix->care.value));
            csv.text(core::isoText(mix->madeAt)).text(core::wordFor(mix->kind)).text(mix->title);
            csv.text(mix->amounts).text(mix->workings).text(mix->cautions).endRow();
        }
    });
}

void writeBands(const core::Shelves& shelves, const TableFiles& files) {
    const ById plant(shelves.plants);
    const auto bands = inOrderOf(shelves.ownBands, [&](const core::OwnBand& band) {
        return std::tuple(std::string_view(plant(band.plant).botanicalName),
                          std::string_view(plant(band.plant).cultivar), band.quantity, band.stage);
    });
    files.table("own_bands", [&](CsvWriter& csv) {
        for (const core::OwnBand* band : bands) {
            csv.text(core::wordFor(band->stage)).text(core::factsOf(band->quantity).word);
            csv.text(plant(band->plant).botanicalName).text(plant(band->plant).cultivar);
            csv.figure(band->low).figure(band->high).text(band->note).endRow();
        }
    });
}

void writeLogger(const core::Records& records, const TableFiles& files) {
    const ById station(records.shelves.stations);
    const auto days = inOrderOf(records.loggerDays, [&](const core::LoggerDay& day) {
        return std::tuple(std::string_view(station(day.station).name), day.quantity, day.day);
    });
    files.table("logger", [&](CsvWriter& csv) {
        for (const core::LoggerDay* day : days)
            for (const core::Sample& sample : day->samples)
                csv.text(station(day->station).name)
                    .text(core::factsOf(day->quantity).word)
                    .text(core::isoText(core::momentOf(*day, sample)))
                    .figure(sample.value)
                    .endRow();
    });
    files.table("logger_formats", [&](CsvWriter& csv) {
        for (const core::LoggerFormat& format : records.loggerFormats)
            csv.text(format.name).text(format.header).text(format.mapping).endRow();
    });
}

}  // namespace

void writeConditions(const core::Records& records, const SessionLabels& sessions, const TableFiles& files) {
    const CareLabels care = writeCare(records, files);
    writeMixes(records, sessions, care, files);
    writeBands(records.shelves, files);
    writeLogger(records, files);
}

}  // namespace db
