#include "answer/reach.h"

#include "support/jobs.h"
#include "support/judging.h"
#include "support/questions.h"
#include "support/trees.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace toft::answer {
namespace {

ReachAnswer reach_of_plain(const ReachWish& wish = {}) {
    const site::Job job = support::plain_job();
    return reach(support::question_of(job), wish);
}

std::size_t column(const ReachAnswer& a, double load) {
    const auto at = std::find(a.loads_a.begin(), a.loads_a.end(), load);
    EXPECT_NE(at, a.loads_a.end()) << load;
    return static_cast<std::size_t>(at - a.loads_a.begin());
}

const ReachTable& table(const ReachAnswer& a, int cores, const std::string& protective) {
    for (const ReachTable& t : a.tables) {
        if (t.cores == cores && t.protective_conductor == protective) return t;
    }
    ADD_FAILURE() << "no table of " << cores << " cores, " << protective;
    return a.tables.front();
}

/// The plain job on one leg of that length, fully loaded.
site::Job laid(double length, Amperes load) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].length = support::measured(metres(length));
    job.buildings[1].load = support::measured(load);
    return job;
}

TEST(Reach, JustShortOfItEveryFigureHoldsAndJustBeyondTheNamedRuleFails) {
    const ReachAnswer a = reach_of_plain();
    const std::size_t at = column(a, 32);
    const auto scheme = support::scheme(support::cable(2, 10), study::Protective::armour,
                                        support::breaker("B", 32, 6));
    for (const ReachRow& row : table(a, 2, "armour").rows) {
        if (row.section_mm2 != 10) continue;
        const ReachCell& cell = row.cells[at];
        ASSERT_GT(cell.metres, 1);
        const auto verdict = [&](double length, const std::string& rule) {
            return support::finding_of(rule, laid(length, amperes(32)), scheme).verdict;
        };
        for (const char* rule : {"voltage-drop", "current-rating", "disconnection", "fault-heat"}) {
            EXPECT_NE(verdict(cell.metres * (1 - 1e-6), rule), rules::Verdict::fails) << rule;
        }
        EXPECT_EQ(verdict(cell.metres * (1 + 1e-5), cell.ended_by), rules::Verdict::fails);
    }
}

TEST(Reach, AThickerCableNeverReachesLessAndAHeavierLoadNeverMore) {
    const ReachAnswer a = reach_of_plain();
    for (const ReachTable& t : a.tables) {
        for (std::size_t r = 1; r < t.rows.size(); ++r) {
            for (std::size_t c = 0; c < a.loads_a.size(); ++c) {
                EXPECT_GE(t.rows[r].cells[c].metres, t.rows[r - 1].cells[c].metres * (1 - 1e-6))
                    << t.cores << " x " << t.rows[r].section_mm2 << ", " << a.loads_a[c] << " A";
            }
        }
        for (const ReachRow& row : t.rows) {
            for (std::size_t c = 1; c < row.cells.size(); ++c) {
                EXPECT_LE(row.cells[c].metres, row.cells[c - 1].metres * (1 + 1e-6));
            }
        }
    }
}

TEST(Reach, ASizeThatCannotCarryTheDeviceHasNone) {
    const ReachAnswer a = reach_of_plain();
    const ReachRow& thinnest = table(a, 2, "armour").rows.front();
    EXPECT_EQ(thinnest.section_mm2, 1.5);
    const ReachCell& cell = thinnest.cells[column(a, 63)];
    EXPECT_EQ(cell.metres, 0);
    EXPECT_EQ(cell.ended_by, "current-rating");
}

TEST(Reach, TheJobsOfferOrTheWishNamesTheFamilies) {
    ReachWish wish;
    wish.families = {"armoured PVC copper"};
    for (const ReachTable& t : reach_of_plain(wish).tables) {
        EXPECT_EQ(t.family, "armoured PVC copper");
    }
    site::Job job = support::plain_job();
    job.wishes.offer = {"armoured XLPE aluminium"};
    const ReachAnswer offered = reach(support::question_of(job), {});
    ASSERT_FALSE(offered.tables.empty());
    for (const ReachTable& t : offered.tables) EXPECT_EQ(t.family, "armoured XLPE aluminium");
}

TEST(Reach, ThreePhasesReachFartherForTheSameCurrentInEachLine) {
    site::Job job = support::plain_job();
    const ReachAnswer one = reach(support::question_of(job), {});
    job.intake.phases = 3;
    job.runs[0].phases = 3;
    const ReachAnswer three = reach(support::question_of(job), {});
    EXPECT_EQ(three.phases, 3);
    const std::size_t at = column(one, 16);
    const auto metres_of = [at](const ReachTable& t, double section) {
        for (const ReachRow& row : t.rows) {
            if (row.section_mm2 == section) return row.cells[at].metres;
        }
        return 0.0;
    };
    const double single = metres_of(table(one, 2, "armour"), 4);
    const double balanced = metres_of(table(three, 4, "armour"), 4);
    EXPECT_GT(balanced, 1.8 * single);
    EXPECT_LT(balanced, 2.4 * single);
}

TEST(Reach, FusesOfAnotherStandardHaveTheirOwnRatings) {
    ReachWish wish;
    wish.standard = "BS 88-3";
    const ReachAnswer a = reach_of_plain(wish);
    EXPECT_EQ(a.device, "BS 88-3");
    EXPECT_NE(std::find(a.loads_a.begin(), a.loads_a.end(), 45), a.loads_a.end());
}

TEST(Reach, WhatIsNotKnownIsSaidToStandAtItsWorseEnd) {
    site::Job job = support::plain_job();
    job.intake.ze = {};
    const ReachAnswer open = reach(support::question_of(job), {});
    const bool said = std::any_of(open.assumed.begin(), open.assumed.end(), [](const auto& line) {
        return line.find("Ze") != std::string::npos && line.find("worse") != std::string::npos;
    });
    EXPECT_TRUE(said);
    EXPECT_FALSE(open.cautions.empty());
}

/// Longest runs of every cell, in order.
std::vector<double> all_cells(const ReachAnswer& a) {
    std::vector<double> cells;
    for (const ReachTable& t : a.tables) {
        for (const ReachRow& row : t.rows) {
            for (const ReachCell& cell : row.cells) cells.push_back(cell.metres);
        }
    }
    return cells;
}

TEST(Reach, OfARunThatFeedsOthersIsThatOfTheRunAlone) {
    const site::Job alone = support::tree_job({support::the_house});
    const site::Job chain = support::tree_job({support::the_house, 0, 1});
    EXPECT_EQ(all_cells(reach(support::question_of(chain), {})),
              all_cells(reach(support::question_of(alone), {})));
}

TEST(Reach, BehindAnotherRunNoCableReachesFarther) {
    const site::Job chain = support::tree_job({support::the_house, 0, 1});
    Question question = support::question_of(chain);
    const auto from_house = all_cells(reach(question, {}));
    const Answer designed = design(question);
    question.run = 1;
    question.incoming = &*designed.schemes.front().further.front().incoming;
    const ReachAnswer behind = reach(question, {});
    EXPECT_EQ(behind.run, "r1");
    const auto cells = all_cells(behind);
    ASSERT_EQ(cells.size(), from_house.size());
    int shorter = 0;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        EXPECT_LE(cells[i], from_house[i] * (1 + 1e-9)) << i;
        shorter += cells[i] < from_house[i];
    }
    EXPECT_GT(shorter, 0);
}

}  // namespace
}  // namespace toft::answer
