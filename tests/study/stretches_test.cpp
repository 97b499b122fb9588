// A run of several stretches: what each cable adds, and what a change of cable may not do.

#include "study/figures.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::study {
namespace {

using site::LegMethod;
using support::measured;
using support::plain_leg;
using support::stretch;
using tables::Family;

const tables::Cable& xlpe(int cores, double section) { return support::cable(cores, section); }
const tables::Cable& pvc(int cores, double section) {
    return support::cable(Family::armoured_pvc_copper, cores, section);
}

site::Leg named(const tables::Cable& cable, double length_m,
                LegMethod method = LegMethod::buried_direct) {
    site::Leg leg = plain_leg(method, length_m);
    support::name_cable(leg, cable);
    leg.live = cable.section;
    return leg;
}

Figures<Silent> of(const site::Job& job, RunScheme scheme) {
    Silent ledger;
    Figures<Silent> figures;
    const auto setting = support::prepared(job);
    scheme.phases = setting.phases;
    EXPECT_EQ(setting.stretches.size(), scheme.stretches);
    work_out(ledger, setting, scheme, Stage::heat, figures);
    return figures;
}

void expect_alike(const Figures<Silent>& a, const Figures<Silent>& b) {
    const auto near = [](double x, double y) { EXPECT_NEAR(x / y, 1, 1e-12); };
    near(a.iz.number(), b.iz.number());
    near(a.drop.number(), b.drop.number());
    near(a.zs_far.number(), b.zs_far.number());
    near(a.r1_r2_cold.number(), b.r1_r2_cold.number());
    near(a.ln_far.number(), b.ln_far.number());
    near(a.le_far.number(), b.le_far.number());
    near(a.ln_least.number(), b.ln_least.number());
    near(a.le_least.number(), b.le_least.number());
    near(a.disconnection.number(), b.disconnection.number());
    near(a.heat_live, b.heat_live);
    near(a.heat_path, b.heat_path);
}

/// The same cable is laid on both stretches though the survey names two.
TEST(Stretches, TwoOfTheSameCableAreAsOne) {
    for (int phases : {1, 3}) {
        const int cores = phases == 3 ? 5 : 3;
        for (Protective p : {Protective::core, Protective::core_and_armour, Protective::armour}) {
            const auto& cable = xlpe(cores, 10);
            site::Job whole = support::job_with_legs({named(cable, 40)});
            site::Job halves =
                support::job_with_legs({named(cable, 15), named(xlpe(cores, 16), 25)});
            if (phases == 3) {
                whole = support::on_three_phases(whole);
                halves = support::on_three_phases(halves);
            }
            const auto one = of(whole, support::scheme({stretch(cable, p)}, support::fuse(63)));
            const auto two = of(halves, support::scheme({stretch(cable, p), stretch(cable, p)},
                                                        support::fuse(63)));
            if (p == Protective::core) {
                // At the joint the armours meet the core: a fault to the second armour goes home by
                // the core of the first stretch.
                EXPECT_LT(two.zs_far, one.zs_far);
                EXPECT_NEAR(two.le_least / one.le_least, 1, 1e-12);
                EXPECT_NEAR(two.ln_least / one.ln_least, 1, 1e-12);
                continue;
            }
            ASSERT_GT(one.heat_live, 0.1);  // of a fault that lasts
            expect_alike(one, two);
            // Stretch by stretch the first ends in more current than the second.
            EXPECT_GT(two.at[0].hot.earth, two.at[1].hot.earth);
            EXPECT_EQ(two.at[1].hot.earth, two.le_least);
            EXPECT_EQ(two.at[0].earth_most, two.le_near);
            EXPECT_LT(two.at[1].earth_most, two.le_near);
        }
    }
}

TEST(Stretches, LoopAndDropAreTheSumsOfTheirParts) {
    const auto& thick = xlpe(3, 16);
    const auto& thin = pvc(3, 6);
    const auto both = of(support::job_with_legs({named(thick, 30), named(thin, 10)}),
                         support::scheme({stretch(thick, Protective::core_and_armour),
                                          stretch(thin, Protective::core_and_armour)},
                                         support::fuse(32)));
    const auto first =
        of(support::job_with_legs({named(thick, 30)}),
           support::scheme({stretch(thick, Protective::core_and_armour)}, support::fuse(32)));
    const auto second =
        of(support::job_with_legs({named(thin, 10)}),
           support::scheme({stretch(thin, Protective::core_and_armour)}, support::fuse(32)));
    EXPECT_NEAR(both.r1_r2_cold.number(), (first.r1_r2_cold + second.r1_r2_cold).number(), 1e-12);
    // At unity power factor the drops of so short legs differ from their sum by microvolts.
    EXPECT_NEAR(both.drop.number(), (first.drop + second.drop).number(), 1e-3);
    EXPECT_EQ(both.iz, least(first.iz, second.iz));
    EXPECT_EQ(both.governing_leg, 2);
}

TEST(Stretches, InWhichOrderTheyLieChangesNoLoopAndNoDropButWhatABurntConductorMeets) {
    const auto& thick = xlpe(3, 25);
    const auto& thin = xlpe(3, 4);
    const auto near_thick =
        of(support::job_with_legs({named(thick, 30), named(thin, 10)}),
           support::scheme({stretch(thick, Protective::core), stretch(thin, Protective::core)},
                           support::fuse(63)));
    const auto near_thin =
        of(support::job_with_legs({named(thin, 10), named(thick, 30)}),
           support::scheme({stretch(thin, Protective::core), stretch(thick, Protective::core)},
                           support::fuse(63)));
    EXPECT_NEAR(near_thick.drop.number(), near_thin.drop.number(), 1e-12);
    EXPECT_NEAR(near_thick.le_far.number(), near_thin.le_far.number(), 1e-9);
    EXPECT_NEAR(near_thick.ln_least.number(), near_thin.ln_least.number(), 1e-9);
    // A thin cable behind a thick one sees no fault as large as one at the house.
    EXPECT_LT(near_thick.at[1].earth_most, near_thin.at[0].earth_most);
}

TEST(Stretches, AFaultToAnArmourThatDoesNotServeGoesBackThroughItAlone) {
    const auto& cable = xlpe(3, 10);
    const auto f = of(support::job_with_legs({named(cable, 20), named(pvc(3, 10), 20)}),
                      support::scheme({stretch(cable, Protective::core),
                                       stretch(pvc(3, 10), Protective::core_and_armour)},
                                      support::fuse(45)));
    EXPECT_LT(f.at[0].hot.armour, f.at[0].hot.earth);
    EXPECT_EQ(f.at[1].hot.armour, f.at[1].hot.earth);
}

TEST(Stretches, APairHalvesLoopAndDropAndDoublesTheRating) {
    const auto& cable = xlpe(3, 25);
    const site::Job job = support::job_with_legs({named(cable, 40, LegMethod::tray)});
    site::Job grouped = job;
    grouped.runs[0].legs[0].other_loaded_circuits = measured(1.0);
    for (Protective p : {Protective::core, Protective::core_and_armour, Protective::armour}) {
        const auto one = of(job, support::scheme({stretch(cable, p)}, support::fuse(80)));
        const auto pair = of(job, support::scheme({stretch(cable, p, 2)}, support::fuse(80)));
        const auto beside = of(grouped, support::scheme({stretch(cable, p)}, support::fuse(80)));
        EXPECT_NEAR(pair.r1_r2_cold.number(), one.r1_r2_cold.number() / 2, 1e-12);
        EXPECT_NEAR(pair.zs_far.number() - 0.2, (one.zs_far.number() - 0.2) / 2, 1e-12);
        // Each lies beside the other, as beside another loaded circuit.
        EXPECT_NEAR(pair.iz.number(), 2 * beside.iz.number(), 1e-9);
        EXPECT_LT(pair.iz, one.iz * 2.0);
        // Half the current in each, and cooler for it: less than half the drop.
        EXPECT_LT(pair.drop.number(), one.drop.number() / 2);
        EXPECT_GT(pair.drop.number(), 0.4 * one.drop.number());
        // At the house a fault is as large as ever, and one cable may carry it alone.
        EXPECT_EQ(pair.at[0].earth_most, one.at[0].earth_most);
        EXPECT_EQ(pair.at[0].short_most, one.at[0].short_most);
    }
}

TEST(Stretches, TwinAndEarthIndoorsThenArmouredUnderTheLawn) {
    const auto& flat = support::cable(Family::flat_twin_and_earth, 2, 6);
    const auto& armoured = xlpe(3, 6);
    site::Leg inside = named(flat, 12, LegMethod::clipped);
    inside.indoors = site::Answer::yes;
    const site::Job job = support::job_with_legs({inside, named(armoured, 25)});
    const auto f = of(job, support::scheme({stretch(flat, Protective::core),
                                            stretch(armoured, Protective::core_and_armour)},
                                           support::breaker("B", 32)));
    // 12 m of 6 and 2.5 mm2, then 25 m of 6 mm2 with a core of the same and its armour beside it.
    const double core = 3.08e-3;
    const double back = 1 / (1 / core + 1 / armoured.armour_r20.value.number());
    EXPECT_NEAR(f.r1_r2_cold.number(),
                12 * (core + flat.cpc_r20.value.number()) + 25 * (core + back), 2e-4);
    // The plastic of twin and earth bears less: its small protective core burns first.
    EXPECT_GT(f.heat_path, f.heat_live);
    // An armour that is not there cannot be what a fault goes back through.
    EXPECT_EQ(f.at[0].hot.armour, f.at[0].hot.earth);
}

}  // namespace
}  // namespace toft::study
