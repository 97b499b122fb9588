// What is said of the ground, whatever the job: the worse end is never the kinder one, and knowing
// more never makes it worse.

#include "groundwork/ground.h"
#include "study/ground_memo.h"
#include "support/catalogue.h"
#include "support/draws.h"
#include "support/jobs.h"
#include "support/questions.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::study {
namespace {

using support::number_between;

/// Readings of electrodes over layers have a test of their own below.
site::Job any_job() {
    site::Job job = support::random_ground_job(*rc::gen::arbitrary<unsigned>());
    if (!job.ground.layers.empty()) job.buildings[1].electrode.resistance = {};
    return job;
}

Ohms electrode_of(const site::Job& job, GroundMemo& memo, const Corner& corner = {}) {
    Silent silent;
    const auto setting = prepare(silent, support::catalogue(), job, RunAt{0, 0, &memo}, corner);
    return setting.building.ra_most;
}

Ohms electrode_of(const site::Job& job) {
    GroundMemo memo;
    return electrode_of(job, memo);
}

RC_GTEST_PROP(GroundLaws, TheWorseEndOfAnElectrodeIsNeverBelowAnyOther, ()) {
    const site::Job job = any_job();
    GroundMemo memo;
    const Ohms worse = electrode_of(job, memo);
    for (const End end : {End::better, End::low, End::high}) {
        Corner corner;
        corner.all = end;
        RC_ASSERT(electrode_of(job, memo, corner) <= worse * (1 + 1e-9));
    }
}

/// What a season adds to a reading hangs on the layers: the most over all they may be counts.
TEST(GroundLaws, AReadingOverLayersRisesByTheWorstSeasonOfAnySoilTheyMayBe) {
    site::Job job = support::plain_job();
    job.ground.resistivity = {};
    job.ground.read_when = site::Season::wet;
    job.ground.layers = {{support::between(ohm_metres(166), ohm_metres(400)), metres(4)},
                         {support::measured(ohm_metres(1877)), std::nullopt}};
    site::Electrode& plate = job.buildings[1].electrode;
    plate = {};
    plate.kind = site::ElectrodeKind::plate;
    plate.length = support::measured(metres(20));
    plate.depth = support::measured(metres(0.56));
    plate.resistance = support::measured(ohms(440));
    GroundMemo memo;
    Corner better;
    better.all = End::better;
    better.except = {{"/ground/read_when", End::worse}};
    EXPECT_LE(electrode_of(job, memo, better), electrode_of(job, memo) * (1 + 1e-9));
}

RC_GTEST_PROP(GroundLaws, TheWorseEndOfTheSeparationIsNeverKinderThanAnyOther, ()) {
    const site::Job job = any_job();
    GroundMemo memo;
    Silent silent;
    const auto of = [&](const Corner& corner) {
        return prepare(silent, support::catalogue(), job, RunAt{0, 0, &memo}, corner).building;
    };
    const auto worse = of({});
    for (const End end : {End::better, End::low, End::high}) {
        Corner corner;
        corner.all = end;
        const auto other = of(corner);
        RC_ASSERT(other.gap_least >= worse.gap_least);
        if (!worse.gap_judged) continue;
        RC_ASSERT(other.lift_most <= worse.lift_most * (1 + 1e-9));
    }
}

/// A figure within the range, measured.
template <class Q>
void pin_down(site::Fact<Q>& fact) {
    if (!fact.known || fact.standing != site::Standing::assumed) return;
    const double share = number_between(0, 1);
    fact.low = fact.high = fact.low + (fact.high - fact.low) * share;
}

RC_GTEST_PROP(GroundLaws, KnowingAFactBetterNeverMakesAnElectrodeWorse, ()) {
    site::Job job = any_job();
    const Ohms before = electrode_of(job);
    site::Electrode& e = job.buildings[1].electrode;
    // A figure that contradicts what rods read may well widen what they leave open.
    if (job.ground.rods.empty()) pin_down(job.ground.resistivity);
    pin_down(e.resistance);
    for (site::SoilLayer& layer : job.ground.layers) pin_down(layer.resistivity);
    if (!job.ground.read_when) {
        job.ground.read_when = *rc::gen::arbitrary<bool>() ? site::Season::dry : site::Season::wet;
    }
    if (e.membrane == site::Answer::unknown) {
        e.membrane = *rc::gen::arbitrary<bool>() ? site::Answer::yes : site::Answer::no;
    }
    RC_ASSERT(electrode_of(job) <= before * (1 + 1e-9));
}

/// Fields of every length and number of rods take long: fewer jobs.
constexpr unsigned jobs_said = 20;

TEST(GroundLaws, NoLowerEndStandsAboveItsUpperOne) {
    for (unsigned seed = 0; seed < jobs_said; ++seed) {
        const site::Job job = support::random_ground_job(seed);
        for (const auto& side : answer::ground(support::question_of(job)).sides) {
            EXPECT_LE(side.year.low_ohm, side.year.high_ohm) << seed;
            EXPECT_LE(side.separation.transferred_low, side.separation.transferred_high) << seed;
            for (const auto& p : side.over_length) EXPECT_LE(p.low_ohm, p.high_ohm) << seed;
            for (const auto& way : side.lost_neutral.ways) {
                EXPECT_LE(way.low_v, way.high_v) << seed;
                EXPECT_GE(way.stiff_v, way.high_v * (1 - 1e-9)) << seed;
                EXPECT_LE(way.electrode_low_a, way.electrode_high_a) << seed;
            }
        }
    }
}

/// What schemes are judged by and what is said to people is one figure.
TEST(GroundLaws, TheYearSaidIsNoKinderThanTheYearJudged) {
    for (unsigned seed = 0; seed < jobs_said; ++seed) {
        const site::Job job = support::random_ground_job(seed);
        const auto said = answer::ground(support::question_of(job));
        // A closed form and the field of the same rod differ by less than three per cent.
        EXPECT_GE(said.sides.at(0).year.high_ohm, 0.97 * electrode_of(job).number()) << seed;
    }
}

}  // namespace
}  // namespace toft::study
