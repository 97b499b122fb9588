#include "special/advice.h"

#include "special/advising.h"

namespace toft::special {
namespace {

TEST(Advice, EverythingSaidHasItsClauseAndItsSource) {
    site::Job job = with_circuit(site::CircuitKind::vehicle_charging);
    job.buildings[1].construction = site::Construction::steel_container;
    for (std::size_t u = 0; u < site::words<site::Use>().size(); ++u) {
        job.buildings[1].use = static_cast<site::Use>(u);
        std::set<std::string> abouts;
        for (const Advice& advice : advised(job)) {
            EXPECT_TRUE(abouts.insert(advice.about).second) << advice.about;
            EXPECT_FALSE(advice.asks.empty()) << advice.about;
            EXPECT_FALSE(advice.says.empty()) << advice.about;
            ASSERT_NE(advice.footing, nullptr) << advice.about;
            EXPECT_FALSE(advice.footing->clause.empty()) << advice.about;
            EXPECT_FALSE(advice.footing->citation->source.empty()) << advice.about;
        }
    }
}

TEST(Advice, APlainShedHearsOfSurgesAndArcsOnly) {
    for (const Advice& advice : advised(support::plain_job())) {
        EXPECT_TRUE(holds(advice.about, "surge") || holds(advice.about, "arc")) << advice.about;
    }
}

}  // namespace
}  // namespace toft::special
