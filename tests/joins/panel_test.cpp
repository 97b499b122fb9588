#include "joins/panel.h"

#include "joins/looking.h"

#include <gtest/gtest.h>

namespace toft::joins {
namespace {

int ends(const drawing::Items& items, const std::string& side, const std::string& how) {
    int count = 0;
    for (const drawing::Item& item : items) {
        const auto* group = std::get_if<drawing::Group>(&item.shape);
        if (group && group->kind == "armour-end " + side + " " + how) ++count;
    }
    return count;
}

TEST(Panel, ShowsEachEndOfTheArmourAsTheAnswerHasIt) {
    for_each_run([&](const std::string& name, const site::Job& job, const answer::SchemeAnswer& s) {
        SCOPED_TRACE(name);
        const picture::Stage stage = picture::set_stage(job, &s);
        for (std::size_t i = 0; i < s.run.stretches.size(); ++i) {
            const answer::StretchAnswer& cable = s.run.stretches[i];
            for (const double width : {340.0, 714.0}) {
                const Panel one = panel(stage, i, {10, 0, 10 + width, 0});
                EXPECT_EQ(ends(one.items, "near", "joined"), cable.armoured && cable.armour_near);
                EXPECT_EQ(ends(one.items, "near", "isolated"),
                          cable.armoured && !cable.armour_near);
                EXPECT_EQ(ends(one.items, "far", "joined"), cable.armoured && cable.armour_far);
                EXPECT_EQ(ends(one.items, "far", "isolated"), cable.armoured && !cable.armour_far);
            }
        }
    });
}

TEST(Panel, HasALineForEveryConductorAndASleeveAtBothEnds) {
    for_each_run([&](const std::string& name, const site::Job& job, const answer::SchemeAnswer& s) {
        SCOPED_TRACE(name);
        const picture::Stage stage = picture::set_stage(job, &s);
        for (std::size_t i = 0; i < s.run.stretches.size(); ++i) {
            const answer::StretchAnswer& cable = s.run.stretches[i];
            const Panel one = panel(stage, i, {10, 0, 350, 0});
            const int wanted = static_cast<int>(cable.core_list.size()) + cable.armoured +
                               cable.separate_mm2.has_value();
            EXPECT_EQ(picture::count_kind(one.items, "conductor"), wanted);
            int sleeves = 0;
            for (const auto& core : cable.core_list) sleeves += core.sleeve.empty() ? 0 : 2;
            const bool capped = picture::count_kind(one.items, "capped") > 0;
            if (!capped) {
                EXPECT_EQ(picture::count_kind(one.items, "sleeve"), sleeves);
            }
        }
    });
}

TEST(Panel, EveryKindOfProtectiveConductorIsDrawnAsItIsJoined) {
    struct Case {
        answer::StretchAnswer cable;
        const char* earthing;
        int leads;  ///< of glands
        int capped;
    };
    const std::vector<Case> cases{
        {armoured("core", false), "supply earth", 1, 0},
        {armoured("armour", true), "supply earth", 2, 0},
        {armoured("core and armour", true), "supply earth", 2, 0},
        {armoured("separate conductor", false, 16), "supply earth", 1, 0},
        {armoured("armour and separate conductor", true, 16), "supply earth", 2, 0},
        {armoured("armour", false), "own electrode", 1, 0},
        {armoured("armour", true), "shared electrode", 2, 0},
        {flat(), "supply earth", 0, 0},
        {flat(), "own electrode", 0, 1},
    };
    for (const Case& c : cases) {
        SCOPED_TRACE(c.cable.protective_conductor + " " + c.earthing);
        const Example one = made_up({c.cable}, c.earthing);
        const Panel drawn =
            panel(picture::set_stage(one.job, &one.answer.schemes[0]), 0, {10, 0, 724, 0});
        EXPECT_EQ(picture::count_kind(drawn.items, "lead"), c.leads);
        EXPECT_EQ(picture::count_kind(drawn.items, "capped"), c.capped);
        EXPECT_EQ(picture::count_kind(drawn.items, "insulated"),
                  c.cable.armoured ? 2 - c.leads : 0);
    }
}

}  // namespace
}  // namespace toft::joins
