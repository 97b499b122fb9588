#include "study/figures.h"

#include "device/curve.h"
#include "support/catalogue.h"
#include "support/draws.h"
#include "support/jobs.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::study {
namespace {

using support::agree;
using support::plain_leg;
using support::prepared;

Figures<Silent> worked_out(const site::Job& job, const RunScheme& scheme, Stage stage) {
    Silent ledger;
    Figures<Silent> figures;
    work_out(ledger, prepared(job), scheme, stage, figures);
    return figures;
}

struct Recorded {
    Recording ledger;
    Figures<Recording> figures;
};

Recorded recorded(const site::Job& job, const RunScheme& scheme) {
    Recorded r;
    const auto setting = prepare(r.ledger, support::catalogue(), job, 0, {});
    work_out(r.ledger, setting, scheme, Stage::heat, r.figures);
    return r;
}

/// Every figure of `f` as a bare number, in one order for both depths.
template <class L>
std::vector<double> numbers(const Figures<L>& f) {
    return {number_of(plain(f.iz)),
            static_cast<double>(f.governing_leg),
            number_of(plain(f.drop)),
            number_of(plain(f.drop_percent)),
            number_of(plain(f.zs_far)),
            number_of(plain(f.r1_r2_cold)),
            number_of(plain(f.ln_near)),
            number_of(plain(f.le_near)),
            number_of(plain(f.ln_far)),
            number_of(plain(f.le_far)),
            number_of(plain(f.ln_least)),
            number_of(plain(f.le_least)),
            number_of(plain(f.at[0].hot.armour)),
            number_of(plain(f.disconnection)),
            number_of(plain(f.heat_live)),
            number_of(plain(f.heat_path))};
}

RC_GTEST_PROP(Figures, SilentAndRecordingGiveTheSameNumbersToTheLastBit, ()) {
    const support::Drawn drawn = *support::any_drawn();
    const site::Job job = support::job_of(drawn);
    const RunScheme scheme = support::scheme_of(drawn);
    const auto silent = numbers(worked_out(job, scheme, Stage::heat));
    RC_ASSERT(silent == numbers(recorded(job, scheme).figures));
}

RC_GTEST_PROP(Figures, EveryPrintedFormulaGivesItsPrintedResult, ()) {
    const support::Drawn drawn = *support::any_drawn();
    const site::Job job = support::job_of(drawn);
    const Recorded r = recorded(job, support::scheme_of(drawn));
    RC_ASSERT(r.ledger.lines().size() > 50u);
    for (const std::string& wrong : support::wrong_lines(r.ledger.lines())) RC_FAIL(wrong);
}

RC_GTEST_PROP(Figures, EveryInputOfALineStandsBeforeIt, ()) {
    const support::Drawn drawn = *support::any_drawn();
    const site::Job job = support::job_of(drawn);
    const Recorded r = recorded(job, support::scheme_of(drawn));
    for (std::size_t i = 0; i < r.ledger.lines().size(); ++i) {
        for (int input : r.ledger.lines()[i].inputs) {
            RC_ASSERT(input >= 0);
            RC_ASSERT(static_cast<std::size_t>(input) < i);
        }
    }
}

RC_GTEST_PROP(Figures, EveryTableFigureNamesItsSource, ()) {
    const support::Drawn drawn = *support::any_drawn();
    const site::Job job = support::job_of(drawn);
    const Recorded r = recorded(job, support::scheme_of(drawn));
    for (const Line& line : r.ledger.lines()) {
        if (line.origin != Origin::table) continue;
        RC_ASSERT(line.citation != nullptr);
        RC_ASSERT(!line.citation->source.empty());
        RC_ASSERT(!line.citation->locator.empty());
    }
}

TEST(Figures, TheLegThatLiesWorstGovernsTheRating) {
    const site::Job job = support::job_with_legs({plain_leg(site::LegMethod::tray),
                                                  plain_leg(site::LegMethod::buried_in_duct),
                                                  plain_leg(site::LegMethod::clipped)});
    const auto setting = prepared(job);
    const RunScheme scheme =
        support::scheme(support::cable(3, 10), Protective::core, support::fuse(45));
    Silent ledger;
    Figures<Silent> figures;
    work_out(ledger, setting, scheme, Stage::rating, figures);
    EXPECT_EQ(figures.governing_leg, 2);
    EXPECT_EQ(figures.iz,
              cable::leg_rating(ledger, scheme.first().cable->two, setting.legs[1].factors[0], 2));
}

TEST(Figures, TwoHalvesDropWhatTheWholeDrops) {
    const RunScheme scheme =
        support::scheme(support::cable(2, 6), Protective::armour, support::fuse(32));
    const auto half = plain_leg(site::LegMethod::clipped, 15);
    const auto split = worked_out(support::job_with_legs({half, half}), scheme, Stage::drop);
    const auto whole = worked_out(support::job_with_legs({plain_leg(site::LegMethod::clipped, 30)}),
                                  scheme, Stage::drop);
    EXPECT_NEAR(split.drop.number(), whole.drop.number(), 1e-9);
    EXPECT_NEAR(whole.drop_percent, 100 * whole.drop.number() / 230, 1e-12);
}

TEST(Figures, AStageStopsWhereItIsAskedTo) {
    const site::Job job = support::plain_job();
    const RunScheme scheme =
        support::scheme(support::cable(3, 10), Protective::core, support::fuse(45));
    const auto figures = worked_out(job, scheme, Stage::rating);
    EXPECT_EQ(figures.done, Stage::rating);
    EXPECT_EQ(figures.drop, volts(0));
    EXPECT_EQ(figures.zs_far, ohms(0));
    const auto currents = worked_out(job, scheme, Stage::current);
    EXPECT_GT(currents.zs_far, ohms(0));
    EXPECT_EQ(currents.disconnection, seconds(0));
}

RC_GTEST_PROP(Figures, UpToTheCurrentsNothingDependsOnTheHeadOfTheRun, ()) {
    const support::Drawn drawn = *support::any_drawn();
    support::Drawn other = drawn;
    other.device = *rc::gen::inRange<std::size_t>(0, support::catalogue().devices.size());
    const site::Job job = support::job_of(drawn);
    RunScheme elsewhere = support::scheme_of(other);
    elsewhere.fed_from = site::FedFrom::spare_way;
    elsewhere.rcd = &support::catalogue().run_rcds.back();
    RC_ASSERT(numbers(worked_out(job, support::scheme_of(drawn), Stage::current)) ==
              numbers(worked_out(job, elsewhere, Stage::current)));
}

RC_GTEST_PROP(Figures, StageByStageGivesWhatAllAtOnceGives, ()) {
    const support::Drawn drawn = *support::any_drawn();
    const site::Job job = support::job_of(drawn);
    const RunScheme scheme = support::scheme_of(drawn);
    const auto setting = prepared(job);
    Silent ledger;
    Figures<Silent> figures;
    for (Stage stage : {Stage::rating, Stage::drop, Stage::current, Stage::heat}) {
        work_out(ledger, setting, scheme, stage, figures);
    }
    RC_ASSERT(numbers(figures) == numbers(worked_out(job, scheme, Stage::heat)));
}

TEST(Figures, TheLargestLoopIsTheOneThatJustOperatesTheDevice) {
    Silent ledger;
    const site::Job job = support::plain_job();
    const auto setting = prepared(job);
    for (double rating : {20.0, 32.0, 63.0, 100.0}) {
        const RunScheme scheme =
            support::scheme(support::cable(3, 10), Protective::core, support::fuse(rating));
        for (double t : {0.4, 1.0, 3.0, 5.0}) {
            const Ohms z = largest_loop_for(ledger, setting, scheme, seconds(t));
            const Amperes i = setting.supply.c_min * setting.supply.u0 / z;
            const Seconds taken =
                device::operating_time(ledger, {"t", "time"}, *scheme.device, i * (1 + 1e-9));
            EXPECT_TRUE(agree(taken.number(), t, 1e-6)) << rating << " A, " << t << " s";
        }
    }
}

/// Three lines with a load of that much third harmonic, in per cent.
site::Job with_harmonics(double percent) {
    site::Job job = support::on_three_phases(support::plain_job());
    site::Circuit lamps;
    lamps.name = "lamps";
    lamps.phases = 3;
    lamps.load_w = support::measured(13800.0);
    lamps.third_harmonic = support::measured(percent);
    job.buildings[1].load = {};
    job.buildings[1].circuits = {lamps};
    return job;
}

RunScheme four_cores() {
    return support::scheme(support::cable(4, 10), Protective::armour, support::fuse(32));
}

// Table E.52.1 of IEC 60364-5-52, recalled.
TEST(Figures, ThirdHarmonicsTakeTheirShareOfTheRating) {
    const auto iz = [](double percent) {
        return worked_out(with_harmonics(percent), four_cores(), Stage::rating).iz;
    };
    EXPECT_NEAR(iz(30) / iz(0), 0.86, 1e-12);
    EXPECT_NEAR(iz(40) / iz(0), 0.86 / 1.2, 1e-12);
    for (double percent = 0; percent < 100; percent += 2.5) {
        EXPECT_LE(iz(percent + 2.5), iz(percent) * (1 + 1e-12)) << percent;
    }
}

TEST(Figures, ThirdHarmonicsWarmTheCableAndSoRaiseTheDrop) {
    const auto drop = [](double percent) {
        return worked_out(with_harmonics(percent), four_cores(), Stage::drop).drop;
    };
    for (double percent = 0; percent < 100; percent += 2.5) {
        EXPECT_GE(drop(percent + 2.5), drop(percent)) << percent;
    }
}

TEST(Figures, TheWorkingWithThirdHarmonicsAgreesToo) {
    for (const double percent : {20.0, 40.0, 60.0}) {
        const site::Job job = with_harmonics(percent);
        const Recorded r = recorded(job, four_cores());
        EXPECT_EQ(numbers(worked_out(job, four_cores(), Stage::heat)), numbers(r.figures));
        for (const std::string& wrong : support::wrong_lines(r.ledger.lines())) {
            ADD_FAILURE() << wrong;
        }
    }
}

}  // namespace
}  // namespace toft::study
