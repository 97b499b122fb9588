#include "base/text.h"
#include "paper/papers.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::paper {

namespace {

using answer::CircuitAnswer;
using answer::SchemeAnswer;
using page::Heading;

/// What is tested where, what to expect, how far it may go.
struct Expected {
    std::string where;
    std::string expect;
    std::string limit;
};

using Expectations = std::vector<Expected>;

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

    /// What conductor readings are held against.
    std::string look_into() const {
        return "within " + significant(s_.catalogue.limits.reading_most.value, 3) + " times that";
    }

    /// Of several buildings the same name may stand in each.
    std::string of_circuit(const CircuitAnswer& c) const {
        return s_.answer.schemes[s_.scheme].further.empty() ? c.name : c.name + ", " + name();
    }

    Expectations continuity() const {
        Expectations all{{part_.run.id + (own_electrode(part_) ? ", line and armour at 20 °C"
                                                               : ", R1+R2 at 20 °C"),
                          figure(part_.run.figures.r1_plus_r2_20c_ohm, "Ω"), look_into()}};
        for (const CircuitAnswer& c : part_.building.circuits) {
            all.push_back({of_circuit(c) + ", R1+R2 at 20 °C", figure(c.r1_plus_r2_20c_ohm, "Ω"),
                           look_into()});
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
            all.push_back({of_circuit(c) + ", r1, rn, r2", "r1 and rn alike",
                           "within " + figure(s_.catalogue.limits.ring_equal.value.number(), "Ω")});
        }
        return all;
    }

    Expectations insulation() const {
        const std::string least =
            "at least " + figure(s_.catalogue.limits.insulation_least.value.number() / 1e6, "MΩ");
        const std::string usual =
            "over " + figure(s_.catalogue.limits.insulation_look.value.number() / 1e6, "MΩ") +
            ", else look";
        Expectations all{{part_.run.id, usual, least}};
        for (const CircuitAnswer& c : part_.building.circuits) {
            all.push_back({of_circuit(c), usual, least});
        }
        return all;
    }

    Expectations electrode() const {
        if (!part_.building.electrode) return {};
        std::string limit = "as the rule electrode asks";
        double allowed = part_.building.electrode->largest_ohm;
        for (const answer::FindingAnswer& finding : part_.findings) {
            if (finding.rule != "electrode" || !finding.limit) continue;
            limit = "at most " + figure(*finding.limit, finding.unit.c_str(), 4) +
                    ", in the driest season";
            allowed = *finding.limit;
        }
        const double most = part_.building.electrode->largest_ohm;
        const std::string stable =
            "over " + figure(s_.catalogue.limits.electrode_stable.value.number(), "Ω") +
            " it may not last";
        return {{"electrode of " + name(),
                 allowed < most ? "not known" : "at most " + figure(most, "Ω", 4), limit},
                {"", stable, "more or deeper rods"}};
    }

    Expectations loops() const {
        const answer::FigureAnswers& f = part_.run.figures;
        const bool clears = f.disconnection_s.has_value();
        const std::string cold = "cold at most " + figure(f.loop_impedance_test_limit_ohm, "Ω");
        Expectations all;
        if (own_electrode(part_)) {
            all.push_back({"end of " + part_.run.id + ", line to its armour",
                           "at most " + figure(f.loop_impedance_far_ohm, "Ω"),
                           clears ? cold : "the RCD must clear it"});
            all.push_back({"Zs at the board of " + name(), "the electrode and more",
                           "the RCD must clear it"});
        } else {
            all.push_back({"Zs at the board of " + name(),
                           "at most " + figure(f.loop_impedance_far_ohm, "Ω"),
                           clears ? cold : "the RCD must clear it"});
        }
        for (const CircuitAnswer& c : part_.building.circuits) {
            if (!c.loop_ohm) continue;
            all.push_back({"Zs of " + of_circuit(c), "at most " + figure(c.loop_ohm->value, "Ω"),
                           c.loop_test_limit_ohm
                               ? "cold at most " + figure(*c.loop_test_limit_ohm, "Ω")
                               : "hot at most " + figure(c.loop_ohm->limit, "Ω")});
        }
        return all;
    }

    Expectations fault_currents() const {
        const answer::FigureAnswers& f = part_.run.figures;
        const auto breaks = part_.run.device.breaking_capacity_ka;
        return {{"where " + part_.run.id + " begins",
                 "at most " + figure(f.fault_current_near_ka, "kA"),
                 "device breaks " + figure(breaks, "kA")},
                {"board of " + name(), "at most " + figure(f.fault_current_far_ka, "kA"),
                 breaks_there()}};
    }

    std::string breaks_there() const {
        double least = 0;
        for (const CircuitAnswer& c : part_.building.circuits) {
            const double breaks = c.device.breaking_capacity_ka;
            least = least > 0 ? std::fmin(least, breaks) : breaks;
        }
        return least > 0 ? "devices there break " + figure(least, "kA")
                         : std::string("what its devices break");
    }

    Expected device(const std::string& where, const answer::RcdAnswer& rcd) const {
        const tables::RcdTimes& times =
            rcd.delayed ? s_.catalogue.rcd_delayed : s_.catalogue.rcd_general;
        const auto ms = [](Seconds t) { return significant(1000 * t.number(), 3); };
        std::string limit = "at most " + ms(times.longest_1.value) + " ms";
        if (times.shortest_1 > seconds(0)) limit += ", not before " + ms(times.shortest_1) + " ms";
        return {fmt::format("{}: {} mA type {}{}", where, significant(rcd.sensitivity_ma, 3),
                            rcd.type, rcd.delayed ? ", delayed" : ""),
                "opens at its rated current", limit};
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
    const bool declared = intake.ze.known && intake.ze.standing == site::Standing::declared;
    if (intake.earthing == site::Earthing::tt) {
        return {{"house's electrode, earthing conductor off",
                 intake.electrode.known ? "survey: " + ohms(intake.electrode) : "not measured yet",
                 "what the RCDs allow; over " +
                     figure(s.catalogue.limits.electrode_stable.value.number(), "Ω") +
                     " it may not last"}};
    }
    return {{"origin, earthing conductor off",
             intake.ze.known && !declared ? "survey: " + ohms(intake.ze) : "not measured yet",
             "operator: " +
                 ohms(declared && !intake.ze_declared.known ? intake.ze : intake.ze_declared)}};
}

Expectations of_step(const Subject& s, const tables::TestStep& step) {
    Expectations all = step.key == "ze" ? at_intake(s) : Expectations{};
    for (const SchemeAnswer* part : runs_of(s)) {
        for (Expected& one : OneRun(s, *part).of(step.key)) all.push_back(std::move(one));
    }
    return all;
}

/// The steps made dead, or those made live, in one table; `number` counts on.
page::Table table_of(const Subject& s, bool dead, int& number) {
    page::Table table{{{"Where", 4.4}, {"Expect", 3}, {"Limit", 3}, {"Reading", 2}}, {}, true};
    for (const tables::TestStep& step : s.catalogue.tests) {
        if (step.dead != dead) continue;
        const Expectations all = of_step(s, step);
        if (all.empty()) continue;
        table.rows.push_back(
            {{fmt::format("{}. {} ({})", ++number, step.what, step.clause)}, true});
        table.rows.push_back({{step.how + "."}});
        for (const Expected& one : all) {
            table.rows.push_back({{one.where, one.expect, one.limit, ""}});
        }
    }
    return table;
}

}  // namespace

page::Paper test_sheet(const Subject& s) {
    page::Paper paper = blank(s, "Test sheet");
    paper.blocks.push_back(Heading{"Tests of " + s.answer.job, page::Level::chapter});
    paper.blocks.push_back(page::Words{s.answer.schemes[s.scheme].sentence});
    paper.blocks.push_back(page::Caution{
        "If a test fails, put it right and repeat it with every earlier one it may have touched. "
        "Live tests are for a competent person with probes and leads that are fit for it. What is "
        "expected here was calculated; the reading decides."});
    int number = 0;
    paper.blocks.push_back(Heading{"Dead: everything isolated and proved dead"});
    paper.blocks.push_back(table_of(s, true, number));
    paper.blocks.push_back(Heading{"Live"});
    paper.blocks.push_back(table_of(s, false, number));
    paper.blocks.push_back(Heading{"Who tested, with what"});
    for (const char* name : {"Instruments and their numbers", "Weather and state of the ground",
                             "Remarks", "Tested by", "Date and signature"}) {
        paper.blocks.push_back(page::Field{name});
    }
    return paper;
}

}  // namespace toft::paper
