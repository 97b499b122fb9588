#include "diagram/single_line.h"

#include "diagram/sheet.h"
#include "drawing/measure.h"
#include "drawing/night.h"
#include "drawing/svg.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::diagram {
namespace {

/// Boxes of the groups that words must keep clear of.
std::vector<Box> symbol_boxes(const Items& items) {
    std::vector<Box> boxes;
    for (const Item& item : items) {
        const auto* group = std::get_if<Group>(&item.shape);
        if (!group) continue;
        const bool marks = group->kind.rfind("stroke", 0) == 0;
        if (!group->kind.empty() && group->kind != "verdict" && !marks) {
            boxes.push_back(box_of(item));
        }
    }
    return boxes;
}

std::string words_on_symbols(const Scene& scene) {
    std::string found;
    const std::vector<Box> boxes = symbol_boxes(scene.items);
    for (const Text& text : picture::texts_in(scene.items)) {
        for (const Box& box : boxes) {
            if (overlap(picture::letters_of(text), box)) found += picture::line_of(text) + "\n";
        }
    }
    return boxes.size() < 5 ? "no symbols found" : found;
}

TEST(SingleLine, NoWordsCoverOthersOrASymbolOnAnyExample) {
    for (const std::string& name : all_examples()) {
        const Example& one = example(name);
        for (std::size_t i = 0; i <= one.answer.schemes.size(); ++i) {
            for (const double width : {320.0, 360.0, paper_wide, 1100.0}) {
                const Scene scene = single_line(one.job, one.answer, i, width);
                EXPECT_EQ(picture::clashes(scene.items, {0, 0, scene.width, scene.height}), "")
                    << name << " " << i << " " << width;
                EXPECT_EQ(words_on_symbols(scene), "") << name << " " << i << " " << width;
            }
        }
    }
}

TEST(SingleLine, ThePathIsDrawnFromTheSupplyToTheCircuits) {
    each_scheme([](const Example& one, const answer::SchemeAnswer& scheme) {
        const auto index = static_cast<std::size_t>(&scheme - one.answer.schemes.data());
        const Scene scene = single_line(one.job, one.answer, index);
        std::string order;
        for (const Text& text : picture::texts_in(scene.items)) {
            order += picture::line_of(text) + "\n";
        }
        const auto end = [](const answer::StretchAnswer& cable, const char* bare) {
            if (!cable.armoured) return std::string(bare);
            return std::string(cable.parallel > 1 ? "glands at the " : "gland at the ");
        };
        const std::string near = end(scheme.run.stretches.front(), "cable leaves the house");
        const std::string far = end(scheme.run.stretches.back(), "cable enters the outbuilding");
        std::vector<std::string> steps{"operator's fuse", "energy meter", "main earthing terminal",
                                       near};
        for (std::size_t i = 0; i < scheme.run.stretches.size(); ++i) {
            if (i > 0) steps.push_back("joint box");
            steps.push_back(scheme.run.stretches[i].family.substr(0, 6));
        }
        steps.insert(steps.end(), {far, "earth terminal of", "board of"});
        std::size_t at = 0;
        for (const std::string& step : steps) {
            at = order.find(step, at);
            ASSERT_NE(at, std::string::npos) << step;
        }
        EXPECT_EQ(scene.description, scheme.sentence);
    });
}

TEST(SingleLine, TheLiveLineHasNoGapBetweenRows) {
    const Example& one = example("demo");
    const Scene scene = single_line(one.job, one.answer, 0);
    const double x = columns_for(paper_wide).live;
    std::vector<std::pair<double, double>> pieces;
    for (const Line& line : all_of<Line>(scene.items)) {
        if (line.from.x == x && line.to.x == x) pieces.push_back({line.from.y, line.to.y});
        // An open blade joins its hinge to its fixed contact.
        if (line.from.x == x && line.to.y < line.from.y) {
            pieces.push_back({line.to.y - 2, line.from.y});
        }
    }
    std::sort(pieces.begin(), pieces.end());
    ASSERT_GT(pieces.size(), 20u);
    double reached = pieces.front().second;
    for (const auto& [top, foot] : pieces) {
        const bool meter = top - reached > 30 && top - reached < 33;
        EXPECT_TRUE(top <= reached + 0.1 || meter) << "gap from " << reached << " to " << top;
        reached = std::max(reached, foot);
    }
}

TEST(SingleLine, SymbolsAreShapesAndNotLetters) {
    const Example& one = example("demo");
    const std::string words = picture::words_in(single_line(one.job, one.answer, 0).items);
    for (const char* glyph : {"⏚", "⊥", "~\n", "Wh", "IΔ"}) {
        EXPECT_EQ(words.find(glyph), std::string::npos) << glyph;
    }
}

TEST(SingleLine, ConductorColoursAreForConductorsAlone) {
    const Example& one = example("steel-container");
    const Scene scene = single_line(one.job, one.answer, 0);
    const std::string svg = drawing::to_svg(scene);
    for (const char* colour : {"#6b3f16", "#1e6fc8", "#8c9196"}) {
        EXPECT_EQ(svg.find(colour), std::string::npos) << colour;
    }
    EXPECT_NE(svg.find("#1f8a3b"), std::string::npos);
    const std::string night = drawing::to_svg(drawing::at_night(scene));
    EXPECT_EQ(night.find("#fbf8f1"), std::string::npos) << "paper is left at night";
    EXPECT_EQ(night.find("#1f1c19"), std::string::npos) << "ink is left at night";
    EXPECT_NE(night.find("#1f8a3b"), std::string::npos);
}

TEST(SingleLine, WithoutASchemeTheSupplyAloneAndThatNothingFollows) {
    const Example& one = example("caravan-no-scheme");
    const Scene scene = single_line(one.job, one.answer, 0);
    EXPECT_TRUE(says(scene.items, "no sound scheme"));
    EXPECT_EQ(count_kind(scene.items, "energy-meter"), 1);
    for (const char* kind : {"armour", "way", "circuit-breaker", "bond"}) {
        EXPECT_EQ(count_kind(scene.items, kind), 0) << kind;
    }
}

TEST(SingleLine, HostileNamesAreHarmlessAndKeepToTheirRoom) {
    Example one = example("demo");
    one.job.title = one.answer.job = picture::hostile_name();
    for (site::Building& building : one.job.buildings) building.name = picture::hostile_name();
    for (site::Circuit& circuit : one.job.buildings[1].circuits) {
        circuit.name = picture::hostile_name();
    }
    answer::SchemeAnswer& scheme = one.answer.schemes[0];
    scheme.building.rcds[0].covers.assign(30, picture::hostile_name());
    scheme.house_work.assign(5, picture::hostile_name());
    for (const double width : {360.0, paper_wide}) {
        const Scene scene = single_line(one.job, one.answer, 0, width);
        EXPECT_EQ(picture::clashes(scene.items, {0, 0, scene.width, scene.height}), "");
        EXPECT_EQ(words_on_symbols(scene), "");
        const std::string svg = drawing::to_svg(scene);
        EXPECT_EQ(svg.find("<script"), std::string::npos);
        EXPECT_EQ(svg.find("Part of this drawing is missing"), std::string::npos);
    }
}

TEST(SingleLine, SameInputSameBytesAndNoSheetTooNarrow) {
    const Example& one = example("tt-shed");
    const std::string first = drawing::to_svg(single_line(one.job, one.answer, 0));
    EXPECT_EQ(first, drawing::to_svg(single_line(one.job, one.answer, 0)));
    EXPECT_NE(first, drawing::to_svg(single_line(one.job, one.answer, 1)));
    EXPECT_DOUBLE_EQ(single_line(one.job, one.answer, 0, 10).width, narrowest_sheet);
}

}  // namespace
}  // namespace toft::diagram
