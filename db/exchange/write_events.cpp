// SPDX-License-Identifier: MIT
#include "db/exchange/write_events.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>

#include "db/exchange/in_order.h"
#include "db/logbook_error.h"

namespace db {

namespace {

using Codes = std::unordered_map<std::int64_t, std::string>;

Codes codesOf(const core::Records& records) {
    Codes codes;
    for (const core::BatchRecord& record : records.batches) codes.emplace(record.batch.id.value, record.batch.code);
    return codes;
}

std::string codeIn(const Codes& codes, core::BatchId batch) {
    const auto found = codes.find(batch.value);
    return found == codes.end() ? std::string() : found->second;
}

void writeFindings(const core::Records& records, const TableFiles& files) {
    const ById cause(records.shelves.lossCauses);
    files.table("findings", [&](CsvWriter& csv) {
        for (const auto& [batch, checks] : records.batches)
            for (const core::Check& check : checks)
                for (const core::Finding& finding : check.findings)
                    csv.text(batch.code)
                        .text(core::isoText(check.checkedOn))
                        .text(core::nameOf(finding.position))
                        .text(core::wordFor(finding.outcome))
                        .text(cause(finding.cause).name)
                        .endRow();
    });
}

void writeReadings(const core::Records& records, const TableFiles& files) {
    const ById station(records.shelves.stations);
    const auto readings = inOrderOf(records.readings, [&](const core::Reading& reading) {
        return std::tuple(reading.readAt, std::string_view(station(reading.station).name), reading.quantity,
                          reading.value, std::string_view(reading.note));
    });
    files.table("readings", [&](CsvWriter& csv) {
        for (const core::Reading* reading : readings)
            csv.text(station(reading->station).name)
                .text(core::factsOf(reading->quantity).word)
                .text(core::isoText(reading->readAt))
                .figure(reading->value)
                .text(reading->note)
                .endRow();
    });
}

/// "photos/0001.jpg": what a picture is told by its first byte.
std::string fileOfPhoto(std::size_t number, const core::ImageBytes& image) {
    constexpr std::uint8_t firstOfPng = 0x89;
    constexpr std::size_t digits = 4;
    std::string name = std::to_string(number);
    name.insert(0, name.size() < digits ? digits - name.size() : 0, '0');
    return "photos/" + name + (!image.empty() && image.front() == firstOfPng ? ".png" : ".jpg");
}

void writePhotos(const core::Records& records, const Codes& codes, const TableFiles& files) {
    const auto photos = inOrderOf(records.photos, [&](const core::PhotoRecord& record) {
        const std::string_view image(reinterpret_cast<const char*>(record.image.data()), record.image.size());
        return std::tuple(record.photo.takenOn, codeIn(codes, record.photo.batch),
                          std::string_view(record.photo.caption), image);
    });
    std::error_code failed;
    if (!photos.empty() && !std::filesystem::create_directory(files.folder() / "photos", failed))
        throw LogbookError("The folder for the photos can't be made: " + failed.message() + ".");
    files.table("photos", [&](CsvWriter& csv) {
        for (std::size_t place = 0; place < photos.size(); ++place) {
            const auto& [photo, image] = *photos[place];
            const std::string name = fileOfPhoto(place + 1, image);
            files.file(name, [&bytes = image](std::ostream& out) {
                out.write(reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
            });
            csv.text(codeIn(codes, photo.batch))
                .text(core::isoText(photo.takenOn))
                .text(photo.caption)
                .text(name)
                .endRow();
        }
    });
}

}  // namespace

void writeEvents(const core::Records& records, const TableFiles& files) {
    const Codes codes = codesOf(records);
    writeFindings(records, files);
    writeReadings(records, files);
    writePhotos(records, codes, files);
}

}  // namespace db
