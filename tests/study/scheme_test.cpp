#include "study/scheme.h"

#include "support/catalogue.h"
#include "support/draws.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::study {
namespace {

RunScheme plain() {
    return support::scheme(support::cable(3, 10), Protective::core, support::fuse(45));
}

TEST(Scheme, ReadsAsWhatItIs) {
    EXPECT_EQ(scheme_key(plain()), "supply-earth/3x10/core/fuse-45/tails");
    RunScheme other = support::scheme(support::cable(2, 2.5), Protective::armour_and_separate,
                                      support::breaker("B", 32));
    other.earthing = BuildingEarthing::own_electrode;
    other.first().separate = &support::conductor(16);
    other.fed_from = site::FedFrom::spare_way;
    other.rcd = &support::catalogue().run_rcds.front();
    EXPECT_EQ(scheme_key(other),
              "own-electrode/2x2.5/armour-and-separate-conductor-16/B32-6kA/spare-way/rcd-100");
}

TEST(Scheme, EveryChoiceShowsInTheKey) {
    std::set<std::string> keys{scheme_key(plain())};
    const auto adds_a_key = [&](const RunScheme& s) { return keys.insert(scheme_key(s)).second; };
    RunScheme s = plain();
    s.earthing = BuildingEarthing::shared_electrode;
    EXPECT_TRUE(adds_a_key(s));
    s = plain();
    s.first().cable = &support::cable(2, 10);
    EXPECT_TRUE(adds_a_key(s));
    s = plain();
    s.first().protective = Protective::core_and_armour;
    EXPECT_TRUE(adds_a_key(s));
    s = plain();
    s.device = &support::breaker("C", 32, 6);
    EXPECT_TRUE(adds_a_key(s));
    s.device = &support::breaker("C", 32, 10);
    EXPECT_TRUE(adds_a_key(s));
    s = plain();
    s.fed_from = site::FedFrom::new_board;
    EXPECT_TRUE(adds_a_key(s));
    s = plain();
    s.first().separate = &support::conductor(10);
    EXPECT_TRUE(adds_a_key(s));
    s = plain();
    s.rcd = &support::catalogue().run_rcds.back();
    EXPECT_TRUE(adds_a_key(s));
}

TEST(Scheme, TheArmourIsLeftOpenAtAnElectrodeOfItsOwn) {
    RunScheme s = plain();
    s.first().protective = Protective::armour;
    EXPECT_TRUE(s.armour_at_far_end());
    s.earthing = BuildingEarthing::own_electrode;
    EXPECT_FALSE(s.armour_at_far_end());
    s = plain();
    EXPECT_FALSE(s.armour_at_far_end());
}

TEST(Scheme, EveryProtectivePathHasAtLeastOneConductor) {
    for (Protective p : {Protective::armour, Protective::core, Protective::core_and_armour,
                         Protective::separate, Protective::armour_and_separate}) {
        EXPECT_TRUE(armour_serves(p) || core_serves(p) || separate_serves(p)) << protective_word(p);
        EXPECT_FALSE(core_serves(p) && separate_serves(p)) << protective_word(p);
    }
}

}  // namespace
}  // namespace toft::study
