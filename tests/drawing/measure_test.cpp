#include "drawing/measure.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

namespace toft::drawing {
namespace {

struct Setting {
    const char* text;
    Weight weight;
    double width;  ///< at 100 units to the em, user units
};

// Each line stood between two bars, was set and rasterised by rsvg-convert 2.54.7 in DejaVu Sans
// 2.37, and the pixels from bar to bar were counted; less 8 for the ink of a bar.
TEST(TextWidth, AgreesWithAnIndependentSettingWithin1Percent) {
    const std::vector<Setting> settings = {
        {"|The quick brown fox jumps over the lazy dog", Weight::normal, 2282},
        {"|Feed it with 3-core 10 mm² armoured from a 32 A fuse", Weight::normal, 2767},
        {"|loop impedance Zs = 0.82 Ω ≤ 1.37 Ω · 25 °C ± 0.5 × √3", Weight::normal, 2897},
        {"|0123456789012345678901234567890123456789", Weight::normal, 2578},
        {"|ÉÀÜñøłŻćęβφρΔµΩ½¾²³₀₁₂₃₄→−–—…“quoted”", Weight::normal, 2325},
        {"|The quick brown fox jumps over the lazy dog", Weight::bold, 2572},
        {"|loop impedance Zs = 0.82 Ω ≤ 1.37 Ω · 25 °C ± 0.5 × √3", Weight::bold, 3164},
    };
    for (const Setting& set : settings) {
        EXPECT_NEAR(text_width(set.text, 100, set.weight), set.width, 0.01 * set.width) << set.text;
    }
}

TEST(TextWidth, GrowsWithSizeAndCountsScriptsSmall) {
    EXPECT_DOUBLE_EQ(text_width("rod", 24), 2 * text_width("rod", 12));
    EXPECT_EQ(text_width("", 12), 0);
    const TextStyle style{.size = 10};
    EXPECT_DOUBLE_EQ(text_width(symbol("Z", "s"), style),
                     text_width("Z", 10) + text_width("s", 10 * script_size));
}

TEST(Wrap, BreaksAtSpacesAndLineFeeds) {
    const double width = text_width("bond the pipe", 12);
    EXPECT_EQ(wrap("bond the  pipe with 10 mm²", width, 12),
              (std::vector<std::string>{"bond the pipe", "with 10 mm²"}));
    EXPECT_EQ(wrap("a\n\nb ", 100, 12), (std::vector<std::string>{"a", "", "b"}));
    EXPECT_EQ(wrap("", 100, 12), std::vector<std::string>{});
    EXPECT_EQ(wrap("10\u00A0mm²", 1, 12), std::vector<std::string>{"10\u00A0mm²"});
}

rc::Gen<std::string> sentences() {
    return rc::gen::container<std::string>(rc::gen::element('a', 'm', 'W', '1', '.', ' ', ' '));
}

RC_GTEST_PROP(Wrap, NeverExceedsTheWidthUnlessAWordDoes, ()) {
    const std::string text = *sentences();
    const double width = *rc::gen::inRange(1, 200);
    std::string kept;
    for (const std::string& line : wrap(text, width, 10)) {
        const bool one_word = line.find(' ') == std::string::npos;
        RC_ASSERT(one_word || text_width(line, 10) <= width + 1e-9);
        for (const char c : line) {
            if (c != ' ') kept += c;
        }
    }
    std::string letters;
    for (const char c : text) {
        if (c != ' ') letters += c;
    }
    RC_ASSERT(kept == letters);
}

RC_GTEST_PROP(Wrap, NoLineWouldHaveTakenTheNextWord, ()) {
    const std::string text = *sentences();
    const double width = *rc::gen::inRange(1, 200);
    const std::vector<std::string> lines = wrap(text, width, 10);
    for (std::size_t i = 0; i + 1 < lines.size(); ++i) {
        const std::string next = lines[i + 1].substr(0, lines[i + 1].find(' '));
        RC_ASSERT(text_width(lines[i] + " " + next, 10) > width - 1e-9);
    }
}

TEST(BoxOf, CountsStrokesAndShifts) {
    EXPECT_EQ(box_of(Line{{0, 0}, {10, 0}, stroked(palette::ink, 2)}), (Box{-1, -1, 11, 1}));
    EXPECT_EQ(box_of(Rect{{0, 0, 4, 4}, filled(palette::ink)}), (Box{0, 0, 4, 4}));
    EXPECT_EQ(box_of(Circle{{5, 5}, 2, stroked(palette::ink, 2)}), (Box{2, 2, 8, 8}));
    EXPECT_EQ(box_of(PathBuilder({0, 0}).line({3, 4}).inked(stroked(palette::ink, 2))),
              (Box{-1, -1, 4, 5}));
    const Polygon area{{{0, 0}, {4, 0}, {2, 9}}, {}};
    EXPECT_EQ(box_of(Group{{area}, {10, 20}}), (Box{10, 20, 14, 29}));
    EXPECT_TRUE(box_of(Group{}).empty());
    EXPECT_TRUE(box_of(Polyline{}).empty());
}

TEST(BoxOf, TextFollowsAnchorTurnHaloAndScripts) {
    const double wide = text_width("rod", 10);
    const Box start = box_of(text({100, 50}, "rod", {.size = 10}));
    EXPECT_NEAR(start.left, 100, 1e-9);
    EXPECT_NEAR(start.right, 100 + wide, 1e-9);
    EXPECT_NEAR(start.top, 50 - 10 * ascent, 1e-9);
    EXPECT_NEAR(start.bottom, 50 + 10 * descent, 1e-9);
    const Box end = box_of(text({100, 50}, "rod", {.size = 10, .anchor = Anchor::end}));
    EXPECT_NEAR(end.right, 100, 1e-9);
    const Box up =
        box_of(text({100, 50}, "rod", {.size = 10, .anchor = Anchor::middle, .turn = -90}));
    EXPECT_NEAR(up.height(), wide, 1e-9);
    EXPECT_NEAR(up.centre().y, 50, 1e-9);
    EXPECT_NEAR(up.left, 100 - 10 * ascent, 1e-9);
    const Box halo = box_of(text({100, 50}, "rod", {.size = 10, .halo = palette::paper}));
    EXPECT_NEAR(halo.left, start.left - 3, 1e-9);
    EXPECT_GT(box_of(Text{{}, symbol("Z", "s"), {}}).bottom, box_of(text({}, "Z")).bottom);
    EXPECT_TRUE(box_of(text({100, 50}, "")).empty());
}

}  // namespace
}  // namespace toft::drawing
