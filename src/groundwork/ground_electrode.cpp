#include "base/text.h"
#include "groundwork/ground_parts.h"
#include "network/terminal_rise.h"
#include "price/electrode.h"
#include "study/ground_memo.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace toft::answer {

namespace {

class Rods {
public:
    explicit Rods(const GroundCase& c)
        : c_(c),
          limits_(c.question.catalogue.limits),
          stated_(c.setting.building_facts->electrode) {}

    Metres diameter() const {
        return stated_.diameter.known ? stated_.diameter.low : limits_.rod_diameter.value;
    }
    int most_sections() const {
        return static_cast<int>(limits_.rod_deepest.value / limits_.rod_section.value + 0.5);
    }
    Metres length(int sections) const { return limits_.rod_section.value * sections; }

    /// Rods of so many half sections.
    study::ThroughTheYear year(int rods, int halves) {
        const auto [known, fresh] = years_.try_emplace({rods, halves});
        if (!fresh) return known->second;
        const Metres l = limits_.rod_section.value * halves / 2;
        return known->second = study::through_the_year(
                   c_.question.catalogue, c_.soil, study::rods_in_a_line(rods, l, diameter(), l),
                   c_.memo.media);
    }

    std::vector<RodPointAnswer> over_length() {
        std::vector<RodPointAnswer> points;
        for (int half = 1; half <= 2 * most_sections(); ++half) {
            const Metres l = limits_.rod_section.value * half / 2;
            const auto y = year(1, half);
            if (!y.solved) continue;
            points.push_back({l.number(), y.low.number(), y.high.number()});
        }
        return points;
    }

    /// Fewest sections of each number of rods that meet the target at the worst time of the year.
    RodTargetAnswer meet(Ohms target, std::string why) {
        RodTargetAnswer answer;
        answer.target_ohm = target.number();
        answer.why = std::move(why);
        int before = most_sections() + 1;
        for (int rods = 1; rods <= static_cast<int>(limits_.rod_most.value); ++rods) {
            const int sections = shortest(rods, target, before - 1);
            if (sections == 0) continue;
            before = sections;
            const Metres l = length(sections);
            answer.choices.push_back({rods, l.number(), rods > 1 ? l.number() : 0,
                                      year(rods, 2 * sections).high.number(),
                                      price(rods * sections)});
        }
        std::stable_sort(answer.choices.begin(), answer.choices.end(),
                         [](const auto& a, const auto& b) { return a.price < b.price; });
        if (answer.choices.empty()) {
            answer.says = fmt::format(
                "not with {} rods of {} m: other ground, more metal, or another way of earthing",
                significant(limits_.rod_most.value, 2),
                significant(length(most_sections()).number(), 3));
        }
        return answer;
    }

    /// An electrode that alone holds what it is joined to at the touch voltage, the neutral lost.
    RodTargetAnswer hold_without_neutral() {
        Silent silent;
        const Amperes load = c_.setting.building.returning;
        const Volts limit = limits_.touch_voltage.value;
        const Ohms target = network::electrode_for(
            silent, {"RA.hold", ""},
            network::FloatingSupply<Silent>{c_.setting.supply.u0, limits_.c_max.value, load},
            limit);
        return meet(target,
                    fmt::format("alone to hold metal to {} V with the neutral lost and {} A on",
                                significant(limit.number(), 3), significant(load.number(), 3)));
    }

private:
    /// Sections of the shortest rods that meet the target; 0 when `most` sections do not. A longer
    /// rod never resists more.
    int shortest(int rods, Ohms target, int most) {
        const auto meets = [&](int sections) {
            const auto y = year(rods, 2 * sections);
            return y.solved && y.high <= target;
        };
        if (most < 1 || !meets(most)) return 0;
        int low = 1;
        while (low < most) {
            const int middle = (low + most) / 2;
            if (meets(middle)) {
                most = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    double price(int pieces) const {
        Silent silent;
        return price::electrode_price(silent, c_.question.book, pieces).number();
    }

    const GroundCase& c_;
    const tables::Limits& limits_;
    const site::Electrode& stated_;
    std::map<std::pair<int, int>, study::ThroughTheYear> years_;  ///< by rods and half sections
};

/// Its own range, once a reading was stated.
YearAnswer read_year(const GroundCase& c) {
    const site::Fact<Ohms> read = study::reading_of(c.setting.building_facts->electrode);
    YearAnswer year{read.low.number(), c.setting.building.ra_most.number(), "as it was read", ""};
    year.high_when = c.setting.building.ra_most > read.high ? "driest or frozen ground"
                     : read.single()                        ? "as it was read"
                                                            : "the highest it was said to be";
    return year;
}

}  // namespace

void electrode_answer(const GroundCase& c, GroundSideAnswer& side) {
    const tables::Catalogue& catalogue = c.question.catalogue;
    const site::Electrode& stated = c.setting.building_facts->electrode;
    const study::BuiltElectrode electrode = study::built(stated, catalogue);
    side.electrode_words = study::electrode_words(electrode, stated);
    if (study::reading_of(stated).known) {
        side.year = read_year(c);
    } else if (const auto y = study::through_the_year(catalogue, c.soil, electrode, c.memo.media);
               y.solved) {
        side.year = {y.low.number(), y.high.number(), y.low_when, y.high_when};
    } else {
        side.year.high_ohm = study::unusable.number();
        side.year.high_when = "it cannot be worked out";
    }
    if (const auto fall = study::fall_result(stated)) {
        side.read_ohm = fall->resistance.number();
        side.read_error_ohm = std::max((fall->high - fall->resistance).number(),
                                       (fall->resistance - fall->low).number());
        side.read_says = fall->says;
    }
    if (c.setting.building.ra_most >= study::unusable) {
        side.year.high_ohm = study::unusable.number();
        side.year.high_when = "it may be no electrode at all";
    }
    Rods rods(c);
    side.over_length = rods.over_length();
    const tables::Limits& limits = catalogue.limits;
    side.targets.push_back(rods.meet(limits.electrode_stable.value,
                                     "above this a reading may not last (note to Table 41.5)"));
    side.targets.push_back(
        rods.meet(limits.touch_voltage.value / limits.residual_socket.value,
                  fmt::format("{} V over the {} mA of the residual current device at the board",
                              significant(limits.touch_voltage.value.number(), 3),
                              significant(limits.residual_socket.value.number() * 1000, 3))));
    if (c.setting.building.gap_judged) side.targets.push_back(rods.hold_without_neutral());
}

}  // namespace toft::answer
