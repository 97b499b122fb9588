#include "joins/joins.h"

#include "drawing/night.h"
#include "joins/looking.h"
#include "parts/core_section.h"
#include "parts/word_column.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

namespace toft::joins {
namespace {

using drawing::Scene;

std::string beyond_or_over(const Scene& scene) {
    return picture::clashes(scene.items, {0, 0, scene.width, scene.height});
}

TEST(Joins, NoWordsCoverOthersOnAnyExample) {
    for (const std::string& name : drawn_examples()) {
        const Example& one = example(name);
        for (std::size_t i = 0; i <= one.answer.schemes.size(); ++i) {
            for (const double width : {320.0, 360.0, paper_wide, 1100.0}) {
                const Scene scene = conductors_picture(one.job, one.answer, i, width);
                EXPECT_EQ(beyond_or_over(scene), "") << name << " " << i << " " << width;
                EXPECT_DOUBLE_EQ(scene.width, width);
            }
        }
    }
}

TEST(Joins, LettersAreLargeEnoughToRead) {
    for_each_run([&](const std::string& name, const site::Job& job, const answer::SchemeAnswer& s) {
        for (const double width : {360.0, 660.0}) {
            const Scene scene = run_conductors(job, s, width);
            EXPECT_EQ(beyond_or_over(scene), "") << name;
            for (const drawing::Text& text : picture::texts_in(scene.items)) {
                EXPECT_GE(text.style.size, 10) << picture::line_of(text);
            }
        }
    });
}

TEST(Joins, ARunFromAnotherBuildingNeverNamesTheHouse) {
    for (const char* run : {"gym-feed", "stable-feed"}) {
        const OneRun one = one_run("garage-gym-stable", run);
        const Scene scene = run_conductors(one.job, one.answer.schemes.at(0), 360);
        EXPECT_FALSE(tells(scene.items, "house")) << all_words(scene.items);
        EXPECT_TRUE(tells(scene.items, one.answer.schemes[0].run.feeder));
    }
}

TEST(Joins, TheDrawingAloneLeavesTheListsOut) {
    const Example& one = example("demo");
    const answer::SchemeAnswer& part = one.answer.schemes.at(0);
    const Scene whole = run_conductors(one.job, part, 660);
    const Scene bare = run_conductors(one.job, part, 660, false);
    EXPECT_LT(bare.height, whole.height);
    EXPECT_FALSE(tells(bare.items, "main bond"));
    EXPECT_TRUE(tells(whole.items, "main bond"));
    EXPECT_EQ(picture::count_kind(bare.items, "conductor"),
              picture::count_kind(whole.items, "conductor"));
}

/// Any cable: one that no table has, too.
answer::StretchAnswer any_stretch(int phases) {
    answer::StretchAnswer s;
    s.protective_conductor = *rc::gen::element<std::string>(
        "core", "armour", "core and armour", "separate conductor", "armour and separate conductor");
    const bool core = s.protective_conductor.rfind("core", 0) == 0 || *rc::gen::arbitrary<bool>();
    const std::vector<std::string> colours{"brown", "black", "grey", "red", "yellow", "bare"};
    const std::vector<std::string> sleeves{"", "brown", "black", "grey", "blue"};
    for (int line = 1; line <= phases; ++line) {
        const std::string use = phases == 1 ? "line" : "line " + std::to_string(line);
        s.core_list.push_back({*rc::gen::elementOf(colours), *rc::gen::elementOf(sleeves), use});
    }
    s.core_list.push_back({*rc::gen::elementOf(colours), "blue", "neutral"});
    if (core) s.core_list.push_back({"black", "green-yellow", "protective"});
    s.family = *rc::gen::element<std::string>("armoured XLPE aluminium", "flat twin and earth");
    s.armoured = *rc::gen::arbitrary<bool>();
    s.armour_near = s.armoured && *rc::gen::arbitrary<bool>();
    s.armour_far = s.armoured && *rc::gen::arbitrary<bool>();
    if (s.protective_conductor.find("separate") != std::string::npos) s.separate_mm2 = 16;
    s.parallel = *rc::gen::inRange(1, 5);
    s.live_mm2 = 10;
    s.length_m = *rc::gen::inRange(1, 300);
    return s;
}

Example any_run() {
    const int phases = *rc::gen::element(1, 3);
    std::vector<answer::StretchAnswer> stretches;
    const int count = *rc::gen::inRange(1, 5);
    for (int i = 0; i < count; ++i) stretches.push_back(any_stretch(phases));
    Example one = made_up(
        std::move(stretches),
        *rc::gen::element<std::string>("supply earth", "shared electrode", "own electrode"));
    answer::RunAnswer& run = one.answer.schemes[0].run;
    run.phases = phases;
    run.feeder = *rc::gen::element<std::string>("", "Garage", std::string(60, 'M'));
    run.fed_from = *rc::gen::element<std::string>("spare way", "tails", "new board");
    run.device.kind = *rc::gen::element<std::string>("RCBO", "breaker", "fuse");
    run.device.curve = run.device.kind == "fuse" ? "" : "C";
    if (*rc::gen::arbitrary<bool>()) run.rcd = answer::RcdAnswer{100, "B", true, {}};
    return one;
}

RC_GTEST_PROP(Joins, AnyRunIsLegibleAndShowsEveryEndOfItsArmour, ()) {
    const Example one = any_run();
    const answer::SchemeAnswer& part = one.answer.schemes[0];
    const Scene scene =
        run_conductors(one.job, part, *rc::gen::element(320.0, 360.0, 480.0, 660.0, 1400.0));
    RC_ASSERT(beyond_or_over(scene) == "");
    int near = 0;
    int far = 0;
    int armoured = 0;
    for (const answer::StretchAnswer& s : part.run.stretches) {
        armoured += s.armoured;
        near += s.armoured && s.armour_near;
        far += s.armoured && s.armour_far;
        for (const answer::CoreAnswer& core : s.core_list) {
            RC_ASSERT(tells(scene.items, parts::core_words(core)));
        }
    }
    RC_ASSERT(picture::count_kind(scene.items, "armour-end") == 2 * armoured);
    const auto ends = [&](const char* side, const char* how) {
        int count = 0;
        const std::string kind = std::string("armour-end ") + side + " " + how;
        for (const drawing::Item& item : scene.items) {
            const auto* group = std::get_if<drawing::Group>(&item.shape);
            count += group && group->kind == kind;
        }
        return count;
    };
    RC_ASSERT(ends("near", "joined") == near);
    RC_ASSERT(ends("near", "isolated") == armoured - near);
    RC_ASSERT(ends("far", "joined") == far);
    RC_ASSERT(ends("far", "isolated") == armoured - far);
}

TEST(Joins, WithoutASchemeItSaysWhy) {
    const Example& one = example("caravan-no-scheme");
    const Scene scene = conductors_picture(one.job, one.answer, 0, 360);
    EXPECT_TRUE(picture::says(scene.items, "no sound scheme: what fell, and why"));
    EXPECT_EQ(picture::count_kind(scene.items, "conductor"), 0);
}

TEST(Joins, LongAndEmptyNamesKeepToTheirRoom) {
    for (const std::string& name :
         {picture::hostile_name(), std::string(), std::string(60, 'W'), std::string("A b")}) {
        Example one = example("three-phase-barn");
        one.job.title = one.answer.job = name;
        for (site::Building& building : one.job.buildings) building.name = name;
        answer::SchemeAnswer& scheme = one.answer.schemes.at(0);
        scheme.building.name = scheme.run.feeder = name;
        scheme.building.rcds.at(0).covers.assign(30, name);
        for (answer::BondAnswer& bond : scheme.building.bonding) bond.part = name;
        for (const double width : {320.0, 360.0, paper_wide}) {
            const Scene scene = conductors_picture(one.job, one.answer, 0, width);
            EXPECT_EQ(beyond_or_over(scene), "") << name;
            const std::string svg = drawing::to_svg(scene);
            EXPECT_EQ(svg.find("<script"), std::string::npos);
            EXPECT_EQ(svg.find("Part of this drawing is missing"), std::string::npos);
        }
    }
}

TEST(Joins, AtNightConductorsKeepTheirColoursAndInkDoesNot) {
    const Example& one = example("demo");
    const std::string night =
        drawing::to_svg(drawing::at_night(conductors_picture(one.job, one.answer, 0)));
    EXPECT_EQ(night.find("#fbf8f1"), std::string::npos) << "paper is left at night";
    EXPECT_EQ(night.find("#1f1c19"), std::string::npos) << "ink is left at night";
    for (const char* kept : {"#6b3f16", "#1e6fc8", "#1f8a3b"}) {
        EXPECT_NE(night.find(kept), std::string::npos) << kept;
    }
}

TEST(Joins, SameInputSameBytesAndNoSheetTooNarrow) {
    const Example& one = example("tt-shed");
    EXPECT_EQ(drawing::to_svg(conductors_picture(one.job, one.answer, 0)),
              drawing::to_svg(conductors_picture(one.job, one.answer, 0)));
    EXPECT_DOUBLE_EQ(conductors_picture(one.job, one.answer, 0, 10).width, parts::narrowest_sheet);
}

}  // namespace
}  // namespace toft::joins
