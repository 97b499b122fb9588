// The pieces of a fact's range against what the job comes to at figures inside it.

#include "unknown/pieces.h"

#include "support/jobs.h"
#include "support/random_jobs.h"
#include "support/solving.h"

#include <gtest/gtest.h>

#include <random>

namespace toft::unknown {
namespace {

using solve::Solution;
using study::End;
using support::Solving;

const Piece* holding(const std::vector<Piece>& pieces, double value) {
    for (const Piece& p : pieces) {
        if (p.low <= value && value <= p.high) return &p;
    }
    return nullptr;
}

/// At that figure the job comes to what the piece says, or to another scheme at the same price.
void expect_holds(const Solving& s, const Piece& piece, const study::Corner& there) {
    const Solution found = s.solver().at(there);
    ASSERT_EQ(found.sound(), piece.best.sound());
    if (!found.sound() || found.key == piece.best.key) return;
    EXPECT_NEAR(s.solver().price_at(there, piece.best), found.total, 1e-6)
        << piece.best.key << " where " << found.key << " comes first";
}

/// Every figure tried lies in a piece that holds there, or in a narrow gap where the answer
/// switches.
void expect_pieces_hold(const Solving& s, const study::OpenFact& fact, const study::Corner& others,
                        int figures) {
    const std::vector<Piece> pieces = pieces_over(s.solver(), {fact, others, {}});
    ASSERT_FALSE(pieces.empty()) << fact.pointer;
    EXPECT_EQ(pieces.front().low, fact.low);
    EXPECT_EQ(pieces.back().high, fact.high);
    int in_gaps = 0;
    const bool yes_or_no = fact.unit == "no or yes";
    for (int i = 0; i <= figures; ++i) {
        const double share = yes_or_no ? i % 2 : double(i) / figures;
        const double value = support::within_range(fact, share);
        const Piece* piece = holding(pieces, value);
        if (!piece) {
            ++in_gaps;
            continue;
        }
        SCOPED_TRACE(fact.pointer + " at " + std::to_string(value));
        expect_holds(s, *piece, support::known_as(fact, value, others));
    }
    EXPECT_LE(in_gaps, 2 + figures / 4) << fact.pointer;
}

TEST(Pieces, HoldAtEveryFigureInsideThem) {
    for (unsigned seed = 1; seed <= 25; ++seed) {
        site::Job job = support::random_job(seed);
        if (job.wishes.prefer == site::Prefer::headroom) job.wishes.prefer = site::Prefer::price;
        const Solving s(job);
        for (const study::OpenFact& fact : s.solver().open()) {
            SCOPED_TRACE("seed " + std::to_string(seed));
            expect_pieces_hold(s, fact, {}, 23);
        }
    }
}

TEST(Pieces, HoldWithAllOtherFactsAtEndsDrawnAtRandom) {
    std::mt19937 dice(7);
    for (unsigned seed = 101; seed <= 114; ++seed) {
        site::Job job = support::random_job(seed);
        if (job.wishes.prefer == site::Prefer::headroom) job.wishes.prefer = site::Prefer::price;
        const Solving s(job);
        for (const study::OpenFact& fact : s.solver().open()) {
            SCOPED_TRACE("seed " + std::to_string(seed));
            study::Corner others;
            for (const study::OpenFact& other : s.solver().open()) {
                if (other.pointer == fact.pointer) continue;
                others.except.emplace_back(other.pointer, dice() % 2 ? End::low : End::high);
            }
            expect_pieces_hold(s, fact, others, 17);
        }
    }
}

TEST(Pieces, AFactThatChangesNothingIsOnePiece) {
    site::Job job = support::plain_job();
    job.intake.supply_neutral = {};
    const Solving s(job);
    const auto pieces = pieces_over(s.solver(), {s.solver().open().at(0), {}, {}});
    ASSERT_EQ(pieces.size(), 1u);
    EXPECT_EQ(pieces[0].total_low, pieces[0].total_high);
}

/// A longer run asks for thicker cable, and every switch is where it is by trying lengths.
TEST(Pieces, LengthSwitchesFromSizeToSize) {
    site::Job job = support::plain_job();
    job.buildings[1].load = support::measured(amperes(30));
    job.runs[0].legs[0].length = support::between(metres(10), metres(90));
    const Solving s(job);
    const study::OpenFact fact = s.solver().open().at(0);
    const auto pieces = pieces_over(s.solver(), {fact, {}, {}});
    ASSERT_GT(pieces.size(), 2u);
    for (std::size_t i = 1; i < pieces.size(); ++i) {
        EXPECT_LE(pieces[i].low - pieces[i - 1].high, 80.0 / 1000);
        EXPECT_NE(pieces[i].best.key, pieces[i - 1].best.key);
        EXPECT_GT(pieces[i].total_low, pieces[i - 1].total_low);
    }
}

TEST(Pieces, OnlyTheValuesThatThereAreAreTried) {
    site::Job job = support::plain_job();
    job.intake.supply_neutral = {};
    const Solving s(job);
    const Looked at{s.solver().open().at(0), {}, {16, 25, 35}};
    const auto pieces = pieces_over(s.solver(), at);
    ASSERT_EQ(pieces.size(), 1u);
    EXPECT_EQ(pieces[0].low, 16);
    EXPECT_EQ(pieces[0].high, 35);
}

TEST(Pieces, ASwitchIsSaidInFewDigits) {
    EXPECT_EQ(shortest_between(0.617, 0.623), 0.62);
    EXPECT_EQ(shortest_between(12.4, 13.9), 13);
    EXPECT_EQ(shortest_between(480, 530), 500);
    EXPECT_EQ(shortest_between(7, 7), 7);
    for (const auto& [low, high] : {std::pair{0.0251, 0.0253}, {1.999, 2.003}, {99.2, 101.7}}) {
        EXPECT_GE(shortest_between(low, high), low - 1e-12);
        EXPECT_LE(shortest_between(low, high), high + 1e-12);
    }
}

}  // namespace
}  // namespace toft::unknown
