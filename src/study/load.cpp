#include "study/setting_parts.h"

#include <algorithm>
#include <array>
#include <vector>

namespace toft::study {

namespace {

/// A power factor that nobody stated is taken as 1, as the trade does when it divides watts by
/// volts; the answer says so.
double stated_power_factor(const site::Fact<double>& fact, bool& missing) {
    missing = missing || !fact.known;
    return fact.known ? fact.low : 1.0;
}

/// Currents of the lines: one, or three.
template <class L>
struct Lines {
    std::array<ValueIn<L, Amperes>, 3> each{};

    std::size_t least_loaded(int phases) const {
        std::size_t least = 0;
        for (std::size_t i = 1; i < static_cast<std::size_t>(phases); ++i) {
            if (plain(each[i]) < plain(each[least])) least = i;
        }
        return least;
    }
    std::size_t most_loaded(int phases) const {
        std::size_t most = 0;
        for (std::size_t i = 1; i < static_cast<std::size_t>(phases); ++i) {
            if (plain(each[i]) > plain(each[most])) most = i;
        }
        return most;
    }
};

/// Current of one circuit in each line it uses.
template <class L>
ValueIn<L, Amperes> circuit_current(L& ledger, const Setting<L>& s, const site::Circuit& circuit,
                                    int number, bool& missing) {
    const Name name{"I", "current of a circuit", number};
    if (!circuit.load_w.known) {
        return ledger.stated(name, circuit.device->rating, "rating of the circuit's device");
    }
    const double pf = stated_power_factor(circuit.power_factor, missing);
    const auto p = ledger.stated({"S", "apparent power of a circuit", number},
                                 apparent(Watts{circuit.load_w.high}, pf), "survey");
    if (circuit.phases == 1) return ledger.let(name, p / s.supply.u0);
    return ledger.let(name, p / (s.supply.u0 * 3.0));
}

/// All circuits together, no diversity. Three-phase circuits load every line; single-phase ones are
/// spread, the largest first, each on the line that then has least.
template <class L>
Lines<L> circuits_currents(L& ledger, const Setting<L>& s, bool& missing) {
    Lines<L> lines;
    for (auto& line : lines.each)
        line = ledger.stated({"I.none", "no circuit"}, amperes(0), "survey");
    std::vector<ValueIn<L, Amperes>> singles;
    int number = 0;
    for (const site::Circuit& circuit : s.building_facts->circuits) {
        const auto i = circuit_current(ledger, s, circuit, ++number, missing);
        if (s.phases == 3 && circuit.phases == 1) {
            singles.push_back(i);
            continue;
        }
        for (auto& line : lines.each) line = line + i;
    }
    std::stable_sort(singles.begin(), singles.end(),
                     [](const auto& a, const auto& b) { return plain(b) < plain(a); });
    for (const auto& i : singles) {
        auto& line = lines.each[lines.least_loaded(3)];
        line = line + i;
    }
    return lines;
}

/// Of three lines of equal power factor the neutral carries what they differ by.
template <class L>
ValueIn<L, double> neutral_share(L& ledger, const Lines<L>& lines,
                                 const ValueIn<L, Amperes>& heaviest) {
    const auto& [a, b, c] = lines.each;
    const auto square = squared(a) + squared(b) + squared(c) - a * b - b * c - c * a;
    const auto neutral = ledger.let({"I.N", "current of the neutral, lines at 120 degrees"},
                                    root(most(square, squared(amperes(0)))));
    return ledger.let({"n.N", "current of the neutral over that of the line"}, neutral / heaviest);
}

/// The neutral's current is felt in every line: what each drops hangs on both.
template <class L>
void line_shares(L& ledger, const Lines<L>& lines, const ValueIn<L, Amperes>& heaviest,
                 Setting<L>& s) {
    const auto half_root =
        ledger.stated({"root3.half", "sine of 120 degrees"}, root(3.0) / 2, "three phases");
    for (std::size_t k = 0; k < 3; ++k) {
        const int number = static_cast<int>(k) + 1;
        const auto& own = lines.each[k];
        const auto& b = lines.each[(k + 1) % 3];
        const auto& c = lines.each[(k + 2) % 3];
        LineShare<L>& share = s.lines[k];
        share.loaded = plain(own) > amperes(0);
        share.along = ledger.let({"n.along", "line and neutral in step with the line", number},
                                 (own * 2.0 - (b + c) / 2.0) / heaviest);
        const auto apart = plain(b) < plain(c) ? c - b : b - c;
        share.across = ledger.let({"n.across", "neutral at right angles to the line", number},
                                  half_root * apart / heaviest);
    }
}

/// Current of the most loaded line; sets the neutral's share.
template <class L>
ValueIn<L, Amperes> present_current(L& ledger, Setting<L>& s, bool& missing) {
    const site::Building& b = *s.building_facts;
    const Name even{"n.N", "current of the neutral over that of the line"};
    s.neutral_share = ledger.stated(even, s.phases == 3 ? 0.0 : 1.0,
                                    s.phases == 3 ? "spread evenly" : "one line and neutral");
    if (s.phases == 3 && (b.load.known || b.load_w.known)) {
        s.assumed.push_back("the load is taken as spread evenly over three lines");
    }
    if (b.load.known)
        return ledger.stated({"I.load", "load of the building"}, b.load.high, "survey");
    if (!b.load_w.known) {
        const Lines<L> lines = circuits_currents(ledger, s, missing);
        if (s.phases == 1) return lines.each[0];
        const auto heaviest =
            ledger.let({"I.line", "the most loaded line"}, lines.each[lines.most_loaded(3)] * 1.0);
        if (plain(heaviest) > amperes(0)) {
            s.neutral_share = neutral_share(ledger, lines, heaviest);
            line_shares(ledger, lines, heaviest, s);
        }
        s.assumed.push_back(
            "single-phase circuits are taken as spread over the lines as evenly as they allow");
        return heaviest;
    }
    const double pf = stated_power_factor(b.power_factor, missing);
    const auto p = ledger.stated({"S.load", "apparent power of the building"},
                                 apparent(Watts{b.load_w.high}, pf), "survey");
    const Name name{"I.load", "load of the building"};
    if (s.phases == 1) return ledger.let(name, p / s.supply.u0);
    return ledger.let(name, p / (s.supply.u0 * 3.0));
}

/// Power factor of the whole: stated for the building, else that of all circuits' watts together.
template <class L>
double whole_power_factor(const Setting<L>& s) {
    const site::Building& b = *s.building_facts;
    if (b.power_factor.known) return b.power_factor.low;
    double watts = 0;
    double volt_amperes = 0;
    for (const site::Circuit& c : b.circuits) {
        if (!c.load_w.known) continue;
        watts += c.load_w.high;
        volt_amperes += c.load_w.high / (c.power_factor.known ? c.power_factor.low : 1.0);
    }
    return volt_amperes > 0 ? watts / volt_amperes : 1.0;
}

/// The drop allowed to the run, never more than what any load behind it may lose in all.
template <class L>
ValueIn<L, double> drop_limit(L& ledger, const Setting<L>& s) {
    const tables::Limits& limits = s.catalogue->limits;
    const site::Wishes& wishes = s.job->wishes;
    const auto pick = [&](const Name& name, const site::Fact<double>& wish,
                          const Cited<double>& rule) -> ValueIn<L, double> {
        if (wish.known) return ledger.stated(name, wish.low, "wish");
        return ledger.table(name, rule);
    };
    const auto other = pick({"drop.other", "drop allowed to any load", 0, "%", "525"},
                            wishes.drop_other, limits.drop_other);
    const Name result{"drop.limit", "drop the run may have", 0, "%", "525"};
    // Where every circuit is designed behind it, the run may take what they leave.
    const bool shared_out = s.circuits.all() && !wishes.drop_run.known;
    const auto run = shared_out ? other
                                : pick({"drop.run", "drop allowed to the run", 0, "%"},
                                       wishes.drop_run, limits.drop_run);
    bool lights = false;
    for (const site::Circuit& c : s.building_facts->circuits) {
        lights = lights || c.kind == site::CircuitKind::lighting;
    }
    if (!lights) return ledger.let(result, least(run, other));
    const auto lighting = pick({"drop.lighting", "drop allowed to lighting", 0, "%", "525"},
                               wishes.drop_lighting, limits.drop_lighting);
    return ledger.let(result, least(least(run, other), lighting));
}

}  // namespace

template <class L>
void prepare_load(L& ledger, Settler&, Setting<L>& s) {
    const site::Building& b = *s.building_facts;
    bool missing = false;
    const auto present = present_current(ledger, s, missing);
    const auto future = ledger.stated({"I.future", "allowance for later"},
                                      b.future_load.known ? b.future_load.high : amperes(0),
                                      b.future_load.known ? "survey" : "none stated");
    s.ib = ledger.let({"Ib", "design current of the run", 0, "", "433.1.1"}, present + future);
    s.power_factor =
        ledger.stated({"cos.phi", "power factor of the load"}, whole_power_factor(s), "survey");
    s.drop_limit = drop_limit(ledger, s);
    if (missing) {
        s.assumed.push_back(
            "power factor not stated: watts over volts gives the current; motors and "
            "inverters draw more");
    }
    if (!b.load.known && !b.load_w.known && b.circuits.size() > 1) {
        s.assumed.push_back("all circuits are taken together, without diversity");
    }
}

template void prepare_load(Silent&, Settler&, Setting<Silent>&);
template void prepare_load(Recording&, Settler&, Setting<Recording>&);

}  // namespace toft::study
