#include "tolerance/farthest.h"

#include "support/questions.h"
#include "varying.h"
#include "worked/longest.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::tolerance {
namespace {

const Farthest* of(const std::vector<Farthest>& all, const std::string& says) {
    for (const Farthest& f : all) {
        if (f.says.find(says) != std::string::npos) return &f;
    }
    return nullptr;
}

std::vector<Farthest> found_in(const site::Job& job) {
    const Place place = place_of(job);
    const std::vector<Varied> none;
    const study::RunScheme scheme = thin_scheme();
    return farthest_of({place, none, scheme});
}

TEST(Farthest, OnBothSidesOfEveryBoundTheRuleIsAsItIsSaidToBe) {
    const site::Job job = of_length(support::plain_job(), 20);
    const auto all = found_in(job);
    const auto figures = figures_of(place_of(job));
    int looked = 0;
    for (const Farthest& f : all) {
        for (const Figure& figure : figures) {
            if (figure.pointer != f.pointer) continue;
            const auto check = [&](const Bound& bound, double inside) {
                const std::string rule = rules::rulebook()[bound.rule].info->name;
                site::Job at = job;
                figure.set(at, bound.value * inside, bound.value * inside);
                EXPECT_TRUE(holds(at, thin_scheme(), rule)) << f.says << rule;
                figure.set(at, bound.value / inside, bound.value / inside);
                EXPECT_FALSE(holds(at, thin_scheme(), rule)) << f.says << rule;
                ++looked;
            };
            for (const Bound& bound : f.up_to) check(bound, 1 - 1e-6);
            for (const Bound& bound : f.down_to) check(bound, 1 + 1e-6);
        }
    }
    EXPECT_GE(looked, 2);
}

TEST(Farthest, TheLongestRunIsThatOfTheAnswer) {
    const site::Job job = of_length(support::plain_job(), 20);
    const auto all = found_in(job);
    const Farthest* length = of(all, "length of the whole run");
    ASSERT_NE(length, nullptr);
    EXPECT_DOUBLE_EQ(length->now, 20);
    const worked::Subject subject{support::catalogue(), support::demo_book(), job, 0};
    const auto answered = worked::longest_by_rule(subject, support::prepared(job), thin_scheme());
    ASSERT_FALSE(answered.empty());
    for (const auto& [rule, metres] : answered) {
        for (const Bound& bound : length->up_to) {
            if (rules::rulebook()[bound.rule].info->name == rule) {
                EXPECT_NEAR(bound.value, metres, 1e-5 * metres) << rule;
            }
        }
    }
}

TEST(Farthest, TheLoadGoesAsFarAsTheDeviceCarries) {
    const site::Job job = of_length(support::plain_job(), 10);
    const auto all = found_in(job);
    const Farthest* load = of(all, "load");
    ASSERT_NE(load, nullptr);
    EXPECT_DOUBLE_EQ(load->now, 20);
    bool told = false;
    for (const Bound& bound : load->up_to) {
        if (std::string(rules::rulebook()[bound.rule].info->name) != "overload") continue;
        EXPECT_NEAR(bound.value, 25, 1e-6);  // Ib <= In, BS 7671 433.1.1
        told = true;
    }
    EXPECT_TRUE(told);
}

TEST(Farthest, TheNearestBoundComesFirst) {
    for (const Farthest& f : found_in(of_length(support::plain_job(), 20))) {
        for (std::size_t i = 1; i < f.up_to.size(); ++i) {
            EXPECT_LE(f.up_to[i - 1].value, f.up_to[i].value);
        }
    }
}

}  // namespace
}  // namespace toft::tolerance
