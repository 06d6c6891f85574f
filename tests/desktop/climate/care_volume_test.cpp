// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>

#include "app/desktop/readings/care_dialog.h"
#include "tests/desktop/pages/desk.h"

namespace {

using pages::named;
using testing::HasSubstr;

class CareVolume : public pages::Desk {
  protected:
    void open(core::Care care, core::VolumeUnit unit = core::VolumeUnit::Litres) {
        care.station = support::tubNorth;
        core::DisplayUnits units;
        units.volume = unit;
        dialog_ = std::make_unique<desktop::CareDialog>(
            care, QStringLiteral("Tub north"), units, support::today(), [this](const core::Care& done) {
                kept_ = done;
                return desktop::Outcome{.isDone = true, .refusals = {}, .changes = {}};
            });
        pages::show(*dialog_);
    }
    QLineEdit& volume() { return named<QLineEdit>(*dialog_, "careVolume"); }
    void agree() { named<QPushButton>(*dialog_, "saveCare").click(); }
    std::string faults() {
        QStringList all;
        for (const auto* label : dialog_->findChildren<desktop::FaultLabel*>())
            if (!label->fault().isEmpty()) all << label->fault();
        return all.join(u'\n').toStdString();
    }

    std::unique_ptr<desktop::CareDialog> dialog_;
    std::optional<core::Care> kept_;
};

TEST_F(CareVolume, IsTypedInTheGrowersUnitAndKeptInLitres) {
    open({}, core::VolumeUnit::UsGallons);
    volume().setText(QStringLiteral("2"));
    agree();
    ASSERT_TRUE(kept_);
    EXPECT_NEAR(kept_->litres.value(), 7.570823568, 1e-9);
}

TEST_F(CareVolume, MayBeLeftBlank) {
    open({});
    agree();
    ASSERT_TRUE(kept_);
    EXPECT_FALSE(kept_->litres);
}

TEST_F(CareVolume, ThatCannotBeIsMarkedWhereItStands) {
    for (const char* typed : {"0", "-2", "two", "200000"}) {
        kept_.reset();
        open({});
        volume().setText(QString::fromLatin1(typed));
        agree();
        EXPECT_FALSE(kept_) << typed;
        EXPECT_THAT(faults(), HasSubstr("a number above 0, up to 100000 L, is allowed")) << typed;
        EXPECT_EQ(volume().text(), QLatin1String(typed));
    }
}

TEST_F(CareVolume, IsAskedForOnlyWhereSomethingGoesIn) {
    open({});
    auto& kind = named<QComboBox>(*dialog_, "careKind");
    EXPECT_TRUE(volume().isVisibleTo(dialog_.get()));
    volume().setText(QStringLiteral("2"));
    kind.setCurrentIndex(kind.findData(static_cast<int>(core::CareKind::Vented)));
    EXPECT_FALSE(volume().isVisibleTo(dialog_.get()));
    agree();
    ASSERT_TRUE(kept_);
    EXPECT_FALSE(kept_->litres);
}

TEST_F(CareVolume, UntouchedKeepsAllItsDigits) {
    open({.litres = 1.23456789});
    EXPECT_EQ(volume().text().toStdString(), "1.23");
    agree();
    EXPECT_EQ(kept_->litres, 1.23456789);
}

}  // namespace
