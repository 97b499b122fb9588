#include "site/validate.h"

#include "support/draws.h"
#include "support/jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::site {
namespace {

class Validation : public ::testing::Test {
protected:
    /// The codes of all faults, in order.
    std::vector<std::string> codes() const {
        std::vector<std::string> list;
        for (const Fault& fault : validate(job_)) list.push_back(fault.code);
        return list;
    }
    void expect_only(const std::string& code, const std::string& pointer) const {
        const Faults faults = validate(job_);
        ASSERT_EQ(faults.size(), 1u);
        EXPECT_EQ(faults[0].code, code);
        EXPECT_EQ(faults[0].pointer, pointer);
        EXPECT_FALSE(faults[0].says.empty());
    }

    Job job_ = support::plain_job();
};

using Codes = std::vector<std::string>;

TEST_F(Validation, APlainJobIsSound) { EXPECT_EQ(codes(), Codes{}); }

TEST_F(Validation, AMisspeltBuildingIsNamedWithWhatWasMeant) {
    job_.runs[0].to = "shedd";
    const Faults faults = validate(job_);
    ASSERT_EQ(faults.size(), 1u);
    EXPECT_EQ(faults[0].code, "unknown-building");
    EXPECT_EQ(faults[0].pointer, "/runs/0/to");
    EXPECT_EQ(faults[0].nearest, "shed");
    EXPECT_EQ(faults[0].allowed, (std::vector<std::string>{"house", "shed"}));
}

TEST_F(Validation, OneBuildingAndOnlyOneHasTheIntake) {
    job_.buildings[1].origin = true;
    EXPECT_EQ(codes().front(), "origin");
    job_.buildings[0].origin = false;
    job_.buildings[1].origin = false;
    EXPECT_EQ(codes().front(), "origin");
}

TEST_F(Validation, IdsAreUnique) {
    job_.buildings.push_back(job_.buildings[1]);
    expect_only("duplicate-id", "/buildings/2/id");
}

TEST_F(Validation, AJobNeedsARunAndARunNeedsALeg) {
    job_.runs[0].legs.clear();
    expect_only("no-leg", "/runs/0/legs");
    job_.runs.clear();
    expect_only("no-run", "/runs");
}

TEST_F(Validation, ARunNeverFeedsItsOwnStartNorTheIntake) {
    job_.runs[0].to = "house";
    expect_only("cycle", "/runs/0/to");
    job_.runs[0].from = "shed";
    EXPECT_EQ(codes(), (Codes{"cycle", "orphan", "orphan"}));
    job_.runs[0].to = "shed";
    expect_only("cycle", "/runs/0/to");
}

TEST_F(Validation, ARunThatLeadsNowhereIsAnOrphan) {
    job_.buildings.push_back(job_.buildings[1]);
    job_.buildings[2].id = "barn";
    expect_only("orphan", "/buildings/2");
    job_.runs[0].from = "barn";
    EXPECT_EQ(codes(), (Codes{"orphan", "orphan"}));
}

TEST_F(Validation, ABuildingMayFeedAnother) {
    job_.buildings.push_back(job_.buildings[1]);
    job_.buildings[2].id = "barn";
    job_.runs.push_back(job_.runs[0]);
    job_.runs[1].id = "second";
    job_.runs[1].from = job_.runs[0].to;
    job_.runs[1].to = "barn";
    EXPECT_EQ(codes(), Codes{});
}

/// House, shed, barn; runs 0 and 1 lead to the shed and from there to the barn.
Job shed_and_barn(Job job) {
    job.buildings.push_back(job.buildings[1]);
    job.buildings[2].id = "barn";
    job.runs.push_back(job.runs[0]);
    job.runs[1].id = "second";
    job.runs[1].from = "shed";
    job.runs[1].to = "barn";
    return job;
}

TEST_F(Validation, SeveralRunsMayLeadToOneBuilding) {
    job_.runs.push_back(job_.runs[0]);
    expect_only("duplicate-id", "/runs/1/id");
    job_ = shed_and_barn(support::plain_job());
    job_.runs.push_back(job_.runs[0]);
    job_.runs[2].id = "third";
    job_.runs[2].to = "barn";
    EXPECT_EQ(codes(), Codes{});
    job_.runs.push_back(job_.runs[1]);
    job_.runs[3].id = "fourth";
    std::swap(job_.runs[3].from, job_.runs[3].to);
    EXPECT_EQ(codes(), Codes{}) << "either may feed the other";
}

TEST_F(Validation, ARunWhoseStartIsOnlyFedThroughItsEndCanNeverBeBuilt) {
    job_ = shed_and_barn(support::plain_job());
    job_.runs.push_back(job_.runs[1]);
    job_.runs[2].id = "third";
    std::swap(job_.runs[2].from, job_.runs[2].to);
    expect_only("cycle", "/runs/2/from");
}

TEST_F(Validation, LegsInOneTrenchMustFitTogether) {
    job_ = shed_and_barn(support::plain_job());
    for (site::Run& run : job_.runs) run.legs[0].trench = "drive";
    EXPECT_EQ(codes(), Codes{});
    job_.runs[1].legs[0].surface = Surface::road;
    expect_only("trench", "/runs/1/legs/0/surface");
}

TEST_F(Validation, TheBuildingFedHasALoad) {
    job_.buildings[1].load = {};
    const Faults faults = validate(job_);
    ASSERT_EQ(faults.size(), 1u);
    EXPECT_EQ(faults[0].code, "no-load");
    EXPECT_EQ(faults[0].allowed, (std::vector<std::string>{"load_a", "load_w", "circuits"}));
}

TEST_F(Validation, EveryCircuitHasWattsOrADevice) {
    job_.buildings[1].load = {};
    Circuit lights;
    lights.name = "lights";
    job_.buildings[1].circuits = {lights};
    expect_only("no-load", "/buildings/1/circuits/0");
    job_.buildings[1].circuits[0].device = NamedDevice{"BS EN 60898", "B", amperes(6)};
    EXPECT_EQ(codes(), Codes{});
    job_.buildings[1].circuits[0].device.reset();
    job_.buildings[1].circuits[0].load_w = support::measured(100.0);
    EXPECT_EQ(codes(), Codes{});
}

TEST_F(Validation, AKindWithAUsualRatingNeedsNeither) {
    job_.buildings[1].load = {};
    Circuit ring;
    ring.name = "ring";
    ring.kind = CircuitKind::socket_ring;
    job_.buildings[1].circuits = {ring};
    expect_only("no-load", "/buildings/1/circuits/0");
    EXPECT_TRUE(validate(job_, {CircuitKind::lighting, CircuitKind::socket_ring}).empty());
    EXPECT_FALSE(validate(job_, {CircuitKind::lighting}).empty());
}

TEST_F(Validation, AllFaultsAreFoundTogether) {
    job_.buildings[0].origin = false;
    job_.runs[0].from = "nowhere";
    job_.runs[0].legs.clear();
    EXPECT_EQ(codes(), (Codes{"origin", "unknown-building", "no-leg"}));
}

RC_GTEST_PROP(ValidationLaw, AnyDrawnJobIsSound, ()) {
    const Job job = support::job_of(*support::any_drawn());
    for (const Fault& fault : validate(job)) RC_FAIL(fault.says);
}

}  // namespace
}  // namespace toft::site
