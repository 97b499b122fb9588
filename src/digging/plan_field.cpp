#include "digging/plan_field.h"

#include "digging/ink.h"
#include "digging/labels.h"
#include "digging/scale.h"
#include "digging/signs.h"
#include "drawing/measure.h"
#include "parts/words.h"
#include "trench/words.h"

#include <algorithm>
#include <cmath>

namespace toft::digging {

namespace {

constexpr double letters = 10.5;
constexpr double largest_sign = 24;  // of few buildings
constexpr double usual_sign = 14;    // of many
constexpr std::size_t few_buildings = 3;
constexpr double over_and_under = 46;  // room for words above and below the buildings
constexpr double smallest_sign = 6;
constexpr double foot_room = 44;       // for scale bar and north arrow
constexpr std::size_t many_legs = 10;  // from here on labels have one line

double half_room(const FieldRoom& room) { return std::min(92.0, 0.17 * (room.right - room.left)); }

class Field {
public:
    Field(const trench::Works& works, const trench::Plan& plan, const FieldRoom& room)
        : works_(works), plan_(plan), room_(room) {}

    PlanField draw() {
        settle();
        draw_surfaces();
        draw_legs();
        draw_buildings();
        draw_scale();
        Labels words = labelled(labels(), {frame_, taken_, 3}, solid_);
        put("words", std::move(words.items));
        out_.all_said = words.left_out == 0 && plan_.legs.size() <= many_legs;
        return std::move(out_);
    }

private:
    Point at(const trench::Spot& spot) const {
        const double k = units_a_metre(out_.one_to);
        return out_.zero + Point{spot.east.number() * k, -spot.north.number() * k};
    }

    /// Scale, zero, frame.
    void settle() {
        Box metres;
        for (const trench::BuildingSpot& b : plan_.buildings) {
            metres = joined(metres, Point{b.at.east.number(), -b.at.north.number()});
        }
        for (const trench::LegSpot& leg : plan_.legs) {
            metres = joined(metres, Point{leg.to.east.number(), -leg.to.north.number()});
        }
        const double side = half_room(room_);
        const double wide = room_.right - room_.left - 2 * side;
        const double high = room_.most_high - 2 * over_and_under - foot_room;
        out_.one_to = fitting(plan_scales(), {metres.width(), metres.height(), wide, high});
        const double k = units_a_metre(out_.one_to);
        const double used = std::max(metres.height() * k + 2 * over_and_under, 160.0) + foot_room;
        frame_ = {room_.left, room_.top, room_.right, room_.top + used};
        const Point middle{(room_.left + room_.right) / 2, room_.top + (used - foot_room) / 2};
        out_.zero = middle - metres.centre() * k;
        out_.foot = frame_.bottom;
        double nearest = 1e9;
        for (std::size_t i = 0; i < plan_.buildings.size(); ++i) {
            for (std::size_t j = 0; j < i; ++j) {
                const double d = distance(at(plan_.buildings[i].at), at(plan_.buildings[j].at));
                if (d > 0) nearest = std::min(nearest, d);
            }
        }
        const bool few = plan_.buildings.size() <= few_buildings;
        sign_ = std::clamp(0.5 * nearest, smallest_sign, few ? largest_sign : usual_sign);
    }

    void put(const char* kind, Items items) {
        out_.items.emplace_back(Group{std::move(items), {}, "", kind, ""});
    }

    const trench::LegWork& work(const trench::LegSpot& spot) const { return works_.legs[spot.leg]; }

    bool dug(const trench::LegSpot& spot) const {
        const trench::LegWork& leg = work(spot);
        return leg.trench && works_.trenches[*leg.trench].legs.front() == spot.leg;
    }

    void draw_surfaces() {
        Items bands;
        for (const trench::LegSpot& spot : plan_.legs) {
            if (dug(spot) && work(spot).leg.surface) {
                append(bands, surface_band(at(spot.from), at(spot.to), *work(spot).leg.surface));
            }
        }
        put("surfaces", std::move(bands));
    }

    /// Legs of one trench side by side.
    Point aside(const trench::LegSpot& spot) const {
        const trench::LegWork& leg = work(spot);
        if (!leg.trench) return {};
        const std::vector<std::size_t>& all = works_.trenches[*leg.trench].legs;
        const auto place =
            static_cast<double>(std::find(all.begin(), all.end(), spot.leg) - all.begin());
        const double gaps = static_cast<double>(all.size()) - 1;
        const double step = gaps > 0 ? std::min(5.0, 2 * (band_half - 2) / gaps) : 0;
        const double off = (place - gaps / 2) * step;
        return quarter_turned(unit(at(spot.to) - at(spot.from))) * off;
    }

    void draw_legs() {
        Items lines;
        for (const trench::LegSpot& spot : plan_.legs) {
            const Point shift = aside(spot);
            const Point a = at(spot.from) + shift;
            const Point b = at(spot.to) + shift;
            if (distance(a, b) < 1e-9) continue;
            append(lines, leg_line(a, b, way_of(work(spot).leg.method, work(spot).stays)));
            for (const Box& box : boxes_along(a, b, band_half)) taken_.push_back(box);
        }
        put("runs", std::move(lines));
    }

    void draw_buildings() {
        Items signs, rods;
        for (const trench::BuildingSpot& b : plan_.buildings) {
            const Point middle = at(b.at);
            append(signs, building_sign(middle, sign_, b.building->origin));
            const double reach = reach_of(b);
            solid_.push_back(
                {middle.x - reach, middle.y - reach, middle.x + reach, middle.y + reach});
            taken_.push_back(solid_.back());
            if (electrode_at(b).empty()) continue;
            const Point hung = middle + Point{0, reach};
            append(rods, electrode_sign(hung));
            taken_.push_back({hung.x - 8, hung.y, hung.x + 8, hung.y + 22});
        }
        put("buildings", std::move(signs));
        put("electrodes", std::move(rods));
    }

    void draw_scale() {
        const double most = std::min(240.0, 0.5 * frame_.width());
        const Point left{frame_.left + 8, frame_.bottom - bar_high - 8};
        put("scale", scale_bar(out_.one_to, left, most));
        taken_.push_back({left.x, left.y - 4, left.x + most + 30, frame_.bottom});
        if (!std::any_of(
                plan_.buildings.begin(), plan_.buildings.end(),
                [](const trench::BuildingSpot& b) { return b.stated && !b.building->origin; })) {
            return;
        }
        const Point top{frame_.right - 16, frame_.bottom - 52};
        put("scale", north_arrow(top));
        taken_.push_back({top.x - 12, top.y - 2, top.x + 12, top.y + 46});
    }

    std::string electrode_at(const trench::BuildingSpot& spot) const {
        for (const trench::ElectrodeWork& one : works_.electrodes) {
            if (one.building == spot.building->id) return one.says;
        }
        return "";
    }

    double label_wide() const { return 0.3 * frame_.width(); }

    Spans fitted(const std::string& words, Weight weight = Weight::normal) const {
        return plain(parts::shortened(words, label_wide(), letters, weight));
    }

    double reach_of(const trench::BuildingSpot& spot) const {
        return sign_ / 2 + (spot.building->origin ? 4 : 1);
    }

    Label building_label(const trench::BuildingSpot& spot) const {
        Label label{{{}, {}, letters, 7}, {}};
        const double reach = reach_of(spot);
        for (const Point side : {Point{1, -1}, Point{-1, -1}, Point{1, 1}, Point{-1, 1}}) {
            label.targets.push_back(at(spot.at) + side * reach);
        }
        std::vector<Spans>& lines = label.callout.lines;
        lines.push_back(fitted(parts::capital(trench::place_words(works_.job, spot.building->id)),
                               Weight::bold));
        const std::string rods = electrode_at(spot);
        if (!rods.empty()) lines.push_back(fitted(rods));
        for (const site::Metalwork& metal : spot.building->metalwork) {
            if (lines.size() == 3) break;
            lines.push_back(fitted(site::word(metal.what)));
        }
        return label;
    }

    /// Where the leg can be seen, not under a building.
    std::vector<Point> seen(const trench::LegSpot& spot) const {
        const Point a = at(spot.from) + aside(spot);
        const Point b = at(spot.to) + aside(spot);
        std::vector<Point> points;
        for (const double share : {0.5, 0.65, 0.35, 0.8, 0.2, 0.92, 0.08}) {
            const Point p = between(a, b, share);
            const bool hidden = std::any_of(
                plan_.buildings.begin(), plan_.buildings.end(), [&](const auto& building) {
                    const double reach = reach_of(building);
                    const Point off = p - at(building.at);
                    return std::fabs(off.x) < reach && std::fabs(off.y) < reach;
                });
            if (!hidden) points.push_back(p);
        }
        return points;
    }

    std::string leg_more(const trench::LegWork& leg) const {
        std::string more = site::word(leg.leg.method);
        if (leg.leg.method == site::LegMethod::overhead) {
            return more + (leg.leg.height.known
                               ? ", " + trench::length_words(leg.leg.height) + " high"
                               : ", height not known");
        }
        if (!site::buried(leg.leg.method)) return more;
        more = leg.leg.surface ? site::word(*leg.leg.surface) : "surface not stated";
        if (!leg.trench) return more;
        const trench::Cover& cover = works_.trenches[*leg.trench].cover;
        return more + (cover.stated ? ", " + trench::metre_words(cover.depth) + " deep"
                                    : ", depth not stated");
    }

    Label leg_label(const trench::LegSpot& spot) const {
        const trench::LegWork& leg = work(spot);
        Label label{{{}, {}, letters, 14}, seen(spot)};
        label.callout.lines.push_back(
            plain(leg.sign + "  " + trench::length_words(leg.leg.length)));
        if (plan_.legs.size() > many_legs) return label;
        label.callout.lines.push_back(fitted(leg_more(leg)));
        return label;
    }

    std::vector<Label> labels() const {
        std::vector<Label> all;
        for (const trench::BuildingSpot& spot : plan_.buildings) {
            all.push_back(building_label(spot));
        }
        for (const bool in_ground : {true, false}) {
            for (const trench::LegSpot& spot : plan_.legs) {
                if (site::buried(work(spot).leg.method) == in_ground) {
                    all.push_back(leg_label(spot));
                }
            }
        }
        return all;
    }

    const trench::Works& works_;
    const trench::Plan& plan_;
    const FieldRoom room_;
    PlanField out_;
    Box frame_;
    std::vector<Box> taken_;
    std::vector<Box> solid_;  ///< buildings
    double sign_ = largest_sign;
};

}  // namespace

PlanField plan_field(const trench::Works& works, const trench::Plan& plan, const FieldRoom& room) {
    return Field(works, plan, room).draw();
}

}  // namespace toft::digging
