#include "earth/rod.h"
#include "groundwork/grounding.h"
#include "price/electrode.h"
#include "support/draws.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace toft::answer {
namespace {

using support::between;
using support::measured;
using support::number_between;

/// What those rods, a length apart, read at the worst time of the year.
double worst_of(const site::Job& job, int rods, double length_m) {
    const Prepared p(job);
    const Metres length = metres(length_m);
    const auto year =
        study::through_the_year(support::catalogue(), p.soil(),
                                study::rods_in_a_line(rods, length, millimetres(14.2), length));
    EXPECT_TRUE(year.solved);
    return year.high.number();
}

site::Job in_soil(double ohm_m, std::optional<site::Season> when) {
    site::Job job = support::plain_job();
    job.ground.resistivity = measured(ohm_metres(ohm_m));
    job.ground.read_when = when;
    return job;
}

TEST(RodByLength, IsTheClosedFormInEvenSoil) {
    // Dwight: rho/2 pi L (ln 4L/r - 1) with r the radius; 1.2 m of 14.2 mm in 50 ohm metres.
    const auto side = side_of(in_soil(50, site::Season::dry));
    ASSERT_EQ(side.over_length.size(), 16u);  // to 9.6 m, half a section at a time
    for (const RodPointAnswer& p : side.over_length) {
        const double l = p.length_m;
        const double dwight = 50 / (2 * M_PI * l) * (std::log(4 * l / 0.0071) - 1);
        EXPECT_NEAR(p.high_ohm / dwight, 1, 0.02) << l;
        EXPECT_EQ(p.low_ohm, p.high_ohm) << "read dry, one soil: no band";
    }
}

RC_GTEST_PROP(RodByLength, ALongerRodNeverReadsHigher, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    const auto points = side_of(job).over_length;
    RC_ASSERT(points.size() == 16u);
    for (std::size_t i = 1; i < points.size(); ++i) {
        RC_ASSERT(points[i].length_m > points[i - 1].length_m);
        RC_ASSERT(points[i].high_ohm <= points[i - 1].high_ohm * (1 + 1e-9));
        RC_ASSERT(points[i].low_ohm <= points[i - 1].low_ohm * (1 + 1e-9));
    }
}

TEST(RodTargets, AreFiftyVoltsOverTheRatingAndTwoHundredOhms) {
    const auto targets = side_of(support::plain_job()).targets;
    ASSERT_EQ(targets.size(), 3u);
    EXPECT_NEAR(targets[0].target_ohm, 200, 1e-9);        // the note to Table 41.5
    EXPECT_NEAR(targets[1].target_ohm, 50 / 0.03, 1e-9);  // BS 7671 411.5.3 and Table 41.5
    for (const auto& target : targets) EXPECT_FALSE(target.why.empty());
}

TEST(RodTargets, ALostNeutralWouldAskForFewOhms) {
    // 60 A at 230 V leave 3.83 ohms; in series with RA no more than 50 V of 253 stand on RA.
    site::Job job = support::plain_job();
    job.intake.demand = measured(amperes(60));
    job.buildings[1].load = measured(amperes(1e-9));
    const auto targets = side_of(job).targets;
    EXPECT_GT(targets.at(2).target_ohm, 0.5);
    EXPECT_LT(targets.at(2).target_ohm, 50 / 40.0);
    job.intake.earthing = site::Earthing::tn_s;
    EXPECT_EQ(side_of(job).targets.size(), 2u) << "no neutral is lost there";
}

RC_GTEST_PROP(RodTargets, RodsMeetThemAtTheWorstSeasonAndASectionLessWouldNot, ()) {
    const auto when = *rc::gen::element<std::optional<site::Season>>(
        site::Season::wet, site::Season::dry, std::nullopt);
    const site::Job job = in_soil(number_between(20, 3000), when);
    for (const RodTargetAnswer& target : side_of(job).targets) {
        for (const RodChoiceAnswer& c : target.choices) {
            RC_ASSERT(std::abs(c.high_ohm - worst_of(job, c.rods, c.length_m)) < 1e-9);
            RC_ASSERT(c.high_ohm <= target.target_ohm);
            if (c.length_m < 1.3) continue;
            RC_ASSERT(worst_of(job, c.rods, c.length_m - 1.2) > target.target_ohm);
        }
        const double most = worst_of(job, 4, 9.6);
        RC_ASSERT(target.choices.empty() == (most > target.target_ohm));
        RC_ASSERT(target.says.empty() == !target.choices.empty());
    }
}

RC_GTEST_PROP(RodTargets, TheCheapestStandsFirstAndIsPricedByThePiece, ()) {
    const site::Job job = in_soil(number_between(20, 3000), site::Season::wet);
    Silent silent;
    for (const RodTargetAnswer& target : side_of(job).targets) {
        double before = 0;
        for (const RodChoiceAnswer& c : target.choices) {
            RC_ASSERT(c.price >= before);
            before = c.price;
            const double pieces = c.rods * std::round(c.length_m / 1.2);
            RC_ASSERT(
                std::abs(c.price -
                         price::electrode_price(silent, support::demo_book(), pieces).number()) <
                1e-9);
            RC_ASSERT(c.spacing_m == (c.rods > 1 ? c.length_m : 0));
        }
    }
}

TEST(RodTargets, RockIsSaidToWantOtherGroundOrAnotherWay) {
    const auto targets = side_of(in_soil(20000, site::Season::wet)).targets;
    EXPECT_TRUE(targets[0].choices.empty());
    EXPECT_NE(targets[0].says.find("not with 4 rods of 9.6 m"), std::string::npos);
}

TEST(ElectrodeThroughTheYear, ItsWorstIsWhatTheSchemesAreJudgedBy) {
    for (const auto when : {site::Season::wet, site::Season::dry}) {
        site::Job job = in_soil(80, when);
        const double judged = support::prepared(job).building.ra_most.number();
        EXPECT_NEAR(side_of(job).year.high_ohm / judged, 1, 0.02);
    }
}

TEST(ElectrodeThroughTheYear, ReadInTheWetItRisesReadInTheDryItDoesNot) {
    const YearAnswer wet = side_of(in_soil(80, site::Season::wet)).year;
    EXPECT_GT(wet.high_ohm, 1.3 * wet.low_ohm);
    EXPECT_EQ(wet.low_when, "as the soil was read");
    EXPECT_EQ(wet.high_when, "top of the ground dried out");
    const YearAnswer dry = side_of(in_soil(80, site::Season::dry)).year;
    EXPECT_EQ(dry.high_ohm, dry.low_ohm);
    EXPECT_LT(dry.high_ohm, wet.high_ohm);
}

TEST(ElectrodeThroughTheYear, ThatNobodySaysWhenItWasReadIsTakenAsWet) {
    EXPECT_EQ(side_of(in_soil(80, std::nullopt)).year.high_ohm,
              side_of(in_soil(80, site::Season::wet)).year.high_ohm);
}

TEST(ElectrodeThroughTheYear, AReadingSpeaksForItselfWhateverTheShape) {
    site::Job job = in_soil(80, site::Season::dry);
    job.buildings[1].electrode.resistance = measured(ohms(64));
    EXPECT_NEAR(side_of(job).year.low_ohm, 64, 1e-9);
    EXPECT_NEAR(side_of(job).year.high_ohm, 64, 1e-9);
    job.ground.read_when = site::Season::wet;
    EXPECT_NEAR(side_of(job).year.low_ohm, 64, 1e-9);
    EXPECT_GT(side_of(job).year.high_ohm, 64 * 1.3);
    EXPECT_EQ(side_of(job).year.high_when, "driest or frozen ground");
    job.buildings[1].electrode.resistance = between(ohms(40), ohms(150));
    EXPECT_NEAR(side_of(job).year.low_ohm, 40, 1e-9);
    EXPECT_NEAR(side_of(job).year.high_ohm, 150, 1e-9);
}

TEST(ElectrodeThroughTheYear, AFoundationOnAMembraneIsNoElectrode) {
    site::Job job = support::plain_job();
    site::Electrode& e = job.buildings[1].electrode;
    e = {};
    e.kind = site::ElectrodeKind::foundation;
    e.length = measured(metres(20));
    e.membrane = site::Answer::yes;
    EXPECT_EQ(side_of(job).year.high_ohm, study::unusable.number());
    e.membrane = site::Answer::unknown;
    EXPECT_EQ(side_of(job).year.high_ohm, study::unusable.number()) << "nobody saw what lies there";
    e.membrane = site::Answer::no;
    EXPECT_LT(side_of(job).year.high_ohm, 20);
}

TEST(ElectrodeThroughTheYear, ATestByFallOfPotentialSpeaksForItWithItsError) {
    site::Job job = in_soil(80, site::Season::dry);
    for (const auto& [p, r] : {std::pair{25.0, 39.0}, {31.0, 40.0}, {37.0, 41.0}}) {
        job.buildings[1].electrode.spikes.push_back({metres(50), metres(p), ohms(r)});
    }
    const GroundSideAnswer side = side_of(job);
    ASSERT_TRUE(side.read_ohm && side.read_error_ohm);
    EXPECT_NEAR(*side.read_ohm, 40, 1.5);
    EXPECT_FALSE(side.read_says.empty());
    EXPECT_LE(side.year.low_ohm, *side.read_ohm);
    EXPECT_GE(side.year.high_ohm, *side.read_ohm);
}

TEST(ElectrodeThroughTheYear, MoreThatIsOpenWidensIt) {
    site::Job job = support::plain_job();
    all_year(job, 80);
    const YearAnswer known = side_of(job).year;
    job.ground.resistivity = between(ohm_metres(40), ohm_metres(160));
    const YearAnswer bracketed = side_of(job).year;
    job.ground.resistivity = {};
    job.ground.soil = "";
    const YearAnswer open = side_of(job).year;
    EXPECT_LT(bracketed.low_ohm, known.low_ohm);
    EXPECT_GT(bracketed.high_ohm, known.high_ohm);
    EXPECT_LT(open.low_ohm, bracketed.low_ohm);
    EXPECT_GT(open.high_ohm, bracketed.high_ohm);
}

}  // namespace
}  // namespace toft::answer
