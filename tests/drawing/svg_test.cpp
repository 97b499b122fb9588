#include "drawing/svg.h"

#include "drawing/well_formed.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

namespace toft::drawing {
namespace {

bool holds(const std::string& whole, const std::string& part) {
    return whole.find(part) != std::string::npos;
}

Scene scene_of(Items items) {
    Scene scene{.width = 200, .height = 100};
    scene.items = std::move(items);
    return scene;
}

TEST(SvgNumber, HasTwoDecimalsAtMost) {
    EXPECT_EQ(svg_number(1.0 / 3), "0.33");
    EXPECT_EQ(svg_number(2), "2");
    EXPECT_EQ(svg_number(2.5), "2.5");
    EXPECT_EQ(svg_number(-0.001), "0");
    EXPECT_EQ(svg_number(-12.346), "-12.35");
    EXPECT_EQ(svg_number(100), "100");
    EXPECT_EQ(svg_number(1234567.891), "1234567.89");
}

TEST(XmlEscaped, TakesTheStingOutOfHostileNames) {
    EXPECT_EQ(xml_escaped("<script>alert('x')</script>"),
              "&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;");
    EXPECT_EQ(xml_escaped("]]> & \"quoted\""), "]]&gt; &amp; &quot;quoted&quot;");
    EXPECT_EQ(xml_escaped("a\x01\x08z\xFF"), "az\xEF\xBF\xBD");
    EXPECT_EQ(xml_escaped("Ω ≤ √3"), "Ω ≤ √3");
}

TEST(Svg, WritesEachShape) {
    const Style inked = stroked(Colour{0x102030}, 2);
    const std::string svg = to_svg(scene_of({
        Line{{0, 1}, {2, 3}, inked},
        Polyline{{{0, 0}, {1.5, 2}}, dashed(Colour{0x102030}, 1, {3, 2})},
        Polygon{{{0, 0}, {1, 0}, {1, 1}}, filled(Colour{0xFF}, 0.5)},
        Rect{{1, 2, 11, 22}, inked, 3},
        Circle{{5, 6}, 7, inked},
        PathBuilder({0, 0}).line({1, 1}).quad({2, 2}, {3, 3}).arc(4, {5, 5}).close().inked(inked),
    }));
    const std::string stroke = " stroke=\"#102030\" stroke-width=\"2\"/>\n";
    EXPECT_TRUE(holds(svg, "<line x1=\"0\" y1=\"1\" x2=\"2\" y2=\"3\"" + stroke));
    EXPECT_TRUE(holds(svg,
                      "<polyline points=\"0,0 1.5,2\" stroke=\"#102030\" "
                      "stroke-dasharray=\"3 2\"/>"));
    EXPECT_TRUE(holds(svg, "<polygon points=\"0,0 1,0 1,1\" fill=\"#0000ff\" opacity=\"0.5\"/>"));
    EXPECT_TRUE(holds(svg, "<rect x=\"1\" y=\"2\" width=\"10\" height=\"20\" rx=\"3\"" + stroke));
    EXPECT_TRUE(holds(svg, "<circle cx=\"5\" cy=\"6\" r=\"7\"" + stroke));
    EXPECT_TRUE(holds(svg, "<path d=\"M0 0L1 1Q2 2 3 3A4 4 0 0 1 5 5Z\"" + stroke));
    EXPECT_EQ(WellFormed::fault_of(svg), "");
}

TEST(Svg, TellsItsSizeItsNameAndItsPaper) {
    Scene scene = scene_of({});
    scene.title = "House & shed";
    scene.description = "The run from <house>";
    const std::string svg = to_svg(scene);
    EXPECT_TRUE(holds(svg, "width=\"200\" height=\"100\" viewBox=\"0 0 200 100\""));
    EXPECT_TRUE(
        holds(svg, "<title>House &amp; shed</title>\n<desc>The run from &lt;house&gt;</desc>"));
    EXPECT_TRUE(
        holds(svg, "<rect x=\"0\" y=\"0\" width=\"200\" height=\"100\" fill=\"#fbf8f1\"/>"));
    scene.paper.reset();
    EXPECT_FALSE(holds(to_svg(scene), "<rect"));
}

TEST(Svg, KeepsTextAsTextWithScriptsAndSpaces) {
    const std::string svg = to_svg(scene_of(
        {Text{{0, 0}, symbol("Z", "s"), {.size = 10}}, text({0, 0}, "a  b"), text({0, 0}, "a b")}));
    EXPECT_TRUE(
        holds(svg, "xml:space=\"preserve\">Z<tspan dy=\"2.2\" font-size=\"7\">s</tspan></text>"));
    EXPECT_TRUE(holds(svg, "xml:space=\"preserve\">a  b</text>"));
    EXPECT_TRUE(holds(svg, "fill=\"#1f1c19\">a b</text>"));
}

TEST(Svg, ReturnsToTheLineAfterASubscript) {
    const std::string svg =
        to_svg(scene_of({Text{{}, {{"Z"}, {"s", Script::below}, {" = 1"}}, {.size = 10}}}));
    EXPECT_TRUE(holds(svg, "s</tspan><tspan dy=\"-2.2\"> = 1</tspan>"));
}

TEST(Svg, HaloLiesUnderAllRunsOfALine) {
    TextStyle style{.halo = palette::paper};
    const std::string plain_svg = to_svg(scene_of({text({}, "rod", style)}));
    EXPECT_TRUE(holds(plain_svg, "stroke=\"#fbf8f1\" stroke-width=\"6\" paint-order=\"stroke\""));
    EXPECT_FALSE(holds(plain_svg, "aria-hidden"));
    const std::string runs_svg = to_svg(scene_of({Text{{}, symbol("Z", "s"), style}}));
    const std::size_t under = runs_svg.find("aria-hidden=\"true\"");
    ASSERT_NE(under, std::string::npos);
    EXPECT_TRUE(holds(runs_svg.substr(under), "fill=\"#1f1c19\" xml:space=\"preserve\">Z<tspan"));
}

TEST(Svg, GroupsCarryIdKindTitleAndShift) {
    Group group{{Circle{{0, 0}, 1}}, {3, 4}};
    group.id = "a\"b";
    group.kind = "run";
    group.title = "The run";
    const std::string svg = to_svg(scene_of({group}));
    EXPECT_TRUE(holds(svg,
                      "<g id=\"a&quot;b\" class=\"run\" transform=\"translate(3 4)\">\n"
                      "<title>The run</title>\n<circle"));
    EXPECT_EQ(WellFormed::fault_of(svg), "");
}

TEST(Svg, SaysWhenAShapeCannotBeDrawn) {
    const std::string missing = "Part of this drawing is missing";
    const double inf = std::numeric_limits<double>::infinity();
    const Items broken = {Line{{0, 0}, {std::nan(""), 1}, {}}, Circle{{0, 0}, inf}, Rect{Box{}, {}},
                          Circle{{0, 1e9}, 1}};
    for (const Item& one : broken) {
        const std::string svg = to_svg(scene_of({Group{{one, Circle{{1, 1}, 77}}}}));
        EXPECT_TRUE(holds(svg, missing));
        EXPECT_TRUE(holds(svg, "r=\"77\"")) << "its neighbour must stay";
        EXPECT_FALSE(holds(svg, "nan") || holds(svg, "inf"));
        EXPECT_EQ(WellFormed::fault_of(svg), "");
    }
    EXPECT_FALSE(holds(to_svg(scene_of({Circle{{1, 1}, 77}})), missing));
}

TEST(Svg, RefersToNothingOutside) {
    const std::string svg = to_svg(scene_of({text({}, "url(http://x) href=")}));
    EXPECT_EQ(svg.find("http"), svg.find("http://www.w3.org/2000/svg"));
    EXPECT_FALSE(holds(svg, " href=\""));
    EXPECT_FALSE(holds(svg, "=\"url("));
}

RC_GTEST_PROP(Svg, IsWellFormedWhateverTheNames, (const std::string& name, double x)) {
    Group group{{text({x, 1}, name), Text{{}, symbol(name, name), {.halo = palette::paper}}}};
    group.id = name;
    group.kind = name;
    group.title = name;
    Scene scene = scene_of({group, Circle{{1, x}, 2}});
    scene.title = name;
    scene.description = name;
    const std::string svg = to_svg(scene);
    RC_ASSERT(WellFormed::fault_of(svg) == "");
    RC_ASSERT(svg == to_svg(scene));
}

}  // namespace
}  // namespace toft::drawing
