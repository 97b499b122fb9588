#include "guard/chain.h"

#include "guard/guarding.h"

namespace toft::guard {
namespace {

using site::Answer;
using site::CircuitKind;

site::Job house_rcd(double sensitivity_ma, Answer delayed) {
    site::Job job = job_with({circuit(CircuitKind::socket_ring, "sockets")});
    job.intake.board.behind_rcd = measured(milliamperes(sensitivity_ma));
    job.intake.board.rcd_delayed = delayed;
    return job;
}

Chain chain(const site::Job& job, const study::RunScheme& scheme, double behind_ma = 0) {
    const View v = view(job);
    return chain_of(v, scheme, milliamperes(behind_ma));
}

TEST(Chain, RunsFromTheHouseOverTheHeadToTheCircuit) {
    const site::Job job = house_rcd(30, Answer::no);
    EXPECT_EQ(chain(job, on_tails()).count, 1u);
    EXPECT_EQ(chain(job, on_tails(), 30).count, 1u);  // not fed from the board
    EXPECT_EQ(chain(job, in_the_board(), 30).count, 2u);
    EXPECT_EQ(chain(job, behind_delayed(in_the_board()), 30).count, 3u);
    EXPECT_EQ(chain(job, by_rcbo()).rcd[0].post, Post::head);
}

// The usual pair of the trade, 100 mA delayed in front of 30 mA ("rcd-pair-thread"), ratio 3.33.
TEST(Chain, ADelayedHundredStandsApartFromThirty) {
    const site::Job job = house_rcd(0, Answer::no);
    const Chain c = chain(job, behind_delayed(on_tails()));
    EXPECT_TRUE(selective(view(job), c.rcd[0], c.rcd[1]));
    EXPECT_FALSE(one_takes_all(view(job), c));
}

TEST(Chain, ThreeHundredDelayedServesToo) {
    const site::Job job = house_rcd(0, Answer::no);
    auto scheme = on_tails();
    scheme.rcd = &support::catalogue().run_rcds.back();
    EXPECT_FALSE(one_takes_all(view(job), chain(job, scheme)));
}

TEST(Chain, TwoThirtiesInARowMayBothAct) {
    const site::Job job = house_rcd(30, Answer::no);
    EXPECT_TRUE(one_takes_all(view(job), chain(job, in_the_board(), 30)));
    EXPECT_TRUE(one_takes_all(view(job), chain(job, by_rcbo())));
}

TEST(Chain, TheRatioAloneIsNotEnoughNorIsTheDelay) {
    const site::Job job = house_rcd(100, Answer::no);
    const Chain quick = chain(job, in_the_board(), 100);
    EXPECT_TRUE(in_current(view(job), quick.rcd[0], quick.rcd[1]));
    EXPECT_FALSE(in_time(quick.rcd[0], quick.rcd[1]));
    const site::Job slow = house_rcd(30, Answer::yes);
    const Chain small = chain(slow, in_the_board(), 30);
    EXPECT_TRUE(in_time(small.rcd[0], small.rcd[1]));
    EXPECT_FALSE(in_current(view(slow), small.rcd[0], small.rcd[1]));
}

TEST(Chain, ADelayThatNobodyReadIsNone) {
    const site::Job job = house_rcd(100, Answer::unknown);
    const Chain c = chain(job, in_the_board(), 100);
    EXPECT_FALSE(selective(view(job), c.rcd[0], c.rcd[1]));
    const auto pairs = pairs_of(view(job), c);
    ASSERT_EQ(pairs.size(), 1u);
    EXPECT_NE(std::string(pairs[0].says).find("nobody said"), std::string::npos);
}

TEST(Chain, TwoDelayedInARowAreNotApartFromEachOther) {
    const site::Job job = house_rcd(300, Answer::yes);
    const Chain c = chain(job, behind_delayed(in_the_board()), 300);
    ASSERT_EQ(c.count, 3u);
    EXPECT_FALSE(selective(view(job), c.rcd[0], c.rcd[1]));
    EXPECT_TRUE(selective(view(job), c.rcd[0], c.rcd[2]));
    EXPECT_FALSE(one_takes_all(view(job), c));
    EXPECT_EQ(pairs_of(view(job), c).size(), 3u);
}

TEST(Chain, OnTnWithTheHousesEarthThereIsNothingToRemark) {
    const site::Job job = house_rcd(0, Answer::no);
    EXPECT_TRUE(remarks_of(view(job), chain(job, on_tails()), ohms(50)).empty());
}

TEST(Chain, OnTtADelayedDeviceBelongsInFrontOfTheRun) {
    site::Job job = house_rcd(0, Answer::no);
    job.intake.earthing = site::Earthing::tt;
    const auto bare = remarks_of(view(job), chain(job, on_tails()), ohms(100));
    ASSERT_EQ(bare.size(), 2u);
    EXPECT_FALSE(bare[0].settled);
    EXPECT_FALSE(bare[1].settled);
    const Chain c = chain(job, behind_delayed(on_tails()));
    const auto guarded = remarks_of(view(job), c, ohms(100));
    EXPECT_TRUE(guarded[0].settled);
    EXPECT_TRUE(guarded[1].settled);
}

// RA x IdN within 50 V: 500 ohm for 100 mA ("electrode-advice", 411.5.3).
TEST(Chain, AnElectrodeTooHighForTheFirstDeviceLeavesTheIncomerBare) {
    const site::Job job = house_rcd(0, Answer::no);
    const View v = view(job, true);
    const Chain c = chain_of(v, behind_delayed(on_tails()), amperes(0));
    EXPECT_TRUE(remarks_of(v, c, ohms(500))[0].settled);
    EXPECT_FALSE(remarks_of(v, c, ohms(510))[0].settled);
}

// Fed from an outbuilding, the first in the row is what stands at the head of a run before.
TEST(Chain, BehindOtherRunsItStartsWithTheirResidualDeviceAndNotWithTheHouses) {
    const site::Job job = house_rcd(30, Answer::no);
    View v = view(job);
    v.at_house = false;
    study::RunScheme scheme = on_tails();
    scheme.fed_from = site::FedFrom::spare_way;
    EXPECT_EQ(chain_of(v, scheme, milliamperes(30)).at(Post::house), nullptr);
    EXPECT_EQ(chain_of(v, scheme, milliamperes(30)).at(Post::before), nullptr) << "there is none";
    study::HeadResidual before;
    before.sensitivity = milliamperes(100);
    before.delayed = true;
    v.before = before;
    const Chain c = chain_of(v, scheme, milliamperes(30));
    ASSERT_NE(c.at(Post::before), nullptr);
    EXPECT_EQ(c.rcd[0].post, Post::before);
    EXPECT_EQ(c.rcd[0].sensitivity, milliamperes(100));
    EXPECT_TRUE(selective(v, c.rcd[0], c.rcd[c.count - 1]));
}

}  // namespace
}  // namespace toft::guard
