#include "search/candidates.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::search {
namespace {

using site::FedFrom;
using study::BuildingEarthing;
using study::Protective;

struct Lists {
    std::vector<Core> cores;
    std::vector<Head> heads;
};

Lists lists_of(const site::Job& job) {
    const Shop shop = shop_for(support::prepared(job));
    return {cores_of(shop), heads_of(shop)};
}

TEST(Candidates, TheWholeListOfAPlainJob) {
    const Lists lists = lists_of(support::plain_job());
    // 3-core: 11 sizes x 2; 2-core: 11 x (1 + 2 x 5) on the supply's earth, 11 on an own rod.
    EXPECT_EQ(lists.cores.size(), 154u);
    // 8 fuses on the tails, 36 breakers in two places, each with three choices of RCD.
    EXPECT_EQ(lists.heads.size(), 240u);
}

TEST(Candidates, NoSchemeTwice) {
    for (unsigned seed = 0; seed < 10; ++seed) {
        const Lists lists = lists_of(support::random_job(seed));
        std::set<std::string> keys;
        for (const Core& core : lists.cores) {
            for (const Head& head : lists.heads) {
                EXPECT_TRUE(keys.insert(study::scheme_key(scheme_of(core, head))).second);
            }
        }
    }
}

TEST(Candidates, EveryCoreCanBeBuilt) {
    for (const Core& core : lists_of(support::plain_job()).cores) {
        EXPECT_EQ(core.separate != nullptr, study::separate_serves(core.protective));
        EXPECT_EQ(core.cable->cores, study::core_serves(core.protective) ? 3 : 2);
        if (core.earthing != BuildingEarthing::own_electrode) continue;
        EXPECT_EQ(core.cable->cores, 2);
        EXPECT_EQ(core.protective, Protective::armour);
    }
}

TEST(Candidates, FusesStandOnTheTailsAndBreakersInBoards) {
    for (const Head& head : lists_of(support::plain_job()).heads) {
        EXPECT_EQ(head.device->fuse(), head.fed_from == FedFrom::tails);
    }
}

TEST(Candidates, ATtHouseSharesItsElectrodeAndHasNoSuppliesEarth) {
    site::Job job = support::plain_job();
    job.intake.earthing = site::Earthing::tt;
    job.intake.electrode = support::measured(ohms(50));
    std::set<BuildingEarthing> seen;
    for (const Core& core : lists_of(job).cores) seen.insert(core.earthing);
    EXPECT_EQ(seen, (std::set<BuildingEarthing>{BuildingEarthing::shared_electrode,
                                                BuildingEarthing::own_electrode}));
}

TEST(Candidates, WishesExclude) {
    site::Job job = support::plain_job();
    job.wishes.smallest_core = support::measured(square_millimetres(16));
    for (const Core& core : lists_of(job).cores) {
        EXPECT_GE(core.cable->section, square_millimetres(16));
    }
    job.wishes.offer = {"armoured XLPE copper"};
    const std::size_t all = lists_of(job).cores.size();
    EXPECT_EQ(all, 6u * 2 + 6 * 11 + 6);
    job.wishes.offer = {"mineral"};
    EXPECT_TRUE(lists_of(job).cores.empty());
}

TEST(Candidates, AStatedFeedIsTheOnlyOne) {
    site::Job job = support::plain_job();
    for (FedFrom place : {FedFrom::spare_way, FedFrom::tails, FedFrom::new_board}) {
        job.runs[0].fed_from = place;
        const Lists lists = lists_of(job);
        EXPECT_EQ(lists.heads.size(), place == FedFrom::tails ? 24u : 108u);
        for (const Head& head : lists.heads) EXPECT_EQ(head.fed_from, place);
    }
}

}  // namespace
}  // namespace toft::search
