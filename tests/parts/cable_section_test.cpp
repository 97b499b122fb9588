#include "parts/cable_section.h"

#include "drawing/conductor_colours.h"
#include "parts/core_section.h"
#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::parts {
namespace {

using namespace picture;

namespace conductor = drawing::conductor;

const drawing::Box section_room{0, 0, 376, 210};

answer::CableAnswer three_core() {
    answer::CableAnswer run;
    run.cores = 3;
    run.live_mm2 = 10;
    run.core_list = {{"brown", "", "line"},
                     {"grey", "blue", "neutral"},
                     {"black", "green-yellow", "protective"}};
    run.protective_conductor = "core and armour";
    run.armour_far = true;
    return run;
}

/// Colours of fills and strokes inside the first group of that kind.
std::vector<drawing::Colour> colours_in(const drawing::Items& items, const std::string& kind) {
    std::vector<drawing::Colour> colours;
    const drawing::Group* group = find_kind(items, kind);
    if (!group) return colours;
    for (const drawing::Item& item : group->items) {
        const auto* circle = std::get_if<drawing::Circle>(&item.shape);
        if (!circle) continue;
        if (circle->style.fill) colours.push_back(*circle->style.fill);
        if (circle->style.stroke) colours.push_back(*circle->style.stroke);
    }
    return colours;
}

bool has(const std::vector<drawing::Colour>& colours, drawing::Colour one) {
    return std::find(colours.begin(), colours.end(), one) != colours.end();
}

TEST(CableSection, CoresHaveTheirColoursAndSleeves) {
    const drawing::Items items = cable_section(three_core(), section_room);
    EXPECT_EQ(count_kind(items, "core"), 3);
    EXPECT_TRUE(has(colours_in(items, "core-brown"), conductor::brown));
    EXPECT_TRUE(has(colours_in(items, "core-grey"), conductor::grey));
    EXPECT_TRUE(has(colours_in(items, "core-grey"), conductor::blue));
    EXPECT_TRUE(has(colours_in(items, "core-black"), conductor::black));
    EXPECT_TRUE(has(colours_in(items, "core-black"), conductor::green));
    EXPECT_TRUE(has(colours_in(items, "core-black"), conductor::yellow));
    EXPECT_FALSE(has(colours_in(items, "core-brown"), conductor::green));
}

TEST(CableSection, EachCoreIsNamedWithItsUse) {
    const drawing::Items items = cable_section(three_core(), section_room);
    for (const char* words :
         {"line 10 mm²", "neutral 10 mm²", "protective 10 mm²", "brown", "grey, sleeved blue",
          "black, sleeved green-and-yellow", "serves as protective conductor"}) {
        EXPECT_TRUE(says(items, words)) << words;
    }
    EXPECT_EQ(clashes(items, section_room), "");
}

TEST(CableSection, TwoCoresAndASeparateConductor) {
    answer::CableAnswer run = three_core();
    run.cores = 2;
    run.core_list = {{"brown", "", "line"}, {"blue", "", "neutral"}};
    run.protective_conductor = "separate conductor";
    run.separate_mm2 = 16;
    run.armour_far = false;
    const drawing::Items items = cable_section(run, section_room);
    EXPECT_EQ(count_kind(items, "core"), 2);
    EXPECT_TRUE(has(colours_in(items, "core-blue"), conductor::blue));
    EXPECT_EQ(count_kind(items, "separate-section"), 1);
    EXPECT_TRUE(has(colours_in(items, "separate-section"), conductor::yellow));
    EXPECT_TRUE(says(items, "separate conductor 16 mm²"));
    EXPECT_TRUE(says(items, "earthed at near end"));
    EXPECT_EQ(count_kind(cable_section(three_core(), section_room), "separate-section"), 0);
}

TEST(CableSection, AFlatCableHasNoArmourAndABareEarthCore) {
    answer::CableAnswer flat = three_core();
    flat.family = "flat twin and earth";
    flat.cores = 2;
    flat.live_mm2 = 6;
    flat.cpc_mm2 = 2.5;
    flat.armoured = flat.armour_near = flat.armour_far = false;
    flat.core_list = {
        {"brown", "", "line"}, {"blue", "", "neutral"}, {"bare", "green-yellow", "protective"}};
    const drawing::Items items = cable_section(flat, section_room);
    EXPECT_EQ(count_kind(items, "flat-sheath"), 1);
    EXPECT_EQ(count_kind(items, "armour"), 0);
    EXPECT_FALSE(has(colours_in(items, "core-bare"), conductor::green)) << "bare inside the cable";
    for (const char* words :
         {"protective 2.5 mm²", "line 6 mm²", "bare, sleeved green-and-yellow", "no armour"}) {
        EXPECT_TRUE(says(items, words)) << words;
    }
    EXPECT_EQ(clashes(items, section_room), "");
}

TEST(CableSection, FiveCoresLieClearOfOneAnother) {
    answer::CableAnswer five = three_core();
    five.family = "unarmoured XLPE copper";
    five.cores = 5;
    five.armoured = false;
    five.core_list = {{"brown", "", "line 1"},
                      {"black", "", "line 2"},
                      {"grey", "", "line 3"},
                      {"blue", "", "neutral"},
                      {"green-yellow", "", "protective"}};
    const drawing::Items items = cable_section(five, section_room);
    EXPECT_EQ(count_kind(items, "sheath"), 1);
    EXPECT_EQ(count_kind(items, "armour"), 0);
    EXPECT_TRUE(has(colours_in(items, "core-green-yellow"), conductor::green));
    std::vector<drawing::Circle> insulations;
    for (const drawing::Item& item : items) {
        const auto* group = std::get_if<drawing::Group>(&item.shape);
        if (!group || group->kind.rfind("core ", 0) != 0) continue;
        insulations.push_back(std::get<drawing::Circle>(group->items.front().shape));
    }
    ASSERT_EQ(insulations.size(), 5u);
    for (std::size_t i = 0; i < 5; ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            EXPECT_GE(drawing::distance(insulations[i].centre, insulations[k].centre),
                      insulations[i].radius + insulations[k].radius);
        }
    }
    EXPECT_EQ(clashes(items, section_room), "");
}

TEST(CableSection, APairAndItsMetalAreSaid) {
    answer::CableAnswer pair = three_core();
    EXPECT_EQ(count_kind(cable_section(pair, section_room), "second-cable"), 0);
    pair.parallel = 2;
    pair.family = "armoured XLPE aluminium";
    pair.cores = 2;
    pair.core_list = {{"brown", "", "line"}, {"blue", "", "neutral"}};
    const drawing::Items items = cable_section(pair, section_room);
    EXPECT_EQ(count_kind(items, "second-cable"), 1);
    EXPECT_TRUE(says(items, "two 2-core 10 mm²"));
    EXPECT_TRUE(says(items, "brown, aluminium"));
    EXPECT_FALSE(says(items, "…"));
    EXPECT_EQ(clashes(items, section_room), "");
}

TEST(CableSection, AColourThatIsNotKnownIsNotGuessed) {
    EXPECT_EQ(core_colour("brown"), conductor::brown);
    EXPECT_FALSE(core_colour("mauve"));
    EXPECT_FALSE(core_colour(""));
}

}  // namespace
}  // namespace toft::parts
