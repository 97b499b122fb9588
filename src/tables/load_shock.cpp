#include "tables/sheet.h"

#include <fmt/format.h>

#include <map>
#include <utility>

namespace toft::tables {

namespace {

template <std::size_t N>
using Words = std::array<const char*, N>;

constexpr Words<skins> skin_words{"dry", "water-wet", "salt-wet"};
constexpr Words<percentiles> percentile_words{"5", "50", "95"};
constexpr Words<body_paths> path_words{"hand to hand", "hand to both feet",
                                       "both hands to both feet"};
constexpr Words<touch_curves> curve_words{"dry", "wet"};
constexpr Words<zone_lines> line_words{"a", "b", "c1", "c2", "c3"};
constexpr Words<thresholds> threshold_words{"wet", "dry", "charging point"};

/// The place of the cell's word in `words`; a fault, and 0, where it is none of them.
template <std::size_t N>
std::size_t place_of(Sheet& sheet, std::size_t row, const char* column, const Words<N>& words) {
    const std::string word = sheet.word(row, column);
    for (std::size_t i = 0; i < N; ++i) {
        if (word == words[i]) return i;
    }
    sheet.fault(row, fmt::format("{} is not a known {}", word, column));
    return 0;
}

/// A fault for every word of which `held` says that nothing stands there.
template <std::size_t N, class Held>
void want_all(Faults& faults, const char* file, const Words<N>& words, const Held& held) {
    for (std::size_t i = 0; i < N; ++i) {
        if (!held(i)) {
            faults.push_back(
                {"data", file, fmt::format("there is no row for {}", words[i]), "", {}});
        }
    }
}

void read_body(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Shock& shock = c.shock;
    Sheet sheet(files, "shock/body_impedance.csv", c.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        auto& of_skin = shock.body[place_of(sheet, i, "skin", skin_words)];
        const char* const columns[] = {"p5_ohm", "p50_ohm", "p95_ohm"};
        for (std::size_t p = 0; p < percentiles; ++p) {
            sheet.points(of_skin[p], i, "touch_v", columns[p]);
        }
    }
    for (auto& of_skin : shock.body) {
        for (auto& points : of_skin) sort_points(points);
    }
    want_all(faults, "shock/body_impedance.csv", skin_words,
             [&](std::size_t i) { return !shock.body[i][0].empty(); });
    Sheet paths(files, "shock/body_path.csv", c.citations, faults);
    for (std::size_t i = 0; i < paths.rows(); ++i) {
        shock.path_share[place_of(paths, i, "path", path_words)] = paths.figure(i, "share");
    }
    want_all(faults, "shock/body_path.csv", path_words,
             [&](std::size_t i) { return shock.path_share[i].citation != nullptr; });
    Sheet heart(files, "shock/heart_factor.csv", c.citations, faults);
    for (std::size_t i = 0; i < heart.rows(); ++i) {
        shock.heart.push_back({heart.word(i, "path"), heart.figure(i, "factor")});
    }
}

const Footwear* find_footwear(const Shock& shock, const std::string& what) {
    for (const Footwear& footwear : shock.footwear) {
        if (footwear.what == what) return &footwear;
    }
    return nullptr;
}

void read_people(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Shock& shock = c.shock;
    Sheet shoes(files, "shock/footwear.csv", c.citations, faults);
    for (std::size_t i = 0; i < shoes.rows(); ++i) {
        shock.footwear.push_back(
            {shoes.word(i, "footwear"), shoes.cited(i, ohms(shoes.number(i, "both_ohm")))});
    }
    Sheet sheet(files, "shock/condition.csv", c.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        Condition condition;
        condition.words = sheet.word(i, "condition");
        condition.skin = static_cast<Skin>(place_of(sheet, i, "skin", skin_words));
        condition.path = static_cast<BodyPath>(place_of(sheet, i, "path", path_words));
        condition.percentile =
            static_cast<Percentile>(place_of(sheet, i, "percentile", percentile_words));
        condition.ground = sheet.cited(i, ohm_metres(sheet.number(i, "ground_ohm_m")));
        condition.citation = sheet.cite(i);
        const std::string worn = sheet.word(i, "footwear");
        if (const Footwear* footwear = find_footwear(shock, worn)) {
            condition.footwear = footwear->both;
        } else {
            sheet.fault(i, fmt::format("{} is not a known footwear", worn));
        }
        shock.conditions.push_back(std::move(condition));
    }
}

void read_curves(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Shock& shock = c.shock;
    Sheet touch(files, "shock/touch_curve.csv", c.citations, faults);
    for (std::size_t i = 0; i < touch.rows(); ++i) {
        touch.points(shock.touch_time[place_of(touch, i, "curve", curve_words)], i, "touch_v",
                     "longest_s");
    }
    for (auto& points : shock.touch_time) sort_points(points);
    want_all(faults, "shock/touch_curve.csv", curve_words,
             [&](std::size_t i) { return !shock.touch_time[i].empty(); });
    Sheet zone(files, "shock/current_zone.csv", c.citations, faults);
    constexpr double milli = 1e-3;
    for (std::size_t i = 0; i < zone.rows(); ++i) {
        shock.zones[place_of(zone, i, "line", line_words)].push_back(
            {zone.number(i, "time_s"), zone.cited(i, zone.number(i, "current_ma") * milli)});
    }
    for (auto& points : shock.zones) sort_points(points);
    want_all(faults, "shock/current_zone.csv", line_words,
             [&](std::size_t i) { return !shock.zones[i].empty(); });
    Sheet limit(files, "shock/threshold.csv", c.citations, faults);
    for (std::size_t i = 0; i < limit.rows(); ++i) {
        shock.limits[place_of(limit, i, "key", threshold_words)] = {
            limit.cited(i, volts(limit.number(i, "value_v"))), limit.word(i, "belongs_to")};
    }
    want_all(faults, "shock/threshold.csv", threshold_words,
             [&](std::size_t i) { return shock.limits[i].limit.citation != nullptr; });
}

void read_constants(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet sheet(files, "shock/constant.csv", c.citations, faults);
    std::map<std::string, Cited<double>> figures;
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        figures[sheet.word(i, "key")] = sheet.figure(i, "value");
    }
    const auto pick = [&](auto& into, const char* key) {
        const auto found = figures.find(key);
        if (found == figures.end()) {
            faults.push_back({"data",
                              "shock/constant.csv",
                              fmt::format("there is no constant {}", key),
                              "",
                              {}});
            return;
        }
        using Figure = std::decay_t<decltype(into.value)>;
        into = {Figure(found->second.value), found->second.citation};
    };
    pick(c.shock.feet_contact, "feet.contact");
    pick(c.shock.heat.short_time, "electrode.short");
    pick(c.shock.heat.short_longest, "electrode.short.longest");
    pick(c.shock.heat.long_time, "electrode.long");
    pick(c.shock.heat.rise, "electrode.rise");
    pick(c.shock.heat.conductivity_low, "soil.conductivity.low");
    pick(c.shock.heat.conductivity_high, "soil.conductivity.high");
}

}  // namespace

void read_shock(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    read_body(files, catalogue, faults);
    read_people(files, catalogue, faults);
    read_curves(files, catalogue, faults);
    read_constants(files, catalogue, faults);
}

const Condition* find_condition(const Shock& shock, std::string_view words) {
    for (const Condition& condition : shock.conditions) {
        if (condition.words == words) return &condition;
    }
    return nullptr;
}

const HeartFactor* find_heart_factor(const Shock& shock, std::string_view path) {
    for (const HeartFactor& heart : shock.heart) {
        if (heart.path == path) return &heart;
    }
    return nullptr;
}

}  // namespace toft::tables
