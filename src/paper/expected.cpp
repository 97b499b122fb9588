#include "paper/expected.h"

#include "base/text.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::paper {

namespace {

using answer::CircuitAnswer;
using answer::SchemeAnswer;

bool own_electrode(const SchemeAnswer& part) { return part.building.electrode.has_value(); }

/// One step of the tests for one run, by key.
class OneRun {
public:
    OneRun(const Subject& s, const SchemeAnswer& part) : s_(s), part_(part) {}

    Expectations of(const std::string& key) const {
        if (key == "inspection") return {{name(), "as the installer's sheet", "no defect"}};
        if (key == "continuity") return continuity();
        if (key == "bonding") return bonding();
        if (key == "apart") return apart();
        if (key == "ring") return rings();
        if (key == "insulation") return insulation();
        if (key == "polarity") return {{name(), "correct at both ends", "correct"}};
        if (key == "electrode") return electrode();
        if (key == "zs") return loops();
        if (key == "fault-current") return fault_currents();
        if (key == "residual") return residual();
        if (key == "sequence") return sequence();
        if (key == "function") return {{name(), "each works, its label is true", "each works"}};
        return {};
    }

private:
    std::string name() const { return part_.building.name; }

    /// Conductors are held against what they should read.
    Expected conductors(const std::string& where, double ohms) const {
        const double most = s_.catalogue.limits.reading_most.value;
        return {where, figure(ohms, "Ω"), "within " + significant(most, 3) + " times that", "Ω",
                ohms,  most * ohms};
    }

    /// Of several buildings the same name may stand in each.
    std::string of_circuit(const CircuitAnswer& c) const {
        return s_.answer.schemes[s_.scheme].further.empty() ? c.name : c.name + ", " + name();
    }

    Expectations continuity() const {
        Expectations all{conductors(
            part_.run.id +
                (own_electrode(part_) ? ", line and armour at 20 °C" : ", R1+R2 at 20 °C"),
            part_.run.figures.r1_plus_r2_20c_ohm)};
        for (const CircuitAnswer& c : part_.building.circuits) {
            all.push_back(conductors(of_circuit(c) + ", R1+R2 at 20 °C", c.r1_plus_r2_20c_ohm));
        }
        return all;
    }

    Expectations bonding() const {
        Expectations all;
        for (const answer::BondAnswer& bond : part_.building.bonding) {
            all.push_back({fmt::format("{} of {}, {} mm²", part_name(bond), name(),
                                       significant(bond.size_mm2, 3)),
                           "low, as its length gives", "as its length gives"});
        }
        return all;
    }

    Expectations apart() const {
        if (!own_electrode(part_)) return {};
        return {{part_.run.id + " to the earth bar of " + name(), "none", "no continuity"}};
    }

    Expectations rings() const {
        Expectations all;
        for (const CircuitAnswer& c : part_.building.circuits) {
            if (c.kind != "socket ring") continue;
            all.push_back({of_circuit(c) + ", r1, rn, r2",
                           "r1 and rn alike",
                           "within " + figure(s_.catalogue.limits.ring_equal.value.number(), "Ω"),
                           "Ω",
                           {},
                           s_.catalogue.limits.ring_equal.value.number()});
        }
        return all;
    }

    Expectations insulation() const {
        const double bound = s_.catalogue.limits.insulation_least.value.number() / 1e6;
        const std::string least = "at least " + figure(bound, "MΩ");
        const std::string usual =
            "over " + figure(s_.catalogue.limits.insulation_look.value.number() / 1e6, "MΩ") +
            ", else look";
        Expectations all{{part_.run.id, usual, least, "MΩ", {}, bound, true}};
        for (const CircuitAnswer& c : part_.building.circuits) {
            all.push_back({of_circuit(c), usual, least, "MΩ", {}, bound, true});
        }
        return all;
    }

    Expectations electrode() const {
        if (!part_.building.electrode) return {};
        std::string limit = "as the rule electrode asks";
        double allowed = part_.building.electrode->largest_ohm;
        std::optional<double> bound;
        for (const answer::FindingAnswer& finding : part_.findings) {
            if (finding.rule != "electrode" || !finding.limit) continue;
            limit = "at most " + figure(*finding.limit, finding.unit.c_str(), 4) +
                    ", in the driest season";
            allowed = *finding.limit;
            bound = allowed;
        }
        const double most = part_.building.electrode->largest_ohm;
        const std::string stable =
            "over " + figure(s_.catalogue.limits.electrode_stable.value.number(), "Ω") +
            " it may not last";
        Expected electrode{"electrode of " + name(), "not known", limit, "Ω", {}, bound};
        if (allowed >= most) {
            electrode.expect = "at most " + figure(most, "Ω", 4);
            electrode.value = most;
        }
        return {electrode, {"", stable, "more or deeper rods"}};
    }

    /// The loop at the end of the run.
    Expected loop_at_end(const std::string& where) const {
        const answer::FigureAnswers& f = part_.run.figures;
        Expected loop{where, "at most " + figure(f.loop_impedance_far_ohm, "Ω"),
                      "the RCD must clear it", "Ω", f.loop_impedance_far_ohm};
        if (f.disconnection_s) {
            loop.limit = "cold at most " + figure(f.loop_impedance_test_limit_ohm, "Ω");
            loop.bound = f.loop_impedance_test_limit_ohm;
        }
        return loop;
    }

    Expectations loops() const {
        const std::string board = "Zs at the board of " + name();
        Expectations all;
        if (own_electrode(part_)) {
            all.push_back(loop_at_end("end of " + part_.run.id + ", line to its armour"));
            all.push_back({board, "the electrode and more", "the RCD must clear it", "Ω"});
        } else {
            all.push_back(loop_at_end(board));
        }
        for (const CircuitAnswer& c : part_.building.circuits) {
            if (!c.loop_ohm) continue;
            const double bound = c.loop_test_limit_ohm.value_or(c.loop_ohm->limit);
            all.push_back(
                {"Zs of " + of_circuit(c), "at most " + figure(c.loop_ohm->value, "Ω"),
                 (c.loop_test_limit_ohm ? "cold at most " : "hot at most ") + figure(bound, "Ω"),
                 "Ω", c.loop_ohm->value, bound});
        }
        return all;
    }

    Expectations fault_currents() const {
        const answer::FigureAnswers& f = part_.run.figures;
        const auto breaks = part_.run.device.breaking_capacity_ka;
        Expected there{"board of " + name(),     "at most " + figure(f.fault_current_far_ka, "kA"),
                       "what its devices break", "kA",
                       f.fault_current_far_ka,   breaks_there()};
        if (there.bound) there.limit = "devices there break " + figure(*there.bound, "kA");
        return {{"where " + part_.run.id + " begins",
                 "at most " + figure(f.fault_current_near_ka, "kA"),
                 "device breaks " + figure(breaks, "kA"), "kA", f.fault_current_near_ka, breaks},
                there};
    }

    /// The least that any device of its board breaks, kA; none where it has none.
    std::optional<double> breaks_there() const {
        std::optional<double> least;
        for (const CircuitAnswer& c : part_.building.circuits) {
            const double breaks = c.device.breaking_capacity_ka;
            least = least ? std::fmin(*least, breaks) : breaks;
        }
        return least;
    }

    Expected device(const std::string& where, const answer::RcdAnswer& rcd) const {
        const tables::RcdTimes& times =
            rcd.delayed ? s_.catalogue.rcd_delayed : s_.catalogue.rcd_general;
        const auto ms = [](Seconds t) { return significant(1000 * t.number(), 3); };
        std::string limit = "at most " + ms(times.longest_1.value) + " ms";
        if (times.shortest_1 > seconds(0)) limit += ", not before " + ms(times.shortest_1) + " ms";
        return {fmt::format("{}: {} mA type {}{}", where, significant(rcd.sensitivity_ma, 3),
                            rcd.type, rcd.delayed ? ", delayed" : ""),
                "opens at its rated current",
                limit,
                "ms",
                {},
                1000 * times.longest_1.value.number()};
    }

    Expectations residual() const {
        Expectations all;
        if (part_.run.rcd) all.push_back(device("head of " + part_.run.id, *part_.run.rcd));
        for (const answer::RcdAnswer& rcd : part_.building.rcds) {
            std::string where;
            for (const std::string& covered : rcd.covers)
                where += (where.empty() ? "" : ", ") + covered;
            all.push_back(device(where.empty() ? name() : where, rcd));
        }
        return all;
    }

    Expectations sequence() const {
        if (part_.run.phases != 3) return {};
        return {{"board of " + name(), "L1, L2, L3", "kept"}};
    }

    const Subject& s_;
    const SchemeAnswer& part_;
};

/// Of the whole place, once.
Expectations at_intake(const Subject& s) {
    const site::Intake& intake = s.job.intake;
    const auto ohms = [](const site::Fact<Ohms>& fact) {
        return fact.known ? figure(fact.high.number(), "Ω") : std::string("not stated");
    };
    const auto most = [](const site::Fact<Ohms>& fact) {
        return fact.known ? std::optional<double>(fact.high.number()) : std::nullopt;
    };
    const bool declared = intake.ze.known && intake.ze.standing == site::Standing::declared;
    if (intake.earthing == site::Earthing::tt) {
        return {{"house's electrode, earthing conductor off",
                 intake.electrode.known ? "survey: " + ohms(intake.electrode) : "not measured yet",
                 "what the RCDs allow; over " +
                     figure(s.catalogue.limits.electrode_stable.value.number(), "Ω") +
                     " it may not last",
                 "Ω", most(intake.electrode)}};
    }
    const auto& operators = declared && !intake.ze_declared.known ? intake.ze : intake.ze_declared;
    const bool read = intake.ze.known && !declared;
    return {{"origin, earthing conductor off",
             read ? "survey: " + ohms(intake.ze) : "not measured yet",
             "operator: " + ohms(operators), "Ω", read ? most(intake.ze) : std::nullopt,
             most(operators)}};
}

}  // namespace

Expectations expected_of(const Subject& s, const tables::TestStep& step) {
    Expectations all = step.key == "ze" ? at_intake(s) : Expectations{};
    for (const SchemeAnswer* part : runs_of(s)) {
        for (Expected& one : OneRun(s, *part).of(step.key)) all.push_back(std::move(one));
    }
    return all;
}

std::string instrument_of(const tables::TestStep& step) {
    static constexpr std::pair<std::string_view, const char*> instruments[] = {
        {"continuity", "low-resistance ohmmeter"},
        {"bonding", "low-resistance ohmmeter"},
        {"apart", "low-resistance ohmmeter"},
        {"ring", "low-resistance ohmmeter"},
        {"insulation", "insulation tester"},
        {"electrode", "earth electrode tester"},
        {"ze", "loop tester"},
        {"zs", "loop tester"},
        {"fault-current", "loop tester"},
        {"residual", "RCD tester"},
        {"sequence", "phase rotation indicator"}};
    for (const auto& [key, instrument] : instruments) {
        if (step.key == key) return instrument;
    }
    return "";
}

}  // namespace toft::paper
