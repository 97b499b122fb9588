#include "answer/selectivity.h"

#include "answer/recorded.h"
#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::answer {
namespace {

site::Job in_series(const char* standard, double rating) {
    site::Job job = support::plain_job();
    job.intake.service_fuse = site::NamedDevice{standard, "", amperes(rating)};
    site::Circuit heater;
    heater.name = "heater";
    heater.load_w = support::measured(3000.0);
    job.buildings[1].circuits = {heater};
    return job;
}

std::vector<SelectivityAnswer> pairs_of(const site::Job& job, const tables::Device& head) {
    const Question q = support::question_of(job);
    const Recorded recorded(
        q, support::scheme(support::cable(3, 10), study::Protective::core_and_armour, head));
    std::vector<SelectivityAnswer> all;
    for (std::size_t i = 0; i < recorded.pairs().size(); ++i) {
        all.push_back(selectivity_answer(recorded.pairs()[i], recorded.protected_by(i)));
    }
    return all;
}

TEST(SelectivityAnswer, NamesBothDevicesAndWhatGoesDark) {
    const auto pairs = pairs_of(in_series("BS 88-3", 80), support::breaker("B", 40));
    ASSERT_EQ(pairs.size(), 2u);
    EXPECT_EQ(pairs[0].upstream, "BS 88-3 80 A");
    EXPECT_EQ(pairs[0].downstream, "B 40 A breaker");
    EXPECT_EQ(pairs[0].protects, "the house");
    EXPECT_EQ(pairs[0].verdict, "partly");
    EXPECT_EQ(pairs[1].upstream, "B 40 A breaker");
    EXPECT_EQ(pairs[1].downstream, "B 16 A RCBO (heater), chosen by the load");
    EXPECT_EQ(pairs[1].protects, "the outbuilding");
}

TEST(SelectivityAnswer, SaysHowFarAndWhereNothingIsPromised) {
    SelectivityAnswer pair;
    pair.verdict = "partly";
    pair.to_a = 610;
    pair.prospective_a = 1205;
    EXPECT_EQ(selectivity_words(pair), "selective up to 610 A of 1205 A");
    pair.gap_from_a = 100;
    pair.gap_to_a = 200;
    EXPECT_EQ(selectivity_words(pair),
              "selective up to 610 A of 1205 A, but of overloads of 100 to 200 A nothing is "
              "promised");
    pair = {};
    pair.verdict = "not known";
    EXPECT_EQ(selectivity_words(pair), "not known");
}

TEST(SelectivityAnswer, ADeviceNobodyNamedIsNotKnown) {
    site::Job job = in_series("BS 88-3", 80);
    job.intake.service_fuse.reset();
    const auto pairs = pairs_of(job, support::breaker("B", 32));
    EXPECT_EQ(pairs[0].upstream, "the operator's fuse");
    EXPECT_EQ(pairs[0].verdict, "not known");
    EXPECT_EQ(pairs[0].to_a, 0);
    EXPECT_FALSE(pairs[0].gap_from_a);
}

}  // namespace
}  // namespace toft::answer
