#include "rules/feed_point.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using site::FedFrom;
using support::measured;

Finding<Silent> feed_point_judged(const site::Job& job, const tables::Device& device,
                                  FedFrom place) {
    auto s = support::scheme(support::cable(2, 25), study::Protective::armour, device);
    s.fed_from = place;
    EXPECT_TRUE(support::recorded_alike("feed-point", job, s));
    return support::finding_of("feed-point", job, s);
}

site::Job board(double spare_ways, double max_device, double fuse) {
    site::Job job = support::plain_job();
    job.intake.board.spare_ways = measured(spare_ways);
    job.intake.board.max_device = measured(amperes(max_device));
    job.intake.service_fuse = site::NamedDevice{"BS 88-3", "", amperes(fuse)};
    return job;
}

TEST(FeedPoint, AWayMustBeFree) {
    const auto& b32 = support::breaker("B", 32);
    EXPECT_EQ(feed_point_judged(board(1, 50, 100), b32, FedFrom::spare_way).verdict,
              Verdict::meets);
    const auto none = feed_point_judged(board(0, 50, 100), b32, FedFrom::spare_way);
    EXPECT_EQ(none.verdict, Verdict::fails);
    EXPECT_NE(std::string(none.says).find("no way"), std::string::npos);
    EXPECT_EQ(feed_point_judged(board(0, 50, 100), b32, FedFrom::new_board).verdict,
              Verdict::meets);
}

TEST(FeedPoint, TheBoardTakesNoLargerDeviceThanItsLabelSays) {
    const site::Job job = board(2, 40, 100);
    EXPECT_EQ(feed_point_judged(job, support::breaker("B", 40), FedFrom::spare_way).verdict,
              Verdict::meets);
    EXPECT_EQ(feed_point_judged(job, support::breaker("B", 50), FedFrom::spare_way).verdict,
              Verdict::fails);
    EXPECT_EQ(feed_point_judged(job, support::breaker("B", 50), FedFrom::new_board).verdict,
              Verdict::meets);
}

TEST(FeedPoint, NothingLargerThanTheOperatorsFuse) {
    const site::Job job = board(2, 100, 60);
    EXPECT_EQ(feed_point_judged(job, support::fuse(45), FedFrom::tails).verdict, Verdict::meets);
    EXPECT_EQ(feed_point_judged(job, support::fuse(63), FedFrom::tails).verdict, Verdict::fails);
    EXPECT_EQ(feed_point_judged(job, support::breaker("B", 63), FedFrom::spare_way).verdict,
              Verdict::fails);
    const site::Job large = board(2, 100, 80);
    EXPECT_EQ(feed_point_judged(large, support::fuse(80), FedFrom::tails).verdict,
              Verdict::meets);  // a tie
    EXPECT_EQ(feed_point_judged(large, support::fuse(100), FedFrom::tails).verdict, Verdict::fails);
}

TEST(FeedPoint, AnUnknownFuseIsTheSmallestMetAndAnUnknownWayIsNoWay) {
    site::Job job = board(1, 100, 100);
    job.intake.service_fuse = {};
    EXPECT_DOUBLE_EQ(feed_point_judged(job, support::fuse(32), FedFrom::tails).limit, 60);
    job.intake.board.spare_ways = {};
    const auto& b32 = support::breaker("B", 32);
    EXPECT_EQ(feed_point_judged(job, b32, FedFrom::spare_way).verdict, Verdict::fails);
    EXPECT_EQ(feed_point_judged(job, b32, FedFrom::new_board).verdict, Verdict::meets);
}

TEST(FeedPoint, ALabelNobodyReadAllowsTheLeastThatBoardsTake) {
    site::Job job = board(2, 63, 100);
    job.intake.board.max_device = {};
    EXPECT_EQ(feed_point_judged(job, support::breaker("B", 32), FedFrom::spare_way).verdict,
              Verdict::meets);
    const auto found = feed_point_judged(job, support::breaker("B", 40), FedFrom::spare_way);
    EXPECT_EQ(found.verdict, Verdict::fails);
    EXPECT_DOUBLE_EQ(found.limit, 32);
}

TEST(FeedPoint, ThreePhasesNeedThreeWaysSideBySide) {
    const auto three = [](double ways, FedFrom place) {
        const site::Job job = support::on_three_phases(board(ways, 63, 100));
        auto s = support::scheme(support::cable(4, 10), study::Protective::armour,
                                 support::breaker("B", 32));
        s.phases = 3;
        s.fed_from = place;
        EXPECT_TRUE(support::recorded_alike("feed-point", job, s));
        return support::finding_of("feed-point", job, s);
    };
    EXPECT_EQ(three(3, FedFrom::spare_way).verdict, Verdict::meets);
    const auto found = three(2, FedFrom::spare_way);
    EXPECT_EQ(found.verdict, Verdict::fails);
    EXPECT_NE(std::string(found.says).find("three ways"), std::string::npos);
    EXPECT_EQ(three(0, FedFrom::new_board).verdict, Verdict::meets);
}

TEST(FeedPoint, TailsOverThreeMetresNeedASwitchFuseNearTheMeter) {
    const auto tails = [](site::Fact<Metres> length, FedFrom place) {
        site::Job job = board(2, 63, 100);
        job.intake.tails_length = length;
        const auto& device =
            place == FedFrom::tails ? support::fuse(32) : support::breaker("B", 32);
        return feed_point_judged(job, device, place);
    };
    EXPECT_EQ(tails(measured(metres(3)), FedFrom::tails).verdict, Verdict::meets);  // a tie
    for (FedFrom place : {FedFrom::tails, FedFrom::new_board}) {
        const auto found = tails(measured(metres(3.1)), place);
        EXPECT_EQ(found.verdict, Verdict::caution);
        EXPECT_NE(std::string(found.says).find("tails"), std::string::npos);
        EXPECT_EQ(tails(support::between(metres(2), metres(4)), place).verdict, Verdict::caution);
    }
    EXPECT_EQ(tails(measured(metres(9)), FedFrom::spare_way).verdict, Verdict::meets);
}

}  // namespace
}  // namespace toft::rules
