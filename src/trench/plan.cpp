#include "trench/plan.h"

#include "base/pi.h"
#include "base/text.h"
#include "trench/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace toft::trench {

namespace {

Spot between(const Spot& a, const Spot& b, double share) {
    return {a.east + share * (b.east - a.east), a.north + share * (b.north - a.north)};
}

Spot turned_from(const Spot& a, double degrees, Metres far) {
    const double angle = degrees * pi / 180;
    return {a.east + far * std::cos(angle), a.north + far * std::sin(angle)};
}

/// A leg of unknown length is drawn as if it had this.
constexpr double drawn_unknown = 5;

Metres drawn_length(const site::Leg& leg) {
    return leg.length.known ? leg.length.high : metres(drawn_unknown);
}

Metres run_length(const site::Run& run) {
    Metres sum;
    for (const site::Leg& leg : run.legs) sum += drawn_length(leg);
    return sum;
}

/// Part of the circle that what is fed from a building may be laid out in, degrees.
struct Sector {
    double middle = 0;
    double width = 0;
};

class Planner {
public:
    explicit Planner(const Works& works) : works_(works) {}

    Plan plan() {
        find_buildings();
        for (std::size_t i = 0; i < plan_.buildings.size(); ++i) {
            if (plan_.buildings[i].building->origin) fan(i, {0, widest(i)});
        }
        for (std::size_t r = 0; r < works_.job.runs.size(); ++r) draw_run(r);
        share_trenches();
        explain();
        return std::move(plan_);
    }

private:
    void find_buildings() {
        for (const site::Building& building : works_.job.buildings) {
            bool met = building.origin;
            for (const site::Run& run : works_.job.runs) {
                met = met || run.from == building.id || run.to == building.id;
            }
            if (!met) continue;
            BuildingSpot spot{&building, {}, building.at_x_m && building.at_y_m};
            if (spot.stated) spot.at = {metres(*building.at_x_m), metres(*building.at_y_m)};
            plan_.buildings.push_back(spot);
        }
        for (const BuildingSpot& spot : plan_.buildings) {
            if (!spot.stated && !spot.building->origin) plan_.stated = false;
        }
    }

    std::size_t place(const std::string& id) const {
        std::size_t i = 0;
        while (plan_.buildings[i].building->id != id) ++i;
        return i;
    }

    std::vector<const site::Run*> from(std::size_t building) const {
        std::vector<const site::Run*> runs;
        for (const site::Run& run : works_.job.runs) {
            if (run.from == plan_.buildings[building].building->id) runs.push_back(&run);
        }
        return runs;
    }

    int ends(std::size_t building, int deep = 0) const {
        int sum = 0;
        if (deep > 100) return 1;
        for (const site::Run* run : from(building)) sum += ends(place(run->to), deep + 1);
        return std::max(1, sum);
    }

    double widest(std::size_t house) const { return std::min(300.0, 60.0 * (ends(house) - 1)); }

    /// Places what is fed from that building and not stated, in shares of the sector.
    void fan(std::size_t building, const Sector& sector, int deep = 0) {
        if (deep > 100) return;
        const double all = ends(building);
        double at = sector.middle + sector.width / 2;
        for (const site::Run* run : from(building)) {
            const std::size_t to = place(run->to);
            const double share = sector.width * ends(to) / all;
            const Spot& here = plan_.buildings[building].at;
            BuildingSpot& there = plan_.buildings[to];
            double direction = at - share / 2;
            if (there.stated) {
                direction = std::atan2((there.at.north - here.north).number(),
                                       (there.at.east - here.east).number()) *
                            180 / pi;
            } else {
                there.at = turned_from(here, direction, run_length(*run));
            }
            fan(to, {direction, std::max(share, std::min(120.0, 60.0 * (ends(to) - 1)))}, deep + 1);
            at -= share;
        }
    }

    void draw_run(std::size_t r) {
        const site::Run& run = works_.job.runs[r];
        const Spot a = plan_.buildings[place(run.from)].at;
        const Spot b = plan_.buildings[place(run.to)].at;
        const Metres whole = run_length(run);
        Metres gone;
        for (const site::Leg& leg : run.legs) {
            const Spot begins = between(a, b, gone / whole);
            gone += drawn_length(leg);
            plan_.legs.push_back({plan_.legs.size(), begins, between(a, b, gone / whole)});
        }
        if (apart(a, b).number() > 1.001 * whole.number()) {
            plan_.says.push_back(fmt::format(
                "{}: its legs add up to {} m, and the stated positions are {} m apart: check both "
                "(a position may be the middle of a building).",
                run_sign(r), significant(whole.number(), 3), significant(apart(a, b).number(), 3)));
        }
    }

    bool first_leg(std::size_t i) const { return works_.legs[i].number == 1; }
    bool last_leg(std::size_t i) const {
        return works_.legs[i].number == works_.job.runs[works_.legs[i].run].legs.size();
    }

    /// The mean of those ends that buildings fix; of all where none does.
    Spot common_end(const Trench& trench, bool start) const {
        Spot fixed, any;
        double fixes = 0;
        for (const std::size_t i : trench.legs) {
            const Spot& end = start ? plan_.legs[i].from : plan_.legs[i].to;
            any = {any.east + end.east, any.north + end.north};
            if (!(start ? first_leg(i) : last_leg(i))) continue;
            fixed = {fixed.east + end.east, fixed.north + end.north};
            ++fixes;
        }
        const double all = fixes > 0 ? fixes : static_cast<double>(trench.legs.size());
        const Spot& sum = fixes > 0 ? fixed : any;
        return {sum.east / all, sum.north / all};
    }

    void share_trenches() {
        for (const Trench& trench : works_.trenches) {
            if (trench.legs.size() < 2) continue;
            const Spot a = common_end(trench, true);
            const Spot b = common_end(trench, false);
            for (const std::size_t i : trench.legs) {
                plan_.legs[i].from = a;
                plan_.legs[i].to = b;
                if (!first_leg(i)) plan_.legs[i - 1].to = a;
                if (!last_leg(i)) plan_.legs[i + 1].from = b;
            }
        }
    }

    void explain() {
        if (plan_.stated) {
            plan_.says.insert(
                plan_.says.begin(),
                "Buildings stand at their stated positions; their sizes are not surveyed. Runs are "
                "drawn straight and their legs in proportion: the way itself is not surveyed, the "
                "written lengths count.");
            return;
        }
        std::string open;
        for (const BuildingSpot& spot : plan_.buildings) {
            if (spot.stated || spot.building->origin) continue;
            open += (open.empty() ? "" : ", ") + place_words(works_.job, spot.building->id);
        }
        plan_.says.insert(
            plan_.says.begin(),
            fmt::format("Not to plan: positions are not stated of {}. Runs to them are laid out "
                        "straight, at their lengths; which way they go is not known.",
                        open));
    }

    const Works& works_;
    Plan plan_;
};

}  // namespace

Plan plan_of(const Works& works) { return Planner(works).plan(); }

Metres apart(const Spot& a, const Spot& b) {
    return metres(std::hypot((b.east - a.east).number(), (b.north - a.north).number()));
}

}  // namespace toft::trench
