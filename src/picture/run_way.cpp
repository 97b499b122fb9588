#include "picture/run_way.h"

#include "picture/house.h"
#include "picture/ink.h"

#include <algorithm>

namespace toft::picture {

namespace {

constexpr double sag = 18;
constexpr double joint_from_wall = 26;

bool outdoors(const Stage& s, std::size_t leg) { return s.route.legs[leg].side == Side::between; }

/// The joint before leg `next`: on the wall of the leg that is indoors, else where the two meet.
Point joint_before(const Stage& s, std::size_t next) {
    const std::size_t last = next - 1;
    const LegSpan& before = s.route.legs[last];
    const LegSpan& after = s.route.legs[next];
    if (before.side == Side::house) {
        return {before.right - std::min(joint_from_wall, before.width() / 2), level_of(s, last)};
    }
    if (after.side == Side::outbuilding) {
        return {after.left + std::min(joint_from_wall, after.width() / 2), level_of(s, next)};
    }
    return {before.right, std::min(level_of(s, last), level_of(s, next))};
}

std::size_t first_leg(const Stage& s, std::size_t stretch) {
    return static_cast<std::size_t>(s.scheme->run.stretches[stretch].first_leg - 1);
}

/// The legs' points between the joint `from` and the joint `to`; nothing of them lies beyond.
std::vector<Point> between_joints(std::vector<Point> line, const Point* from, const Point* to) {
    if (from) {
        while (!line.empty() && line.front().x < from->x) line.erase(line.begin());
        line.insert(line.begin(), *from);
    }
    if (to) {
        while (!line.empty() && line.back().x > to->x) line.pop_back();
        line.push_back(*to);
    }
    return line;
}

std::vector<Point> without_repeats(const std::vector<Point>& line) {
    std::vector<Point> points;
    for (const Point p : line) {
        if (points.empty() || distance(points.back(), p) > 1e-9) points.push_back(p);
    }
    return points;
}

}  // namespace

double depth_of(const site::Leg& leg) {
    return leg.depth.known ? leg.depth.high.number() : depth_not_known;
}

double level_of(const Stage& s, std::size_t i) {
    const site::Leg& leg = s.run->legs[i];
    if (site::buried(leg.method)) return s.ground + s.units_per_metre_deep * depth_of(leg);
    if (leg.method == site::LegMethod::overhead) return s.ground - 132;
    if (outdoors(s, i)) return s.ground - 36;
    if (leg.method == site::LegMethod::above_ceiling) return s.eaves + 28;
    return s.indoors();
}

std::vector<Point> leg_line(const Stage& s, std::size_t i) {
    const LegSpan& span = s.route.legs[i];
    const double y = level_of(s, i);
    if (s.run->legs[i].method != site::LegMethod::overhead) {
        return {{span.left, y}, {span.right, y}};
    }
    std::vector<Point> line;
    for (int step = 0; step <= 12; ++step) {
        const double t = step / 12.0;
        line.push_back({span.left + t * span.width(), y + 4 * sag * t * (1 - t)});
    }
    return line;
}

std::vector<Point> cable_way(const Stage& s) {
    std::vector<Point> way{feed_point(s)};
    if (s.route.legs.empty()) return way;
    way.push_back({s.route.start, feed_point(s).y});
    for (std::size_t i = 0; i < s.route.legs.size(); ++i) {
        const std::vector<Point> line = leg_line(s, i);
        way.insert(way.end(), line.begin(), line.end());
    }
    way.push_back({s.route.end, s.indoors()});
    way.push_back({s.route.end + 24, s.indoors()});
    return way;
}

std::vector<Point> joints_of(const Stage& s) {
    std::vector<Point> joints;
    if (!s.scheme) return joints;
    for (std::size_t i = 1; i < s.scheme->run.stretches.size(); ++i) {
        joints.push_back(joint_before(s, first_leg(s, i)));
    }
    return joints;
}

std::vector<Point> stretch_way(const Stage& s, std::size_t stretch) {
    const std::vector<answer::StretchAnswer>& stretches = s.scheme->run.stretches;
    if (stretches.size() == 1) return without_repeats(cable_way(s));
    const std::vector<Point> joints = joints_of(s);
    const bool first = stretch == 0;
    const bool last = stretch + 1 == stretches.size();
    // A joint on a wall leaves the end of the neighbour's leg to this stretch.
    const std::size_t from = first_leg(s, stretch);
    const std::size_t past = static_cast<std::size_t>(stretches[stretch].last_leg);
    std::vector<Point> line;
    if (first) {
        line = {feed_point(s), {s.route.start, feed_point(s).y}};
    } else if (s.route.legs[from - 1].side == Side::house) {
        line.push_back({s.route.legs[from - 1].right, level_of(s, from - 1)});
    }
    for (std::size_t i = from; i < past; ++i) {
        const std::vector<Point> leg = leg_line(s, i);
        line.insert(line.end(), leg.begin(), leg.end());
    }
    if (last) {
        line.push_back({s.route.end, s.indoors()});
        line.push_back({s.route.end + 24, s.indoors()});
    } else if (s.route.legs[past].side == Side::outbuilding) {
        line.push_back({s.route.legs[past].left, level_of(s, past)});
    }
    return without_repeats(between_joints(std::move(line), first ? nullptr : &joints[stretch - 1],
                                          last ? nullptr : &joints[stretch]));
}

std::vector<Point> beside(const std::vector<Point>& line, double by) {
    const std::vector<Point> points = without_repeats(line);
    std::vector<Point> moved;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Point in = i > 0 ? unit(points[i] - points[i - 1]) : Point{};
        const Point out = i + 1 < points.size() ? unit(points[i + 1] - points[i]) : Point{};
        const Point a = quarter_turned(i > 0 ? in : out) * -1;
        const Point b = quarter_turned(i + 1 < points.size() ? out : in) * -1;
        const double turn = 1 + dot(a, b);
        moved.push_back(points[i] + (turn > 1e-6 ? (a + b) * (by / turn) : a * by));
    }
    return moved;
}

}  // namespace toft::picture
