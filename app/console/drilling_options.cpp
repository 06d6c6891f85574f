// SPDX-License-Identifier: MIT
#include "app/console/drilling_options.h"

#include "app/console/arguments.h"
#include "app/console/words.h"
#include "core/units/number_entry.h"

namespace console {

namespace {

double millimetresFrom(const std::string& option, const std::optional<std::string>& text) {
    if (!text) throw WrongArgument(filled(tr("--template needs %1 as well."), {option}));
    if (const std::optional<double> length = core::numberFrom(*text)) return *length;
    throw WrongArgument(
        filled(tr("%1 is %2; a length in millimetres is allowed, such as 44."), {option, shown(*text)}));
}

}  // namespace

void DrillingOptions::declare(Options& options) {
    options.flag("--template", tr("a lid to drill, at true scale; needs no logbook"), isWanted_);
    options.option("--lid", "LxW",
                   tr("length and width of the lid in mm, such as 600x400; of a round one its diameter"), lid_);
    options.option("--hole", "MM", tr("diameter of the holes"), hole_);
    options.option("--web", "MM", tr("least from hole edge to hole edge"), web_);
    options.option("--edge", "MM", tr("least from lid edge to hole edge"), edge_);
    options.flag("--square", tr("rows one behind the other (whichever holds more)"), isSquare_);
    options.flag("--staggered", tr("every second row half a step aside"), isStaggered_);
}

core::Lid DrillingOptions::lid() const {
    if (!lid_) throw WrongArgument(filled(tr("--template needs %1 as well."), {"--lid"}));
    const std::size_t cross = lid_->find_first_of("xX");
    const std::optional<double> length = core::numberFrom(lid_->substr(0, cross));
    const std::optional<double> width =
        cross == std::string::npos ? std::optional(0.0) : core::numberFrom(lid_->substr(cross + 1));
    if (!length || !width)
        throw WrongArgument(
            filled(tr("--lid is %1; length and width in millimetres are allowed, such as 600x400, or the diameter of a "
                      "round lid, such as 290."),
                   {shown(*lid_)}));
    return {.isRound = cross == std::string::npos,
            .length = *length,
            .width = *width,
            .hole = millimetresFrom("--hole", hole_),
            .web = millimetresFrom("--web", web_),
            .edge = millimetresFrom("--edge", edge_)};
}

std::optional<report::DrillingTemplate> DrillingOptions::read() const {
    if (!isWanted_) {
        if (lid_ || hole_ || web_ || edge_ || isSquare_ || isStaggered_)
            throw WrongArgument(tr("--lid, --hole, --web, --edge, --square and --staggered belong to --template."));
        return {};
    }
    if (isSquare_ && isStaggered_) throw WrongArgument(tr("Of --square and --staggered no more than one is allowed."));
    report::DrillingTemplate drilling{.lid = lid()};
    if (const core::Refusals faults = core::faultsIn(drilling.lid); !faults.empty())
        throw WrongArgument(linesOf(faults));
    drilling.layout = isSquare_      ? core::layoutOf(drilling.lid, core::RowPattern::Square)
                      : isStaggered_ ? core::layoutOf(drilling.lid, core::RowPattern::Staggered)
                                     : core::bestLayout(drilling.lid);
    return drilling;
}

}  // namespace console
