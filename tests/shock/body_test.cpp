#include "shock/body.h"

#include "support/catalogue.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::shock {
namespace {

using tables::BodyPath;
using tables::Percentile;
using tables::Skin;

using support::shock_tables;

BodyCurrent<Silent> through(const Person& person, double touch, double footwear = 0,
                            double ground = 0) {
    Silent ledger;
    return body_current(ledger, shock_tables(), person,
                        Footing<Silent>{ohms(footwear), ohm_metres(ground)}, volts(touch));
}

double milliamps(Skin skin, Percentile percentile, BodyPath path, double touch) {
    return through({skin, percentile, path}, touch).current.number() * 1000;
}

/// Own arithmetic of another hand from the same remembered table.
TEST(BodyCurrent, OfDrySkinIsThatOfTheTableOfTouchVoltages) {
    const struct {
        double touch, hands50, hands5, feet50, feet5;
    } rows[] = {{50, 20, 36, 27, 48},      {70, 33, 60, 44, 79},      {110, 66, 115, 89, 154},
                {153, 110, 181, 147, 241}, {200, 157, 250, 209, 333}, {230, 189, 298, 252, 397}};
    for (const auto& row : rows) {
        const auto dry = [&](Percentile p, BodyPath path) {
            return milliamps(Skin::dry, p, path, row.touch);
        };
        EXPECT_NEAR(dry(Percentile::fifty, BodyPath::hand_to_hand), row.hands50, 0.6);
        EXPECT_NEAR(dry(Percentile::five, BodyPath::hand_to_hand), row.hands5, 0.6);
        EXPECT_NEAR(dry(Percentile::fifty, BodyPath::hand_to_both_feet), row.feet50, 0.6);
        EXPECT_NEAR(dry(Percentile::five, BodyPath::hand_to_both_feet), row.feet5, 0.6);
    }
    const auto salt = [&](double touch) {
        return milliamps(Skin::salt_wet, Percentile::five, BodyPath::hand_to_both_feet, touch);
    };
    EXPECT_NEAR(salt(50), 71, 0.6);
    EXPECT_NEAR(salt(70), 101, 0.6);
}

TEST(BodyCurrent, GroundUnderTwoFeetIsOneAndAHalfTimesItsResistivity) {
    const Person person{Skin::dry, Percentile::fifty, BodyPath::hand_to_both_feet};
    const auto found = through(person, 100, 1000, 200);
    EXPECT_NEAR((volts(100) / found.current - found.impedance).number(), 1300, 1e-6);
    EXPECT_NEAR((found.across + found.current * ohms(1300)).number(), 100, 1e-6);
}

TEST(BodyCurrent, HandToHandKnowsNothingOfShoesAndGround) {
    const Person person{Skin::dry, Percentile::fifty, BodyPath::hand_to_hand};
    EXPECT_EQ(through(person, 100, 4000, 3000).current, through(person, 100).current);
}

TEST(BodyCurrent, BelowTheTableTheLowestRowHolds) {
    const Person person{Skin::dry, Percentile::fifty, BodyPath::hand_to_hand};
    EXPECT_NEAR(through(person, 10).impedance.number(), 3250, 1e-9);
    EXPECT_EQ(through(person, 0).current, amperes(0));
    EXPECT_NEAR(through(person, 2000).impedance.number(), 775, 1e-9);
}

TEST(BodyCurrent, StatedConditionsAreOrderedFromDryToWet) {
    Silent ledger;
    double before = 0;
    for (const char* words :
         {"shod on dry ground", "barefoot on wet grass", "wet skin on wet ground"}) {
        const auto* condition = tables::find_condition(shock_tables(), words);
        ASSERT_NE(condition, nullptr) << words;
        const double now =
            body_current(ledger, shock_tables(), *condition, volts(70)).current.number();
        EXPECT_GT(now, before * 1.3) << words;
        before = now;
    }
}

TEST(BodyCurrent, WritesWorkingThatHolds) {
    for (double touch : {12.0, 70.0, 153.0, 230.0}) {
        for (const tables::Condition& condition : shock_tables().conditions) {
            Recording ledger;
            const auto found = body_current(ledger, shock_tables(), condition,
                                            ledger.stated({"Ut", ""}, volts(touch), "computed"));
            Silent silent;
            EXPECT_EQ(found.current.value,
                      body_current(silent, shock_tables(), condition, volts(touch)).current);
            const auto heart =
                heart_current(ledger, {"I.heart", ""}, shock_tables().heart.front(), found.current);
            EXPECT_EQ(heart.value, found.current.value);
            for (const std::string& wrong : support::wrong_lines(ledger.lines())) {
                ADD_FAILURE() << wrong;
            }
        }
    }
}

TEST(BodyCurrent, AcrossTheChestOrFromHandToHandTheHeartFeelsAnotherShare) {
    Silent ledger;
    const auto* hands = tables::find_heart_factor(shock_tables(), "hand to hand");
    ASSERT_NE(hands, nullptr);
    EXPECT_NEAR(heart_current(ledger, {"I", ""}, *hands, amperes(0.1)).number(), 0.04, 1e-15);
}

Person any_person() {
    return {static_cast<Skin>(*rc::gen::inRange(0, 3)),
            static_cast<Percentile>(*rc::gen::inRange(0, 3)),
            static_cast<BodyPath>(*rc::gen::inRange(0, 3))};
}

RC_GTEST_PROP(BodyCurrentLaws, RisesWithVoltageMoreThanInProportion, ()) {
    const Person person = any_person();
    const double touch = *rc::gen::inRange(10, 4000) / 10.0;
    const double more = touch * 1.05;
    const double footwear = *rc::gen::inRange(0, 4000);
    const double ground = *rc::gen::inRange(0, 3000);
    const double a = through(person, touch, footwear, ground).current.number();
    const double b = through(person, more, footwear, ground).current.number();
    RC_ASSERT(b >= a * 1.05 * (1 - 1e-8));
    RC_ASSERT(through(person, touch, footwear + 100, ground).current.number() <= a * (1 + 1e-8));
    RC_ASSERT(through(person, touch, footwear, ground + 50).current.number() <= a * (1 + 1e-8));
}

RC_GTEST_PROP(BodyCurrentLaws, TheBodyKeepsWhatItsOwnImpedanceThereGives, ()) {
    const Person person = any_person();
    const auto found = through(person, *rc::gen::inRange(1, 500), *rc::gen::inRange(0, 4000), 100);
    Silent ledger;
    const auto& points = shock_tables().impedance(person.skin, person.percentile);
    const double share = shock_tables().path_share[static_cast<std::size_t>(person.path)].value;
    const double whole = read_between(ledger, {{"a", ""}, {"b", ""}, {"c", ""}}, points.data(),
                                      points.size(), found.across.number());
    RC_ASSERT(std::fabs(found.impedance.number() / (share * whole) - 1) < 1e-7);
}

RC_GTEST_PROP(BodyCurrentLaws, WetterSkinAndALowerPercentileNeverHaveLess, ()) {
    const Person person = any_person();
    const double touch = *rc::gen::inRange(1, 500);
    const double current = through(person, touch).current.number();
    Person other = person;
    if (person.skin != Skin::salt_wet) {
        other.skin = static_cast<Skin>(static_cast<int>(person.skin) + 1);
        RC_ASSERT(through(other, touch).current.number() >= current * (1 - 1e-9));
    }
    other = person;
    if (person.percentile != Percentile::five) {
        other.percentile = static_cast<Percentile>(static_cast<int>(person.percentile) - 1);
        RC_ASSERT(through(other, touch).current.number() > current);
    }
}

}  // namespace
}  // namespace toft::shock
