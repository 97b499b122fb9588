#include "outage/tree.h"

#include "parts/words.h"

#include <algorithm>

namespace toft::outage {

namespace {

using guard::Station;

constexpr double level = 34;    // from one device to the next
constexpr double number = 11;   // size of the columns' numbers
constexpr double crowded = 17;  // narrower columns have their numbers in two rows

const Style wire = stroked(palette::ink, weight::firm);

/// Columns that a device feeds, from the first to the last.
struct Reach {
    std::size_t first = 0;
    std::size_t last = 0;
    bool any = false;
};

bool fed_by(Station station, const guard::Part& part) {
    if (station == Station::service) return true;
    if (station == Station::house_rcd) return !part.house || part.behind_rcd;
    return !part.house;
}

class Growing {
public:
    Growing(const guard::Darkness& dark, const Columns& columns, const Space& room, bool rcbo)
        : dark_(dark), c_(columns), room_(room), rcbo_(rcbo), y_(room.top) {}

    Drawn grown() {
        for (const guard::Opener& opener : dark_.openers) {
            if (opener.station != Station::circuit) device(opener);
        }
        split(reach_of(Station::head));
        breakers();
        numbers();
        return std::move(out_);
    }

private:
    Reach reach_of(Station station) const {
        Reach reach;
        for (std::size_t i = 0; i < c_.parts.size(); ++i) {
            if (!fed_by(station, dark_.parts[c_.parts[i]])) continue;
            if (!reach.any) reach.first = i;
            reach.last = i;
            reach.any = true;
        }
        return reach;
    }

    double middle(const Reach& reach) const {
        return (c_.centre(reach.first) + c_.centre(reach.last)) / 2;
    }

    void draw(Items items) { append(out_.items, std::move(items)); }
    void line(Point from, Point to) { out_.items.emplace_back(Line{from, to, wire}); }

    Opens opens(Station station) const {
        if (station == Station::house_rcd || station == Station::head_rcd) return Opens::residual;
        return station == Station::head && rcbo_ ? Opens::both : Opens::overcurrent;
    }

    /// Parts that leave the trunk before the device do so on the bar above it.
    void device(const guard::Opener& opener) {
        const Reach reach = reach_of(opener.station);
        const double x = middle(reach);
        if (last_ != Station::service || placed_) {
            const Reach before = reach_of(last_);
            if (before.first != reach.first || before.last != reach.last) leave(before, reach);
        }
        line({x, y_}, {x, y_ + level});
        draw(device_sign({x, y_ + level / 2}, opens(opener.station)));
        name(opener.name, y_ + level / 2);
        y_ += level;
        last_ = opener.station;
        placed_ = true;
    }

    /// A bar over the columns of `before`; those not of `reach` go straight down from it.
    void leave(const Reach& before, const Reach& reach) {
        double from = std::min(middle(before), middle(reach));
        double to = std::max(middle(before), middle(reach));
        for (std::size_t i = before.first; i <= before.last; ++i) {
            if (i >= reach.first && i <= reach.last) continue;
            straight_.push_back({c_.centre(i), y_});
            from = std::min(from, c_.centre(i));
            to = std::max(to, c_.centre(i));
        }
        line({from, y_}, {to, y_});
    }

    void split(const Reach& reach) {
        if (!reach.any) return;
        line({c_.centre(reach.first), y_}, {c_.centre(reach.last), y_});
    }

    void breakers() {
        for (std::size_t i = 0; i < c_.parts.size(); ++i) {
            if (dark_.parts[c_.parts[i]].house) continue;
            const double x = c_.centre(i);
            line({x, y_}, {x, y_ + level});
            if (c_.each >= crowded) draw(device_sign({x, y_ + level / 2}, Opens::both));
        }
        name("a breaker for each circuit", y_ + level / 2);
        y_ += level;
        for (const Point& from : straight_) line(from, {from.x, y_});
    }

    void name(const std::string& words, double y) {
        const double size = room_.letters();
        const double wide = c_.first - c_.names - 10;
        const auto lines = parts::paragraph(words, wide, size, 2);
        const double high = 1.2 * size;
        double at = y + 0.36 * size - high * (static_cast<double>(lines.size()) - 1) / 2;
        for (const std::string& one : lines) {
            out_.items.emplace_back(
                text({c_.names, at}, one, {.size = size, .colour = palette::graphite}));
            at += high;
        }
    }

    void numbers() {
        const bool two_rows = c_.each < crowded;
        const double high = number + 4;
        for (std::size_t i = 0; i < c_.parts.size(); ++i) {
            const double down = two_rows && i % 2 == 1 ? 2 * high : high;
            out_.items.emplace_back(
                text({c_.centre(i), y_ + down - 1}, part_sign(c_.parts[i]),
                     {.size = number, .weight = Weight::bold, .anchor = Anchor::middle}));
        }
        y_ += (two_rows ? 2 : 1) * high + 4;
        out_.foot = y_;
    }

    const guard::Darkness& dark_;
    const Columns& c_;
    const Space& room_;
    bool rcbo_;
    double y_;
    Station last_ = Station::service;
    bool placed_ = false;
    std::vector<Point> straight_;  ///< where lines to parts of the house begin
    Drawn out_;
};

}  // namespace

Items device_sign(Point centre, Opens opens) {
    Style pen = stroked(palette::ink, weight::firm);
    pen.fill = palette::paper;
    constexpr double half = sign_high / 2;
    Items items;
    if (opens != Opens::residual) {
        items.emplace_back(
            Rect{{centre.x - half, centre.y - half, centre.x + half, centre.y + half}, pen});
    }
    if (opens != Opens::overcurrent) {
        items.emplace_back(Circle{centre, opens == Opens::both ? 4.5 : half, pen});
    }
    return items;
}

std::string part_sign(std::size_t part) { return std::to_string(part + 1); }

Drawn tree(const guard::Darkness& dark, const Columns& columns, const Space& room, bool rcbo) {
    return Growing(dark, columns, room, rcbo).grown();
}

}  // namespace toft::outage
