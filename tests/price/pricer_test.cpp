#include "price/pricer.h"

#include "support/catalogue.h"
#include "support/draws.h"
#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <vector>

namespace toft::price {
namespace {

/// Only counts, and needs no heap for it.
struct Counter {
    static constexpr bool listens = true;
    void take(const PricedLine& line) {
        ++lines;
        sum = sum + line.amount;
        same_part = same_part && line.part == part;
    }
    int lines = 0;
    Pounds sum;
    Part part = Part::house_end;
    bool same_part = true;
};

RC_GTEST_PROP(Pricer, EveryPoundOfAPartIsHeardUnderThatPart, ()) {
    const support::Drawn drawn = *support::any_drawn();
    const site::Job job = support::job_of(drawn);
    const auto setting = support::prepared(job);
    study::RunScheme scheme = support::scheme_of(drawn);
    if (scheme.first().separate) scheme.first().separate = &support::conductor(10);
    Silent silent;
    Counter counter;
    Pricer<Silent, Counter> pricer(silent, support::demo_book(), setting, scheme, counter);
    const auto heard = [&](Part part, Pounds amount) {
        RC_ASSERT(counter.same_part);
        RC_ASSERT(without_dust(counter.sum) == amount);
        counter = {};
        counter.part = static_cast<Part>(static_cast<int>(part) + 1);
    };
    heard(Part::house_end, pricer.house_end());
    heard(Part::run, pricer.run());
    heard(Part::ground, pricer.ground());
    heard(Part::far_end, pricer.far_end({}));
    heard(Part::test_and_paper, pricer.test_and_paper());
    heard(Part::remedies, pricer.remedies({Item::parting_two_earths}));
}

}  // namespace
}  // namespace toft::price
