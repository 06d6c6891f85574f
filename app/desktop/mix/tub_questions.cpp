// SPDX-License-Identifier: MIT
// What to do with the solution that is in the tub now.
#include <QCoreApplication>

#include "app/desktop/mix/mix_parts.h"
#include "app/desktop/mix/mix_questions.h"
#include "app/report/mix_words.h"

namespace desktop {

namespace {

using Kind = MixField::Kind;

struct TubWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::MixQuestions)
};

void askDilution(MixForm& form) {
    form.addNumber(Kind::Volume, {"volume", TubWords::tr("&Volume in the tub"), "Volume"});
    form.addNumber(Kind::Ec, {"now", TubWords::tr("EC &now"), "EC now"});
    form.addNumber(Kind::Ec, {"target", TubWords::tr("EC &wanted"), "EC wanted"});
    addWaterEc(form);
    form.addJug();
}

MixReply replyDilution(MixForm& form) {
    const core::TubDilution question{.litres = form.number("volume"),
                                     .ec = form.number("now"),
                                     .targetEc = form.number("target"),
                                     .waterEc = form.number("water"),
                                     .tools = form.tools()};
    return replyTo<core::TubDilution, core::DilutedTub>(form, question, core::faultsIn(question, form.units()),
                                                        core::diluteTub, report::answerOf);
}

void askTopUp(MixForm& form) {
    form.addNumber(Kind::Volume, {"volume", TubWords::tr("Volume &now"), "Volume now"});
    form.addNumber(Kind::Ec, {"now", TubWords::tr("&EC now"), "EC now"});
    form.addNumber(Kind::Volume, {"filled", TubWords::tr("&Volume when full"), "Volume"});
    form.addNumber(Kind::Ec, {"target", TubWords::tr("EC &wanted"), "EC wanted"});
    addWaterEc(form);
    addFullEc(form);
    addFeedParts(form);
    form.addScale();
    form.addSyringe();
    form.addJug();
}

MixReply replyTopUp(MixForm& form) {
    const core::TubTopUp question{.litres = form.number("volume"),
                                  .ec = form.number("now"),
                                  .fullLitres = form.number("filled"),
                                  .feed = {.targetEc = form.number("target"),
                                           .waterEc = form.number("water"),
                                           .fullEc = form.number("full"),
                                           .parts = feedPartsOf(form),
                                           .tools = form.tools()}};
    return replyTo<core::TubTopUp, core::ToppedUpTub>(form, question, core::faultsIn(question, form.units()),
                                                      core::topUpTub, report::answerOf);
}

}  // namespace

std::vector<MixQuestion> tubQuestions() {
    return {{QStringLiteral("dilute"), TubWords::tr("Make the tub weaker"),
             TubWords::tr("The solution has become too strong: how much water brings it down?"), askDilution,
             replyDilution},
            {QStringLiteral("topup"), TubWords::tr("Top up the tub"),
             TubWords::tr("Some of it is gone: how much water and nutrient fill it up to the strength wanted?"),
             askTopUp, replyTopUp}};
}

}  // namespace desktop
