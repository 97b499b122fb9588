#include "existing/found_wrong.h"

#include "support/catalogue.h"
#include "support/existing.h"
#include "support/judging.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using study::BuildingEarthing;

study::RunScheme scheme_with(BuildingEarthing earthing, study::Laid laid) {
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    s.earthing = earthing;
    s.first().laid = laid;
    return s;
}

Finding<Silent> found_judged(const site::Job& job, BuildingEarthing earthing,
                             study::Laid laid = study::Laid::anew) {
    const auto s = scheme_with(earthing, laid);
    EXPECT_TRUE(support::recorded_alike("found-wrong", job, s));
    return support::finding_of("found-wrong", job, s);
}

/// Judged against a setting that outlives the finding.
std::vector<price::Item> items_asked(const site::Job& job, BuildingEarthing earthing) {
    const auto setting = support::prepared(job);
    const auto s = scheme_with(earthing, study::Laid::anew);
    Silent silent;
    study::Figures<Silent> figures;
    std::vector<price::Item> items;
    search::add_remedy(found_wrong(silent, Case<Silent>{setting, s, figures}), items);
    return items;
}

TEST(FoundWrong, NothingFoundIsNothingSaid) {
    const auto f = found_judged(support::plain_job(), BuildingEarthing::supply_earth);
    EXPECT_EQ(f.verdict, Verdict::meets);
    EXPECT_FALSE(f.concerns);
}

TEST(FoundWrong, ARodJoinedToTheHousesEarthIsRecordedAndBesideAnOwnOneParted) {
    site::Job job = support::plain_job();
    job.buildings[1].found = {"rod joined to supply earth"};
    EXPECT_EQ(found_judged(job, BuildingEarthing::supply_earth).verdict, Verdict::meets);
    EXPECT_TRUE(items_asked(job, BuildingEarthing::supply_earth).empty());
    EXPECT_EQ(found_judged(job, BuildingEarthing::own_electrode).verdict, Verdict::caution);
    EXPECT_EQ(items_asked(job, BuildingEarthing::own_electrode),
              std::vector<price::Item>{price::Item::parting_two_earths});
}

TEST(FoundWrong, FlatCableInTheGroundMayNotStay) {
    site::Job job = support::plain_job();
    job.runs[0].found = {"joint in the ground", "flat cable in the ground"};
    constexpr auto shared = BuildingEarthing::supply_earth;
    EXPECT_EQ(found_judged(job, shared, study::Laid::kept).verdict, Verdict::fails);
    EXPECT_EQ(found_judged(job, shared, study::Laid::anew).verdict, Verdict::caution);
}

TEST(FoundWrong, EachIsPaidForOnce) {
    site::Job job = support::plain_job();
    job.buildings[0].found = {"neutral and earth joined", "main bonding too small"};
    job.buildings[1].found = {"neutral and earth joined"};
    EXPECT_EQ(items_asked(job, BuildingEarthing::supply_earth),
              (std::vector<price::Item>{price::Item::house_bonding_upgrade,
                                        price::Item::parting_neutral_and_earth}));
}

}  // namespace
}  // namespace toft::rules
