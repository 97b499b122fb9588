// Labels at their true size, and how they fall on sheets.

#include "paper/label_sheet.h"

#include "paper/written.h"

#include <rapidcheck/gtest.h>

namespace toft::paper {
namespace {

using drawing::units_of_mm;

Label label_of(std::string big, std::string small = "small words") {
    Label label;
    label.caption = "1  board of Shed";
    label.width = units_of_mm(80);
    label.big = std::move(big);
    label.small = std::move(small);
    return label;
}

TEST(LabelSheet, CapitalsAreAsHighAsAsked) {
    const LetterSizes sizes = letter_sizes(4.75, 2);
    EXPECT_NEAR(drawing::mm_of_units(sizes.big * drawing::cap_height), 4.75, 1e-9);
    EXPECT_NEAR(drawing::mm_of_units(sizes.small * drawing::cap_height), 2, 1e-9);
}

TEST(LabelSheet, ALabelIsAsWideAsAskedAndHighEnoughForItsWords) {
    for (const std::string& name : hard_names()) {
        Label label = label_of("Feeds " + name, name + " " + name + " " + name);
        label.fields = {name + " at", "Way"};
        label.warning = true;
        const drawing::Scene scene = label_scene(label, letter_sizes(4.75, 2));
        EXPECT_EQ(scene.width, units_of_mm(80));
        EXPECT_EQ(picture::clashes(scene.items, {0, 0, scene.width, scene.height}), "") << name;
    }
}

Label chart_of(std::size_t circuits, const std::string& name) {
    Label label = label_of("Circuits of Shed");
    label.width = units_of_mm(150);
    label.fields = {"Filled in by"};
    for (std::size_t i = 0; i < circuits; ++i) {
        label.rows.push_back({std::to_string(i + 1), name, "RCBO B 20 A", "2.5 / 1.5", "30 mA"});
    }
    return label;
}

TEST(LabelSheet, FortyCircuitsOfLongNamesAreAllThereOnParts) {
    const double most = units_of_mm(200);
    const auto parts =
        label_scenes(chart_of(40, hard_names().front()), letter_sizes(4.75, 2), most);
    ASSERT_GT(parts.size(), 1u);
    std::string words;
    for (const drawing::Scene& part : parts) {
        EXPECT_LE(part.height, most);
        EXPECT_EQ(picture::clashes(part.items, {0, 0, part.width, part.height}), "");
        words += picture::words_in(part.items);
    }
    std::size_t rows = 0;
    for (std::size_t at = words.find("RCBO B 20 A"); at != std::string::npos;
         at = words.find("RCBO B 20 A", at + 1)) {
        ++rows;
    }
    EXPECT_EQ(rows, 40u);
    EXPECT_NE(words.find("continued"), std::string::npos);
    EXPECT_EQ(words.find("Filled in by"), words.rfind("Filled in by"));
}

TEST(LabelSheet, AShortChartIsOnePart) {
    EXPECT_EQ(label_scenes(chart_of(4, "Lights"), letter_sizes(4.75, 2), units_of_mm(200)).size(),
              1u);
}

TEST(LabelSheet, ARulerOf100MillimetresStandsUnderTheLabels) {
    const auto sheets =
        label_sheets({label_scene(label_of("Big"), letter_sizes(4.75, 2))}, 600, 800);
    ASSERT_EQ(sheets.size(), 1u);
    bool found = false;
    for (const drawing::Item& item : sheets.front().items) {
        const auto* line = std::get_if<drawing::Line>(&item.shape);
        if (!line) continue;
        found = found || std::abs(drawing::mm_of_units(line->to.x - line->from.x) - 100) < 1e-9;
    }
    EXPECT_TRUE(found);
}

TEST(LabelSheet, NoLabelsNeedNoSheet) { EXPECT_TRUE(label_sheets({}, 600, 800).empty()); }

RC_GTEST_PROP(LabelSheet, EveryLabelStandsOnceAndNoneMeetsAnother, ()) {
    const auto count = *rc::gen::inRange<std::size_t>(1, 25);
    std::vector<drawing::Scene> labels;
    for (std::size_t i = 0; i < count; ++i) {
        drawing::Scene label;
        label.width = *rc::gen::inRange(100, 600);
        label.height = *rc::gen::inRange(40, 700);
        label.items.emplace_back(drawing::Rect{{0, 0, label.width, label.height},
                                               drawing::filled(drawing::palette::ink)});
        labels.push_back(std::move(label));
    }
    std::size_t placed = 0;
    for (const drawing::Scene& sheet : label_sheets(labels, 600, 800)) {
        RC_ASSERT(sheet.height <= 800);
        std::vector<drawing::Box> boxes;
        for (const drawing::Item& item : sheet.items) {
            const auto* group = std::get_if<drawing::Group>(&item.shape);
            if (!group) continue;
            const drawing::Box box = drawing::moved(drawing::box_of(group->items), group->shift);
            RC_ASSERT(drawing::contains({-0.01, -0.01, 600.01, sheet.height}, box));
            for (const drawing::Box& other : boxes) {
                RC_ASSERT(!drawing::overlap(drawing::grown(box, -0.01), other));
            }
            boxes.push_back(box);
            ++placed;
        }
    }
    RC_ASSERT(placed == count);
}

}  // namespace
}  // namespace toft::paper
