#include "spread/check.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace toft::spread {
namespace {

Problem two_in_a_row() { return {1, {}, {{from_root, {Option{}}}, {0, {Option{}, Option{}}}}}; }

bool complains(const Problem& problem, const std::string& code, const std::string& pointer) {
    const Faults faults = faults_of(problem);
    return std::any_of(faults.begin(), faults.end(), [&](const Fault& fault) {
        return fault.code == code && fault.pointer == pointer && !fault.says.empty();
    });
}

TEST(SpreadCheck, ASoundProblemHasNoFaults) { EXPECT_TRUE(faults_of(two_in_a_row()).empty()); }

TEST(SpreadCheck, ABranchHangsOnOneThatExists) {
    Problem problem = two_in_a_row();
    problem.branches[1].parent = 7;
    EXPECT_TRUE(complains(problem, "unknown-reference", "/branches/1/parent"));
}

TEST(SpreadCheck, NothingFeedsItselfNorHangsOnWhatDoes) {
    Problem problem = two_in_a_row();
    problem.branches.push_back({3, {Option{}}});
    problem.branches.push_back({2, {Option{}}});
    problem.branches.push_back({3, {Option{}}});
    problem.branches.push_back({1, {Option{}}});
    EXPECT_TRUE(complains(problem, "cycle", "/branches/2/parent"));
    EXPECT_TRUE(complains(problem, "cycle", "/branches/3/parent"));
    EXPECT_TRUE(complains(problem, "cycle", "/branches/4/parent"));
    EXPECT_EQ(faults_of(problem).size(), 3u);
}

TEST(SpreadCheck, FiguresAreNumbers) {
    Problem problem = two_in_a_row();
    problem.at_root[0] = NAN;
    Option& option = problem.branches[1].options[1];
    option.price = -1;
    option.headroom = NAN;
    option.changes[0].amount = no_limit;
    option.changes[0].leaves_at_most = NAN;
    problem.branches[0].options.front().price = no_limit;
    EXPECT_TRUE(complains(problem, "out-of-range", "/at_root/0"));
    EXPECT_TRUE(complains(problem, "out-of-range", "/branches/0/options/0"));
    EXPECT_TRUE(complains(problem, "out-of-range", "/branches/1/options/1"));
    EXPECT_TRUE(complains(problem, "out-of-range", "/branches/1/options/1/changes/0"));
    EXPECT_EQ(faults_of(problem).size(), 6u);
}

TEST(SpreadCheck, ResourcesThatAreNotLookedAtMayHoldAnything) {
    Problem problem = two_in_a_row();
    problem.branches[0].options[0].changes[1].amount = NAN;
    EXPECT_TRUE(faults_of(problem).empty());
}

TEST(SpreadCheck, EveryBranchHasAnOptionAndResourcesAreFew) {
    Problem problem = two_in_a_row();
    problem.branches[0].options.clear();
    problem.resources = most_resources + 1;
    EXPECT_TRUE(complains(problem, "missing", "/branches/0/options"));
    EXPECT_TRUE(complains(problem, "out-of-range", "/resources"));
}

}  // namespace
}  // namespace toft::spread
