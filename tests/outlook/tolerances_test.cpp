#include "outlook/tolerances.h"

#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::outlook {
namespace {

using namespace answer;

using support::between;

study::RunScheme a_scheme() {
    return support::scheme(support::cable(3, 4), study::Protective::core,
                           support::breaker("B", 25));
}

tolerance::Wish small_wish() {
    tolerance::Wish wish;
    wish.as_stated = true;
    wish.samples = 4096;
    wish.pool = 256;
    return wish;
}

TEST(Tolerances, SayWhoseSchemeItIsAndWhatTheyDoNotPromise) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].length = between(metres(20), metres(70));
    const auto a = tolerances(support::question_of(job), a_scheme(), small_wish());
    EXPECT_EQ(a.run, "run");
    EXPECT_EQ(a.scheme_key, study::scheme_key(a_scheme()));
    EXPECT_NE(a.scheme.find("4 mm²"), std::string::npos);
    EXPECT_GE(a.notes.size(), 2u);
    EXPECT_FALSE(a.cautions.empty());
    EXPECT_FALSE(a.behind);
    EXPECT_LT(a.found.robust.holds, 1);
}

TEST(Tolerances, ASurveyWithoutRangesIsSaidToHaveNone) {
    const site::Job job = support::plain_job();
    const auto a = tolerances(support::question_of(job), a_scheme(), small_wish());
    bool told = false;
    for (const std::string& note : a.notes) {
        told = told || note.find("No figure of the survey has a range") != std::string::npos;
    }
    EXPECT_TRUE(told);
}

TEST(Tolerances, ARunBehindOthersKeepsWhatTheyLeave) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].length = between(metres(5), metres(15));
    study::Incoming incoming;
    incoming.system = site::Earthing::tn_c_s;
    incoming.ze_working = incoming.ze_hot = incoming.zn_working = incoming.zn_hot = ohms(0.5);
    incoming.ze_least = incoming.zn_least = ohms(0.3);
    incoming.device = &support::breaker("B", 40);
    incoming.drop = 2.5;
    Question question = support::question_of(job);
    question.incoming = &incoming;
    const auto a = tolerances(question, a_scheme(), small_wish());
    EXPECT_TRUE(a.behind);
    const auto alone = tolerances(support::question_of(job), a_scheme(), small_wish());
    const auto use = [](const ToleranceAnswer& one, const char* rule) {
        for (const auto& r : one.found.rules) {
            if (std::string(r.rule->name) == rule) return r.worst;
        }
        return 0.0;
    };
    EXPECT_GT(use(a, "voltage-drop"), use(alone, "voltage-drop"));
    EXPECT_GT(use(a, "disconnection"), use(alone, "disconnection"));
}

TEST(Tolerances, AChanceIsNeverRoundedUpToCertainty) {
    EXPECT_EQ(chance_words({1, 0}), "always");
    EXPECT_EQ(chance_words({0, 0}), "never");
    EXPECT_EQ(chance_words({1, 0.0004}), "more than 99.9 %");
    EXPECT_EQ(chance_words({0.99997, 0.0001}), "more than 99.9 %");
    EXPECT_EQ(chance_words({0, 0.0004}), "less than 0.1 %");
    EXPECT_EQ(chance_words({0.0001, 0.0001}), "less than 0.1 %");
    EXPECT_EQ(chance_words({0.9714, 0.002}), "97.1 %");
}

TEST(Tolerances, FiguresHaveTheirUnits) {
    EXPECT_EQ(figure_words(43.21, "m"), "43.2 m");
    EXPECT_EQ(figure_words(0.35, "ohm"), "0.35 Ω");
    EXPECT_EQ(figure_words(15, "C"), "15 °C");
    EXPECT_EQ(figure_words(90, "ohm m"), "90 Ω·m");
    EXPECT_EQ(figure_words(2.5, "K m/W"), "2.5 K·m/W");
    EXPECT_EQ(figure_words(3, ""), "3");
}

}  // namespace
}  // namespace toft::outlook
