#include "circuit/design.h"

#include "circuit/circuits.h"
#include "support/questions.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::circuit {
namespace {

double section(const CircuitDesign<Silent>& d) { return d.option.cable->section.number(); }

TEST(CircuitDesign, AShortHeaterCircuitTakesOneAndAHalfBehindSixteen) {
    const auto d = designed(job_with({heater(3000, 8)}));
    EXPECT_EQ(section(d), 1.5);
    EXPECT_EQ(d.option.device->rating, amperes(16));
    EXPECT_EQ(d.option.device->curve, "B");
    EXPECT_FALSE(d.by_residual);
}

TEST(CircuitDesign, TheMoreTheRunLosesTheThickerTheCircuit) {
    const site::Job job = job_with({heater(3000, 25)});
    double last = 0;
    for (const double lost : {0.0, 1.0, 2.0, 3.0, 4.0, 4.5}) {
        const auto d = designed(job, board(lost));
        EXPECT_GE(section(d), last) << lost;
        EXPECT_LE(d.at(Matter::drop).value, 5.0 + 1e-9) << lost;
        last = section(d);
    }
    EXPECT_GE(last, 6);
}

// 3 % of 230 V for lamps against 5 % for the rest (525).
TEST(CircuitDesign, LightsAreHeldToThreePerCent) {
    site::Circuit lights = heater(600, 30);
    lights.kind = site::CircuitKind::lighting;
    EXPECT_NEAR(designed(job_with({lights})).at(Matter::drop).limit, 3, 1e-12);
    EXPECT_NEAR(designed(job_with({heater(600, 30)})).at(Matter::drop).limit, 5, 1e-12);
}

// Table 41.3 (quoted): 1.37 Ω for a type B of 32 A, 2.73 Ω for 16 A.
TEST(CircuitDesign, TheLargestLoopIsThatOfTheBook) {
    EXPECT_NEAR(designed(job_with({ring(40)})).at(Matter::disconnect).limit, 1.37, 0.006);
    EXPECT_NEAR(designed(job_with({heater(3000, 8)})).at(Matter::disconnect).limit, 2.73, 0.006);
}

TEST(CircuitDesign, WhereTheLoopIsTooLongTheResidualDeviceServesAndItIsSaid) {
    const auto d = designed(job_with({heater(3000, 8)}), board(1, 3.5));
    EXPECT_TRUE(d.by_residual);
    EXPECT_LE(plain(d.at(Matter::disconnect).use), 1);
}

TEST(CircuitDesign, ThroughTheGroundOnlyTheResidualDeviceClears) {
    Feed<Silent> feed = board();
    feed.by_conductor = false;
    const auto d = designed(job_with({heater(3000, 8)}), feed);
    EXPECT_TRUE(d.by_residual);
    EXPECT_FALSE(d.at(Matter::disconnect).applies);
    EXPECT_TRUE(d.at(Matter::heat).applies);
}

// A type B holds 3 In for a moment, a type C 5 In (BS EN 60898 Table 7). 1500 W at 6 times is 39 A.
TEST(CircuitDesign, AMotorThatStartsHardGetsACurveThatHolds) {
    const auto easy = designed(job_with({saw(1500, 6, 9)}));
    EXPECT_LE(plain(easy.at(Matter::start_trip).use), 1);
    site::Circuit c = saw(1500, 6, 9);
    c.device = site::NamedDevice{"BS EN 61009", "B", amperes(10)};
    EXPECT_GT(plain(designed(job_with({c})).at(Matter::start_trip).use), 1);
}

TEST(CircuitDesign, AMotorStartDipsByRunCircuitAndSupplyTogether) {
    const auto d = designed(job_with({saw(2200, 7, 20)}));
    const double z =
        0.2 + std::hypot(0.15 + d.conductors.load.r.number(), 0.01 + d.conductors.load.x.number());
    const double motor = 230 / (7 * 2200 / 230.0);
    EXPECT_NEAR(d.at(Matter::start_dip).value, 100 * z / (z + motor), 1e-9);
}

// 3.6 kW of panels at the end of 26 m of 4 mm²: the trade counts 5 V on the run alone.
TEST(CircuitDesign, PanelsLiftTheVoltage) {
    site::Circuit c = heater(3680, 5);
    c.kind = site::CircuitKind::solar;
    Feed<Silent> feed = board();
    feed.run = {ohms(26 * 0.012), ohms(0)};
    const auto d = designed(job_with({c}), feed);
    EXPECT_GT(d.at(Matter::rise).value, 100 * 16 * 26 * 0.012 / 230);
    EXPECT_FALSE(d.at(Matter::drop).applies);
}

TEST(CircuitDesign, AFaultLevelAboveTheDeviceTakesTheStrongerDevice) {
    Feed<Silent> feed = board(1, 0.05);
    feed.short_most = feed.earth_most = amperes(7500);
    const auto d = designed(job_with({heater(3000, 8)}), feed);
    EXPECT_EQ(d.option.device->breaking.value, amperes(10000));
}

// The smallest that does is the cheapest only while metres cost more with every section.
TEST(CircuitDesign, FlatCableCostsMoreWithEverySection) {
    const price::Book& book = support::demo_book();
    double last = 0;
    for (std::size_t i = 0; i < support::catalogue().cables.size(); ++i) {
        if (support::catalogue().cables[i].family != tables::Family::flat_twin_and_earth) continue;
        EXPECT_GT(book.cables[i].number(), last);
        last = book.cables[i].number();
    }
}

RC_GTEST_PROP(CircuitDesign, ALongerCircuitIsNeverThinner, ()) {
    const double watts = *rc::gen::inRange(200, 7000);
    const double length = *rc::gen::inRange(2, 60);
    const auto near = designed(job_with({heater(watts, length)}));
    const auto far = designed(job_with({heater(watts, length + 10)}));
    const auto meets = [](const CircuitDesign<Silent>& d) {
        for (const auto& j : d.judged) {
            if (j.applies && j.use > 1 + 1e-9) return false;
        }
        return !d.by_residual;
    };
    if (meets(far)) {
        RC_ASSERT(meets(near));
        RC_ASSERT(section(far) >= section(near));
    }
}

/// Whatever is chosen, no smaller option meets all.
RC_GTEST_PROP(CircuitDesign, NoEarlierOptionWouldDo, ()) {
    const double watts = *rc::gen::inRange(200, 7000);
    const double length = *rc::gen::inRange(2, 60);
    const site::Job job = job_with({heater(watts, length)});
    Silent silent;
    auto circuits = prepare(silent, support::catalogue(), job, job.buildings[1], 1);
    CircuitSetting<Silent>& s = circuits.judged.at(0);
    CircuitDesign<Silent> chosen;
    design(silent, support::catalogue(), s, board(), chosen);
    CircuitSetting<Silent> one = s;
    for (std::size_t i = 0; i < s.options.size(); ++i) {
        if (s.options[i].cable == chosen.option.cable &&
            s.options[i].device == chosen.option.device)
            break;
        one.options = {s.options[i]};
        one.conductors = {s.conductors[i]};
        CircuitDesign<Silent> d;
        design(silent, support::catalogue(), one, board(), d);
        double worst = d.by_residual ? 2 : 0;
        for (const auto& j : d.judged) worst = j.applies ? std::max(worst, j.use) : worst;
        RC_ASSERT(worst > 1);
    }
}

TEST(CircuitDesign, BothDepthsGiveTheSameNumbersAndEveryFormulaItsResult) {
    const site::Job job = job_with({ring(50), saw(1500, 6, 9), heater(3000, 20)});
    Recording ledger;
    const auto circuits = prepare(ledger, support::catalogue(), job, job.buildings[1], 1).judged;
    Feed<Recording> feed;
    const Feed<Silent> plain_feed = board();
    const auto said = [&](const char* symbol, auto value) {
        return ledger.stated({symbol, "of the board"}, value, "test");
    };
    feed.u0 = said("U0", plain_feed.u0);
    feed.c_min = said("c.min", plain_feed.c_min);
    feed.drop = said("dU.run", plain_feed.drop);
    feed.run = {said("R.run", plain_feed.run.r), said("X.run", plain_feed.run.x)};
    feed.source = said("Z.source", plain_feed.source);
    for (std::size_t h = 0; h < heats; ++h) {
        static constexpr const char* zn[] = {"Zn.work", "Zn.warm", "Zn.most"};
        static constexpr const char* zs[] = {"Zs.work", "Zs.warm", "Zs.most"};
        feed.zn[h] = said(zn[h], plain_feed.zn[h]);
        feed.zs[h] = said(zs[h], plain_feed.zs[h]);
    }
    feed.short_most = said("I.board", plain_feed.short_most);
    feed.earth_most = said("Ie.board", plain_feed.earth_most);
    for (std::size_t c = 0; c < circuits.size(); ++c) {
        CircuitDesign<Recording> recorded;
        design(ledger, support::catalogue(), circuits[c], feed, recorded);
        const auto silent = designed(job, plain_feed, c);
        for (std::size_t m = 0; m < matters; ++m) {
            EXPECT_EQ(recorded.judged[m].applies, silent.judged[m].applies);
            EXPECT_EQ(plain(recorded.judged[m].use), silent.judged[m].use) << c << " " << m;
        }
    }
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) ADD_FAILURE() << wrong;
}

// A whole drawer of loads: more third harmonic never gets by with a thinner cable.
TEST(CircuitDesign, MoreThirdHarmonicNeverAllowsASmallerCable) {
    Feed<Silent> three = board(1, 0.2);
    three.three_phase = true;
    bool grew = false;
    for (double watts = 5000; watts <= 30000; watts += 2500) {
        SquareMillimetres before{};
        for (double percent = 0; percent <= 100; percent += 5) {
            const auto d = designed(job_with({three_phase(watts, 12, percent)}), three);
            const SquareMillimetres now = d.option.cable->section;
            if (percent > 0) {
                EXPECT_GE(now, before) << watts << " W, " << percent << " %";
                grew = grew || now > before;
            }
            before = now;
        }
    }
    EXPECT_TRUE(grew);
}

}  // namespace
}  // namespace toft::circuit
