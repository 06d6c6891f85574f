// SPDX-License-Identifier: MIT
#include "db/exchange/folder_events.h"

#include <fstream>

#include "core/event_rules.h"
#include "core/units/entered_text.h"
#include "db/actions/session_actions.h"
#include "db/exchange/table_reader.h"

namespace db {

namespace {

class EventReading {
  public:
    EventReading(const std::filesystem::path& folder, const FolderShelves& shelves, const FolderBatches& batches,
                 core::Date today, core::Records& records)
        : folder_(folder),
          shelves_(shelves),
          batches_(batches),
          today_(today),
          // The day is all that an import knows of now, and its end is later than any moment of it anywhere.
          now_(std::chrono::sys_days(today) + std::chrono::days(2)),
          records_(records) {}

    void takeReading(TableRow& row);
    void takePhoto(TableRow& row);

  private:
    core::ImageBytes picture(TableRow& row) const;

    const std::filesystem::path& folder_;
    const FolderShelves& shelves_;
    const FolderBatches& batches_;
    core::Date today_;
    core::Moment now_;
    core::Records& records_;
};

void EventReading::takeReading(TableRow& row) {
    core::Reading reading;
    reading.id.value = newId();
    reading.station = stationIn(row, shelves_);
    reading.quantity = quantityIn(row);
    reading.readAt = row.moment("read_at").value_or(core::Moment{});
    const std::optional<double> value = row.signedFigure("value");
    reading.note = row.text("note");
    if (!row.isSound() || !value) return;
    reading.value = *value;
    for (const core::Refusal& refusal : core::faultsIn(reading, shelves_.shelves, now_)) {
        const std::string column = columnOf(exchangeTable("readings"), refusal.field);
        row.fault(column.empty() ? "value" : column, refusal.sentence);
    }
    if (row.isSound()) records_.readings.push_back(std::move(reading));
}

core::ImageBytes EventReading::picture(TableRow& row) const {
    const std::filesystem::path name = row.text("file");
    const bool isOurs = name.parent_path() == "photos" && name.has_filename() && name.filename() != "..";
    std::error_code ignored;
    const std::filesystem::path file = folder_ / name;
    // Never anything that lies elsewhere, and no pipe that would keep us waiting for ever.
    if (!isOurs || !std::filesystem::is_regular_file(std::filesystem::symlink_status(file, ignored))) {
        row.fault("file", core::quotable(name.string()) +
                              " is no file in the folder photos; name one such as photos/0001.jpg.");
        return {};
    }
    core::ImageBytes image(core::largestImage + 1);  // one more tells that it is too large
    std::ifstream in(file, std::ios::binary);
    in.read(reinterpret_cast<char*>(image.data()), static_cast<std::streamsize>(image.size()));
    image.resize(static_cast<std::size_t>(std::max<std::streamsize>(0, in.gcount())));
    return image;
}

void EventReading::takePhoto(TableRow& row) {
    core::PhotoRecord record;
    record.photo.id.value = newId();
    const core::BatchRecord* owner = recordIn(row, batches_);
    const std::optional<core::Date> day = row.date("taken_on");
    record.photo.caption = row.text("caption");
    record.image = picture(row);
    if (!row.isSound() || owner == nullptr || !day) return;
    record.photo.batch = owner->batch.id;
    record.photo.takenOn = *day;
    for (const core::Refusal& refusal : core::faultsIn(record.photo, record.image, owner->batch, today_))
        row.fault(refusal.field == "Photo" ? "file" : columnOf(exchangeTable("photos"), refusal.field),
                  refusal.sentence);
    if (row.isSound()) records_.photos.push_back(std::move(record));
}

}  // namespace

core::StationId stationIn(TableRow& row, const FolderShelves& shelves) {
    const std::string name = row.text("station");
    if (const core::Station* known = shelves.stations.find(name)) return known->id;
    row.fault("station", "No station " + core::quotable(name) + " is in stations.csv or batches.csv.");
    return {};
}

core::SessionId sessionIn(TableRow& row, const FolderBatches& batches) {
    const std::string label = row.text("session");
    if (label.empty()) return {};
    const auto known = batches.sessionOfLabel.find(label);
    if (known != batches.sessionOfLabel.end() && batches.hasSessionTable) return batches.sessions[known->second].id;
    row.fault("session", core::quotable(label) + " is not in sessions.csv.");
    return {};
}

const core::BatchRecord* recordIn(TableRow& row, const FolderBatches& batches) {
    const std::string code = row.text("batch");
    const auto known = batches.codes.find(code);
    if (known == batches.codes.end()) {
        if (batches.hasBatchTable) row.fault("batch", "No batch " + core::quotable(code) + " is in batches.csv.");
        return nullptr;
    }
    return known->second.isSound ? &batches.batches[known->second.place] : nullptr;
}

core::Quantity quantityIn(TableRow& row) {
    const std::string word = row.text("quantity");
    const auto quantity = core::quantityFrom(word);
    if (!quantity)
        row.fault("quantity", core::quotable(word) + " is no quantity that is known here, such as solution_ec.");
    return quantity.value_or(core::Quantity::SolutionEc);
}

void readEvents(const std::filesystem::path& folder, const FolderShelves& shelves, const FolderBatches& batches,
                core::Date today, core::Records& records, FaultList& faults, const std::stop_token& stop) {
    EventReading reading(folder, shelves, batches, today, records);
    const auto table = [&](std::string_view name, void (EventReading::*take)(TableRow&)) {
        readTable(folder, name, faults, stop, [&](TableRow& row) {
            if (row.isWhole()) (reading.*take)(row);
        });
    };
    table("readings", &EventReading::takeReading);
    table("photos", &EventReading::takePhoto);
}

}  // namespace db
