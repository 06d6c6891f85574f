// SPDX-License-Identifier: MIT
#include "app/console/demo_command.h"

#include "app/console/arguments.h"
#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"
#include "core/demo/demo_season.h"
#include "db/actions/records_actions.h"

namespace console {

std::string DemoCommand::name() const {
    return "demo";
}

std::string DemoCommand::summary() const {
    return tr("make a logbook with invented records, to try things out");
}

void DemoCommand::declare(Options& options) {
    options.argument("LOG", tr("the file to make; one that is there is left alone"), file_);
    options.option("--batches", "N", tr("how many, from 1 to 100000 (60)"), batches_);
    options.option("--seed", "S", tr("the same seed gives the same records (1)"), seed_);
    options.option("--on", "DATE", tr("the day on which the newest batches are still open (today)"), on_);
    options.flag("--json", tr("for machines"), isJson_);
}

int DemoCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    core::DemoWish wish{.today = surroundings.today};
    if (batches_) wish.batches = static_cast<int>(wholeFrom("--batches", *batches_, 1, 100'000));
    if (seed_) wish.seed = static_cast<std::uint32_t>(wholeFrom("--seed", *seed_, 0, 4'294'967'295));
    if (on_) wish.today = dateFrom("--on", *on_);
    if (wish.today > surroundings.today ||
        wish.today < core::Date{std::chrono::year{1810}, std::chrono::January, std::chrono::day{1}})
        throw WrongArgument(filled(tr("--on is %1; a day from 1810-01-01 to today (%2) is allowed."),
                                   {core::isoText(wish.today), core::isoText(surroundings.today)}));
    core::Records records = core::demoSeason(wish);
    const core::LogbookFacts facts = records.shelves.facts;
    const std::size_t batches = records.batches.size();
    const auto made = createAndFill(file_, facts, surroundings, [&records](db::Logbook& logbook) {
        return db::addRecords(logbook, std::move(records), "invented demo records", true);
    });
    if (!made) {
        err << linesOf(made.error());
        return Refused;
    }
    if (isJson_)
        print({{"logbook", file_}, {"name", facts.name}, {"batches", batches}, {"invented", true}}, out);
    else
        out << filled(tr("Made the demo logbook %1 with %2. Its records are invented."),
                      {file_, plot::batchesText(static_cast<int>(batches)).toStdString()})
            << '\n';
    return Done;
}

}  // namespace console
