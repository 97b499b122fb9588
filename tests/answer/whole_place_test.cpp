// What is said of a place as a whole.

#include "answer/whole_place.h"

#include "support/jobs.h"
#include "support/trees.h"
#include "tree/best.h"

#include <gtest/gtest.h>

namespace toft::answer {
namespace {

struct Built {
    explicit Built(site::Job stated) : job(std::move(stated)) {}
    site::Job job;
    tree::Workplace at{
        support::small_shop().catalogue, support::small_shop().book, job, {}, nullptr};
    tree::Tree tree = tree::tree_of(at);
};

TEST(WholePlace, WithoutAWayOnlyBuildingsFedFromTheHouseAreArgued) {
    const Built built(support::tree_job({support::the_house, 0}));
    EXPECT_EQ(walks_for({built.at, built.tree, nullptr}).size(), 1u);
    const tree::Best best = tree::cheapest(built.at, built.tree, {});
    ASSERT_TRUE(best.found);
    EXPECT_EQ(walks_for({built.at, built.tree, &*best.found}).size(), 2u);
}

TEST(WholePlace, AdviceForOneBuildingNamesItAndNoneIsGivenTwice) {
    site::Job job = support::tree_job({support::the_house, support::the_house});
    job.buildings[2].use = site::Use::hot_tub;
    const Built built(job);
    const auto all = advice_for({built.at, built.tree, nullptr});
    bool named = false;
    for (std::size_t i = 0; i < all.size(); ++i) {
        named = named || all[i].about.find(", b1") != std::string::npos;
        for (std::size_t k = 0; k < i; ++k) {
            EXPECT_FALSE(all[i].about == all[k].about && all[i].says == all[k].says);
        }
    }
    EXPECT_TRUE(named);
}

TEST(WholePlace, LinesAreSpokenOfOnlyWhereThereAreThree) {
    site::Job job = support::tree_job({support::the_house, support::the_house});
    EXPECT_TRUE(about_lines(job).empty());
    job.intake.phases = 3;
    for (site::Run& run : job.runs) run.phases = 1;
    EXPECT_EQ(about_lines(job).size(), 1u);
    for (site::Run& run : job.runs) run.phases = 3;
    ASSERT_EQ(about_lines(job).size(), 1u);
    EXPECT_NE(about_lines(job).front().find("L1 carries the most"), std::string::npos);
}

}  // namespace
}  // namespace toft::answer
