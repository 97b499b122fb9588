#include "field/surface_map.h"

#include "support/grounds.h"

#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::field {
namespace {

MapArea area(double from, double side, int places) {
    return {spot(from, from, 0), metres(side), metres(side), places, places};
}

/// A map of any function of east and north.
template <class Of>
SurfaceMap map_of(const MapArea& over, const Of& of) {
    SurfaceMap map{over, {}};
    for (int row = 0; row < over.rows; ++row) {
        for (int column = 0; column < over.columns; ++column) {
            const Spot place = map.place(column, row);
            map.potential.push_back(volts(of(place.east.number(), place.north.number())));
        }
    }
    return map;
}

double turned_left(const Contour& contour) {
    double twice = 0;
    for (std::size_t i = 1; i < contour.places.size(); ++i) {
        const Spot& a = contour.places[i - 1];
        const Spot& b = contour.places[i];
        twice += a.east.number() * b.north.number() - b.east.number() * a.north.number();
    }
    return twice / 2;
}

TEST(SurfaceMap, IsThePotentialOfTheFieldAtEachPlace) {
    const Field field = field_of(stack({{500, 0.4}, {100, 2}}, 300),
                                 {rod(0, 0, 2.4, 0.016, 0), rod(3, 1, 1.2, 0.016, 1)});
    const Currents currents{amperes(2), amperes(-0.5)};
    const MapArea over{spot(-2, -3, 0), metres(8), metres(6), 9, 7};
    const auto map = map_surface(field.driven(currents), over);
    ASSERT_TRUE(map);
    EXPECT_EQ(map->place(8, 6).east, metres(6));
    EXPECT_EQ(map->place(8, 6).north, metres(3));
    for (int column : {0, 3, 8}) {
        for (int row : {0, 2, 6}) {
            EXPECT_EQ(map->at(column, row), field.potential(map->place(column, row), currents));
        }
    }
}

TEST(SurfaceMap, LinesRoundOneRodAreCirclesAtTheRightPotential) {
    const Field field = field_of(stack({{500, 0.4}, {100, 2}}, 300), {rod(0, 0, 2.4, 0.016)});
    const Driven driven = field.driven({amperes(10)});
    const auto map = *map_surface(driven, area(-6.05, 12.1, 60));
    const auto lines =
        contours(map, {driven.potential(spot(4, 0, 0)), driven.potential(spot(2, 0, 0))});
    ASSERT_EQ(lines.size(), 2u);
    for (std::size_t i = 0; i < 2; ++i) {
        const double radius = i == 0 ? 4 : 2;
        EXPECT_TRUE(lines[i].closed);
        EXPECT_NEAR(turned_left(lines[i]), pi * radius * radius, 0.02 * pi * radius * radius)
            << "the higher ground inside lies on the left";
        for (const Spot& place : lines[i].places) {
            EXPECT_NEAR(std::hypot(place.east.number(), place.north.number()), radius,
                        0.01 * radius);
            EXPECT_NEAR(driven.potential(place) / lines[i].level, 1, 0.01);
        }
        EXPECT_EQ(lines[i].places.front().east, lines[i].places.back().east);
    }
}

TEST(SurfaceMap, LinesThatLeaveTheMapAreOpen) {
    const auto map = map_of(area(0, 10, 11), [](double x, double) { return x; });
    const auto lines = contours(map, {volts(3.25), volts(20)});
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_FALSE(lines[0].closed);
    ASSERT_EQ(lines[0].places.size(), 11u);
    for (const Spot& place : lines[0].places) EXPECT_NEAR(place.east.number(), 3.25, 1e-12);
    EXPECT_GT(lines[0].places.front().north, lines[0].places.back().north)
        << "higher ground, to the east, on the left";
}

TEST(SurfaceMap, ASaddleIsCrossedAsItsMiddleSays) {
    const auto saddle = [](double lift) {
        SurfaceMap map{area(0, 1, 2), {}};
        map.potential = {volts(1 + lift), volts(0), volts(0), volts(1)};
        return contours(map, {volts(0.5)});
    };
    for (double lift : {0.2, -0.2}) {
        const auto lines = saddle(lift);
        ASSERT_EQ(lines.size(), 2u);
        for (const Contour& line : lines) {
            ASSERT_EQ(line.places.size(), 2u);
            const Metres east = (line.places[0].east + line.places[1].east) / 2;
            const Metres north = (line.places[0].north + line.places[1].north) / 2;
            const bool at_high_corner = (east < metres(0.5)) == (north < metres(0.5));
            EXPECT_EQ(at_high_corner, lift < 0);
        }
    }
}

TEST(SurfaceMap, AreasThatAreNoneAreRefused) {
    const Driven driven = field_of(plain_soil(), {rod(0, 0, 1.2, 0.016)}).driven({amperes(1)});
    EXPECT_TRUE(map_surface(driven, area(0, 1, 2)));
    EXPECT_FALSE(map_surface(driven, area(0, 0, 2)));
    EXPECT_FALSE(map_surface(driven, area(0, NAN, 2)));
    EXPECT_FALSE(map_surface(driven, area(0, 1, 1)));
    EXPECT_FALSE(map_surface(driven, area(0, 1, 1001)));
}

RC_GTEST_PROP(SurfaceMap, LinesCloseOrEndAtTheEdgeAndCrossEverySideOnce, ()) {
    const auto heights = *rc::gen::container<std::vector<int>>(49, rc::gen::inRange(0, 5));
    std::size_t next = 0;
    const auto map = map_of(area(0, 6, 7), [&](double, double) { return heights[next++]; });
    std::size_t sides = 0;
    const auto high = [&](int column, int row) { return map.at(column, row) >= volts(2.5); };
    for (int row = 0; row < 7; ++row) {
        for (int column = 0; column < 7; ++column) {
            if (column < 6) sides += high(column, row) != high(column + 1, row);
            if (row < 6) sides += high(column, row) != high(column, row + 1);
        }
    }
    std::size_t crossed = 0;
    for (const Contour& line : contours(map, {volts(2.5)})) {
        crossed += line.places.size() - (line.closed ? 1 : 0);
        const auto at_edge = [](const Spot& s) {
            return s.east == metres(0) || s.east == metres(6) || s.north == metres(0) ||
                   s.north == metres(6);
        };
        if (line.closed) continue;
        RC_ASSERT(at_edge(line.places.front()));
        RC_ASSERT(at_edge(line.places.back()));
    }
    RC_ASSERT(crossed == sides);
}

}  // namespace
}  // namespace toft::field
