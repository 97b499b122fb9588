#include "dxf/dxf.h"

#include "digging/route_plan.h"
#include "digging/trench_section.h"
#include "dxf/reader.h"
#include "trench/digging_jobs.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace toft::dxf {
namespace {

using drawing::Group;
using drawing::Items;
using drawing::Point;
using drawing::Scene;

Drawing drawn(Items items, const Space& space = {}) {
    return read(to_dxf(Scene{100, 100, "", "", {}, std::move(items)}, space).value());
}

Drawing drawn(const digging::Measured& m) {
    const Space space{1 / digging::units_a_metre(m.one_to), m.zero};
    return read(to_dxf(m.scene, space).value());
}

TEST(Dxf, ALineIsWhereItIsInMetresAndUpIsUp) {
    const Space space{0.5, {10, 20}};
    const Drawing d = drawn({drawing::Line{{10, 20}, {14, 12}, drawing::stroked({})}}, space);
    EXPECT_EQ(d.wrong, "");
    ASSERT_EQ(d.entities.size(), 1u);
    EXPECT_DOUBLE_EQ(d.entities[0].number(10), 0);
    EXPECT_DOUBLE_EQ(d.entities[0].number(20), 0);
    EXPECT_DOUBLE_EQ(d.entities[0].number(11), 2);
    EXPECT_DOUBLE_EQ(d.entities[0].number(21), 4);
    EXPECT_EQ(d.entities[0].layer, "SHEET");
}

TEST(Dxf, EveryKindOfShapeIsOfRelease12) {
    const drawing::Style pen = drawing::dashed(drawing::palette::ink);
    drawing::Style full = drawing::stroked(drawing::palette::ink);
    full.fill = drawing::palette::ink;
    Items items{drawing::Line{{0, 0}, {1, 1}, pen},
                drawing::Polyline{{{0, 0}, {1, 1}, {2, 0}}, pen},
                drawing::Polygon{{{0, 0}, {1, 1}, {2, 0}}, full},
                drawing::Rect{{0, 0, 5, 5}, full},
                drawing::Circle{{3, 3}, 2, full},
                drawing::PathBuilder({0, 0}).quad({1, 1}, {2, 0}).close().inked(pen),
                drawing::text({5, 5}, "100 % of 10 mm², 緑",
                              {.anchor = drawing::Anchor::middle, .turn = -90})};
    items.emplace_back(Group{items, {7, 7}, "", "inner things", ""});
    const Drawing d = drawn(std::move(items));
    EXPECT_EQ(d.wrong, "");
    EXPECT_EQ(d.of("SOLID", "SHEET").size(), 2u);
    EXPECT_EQ(d.of("CIRCLE", "INNER").size(), 1u);
    EXPECT_DOUBLE_EQ(d.of("CIRCLE", "INNER")[0].number(10), 10);
    EXPECT_DOUBLE_EQ(d.of("TEXT", "SHEET")[0].number(50), 90);
    EXPECT_EQ(d.of("TEXT", "SHEET")[0].word(72), "     1");
}

TEST(Dxf, LightFillsAreLeftOut) {
    EXPECT_TRUE(drawn({drawing::Rect{{0, 0, 5, 5}, drawing::filled(drawing::palette::wash)},
                       drawing::Circle{{0, 0}, 2, drawing::filled(drawing::palette::soil)}})
                    .entities.empty());
}

TEST(Dxf, WithoutAScaleOrAPlaceNothingIsWritten) {
    EXPECT_EQ(to_dxf(Scene{}, {0, {}}).error().front().code, "no-scale");
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const Scene bad{1, 1, "", "", {}, {drawing::Line{{nan, 0}, {}, drawing::stroked({})}}};
    EXPECT_EQ(to_dxf(bad, {}).error().front().code, "not-finite");
}

/// Middles of the closed squares on the layer, without the house's outer one.
std::vector<Point> middles(const Drawing& d) {
    std::vector<Point> all;
    for (const Entity& e : d.of("POLYLINE", "BUILDINGS")) {
        Point sum;
        for (const Entity& v : e.vertices) sum = sum + Point{v.number(10), v.number(20)};
        const Point middle = sum * (1.0 / static_cast<double>(e.vertices.size()));
        const bool known = std::any_of(
            all.begin(), all.end(), [&](Point p) { return drawing::distance(p, middle) < 1e-3; });
        if (!known) all.push_back(middle);
    }
    return all;
}

TEST(Dxf, BuildingsOfAPlanAreAsFarApartAsTheJobStates) {
    for (const char* name : {"demo", "garage-gym-stable", "tansy-bank"}) {
        const trench::Works works = trench::works_of_example(name);
        const Drawing d = drawn(digging::route_plan(works, {}));
        EXPECT_EQ(d.wrong, "") << name;
        const std::vector<Point> found = middles(d);
        std::size_t stated = 0;
        for (const site::Building& building : works.job.buildings) {
            const Point wanted{building.at_x_m.value_or(0), building.at_y_m.value_or(0)};
            stated += std::any_of(found.begin(), found.end(),
                                  [&](Point p) { return drawing::distance(p, wanted) < 2e-6; });
        }
        EXPECT_EQ(stated, works.job.buildings.size()) << name;
        EXPECT_EQ(found.size(), works.job.buildings.size()) << name;
    }
}

TEST(Dxf, ATrenchIsItsWidthAndDepthInMetres) {
    const trench::Works works = trench::works_of_example("demo");
    const Drawing d = drawn(digging::trench_sheet(support::catalogue().trench, works, {}));
    EXPECT_EQ(d.wrong, "");
    const trench::Section& s = works.trenches[0].section;
    double wide = 0;
    double deep = 0;
    for (const Entity& e : d.of("POLYLINE", "GROUND")) {
        for (const Entity& v : e.vertices) {
            wide = std::max(wide, v.number(10));
            deep = std::min(deep, v.number(20));
        }
    }
    EXPECT_NEAR(wide, s.width.number(), 2e-6);
    EXPECT_NEAR(deep, -s.depth.number(), 2e-6);
    const auto cable = d.of("CIRCLE", "CABLES");
    ASSERT_FALSE(cable.empty());
    EXPECT_NEAR(2 * cable[0].number(40), works.trenches[0].lying[0].across.number(), 2e-6);
    EXPECT_NEAR(cable[0].number(20), -s.placed[0].down.number(), 2e-6);
}

TEST(Dxf, LongAndForeignNamesStayWithinTheFormat) {
    site::Job job = support::plain_job();
    std::string name = "%%u ^ \\P ";
    for (int i = 0; i < 120; ++i) name += "鶏بي";
    job.title = name;
    job.buildings[1].name = name;
    const trench::Works works = trench::works_of_job(job);
    EXPECT_EQ(drawn(digging::route_plan(works, {})).wrong, "");
    EXPECT_EQ(drawn(digging::trench_sheet(support::catalogue().trench, works, {})).wrong, "");
}

TEST(Dxf, TheReaderRefusesWhatIsNotTheFormat) {
    const std::string good =
        to_dxf(Scene{1, 1, "", "", {}, {drawing::Line{{0, 0}, {1, 1}, drawing::stroked({})}}}, {})
            .value();
    ASSERT_EQ(read(good).wrong, "");
    const auto changed = [&](const std::string& from, const std::string& to) {
        std::string bad = good;
        bad.replace(bad.find(from), from.size(), to);
        return read(bad).wrong;
    };
    EXPECT_NE(changed("AC1009", "AC1015"), "");
    EXPECT_NE(changed("ENDTAB", "ENDTBL"), "");
    EXPECT_NE(changed("ENTITIES\r\n  0\r\nLINE", "ENTITIES\r\n  0\r\nLWPOLYLINE"), "");
    EXPECT_NE(changed("EOF\r\n", ""), "");
    EXPECT_NE(changed("SHEET\r\n 70", "OTHER\r\n 70"), "");
}

}  // namespace
}  // namespace toft::dxf
