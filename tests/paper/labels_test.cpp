// Which labels a scheme gets, and what they say.

#include "paper/labels.h"

#include "paper/outgoing.h"
#include "paper/written.h"

#include <map>

namespace toft::paper {
namespace {

std::map<std::string, int> keys_of(const char* name) {
    std::map<std::string, int> keys;
    for (const Placed& one : labels_of(subject_of(picture::example(name)))) ++keys[one.key];
    return keys;
}

using Keys = std::map<std::string, int>;

TEST(Labels, ABuildingOnItsOwnRodGetsTheseAndNoOther) {
    EXPECT_EQ(keys_of("own-rod-greenhouse"), (Keys{{"own-earth", 1},
                                                   {"own-earth-near", 1},
                                                   {"armour-insulated", 1},
                                                   {"bond", 1},
                                                   {"bond-rod", 1},
                                                   {"button", 1},
                                                   {"fed-from", 1},
                                                   {"feeds", 1},
                                                   {"chart", 1},
                                                   {"below", 2},
                                                   {"inspection", 1}}));
}

TEST(Labels, ACarriedCombinedEarthGetsTheseAndNoOther) {
    EXPECT_EQ(keys_of("demo"), (Keys{{"combined-earth", 1},
                                     {"bond", 1},
                                     {"button", 1},
                                     {"fed-from", 1},
                                     {"feeds", 1},
                                     {"chart", 1},
                                     {"below", 2},
                                     {"inspection", 1}}));
}

TEST(Labels, ACarriedSeparateEarthIsNotCalledCombined) {
    const Keys keys = keys_of("tn-s-workshop");
    EXPECT_EQ(keys.count("separate-earth"), 1u);
    EXPECT_EQ(keys.count("combined-earth") + keys.count("own-earth") + keys.count("carried-rod"),
              0u);
}

TEST(Labels, ASharedRodGetsItsOwn) {
    const Keys keys = keys_of("tt-shed");
    EXPECT_EQ(keys.count("carried-rod"), 1u);
    EXPECT_EQ(keys.count("own-earth") + keys.count("bond-rod") + keys.count("combined-earth"), 0u);
}

TEST(Labels, SolarAndBatteryAreWarnedOfAtBoardHouseAndIntake) {
    const Keys keys = keys_of("sunny-garage");
    EXPECT_EQ(keys.at("sources"), 1);
    EXPECT_EQ(keys.at("sources-house"), 1);
    EXPECT_EQ(keys.at("sources-origin"), 1);
    for (const Placed& one : labels_of(subject_of(picture::example("sunny-garage")))) {
        if (one.key.rfind("sources", 0) != 0) continue;
        EXPECT_NE(one.label.small.find("Battery in Garage"), std::string::npos);
        EXPECT_TRUE(one.label.warning);
    }
}

TEST(Labels, EveryBondHasOneThatNamesIt) {
    for (const char* name : {"demo", "steel-container", "own-rod-greenhouse", "tn-c-s-office"}) {
        const auto& one = picture::example(name);
        const auto& bonds = one.answer.schemes.front().building.bonding;
        const auto placed = labels_of(subject_of(one));
        std::size_t count = 0;
        for (const Placed& each : placed) count += each.key == "bond";
        EXPECT_EQ(count, bonds.size()) << name;
        for (const answer::BondAnswer& bond : bonds) {
            EXPECT_TRUE(std::any_of(placed.begin(), placed.end(), [&](const Placed& each) {
                return each.key == "bond" && each.place.find(bond.part) != std::string::npos;
            }));
        }
    }
}

TEST(Labels, AVoltageIsSaidOnlyAboveTheLimitOfItsClause) {
    EXPECT_EQ(keys_of("three-facts").count("voltage"), 0u);
    picture::Example one = copy_of("demo");
    one.job.intake.u0 = volts(400);
    bool found = false;
    for (const Placed& each : labels_of(subject_of(one))) {
        if (each.key == "voltage") found = each.label.big == "400 V to earth inside";
    }
    EXPECT_TRUE(found);
}

TEST(Labels, ACableInTheOpenNeedsNoMarkerInTheGround) {
    picture::Example one = copy_of("demo");
    for (site::Leg& leg : one.job.runs.front().legs) leg.method = site::LegMethod::clipped;
    for (const Placed& each : labels_of(subject_of(one))) EXPECT_NE(each.key, "below");
}

TEST(Labels, DeviceAndCableAreTheAnswers) {
    const auto& one = picture::example("demo");
    const auto& run = one.answer.schemes.front().run;
    for (const Placed& each : labels_of(subject_of(one))) {
        if (each.key != "feeds") continue;
        EXPECT_NE(each.label.small.find(significant(run.device.rating_a, 6) + " A type B breaker"),
                  std::string::npos);
        EXPECT_NE(each.label.small.find(significant(run.live_mm2, 6) + " mm²"), std::string::npos);
    }
}

TEST(Labels, TheChartHoldsEveryCircuitWithTheAnswersFigures) {
    const auto& one = picture::example("demo");
    const auto& circuits = one.answer.schemes.front().building.circuits;
    const auto rows = chart_rows(subject_of(one), one.answer.schemes.front());
    ASSERT_EQ(rows.size(), circuits.size() + blank_rows);
    for (std::size_t i = 0; i < circuits.size(); ++i) {
        EXPECT_EQ(rows[i][0], std::to_string(circuits[i].number));
        EXPECT_EQ(rows[i][1], circuits[i].name);
        EXPECT_NE(rows[i][2].find(significant(circuits[i].device.rating_a, 6) + " A"),
                  std::string::npos);
        EXPECT_EQ(rows[i][3], significant(circuits[i].live_mm2, 6) + " / " +
                                  significant(circuits[i].cpc_mm2, 6));
        EXPECT_NE(rows[i][4].find(significant(circuits[i].rcd_ma, 6) + " mA"), std::string::npos);
    }
    for (std::size_t i = circuits.size(); i < rows.size(); ++i) EXPECT_TRUE(rows[i].empty());
}

TEST(Labels, ACircuitThatCouldNotBeDesignedIsNotLeftOffTheChart) {
    picture::Example one = copy_of("demo");
    one.answer.schemes.front().building.circuits.pop_back();
    const auto rows = chart_rows(subject_of(one), one.answer.schemes.front());
    EXPECT_TRUE(std::any_of(rows.begin(), rows.end(), [](const ChartRow& row) {
        return row.size() > 1 && row[1] == "Potter's wheel (to be designed)";
    }));
}

TEST(Labels, AWayThatFeedsAnotherBuildingStandsOnTheChart) {
    const auto& one = picture::example("garage-gym-stable");
    const Subject subject = subject_of(one);
    for (const answer::SchemeAnswer* part : runs_of(subject)) {
        const auto feeds = outgoing(subject, part->building.id);
        std::size_t shown = 0;
        for (const ChartRow& row : chart_rows(subject, *part)) {
            if (row.size() < 3 || row[1].rfind("Feeds ", 0) != 0) continue;
            ASSERT_LT(shown, feeds.size());
            EXPECT_EQ(row[1], "Feeds " + feeds[shown]->building.name);
            const double rating = feeds[shown]->run.device.rating_a;
            EXPECT_EQ(row[2].rfind(significant(rating, 6) + " A", 0), 0u) << row[2];
            ++shown;
        }
        EXPECT_EQ(shown, feeds.size()) << part->building.name;
    }
}

TEST(Labels, ADeviceInANewBoxIsNotLookedForInTheHousesBoard) {
    const std::map<std::string, std::string> heads{
        {"tails", "new switch-fuse at the house, at the device for "},
        {"new board", "new small board at the house, at the device for "},
        {"spare way", "board of the house, at the device for "}};
    for (const auto& [fed_from, place] : heads) {
        picture::Example one = copy_of("demo");
        auto& part = one.answer.schemes.front();
        part.run.fed_from = fed_from;
        if (fed_from == "tails") part.run.device = {"BS 88-3", "", "fuse", 40, 16};
        int seen = 0;
        for (const Placed& each : labels_of(subject_of(one))) {
            if (each.key == "feeds") {
                EXPECT_EQ(each.place, place + part.building.name);
                ++seen;
            }
            if (each.key == "fed-from") {
                const std::string at = place.substr(0, place.find(','));
                EXPECT_NE(each.label.small.find("in the " + at + ". To make this board dead"),
                          std::string::npos)
                    << each.label.small;
                ++seen;
            }
        }
        EXPECT_EQ(seen, 2);
    }
}

TEST(Labels, WhatStaysIsNotCalledNew) {
    picture::Example one = copy_of("demo");
    auto& run = one.answer.schemes.front().run;
    run.fed_from = "new board";
    run.device_stays = true;
    int seen = 0;
    for (const Placed& each : labels_of(subject_of(one))) {
        if (each.key != "feeds") continue;
        EXPECT_EQ(each.place.rfind("small board at the house", 0), 0u) << each.place;
        ++seen;
    }
    EXPECT_EQ(seen, 1);
}

TEST(Labels, EveryInsulatedEndOfArmourSaysSo) {
    for (const char* name :
         {"demo", "own-rod-greenhouse", "tt-shed", "old-garage-cable", "garage-gym-stable"}) {
        const Subject subject = subject_of(picture::example(name));
        int ends = 0;
        for (const answer::SchemeAnswer* part : runs_of(subject)) {
            for (const answer::StretchAnswer& s : part->run.stretches) {
                ends += s.armoured && !s.armour_far;
            }
        }
        int labels = 0;
        for (const Placed& each : labels_of(subject)) labels += each.key == "armour-insulated";
        EXPECT_EQ(labels, ends) << name;
    }
}

TEST(Labels, OldAndNewColoursAreToldAtBothEndsWhereTheyMeet) {
    EXPECT_EQ(keys_of("demo").count("old-colours"), 0u);
    picture::Example one = copy_of("demo");
    one.answer.schemes.front().run.stretches.front().core_list = {{"red", "brown", "line"},
                                                                  {"black", "blue", "neutral"}};
    std::vector<std::string> places;
    for (const Placed& each : labels_of(subject_of(one))) {
        if (each.key == "old-colours") places.push_back(each.place);
    }
    ASSERT_EQ(places.size(), 2u);
    EXPECT_EQ(places[1], "board of " + one.answer.schemes.front().building.name);
    EXPECT_NE(places[0], places[1]);
}

TEST(Labels, NoBraceIsLeftUnfilled) {
    for (const char* name : {"demo", "own-rod-greenhouse", "tt-shed", "sunny-garage",
                             "tn-s-workshop", "garage-gym-stable"}) {
        const std::string words = all_words(labels(subject_of(picture::example(name))));
        EXPECT_EQ(words.find_first_of("{}"), std::string::npos) << name;
    }
}

TEST(Labels, BigWordsAreAsHighOnTheSheetAsTheTableAsks) {
    const auto sizes = letter_sizes(support::catalogue().handover.terms.big_letters.value,
                                    support::catalogue().handover.terms.small_letters.value);
    bool found = false;
    for (const drawing::Scene& sheet : page::pages(labels(subject_of(picture::example("demo"))))) {
        for (const drawing::Text& text : picture::texts_in(sheet.items)) {
            if (picture::line_of(text).rfind("Feeds ", 0) != 0) continue;
            if (text.style.weight != drawing::Weight::bold) continue;
            found = found || std::abs(text.style.size - sizes.big) < 1e-9;
        }
    }
    EXPECT_TRUE(found) << "made smaller, a label misses its size";
}

TEST(Labels, EveryLabelOfATreeNamesItsBuildingAndFeeder) {
    const auto placed = labels_of(subject_of(picture::example("garage-gym-stable")));
    int gym = 0;
    for (const Placed& each : placed) {
        if (each.key == "fed-from" && each.label.big == "Fed from Gym") {
            ++gym;
            EXPECT_EQ(each.place, "board of Stable");
        }
    }
    EXPECT_EQ(gym, 1);
}

TEST(Labels, EachTellsItsClauseAndHowWellThatIsKnown) {
    const page::Paper paper = labels(subject_of(picture::example("demo")));
    for (const Placed& each : labels_of(subject_of(picture::example("demo")))) {
        EXPECT_TRUE(reads(paper, each.row->clause + ": " + basis_word(each.row->citation->basis)));
    }
    EXPECT_TRUE(reads(paper, "competent and licensed person"));
}

TEST(Labels, HardNamesAndFortyCircuitsStayOnTheSheet) {
    for (const std::string& name : hard_names()) {
        picture::Example one = renamed("sunny-garage", name);
        auto& circuits = one.answer.schemes.front().building.circuits;
        ASSERT_FALSE(circuits.empty());
        while (circuits.size() < 40) circuits.push_back(circuits.front());
        const page::Paper paper = labels(subject_of(one));
        expect_in_the_field(paper);
    }
}

}  // namespace
}  // namespace toft::paper
