#include "special/advising.h"

namespace toft::special {
namespace {

using site::AlsoCarried;

site::Job with(std::vector<AlsoCarried> carried) {
    site::Job job = support::plain_job();
    job.runs[0].also_carries = std::move(carried);
    return job;
}

TEST(AlsoCarried, NothingAskedForNothingSaid) {
    for (const Advice& advice : advised(support::plain_job())) {
        EXPECT_FALSE(holds(advice.about, "beside the run")) << advice.about;
        EXPECT_FALSE(holds(advice.about, "second cable")) << advice.about;
    }
}

// 314.4 and 521.8.1: a final circuit is separate from every other, its conductors in one cable.
TEST(AlsoCarried, TwoWayLightingIsOneCircuitOfOneBoardAndASecondCable) {
    const Advice two_way =
        about(with({AlsoCarried::two_way_lighting}), "two-way lighting beside the run");
    EXPECT_TRUE(two_way.needs_a_person);
    EXPECT_TRUE(holds(two_way.says, "a second cable that holds line, both strappers, neutral"));
    EXPECT_TRUE(holds(two_way.says, "at one board"));
    EXPECT_TRUE(holds(two_way.says, "not in the price"));
}

// 528.1: the two bands of voltage.
TEST(AlsoCarried, AlarmsKeepClearOfTheMains) {
    for (const AlsoCarried what : {AlsoCarried::alarm, AlsoCarried::telephone}) {
        const Advice advice = about(with({what}), site::word(what) + " beside the run");
        EXPECT_EQ(advice.footing->clause, "528.1");
        EXPECT_TRUE(holds(advice.says, "a duct of its own"));
    }
}

TEST(AlsoCarried, DataGoWithoutMetalThatJoinsTheEarths) {
    const Advice advice = about(with({AlsoCarried::data}), "data beside the run");
    EXPECT_TRUE(holds(advice.says, "optical fibre without metal"));
    EXPECT_TRUE(holds(about(with({AlsoCarried::data}), "armour or screen of a second cable").says,
                      "insulate the far end"));
}

TEST(AlsoCarried, EveryWordIsAnsweredAndTheSecondEarthSaidOnce) {
    std::vector<AlsoCarried> all;
    for (std::size_t i = 0; i < site::words<AlsoCarried>().size(); ++i) {
        all.push_back(static_cast<AlsoCarried>(i));
    }
    const site::Job job = with(all);
    for (const std::string& word : site::words<AlsoCarried>()) {
        const Advice advice = about(job, word + " beside the run");
        ASSERT_NE(advice.footing, nullptr);
        EXPECT_TRUE(holds(advice.says, "in the price")) << word;
    }
    int earths = 0;
    for (const Advice& advice : advised(job)) {
        if (advice.about == "armour or screen of a second cable") ++earths;
    }
    EXPECT_EQ(earths, 1);
}

}  // namespace
}  // namespace toft::special
