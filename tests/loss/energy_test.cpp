// Energy lost in a run over a year, and its worth over the years.

#include "loss/energy.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/questions.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::loss {
namespace {

using study::Protective;

study::RunScheme of_size(double mm2) {
    return support::scheme(support::cable(3, mm2), Protective::core,
                           support::device("BS EN 60898", "B", 32));
}

struct Outcome {
    Year<Silent> year;
    Lost<Silent> lost;
    study::Figures<Silent> figures;
};

Outcome outcome(const site::Job& job, double mm2) {
    Silent silent;
    Outcome out;
    const auto setting = support::prepared(job);
    study::work_out(silent, setting, of_size(mm2), study::Stage::drop, out.figures);
    out.year = year_of(silent, setting);
    out.lost = lost_by(silent, setting, out.figures, out.year);
    return out;
}

// Tables of annuities in any textbook of engineering economics: present worth of 1 a year.
TEST(EnergyLost, APoundAYearIsWorthWhatTablesOfAnnuitiesSay) {
    EXPECT_NEAR(worth_today(20, 5), 12.4622, 5e-5);
    EXPECT_NEAR(worth_today(10, 8), 6.7101, 5e-5);
    EXPECT_NEAR(worth_today(30, 3), 19.6004, 5e-5);
    EXPECT_DOUBLE_EQ(worth_today(15, 0), 15);
}

TEST(EnergyLost, APoundAYearIsWorthTheSumOfItsYears) {
    double sum = 0;
    for (int n = 1; n <= 25; ++n) sum += std::pow(1.04, -n);
    EXPECT_NEAR(worth_today(25, 4), sum, 1e-12);
}

TEST(EnergyLost, AtUnityPowerFactorItIsCurrentTimesVoltsLost) {
    const Outcome out = outcome(support::plain_job(), 4);
    // 20 A; the reactance of 4 mm2 moves the drop by less than a part in a thousand.
    EXPECT_NEAR(out.lost.full_kw, 20 * out.figures.drop.number() / 1000, 1e-3 * out.lost.full_kw);
}

TEST(EnergyLost, OnThreePhasesItIsThatOfThreeLinesAndNoNeutral) {
    const site::Job job = support::on_three_phases(support::plain_job());
    const Outcome out = outcome(job, 4);
    EXPECT_NEAR(out.lost.full_kw, 3 * 20 * out.figures.drop.number() / 1000,
                1e-3 * out.lost.full_kw);
}

TEST(EnergyLost, FullLoadAllYearLosesAllHoursOfTheYear) {
    site::Job job = support::plain_job();
    job.buildings[1].energy_kwh_year = support::measured(8760 * 4.6);  // 230 V, 20 A
    const Outcome out = outcome(job, 4);
    EXPECT_NEAR(out.year.full_kw, 4.6, 1e-12);
    EXPECT_NEAR(out.year.hours, 8760, 1e-9);
    job.buildings[1].energy_kwh_year = support::measured(8760 * 9.2);
    EXPECT_NEAR(outcome(job, 4).year.hours, 8760, 1e-9) << "more than full load there is none";
}

TEST(EnergyLost, HalfTheLoadLosesByTheRelationOfLossAndLoadFactor) {
    site::Job job = support::plain_job();
    job.buildings[1].energy_kwh_year = support::measured(8760 * 2.3);
    EXPECT_NEAR(outcome(job, 4).year.hours, 8760 * (0.3 * 0.5 + 0.7 * 0.25), 1e-9);
}

TEST(EnergyLost, WithoutABillTheUseOfTheBuildingSaysHowMuchItDraws) {
    site::Job job = support::plain_job();
    job.buildings[1].use = site::Use::hot_tub;
    const double tub = outcome(job, 4).year.used_kwh;
    job.buildings[1].use = site::Use::shed;
    const double shed = outcome(job, 4).year.used_kwh;
    EXPECT_NEAR(tub, 4.6 * 1000, 1e-9);
    EXPECT_NEAR(shed, 4.6 * 100, 1e-9);
}

RC_GTEST_PROP(EnergyLost, IsNeverMoreWithAThickerCableNorLessOnALongerRun, ()) {
    site::Job job = support::plain_job();
    const double metres_now = *rc::gen::inRange(5, 200);
    job.runs[0].legs[0].length = support::measured(metres(metres_now));
    const Outcome thin = outcome(job, 4);
    const Outcome thick = outcome(job, 6);
    RC_ASSERT(thick.lost.kwh_year < thin.lost.kwh_year);
    job.runs[0].legs[0].length = support::measured(metres(metres_now * 2));
    RC_ASSERT(outcome(job, 4).lost.kwh_year > thin.lost.kwh_year);
}

TEST(EnergyLost, EveryLineOfItsWorkingGivesItsResult) {
    Recording ledger;
    const site::Job job = support::plain_job();
    const auto setting = study::prepare(ledger, support::catalogue(), job, 0, {});
    study::Figures<Recording> figures;
    study::work_out(ledger, setting, of_size(6), study::Stage::drop, figures);
    const auto year = year_of(ledger, setting);
    const auto lost = lost_by(ledger, setting, figures, year);
    const auto cost = cost_over_years(ledger, support::demo_book(), lost.kwh_year);
    EXPECT_EQ(support::wrong_lines(ledger.lines()), std::vector<std::string>());
    EXPECT_GT(cost.value, pounds(0));
}

}  // namespace
}  // namespace toft::loss
