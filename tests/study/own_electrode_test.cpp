#include "study/ground_memo.h"
#include "study/setting_parts.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::study {
namespace {

using support::between;
using support::measured;

class OwnRod : public ::testing::Test {
protected:
    OwnRod() {
        job_.ground.resistivity = between(ohm_metres(100), ohm_metres(100));
        job_.ground.read_when.reset();
        rod().length = measured(metres(1.2));
        rod().diameter = measured(millimetres(16));
    }
    site::Electrode& rod() { return job_.buildings[1].electrode; }
    double ra(const Corner& corner = {}) {
        setting_ = support::prepared(job_, corner);
        return setting_.building.ra_most.number();
    }
    bool asked(const std::string& pointer) const {
        for (const OpenFact& fact : setting_.open) {
            if (fact.pointer == pointer) return true;
        }
        return false;
    }

    site::Job job_ = support::plain_job();
    Setting<Silent> setting_;
};

TEST_F(OwnRod, InEvenSoilItIsTheClosedForm) { EXPECT_NEAR(ra(), 71.6, 0.1); }

TEST_F(OwnRod, InSoilReadOnceItIsTakenAtItsDriest) {
    job_.ground.resistivity = measured(ohm_metres(100));
    EXPECT_GT(ra(), 1.8 * 71.6);
    EXPECT_TRUE(asked("/ground/read_when"));
    Corner dry;
    dry.except = {{"/ground/read_when", End::high}};
    EXPECT_NEAR(ra(dry), 71.6, 0.1);
}

TEST_F(OwnRod, AReadingRisesWhenTheGroundDries) {
    rod().resistance = measured(ohms(90));
    job_.ground.read_when = site::Season::wet;
    EXPECT_GT(ra(), 1.8 * 90);
    job_.ground.read_when = site::Season::dry;
    EXPECT_NEAR(ra(), 90, 1e-9);
    rod().resistance = between(ohms(40), ohms(120));
    EXPECT_NEAR(ra(), 120, 1e-9) << "a guess stands for the whole year";
}

TEST_F(OwnRod, LayersAreSolvedNotAveraged) {
    job_.ground.resistivity = {};
    job_.ground.layers = {{between(ohm_metres(50), ohm_metres(50)), metres(2)},
                          {between(ohm_metres(500), ohm_metres(500)), std::nullopt}};
    job_.ground.read_when = site::Season::dry;
    // Own two-layer solution of the same rod: 42.4 ohm.
    EXPECT_NEAR(ra(), 42.4, 0.6);
}

TEST_F(OwnRod, AFoundationOnAMembraneIsNoElectrode) {
    rod().kind = site::ElectrodeKind::foundation;
    rod().length = measured(metres(6));
    EXPECT_EQ(ra(), unusable.number()) << "nobody saw what lies under it";
    EXPECT_TRUE(asked("/buildings/1/electrode/membrane"));
    rod().membrane = site::Answer::no;
    EXPECT_LT(ra(), 60);
    rod().membrane = site::Answer::yes;
    EXPECT_EQ(ra(), unusable.number());
}

TEST_F(OwnRod, AWettedFactIsNeverKinder) {
    // Every end of every open fact lies at or below the worse one.
    job_.ground.resistivity = measured(ohm_metres(100));
    const double worse = ra();
    for (const End end : {End::better, End::low, End::high}) {
        Corner corner;
        corner.all = end;
        EXPECT_LE(ra(corner), worse * (1 + 1e-9));
    }
}

}  // namespace
}  // namespace toft::study
