#include "outlook/tolerance_json.h"

#include "codec/document.h"
#include "codec/fits.h"
#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::outlook {
namespace {

using codec::expect_fits;
using codec::Json;

ToleranceAnswer ranged() {
    static site::Job job = [] {
        site::Job one = support::plain_job();
        one.runs[0].legs[0].length = support::between(metres(20), metres(70));
        one.runs[0].legs[0].length.spread = site::Spread::bell;
        one.ground.thermal_resistivity = {};
        return one;
    }();
    tolerance::Wish wish;
    wish.samples = 1024;
    wish.pool = 64;
    return tolerances(
        support::question_of(job),
        support::scheme(support::cable(3, 4), study::Protective::core, support::breaker("B", 25)),
        wish);
}

TEST(Tolerances, FitTheirSchema) {
    const auto answer = ranged();
    expect_fits("tolerance", write_tolerance(answer));
    expect_fits("tolerance", write_tolerance({}));
}

TEST(Tolerances, KeepEveryFigure) {
    const auto answer = ranged();
    const Json json = Json::parse(write_tolerance(answer));
    EXPECT_EQ(json["format"], "toft-tolerance/1");
    EXPECT_NEAR(json["robust"]["holds"].get<double>(), answer.found.robust.holds, 1e-8);
    EXPECT_EQ(json["varies"].size(), answer.found.varied.size());
    EXPECT_EQ(json["rules"].size(), answer.found.rules.size());
    EXPECT_EQ(json["swings"].size(), answer.found.tornado.swings.size());
    EXPECT_EQ(json["stays_at_worse_end"][0]["fact"], "/ground/thermal_resistivity_k_m_per_w");
    bool bell = false;
    for (const Json& v : json["varies"]) bell = bell || v["spread"] == "bell";
    EXPECT_TRUE(bell);
}

}  // namespace
}  // namespace toft::outlook
