// The rules are asked again and again in the search: not one of them, nor any step of the walk that
// stands behind them, may touch the heap.

#include "support/catalogue.h"
#include "support/counted_new.h"
#include "support/jobs.h"
#include "support/judging.h"
#include "support/random_jobs.h"
#include "walk/metalwork.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <vector>

namespace toft::rules {
namespace {

TEST(Allocation, IsCounted) {
    const long before = support::allocations;
    const std::vector<int> some(100, 1);
    EXPECT_EQ(some.size(), 100u);
    EXPECT_GT(support::allocations - before, 0);
}

RC_GTEST_PROP(Allocation, JudgingSilentlyAllocatesNothing, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    const auto setting = support::prepared(job);
    auto scheme =
        support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    scheme.earthing = *rc::gen::element(study::BuildingEarthing::supply_earth,
                                        study::BuildingEarthing::own_electrode,
                                        study::BuildingEarthing::shared_electrode);
    Silent silent;
    study::Figures<Silent> figures;
    study::work_out(silent, setting, scheme, study::Stage::none, figures);
    const Case<Silent> c{setting, scheme, figures};
    const Rule& rule = *find_rule("earthing-choice");
    rule.judge(silent, c);  // tables of the program are made on first use
    const long before = support::allocations;
    const auto finding = rule.judge(silent, c);
    const long after = support::allocations;
    RC_ASSERT(finding.rule == rule.info);
    RC_ASSERT(after - before == 0);
}

RC_GTEST_PROP(Allocation, DecidingAnyStepOfTheWalkAllocatesNothing, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    const auto setting = support::prepared(job);
    walk::questions();
    const long before = support::allocations;
    const walk::Facts facts = walk::all_facts_of(setting);
    std::size_t arose = 0;
    for (const walk::Question& question : walk::questions()) {
        arose += question.decide(facts).arises ? 1 : 0;
    }
    for (std::size_t i = 0; i < facts.parts->size(); ++i) walk::metal_part(facts, i);
    const long after = support::allocations;
    RC_ASSERT(arose > 8u);
    RC_ASSERT(after - before == 0);
}

}  // namespace
}  // namespace toft::rules
