#pragma once
// Grounds made up for looking at their pictures; no figure here is a result.

#include "groundwork/ground.h"
#include "picture/looking.h"
#include "site/job.h"

#include <cmath>
#include <limits>

namespace toft::terrain {

inline constexpr double no_end = std::numeric_limits<double>::infinity();
inline constexpr double no_number = std::numeric_limits<double>::quiet_NaN();

/// A house and a studio 22 m east and 9 m north of it.
inline site::Job looked_at_job() {
    site::Job job;
    job.title = "Potter's studio, Wrensnest, Ashlow Green";
    site::Building house;
    house.id = "house";
    house.origin = true;
    site::Building studio;
    studio.id = "studio";
    studio.name = "Potter's studio";
    studio.at_x_m = 22;
    studio.at_y_m = 9;
    studio.electrode.rods = {true, 1, 1};
    studio.electrode.length = {true, metres(2.4), metres(2.4)};
    job.buildings = {house, studio};
    return job;
}

inline answer::SoilAnswer looked_at_soil() {
    answer::SoilAnswer soil;
    soil.known_by = "readings";
    soil.verdict = "two layers";
    soil.says = "Two layers explain the six readings within 3 %.";
    soil.strata = {{150, 180, 230, 0.7, 0.9, 1.3}, {45, 55, 70, {}, {}, {}}};
    return soil;
}

inline std::vector<answer::RodPointAnswer> looked_at_lengths() {
    std::vector<answer::RodPointAnswer> points;
    for (double length = 0.6; length < 6.05; length += 0.3) {
        const double low = 55 / (2 * 3.14159 * length) * (std::log(8 * length / 0.016) - 1) *
                           (length < 0.9 ? 2.6 : 1 + 1.2 / length);
        points.push_back({length, low, low * (1.25 + 0.9 / length)});
    }
    return points;
}

inline answer::LostNeutralAnswer looked_at_fault() {
    answer::LostNeutralAnswer fault;
    fault.applies = true;
    fault.load_w = 5200;
    fault.earth_low_ohm = 4;
    fault.earth_high_ohm = 21;
    fault.earth_known_by = "taken at both ends: nobody measured it";
    fault.marks_v = {25, 50, 70};
    const char* names[] = {"carry the supply earth", "carry it and add an electrode",
                           "own electrode"};
    const double ohms[][2] = {{4, 21}, {3.6, 14}, {0, 0}};
    for (int i = 0; i < 3; ++i) {
        answer::LostNeutralWayAnswer way;
        way.way = names[i];
        for (double load = 0; load <= 12000; load += 400) {
            const double z = load > 0 ? 230 * 230 / load : no_end;
            const auto volts = [&](double r) { return load > 0 ? 230 * r / (r + z) : 0.0; };
            const double low = i < 2 ? volts(ohms[i][0]) : 0.05 * volts(4);
            const double high = i < 2 ? volts(ohms[i][1]) : 0.14 * volts(21);
            way.over_load.push_back({load, low, high});
            if (std::fabs(load - fault.load_w) < 1) {
                way.low_v = low;
                way.high_v = high;
            }
        }
        way.body = {{"dry hand to hand, shoes on", way.low_v / 3, way.high_v / 1.5},
                    {"wet hand to bare feet", way.low_v / 1.2, way.high_v / 0.7}};
        fault.ways.push_back(std::move(way));
    }
    fault.ways[1].electrode_low_a = 0.8;
    fault.ways[1].electrode_high_a = 3.9;
    fault.ways[1].warmer_k = 38;
    fault.ways[0].says = "Every tool and tap of the studio stands at these volts.";
    fault.ways[2].says = "What the ground carries over from the house's earth.";
    return fault;
}

inline answer::SeparationAnswer looked_at_separation() {
    answer::SeparationAnswer s;
    s.distance_m = 21;
    s.house_radius_m = 1.8;
    s.transferred_low = 0.052;
    s.transferred_high = 0.094;
    s.allowed = 0.217;
    s.needed_m = 8.3;
    s.lift_v = 22;
    s.bridges = {{"water pipe, copper",
                  "It is bonded at the house and runs on to the studio: fit "
                  "an insulating section where it enters.",
                  true,
                  {}},
                 {"outside tap of the house", "On the house's earth.", false, 8.0},
                 {"screen of the data cable",
                  "Nobody has looked whether it is joined at both ends.",
                  false,
                  {}},
                 {"chain-link fence", "Its posts stand beside the studio's wall.", false, 1.6}};
    return s;
}

inline answer::GroundAnswer looked_at_ground() {
    answer::GroundSideAnswer side;
    side.building = "studio";
    side.electrode_words = "one rod, 2.4 m";
    side.year = {31, 52, "wet spring", "dry autumn"};
    side.over_length = looked_at_lengths();
    side.targets = {
        {100,
         "below that a reading is likely to stay steady",
         {{1, 1.8, 0, 87.5, 41}, {2, 1.2, 2.4, 79, 62}},
         "One rod of 1.8 m does it."},
        {20,
         "asked for by the operator where its neutral is earthed",
         {{3, 3.6, 3.6, 18, 232}, {2, 6, 6, 19, 260}},
         ""},
        {200, "above that an electrode is not to be relied on", {{1, 1.2, 0, 158, 36}}, ""},
        {2, "volts of the lost neutral", {}, "No rods within the bounds looked at do it."}};
    side.separation = looked_at_separation();
    side.lost_neutral = looked_at_fault();
    answer::GroundAnswer ground;
    ground.soil = looked_at_soil();
    ground.sides.push_back(std::move(side));
    return ground;
}

/// Texts that stand level, which all texts of these pictures do.
inline std::string clashes_of(const drawing::Scene& scene) {
    return picture::clashes(scene.items, {0, 0, scene.width, scene.height});
}

/// True when the scene says the words, on one line or broken over several.
inline bool tells(const drawing::Scene& scene, const std::string& words) {
    std::string all = picture::words_in(scene.items);
    std::replace(all.begin(), all.end(), '\n', ' ');
    return all.find(words) != std::string::npos;
}

inline const std::vector<double>& looked_at_widths() {
    static const std::vector<double> widths{320, 360, 480, 481, 620, 794, 999, 1000, 1200, 1400};
    return widths;
}

}  // namespace toft::terrain
