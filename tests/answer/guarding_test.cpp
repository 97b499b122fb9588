#include "answer/guarding.h"

#include "answer/answer.h"
#include "guard/guarding.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::answer {
namespace {

using site::CircuitKind;

GuardAnswer guarded(const site::Job& job, const study::RunScheme& scheme) {
    return guard_of(support::prepared(job), scheme);
}

TEST(Guarding, CircuitsThatNeedTheSameStandInOneRow) {
    const site::Job job = guard::job_with({guard::circuit(CircuitKind::socket_ring, "sockets"),
                                           guard::circuit(CircuitKind::vehicle_charging, "car"),
                                           guard::circuit(CircuitKind::lighting, "lights")});
    const auto rcds = board_rcds(guarded(job, guard::on_tails()));
    ASSERT_EQ(rcds.size(), 2u);
    EXPECT_EQ(rcds[0].type, "A");
    EXPECT_EQ(rcds[0].covers, (std::vector<std::string>{"sockets", "lights"}));
    EXPECT_EQ(rcds[1].type, "B");
    EXPECT_NE(rcds[1].instead.find("6 mA"), std::string::npos);
    EXPECT_DOUBLE_EQ(rcds[1].sensitivity_ma, 30);
}

TEST(Guarding, EveryCircuitIsCoveredOnce) {
    const site::Job job = guard::job_with({guard::circuit(CircuitKind::motor, "a"),
                                           guard::circuit(CircuitKind::pump, "b"),
                                           guard::circuit(CircuitKind::kiln, "c")});
    std::vector<std::string> all;
    for (const RcdAnswer& rcd : board_rcds(guarded(job, guard::on_tails()))) {
        all.insert(all.end(), rcd.covers.begin(), rcd.covers.end());
    }
    std::sort(all.begin(), all.end());
    EXPECT_EQ(all, (std::vector<std::string>{"a", "b", "c"}));
    EXPECT_EQ(board_rcds(guarded(support::plain_job(), guard::on_tails()))[0].covers[0],
              "every circuit");
}

TEST(Guarding, WhatStandsInFrontHasTheHighestType) {
    const site::Job job = guard::job_with({guard::circuit(CircuitKind::lighting, "lights"),
                                           guard::circuit(CircuitKind::vehicle_charging, "car")});
    RcdAnswer rcd;
    set_upstream_type(guarded(job, guard::on_tails()), rcd);
    EXPECT_EQ(rcd.type, "B");
    EXPECT_EQ(rcd.instead.substr(0, 2), "A,");
    const site::Job plain = guard::job_with({guard::circuit(CircuitKind::lighting, "lights")});
    set_upstream_type(guarded(plain, guard::on_tails()), rcd);
    EXPECT_EQ(rcd.type, "A");
    EXPECT_EQ(rcd.instead, "");
}

TEST(Guarding, AFreezerThatGoesWithTheRestIsACautionOfTheScheme) {
    const site::Job job = guard::job_with({guard::circuit(CircuitKind::freezer, "freezer"),
                                           guard::circuit(CircuitKind::socket_ring, "sockets")});
    SchemeAnswer scheme;
    scheme.guard = guarded(job, guard::by_rcbo());
    scheme.cautions = {scheme.guard.cautions.front()};
    add_guard_cautions(scheme);
    const auto& all = scheme.cautions;
    EXPECT_EQ(std::count(all.begin(), all.end(), scheme.guard.cautions.front()), 1);
    EXPECT_EQ(all.size(), scheme.guard.cautions.size());
    EXPECT_TRUE(std::any_of(all.begin(), all.end(), [](const std::string& words) {
        return words.find("the freezer (freezer) may be lost") != std::string::npos;
    }));
    const GuardAnswer apart = guarded(job, guard::behind_delayed(guard::on_tails()));
    for (const std::string& words : apart.cautions) {
        EXPECT_EQ(words.find("freezer"), std::string::npos) << words;
    }
}

TEST(Guarding, EveryReasonAndTypeIsCited) {
    const site::Job job = guard::job_with({guard::circuit(CircuitKind::socket_ring, "sockets")});
    const GuardAnswer guard = guarded(job, guard::on_tails());
    EXPECT_EQ(citations_of(guard).size(), guard.circuits[0].need.reasons.size() + 1);
}

}  // namespace
}  // namespace toft::answer
