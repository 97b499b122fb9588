#include "cable/harmonics.h"
#include "demand/sentences.h"
#include "study/path_load.h"
#include "study/setting_parts.h"

#include <algorithm>

namespace toft::study {

namespace {

/// The neutral's current is felt in every line: what each drops hangs on both.
template <class L>
void line_shares(L& ledger, const demand::Lines<L>& lines, const ValueIn<L, Amperes>& heaviest,
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

/// What the neutral carries beside the line: all of it, nothing, or what unlike lines leave.
template <class L>
void shares(L& ledger, const demand::BuildingDemand<L>& load, Setting<L>& s) {
    const Name name{"n.N", "current of the neutral over that of the line"};
    const bool circuits = demand::by_circuits(*s.building_facts);
    if (s.phases == 1 || !circuits || !(plain(load.heaviest) > amperes(0))) {
        s.neutral_share = ledger.stated(name, s.phases == 3 ? 0.0 : 1.0,
                                        s.phases == 3 ? "spread evenly" : "one line and neutral");
        return;
    }
    const auto heaviest = ledger.let({"I.most", "the most loaded line"}, load.heaviest * 1.0);
    s.neutral_share = ledger.let(name, load.neutral / heaviest);
    line_shares(ledger, load.lines, heaviest, s);
    s.harmonics = load.harmonics;
    if (!s.harmonics) return;
    const auto share =
        ledger.let({"h.3", "third harmonic in per cent of the most loaded line", 0, "%"},
                   100.0 * load.third / heaviest);
    s.harmonic_factor = cable::harmonic_factor(ledger, s.catalogue->cable_constants.harmonic,
                                               cable::ThirdHarmonics<L>{share, s.neutral_share, 0});
}

constexpr const char* no_harmonics =
    "where no third harmonic is stated there is none: drives, chargers and LED lamps have some, "
    "and "
    "it loads the neutral";

/// Of every circuit it is said how much third harmonic it draws.
bool harmonics_told(const site::Building& b) {
    if (!demand::by_circuits(b)) return false;
    for (const site::Circuit& c : b.circuits) {
        if (!c.third_harmonic.known) return false;
    }
    return true;
}

/// Motors by name whose power factor nobody read: their watts count as if it were 1.
template <class L>
std::string unread_motors(const Setting<L>& s, site::Scenario scenario) {
    std::string names;
    for (const site::Circuit& c : s.building_facts->circuits) {
        const auto* kind = tables::find_circuit_kind(*s.catalogue, site::word(c.kind));
        const bool turns = c.starting_multiple.known || (kind && kind->start > 1);
        if (!turns || !c.load_w.known || c.power_factor.known) continue;
        if (!demand::counts(c, scenario)) continue;
        names += (names.empty() ? "" : ", ") + c.name;
    }
    return names;
}

template <class L>
void say(Setting<L>& s, site::Scenario scenario) {
    const site::Building& b = *s.building_facts;
    if (s.phases == 3) {
        s.assumed.push_back(demand::by_circuits(b)
                                ? "single-phase circuits are taken as spread over the lines as "
                                  "evenly as they allow"
                                : "the load is taken as spread evenly over three lines");
        if (!harmonics_told(b)) s.assumed.push_back(no_harmonics);
    }
    for (std::string& said : demand::demand_sentences(s.catalogue->demand, b, scenario)) {
        s.assumed.push_back(std::move(said));
    }
    const std::string motors = unread_motors(s, scenario);
    if (!motors.empty()) {
        s.assumed.push_back(
            fmt::format("{}: a motor whose power factor is not stated is taken at 1; it draws more "
                        "than its watts say: read its plate",
                        motors));
    }
}

/// Power factor of the whole: stated for the building, else that of all circuits' watts together.
template <class L>
double power_factor_of(const Setting<L>& s, const site::Building& b, site::Scenario scenario) {
    if (b.power_factor.known) return b.power_factor.low;
    double watts = 0;
    double volt_amperes = 0;
    for (const site::Circuit& c : b.circuits) {
        const bool draws =
            demand::current_from(s.catalogue->demand, c) == demand::CurrentFrom::watts;
        if (!draws || !demand::counts(c, scenario)) continue;
        watts += c.load_w.high;
        volt_amperes += c.load_w.high / (c.power_factor.known ? c.power_factor.low : 1.0);
    }
    return volt_amperes > 0 ? watts / volt_amperes : 1.0;
}

/// Of the building and all fed through it: the one that drops most of the voltage on a cable, whose
/// resistance counts for more than its reactance.
template <class L>
double whole_power_factor(const Setting<L>& s, site::Scenario scenario) {
    double most = power_factor_of(s, *s.building_facts, scenario);
    for (const site::Building* b : fed_through(*s.job, *s.building_facts)) {
        most = std::max(most, power_factor_of(s, *b, scenario));
    }
    return most;
}

/// What the other runs that leave the house add to the demand of its most loaded line.
template <class L>
void beside(L& ledger, Setting<L>& s) {
    const auto out = load_of_all_runs(ledger, s);
    s.others_beside = plain(s.demand) < plain(out);
    if (!s.others_beside) return;
    s.beside =
        ledger.let({"I.beside", "what the other runs that leave the house add"}, out - s.demand);
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
void prepare_load(L& ledger, Setting<L>& s, const Incoming* incoming) {
    const site::Scenario scenario = wanted_scenario(*s.job);
    const PathLoad<L> path = path_load(ledger, s);
    const auto& load = path.load;
    const auto& sent = path.sent;
    s.drop_before = incoming ? ledger.stated({"drop.before", "voltage lost before this run begins"},
                                             incoming->drop, "left by the runs before")
                             : ledger.stated({"drop.before", "nothing is lost before"}, 0.0,
                                             "fed from the house");
    s.feeds_others = path.fed_through;
    s.demand = load.total;
    if (!incoming && s.job->runs.size() > 1) beside(ledger, s);
    const Name name{"Ib", "design current of the run", 0, "", "433.1.1"};
    s.ib = plain(sent) > plain(load.total) ? ledger.let(name, most(load.total, sent))
                                           : ledger.let(name, load.total * 1.0);
    shares(ledger, load, s);
    s.power_factor = ledger.stated({"cos.phi", "power factor of the load"},
                                   whole_power_factor(s, scenario), "survey");
    s.drop_limit = drop_limit(ledger, s);
    if (s.feeds_others) {
        s.assumed.push_back(
            "buildings fed through one another are taken as drawing their most at the same time");
    }
    say(s, scenario);
}

template void prepare_load(Silent&, Setting<Silent>&, const Incoming*);
template void prepare_load(Recording&, Setting<Recording>&, const Incoming*);

}  // namespace toft::study
