#include "record/parts.h"

#include "base/text.h"
#include "finding/rule.h"
#include "parts/device_words.h"

#include <fmt/format.h>

namespace toft::paper {

using answer::CircuitAnswer;
using answer::RunAnswer;
using answer::SchemeAnswer;
using page::Heading;
using page::Row;
using page::Side;
using page::Table;
using page::Words;

namespace {

class Rows {
public:
    void add(const char* name, std::string value) {
        table_.rows.push_back({{name, std::move(value)}});
    }
    void group(std::string name) { table_.rows.push_back({{std::move(name)}, true}); }
    Table done() { return std::move(table_); }

private:
    Table table_{{{"", 4}, {"", 7}}, {}};
};

void add_cable(Rows& rows, const RunAnswer& run) {
    for (const answer::StretchAnswer& stretch : run.stretches) {
        const std::string legs =
            run.stretches.size() == 1
                ? ""
                : fmt::format(" (legs {} to {})", stretch.first_leg, stretch.last_leg);
        rows.add("cable", cable_words(stretch) + legs);
    }
    rows.add("protective conductor", run.protective_conductor);
    if (run.armoured) {
        rows.add("armour",
                 fmt::format("earthed at the near end: {}; at the far end: {}",
                             run.armour_near ? "yes" : "no", run.armour_far ? "yes" : "no"));
    }
    rows.add("fed from", run.fed_from + (run.feeder.empty() ? "" : " of " + run.feeder));
    rows.add("device at its head",
             parts::device_words(run.device, run.phases) +
                 (run.device.curve.empty() ? "" : ", " + run.device.standard));
    rows.add("it breaks", figure(run.device.breaking_capacity_ka, "kA", 4));
    if (run.rcd) rows.add("residual current device at its head", parts::rcd_words(*run.rcd));
}

void add_figures(Rows& rows, const SchemeAnswer& part) {
    const answer::FigureAnswers& f = part.run.figures;
    rows.add("length", figure(f.length_m, "m", 4));
    rows.add("design current Ib", figure(f.design_current_a, "A", 4));
    rows.add("rating of the cable Iz",
             fmt::format("{}, leg {} decides", figure(f.rating_a, "A", 4), f.governing_leg));
    rows.add("voltage drop of the run", figure(f.voltage_drop_percent, "%", 4));
    rows.add("voltage drop from the origin", figure(f.voltage_drop_total_percent, "%", 4));
    rows.add("loop Zs at the far end, hot", figure(f.loop_impedance_far_ohm, "Ω", 4));
    if (f.disconnection_s) {
        rows.add("largest Zs for its device", figure(f.loop_impedance_limit_ohm, "Ω", 4));
        rows.add("largest a cold test may read", figure(f.loop_impedance_test_limit_ohm, "Ω", 4));
    }
    rows.add("R1+R2 at 20 °C", figure(f.r1_plus_r2_20c_ohm, "Ω", 4));
    rows.add(
        "largest fault current, near and far",
        figure(f.fault_current_near_ka, "kA", 4) + "; " + figure(f.fault_current_far_ka, "kA", 4));
    rows.add("smallest earth fault current, far", figure(f.earth_fault_current_far_a, "A", 4));
    rows.add("its device clears an earth fault in",
             f.disconnection_s ? figure(*f.disconnection_s, "s", 4)
                               : std::string("not by itself: the residual current device must"));
    rows.add("touch voltage meanwhile",
             fmt::format("{} against {}", figure(f.touch.outbuilding_v, "V", 4), f.touch.against));
    rows.add("energy lost in a year", figure(part.over_years.lost_kwh_year, "kWh", 3));
}

void add_building(Rows& rows, const answer::BuildingAnswer& b) {
    rows.add("earth of the building", b.earthing);
    for (const answer::BondAnswer& bond : b.bonding) {
        rows.add("bonding",
                 fmt::format("{}: {} mm² copper, {} mm² asked for", part_name(bond),
                             significant(bond.size_mm2, 4), significant(bond.required_mm2, 4)));
    }
    if (b.electrode) {
        rows.add("electrode",
                 fmt::format("at most {} ({})", figure(b.electrode->largest_ohm, "Ω", 4),
                             b.electrode->measured ? "measured" : "predicted from the soil"));
    }
    rows.add("main switch", b.main_switch);
    for (const answer::RcdAnswer& rcd : b.rcds) {
        std::string covers;
        for (const std::string& one : rcd.covers) covers += (covers.empty() ? "" : ", ") + one;
        rows.add("residual current device",
                 parts::rcd_words(rcd) + (covers.empty() ? "" : ": " + covers));
    }
}

std::string of_limit(const std::optional<answer::CircuitMatter>& matter) {
    if (!matter) return "–";
    return significant(matter->value, 3) + " / " + significant(matter->limit, 3);
}

Table circuits_of(const answer::BuildingAnswer& b) {
    Table table{{{"", 1},
                 {"Circuit", 5},
                 {"Device", 5},
                 {"Cable mm²", 2.6},
                 {"m", 1.6, Side::right},
                 {"Ib A", 1.8, Side::right},
                 {"Iz A", 1.8, Side::right},
                 {"drop / limit %", 3, Side::right},
                 {"Zs / limit Ω", 3.2, Side::right},
                 {"R1+R2 Ω", 2.4, Side::right}},
                {},
                false,
                true};
    for (const CircuitAnswer& c : b.circuits) {
        table.rows.push_back(
            {{std::to_string(c.number), c.name,
              fmt::format("{} {}{} A, {} mA type {}", c.device.kind, c.device.curve,
                          significant(c.device.rating_a, 4), significant(c.rcd_ma, 3), c.rcd_type),
              significant(c.live_mm2, 3) + "/" + significant(c.cpc_mm2, 3),
              significant(c.length_m, 4), significant(c.design_current_a, 4),
              significant(c.rating_a, 4), of_limit(c.drop_percent), of_limit(c.loop_ohm),
              significant(c.r1_plus_r2_20c_ohm, 4)}});
    }
    return table;
}

}  // namespace

Blocks record_of_scheme(const Subject& s) {
    Blocks blocks{Heading{"What is to be built"}};
    for (const SchemeAnswer* part : runs_of(s)) {
        Rows rows;
        rows.group(fmt::format("Run {} to {}", part->run.id, part->building.name));
        add_cable(rows, part->run);
        add_figures(rows, *part);
        add_building(rows, part->building);
        blocks.push_back(rows.done());
        if (part->building.circuits.empty()) continue;
        blocks.push_back(Heading{"Circuits of " + part->building.name});
        blocks.push_back(circuits_of(part->building));
    }
    return blocks;
}

namespace {

std::string measured_words(const std::optional<double>& value, const std::string& unit) {
    if (!value) return "";
    return significant(*value, 4) + (unit.empty() ? "" : " " + unit);
}

Row rule_row(const answer::FindingAnswer& finding) {
    std::string basis;
    for (const std::string& word : finding.basis) basis += (basis.empty() ? "" : ", ") + word;
    const std::string limit = measured_words(finding.limit, finding.unit);
    return {{finding.rule + (finding.subject.empty() ? "" : ", " + finding.subject), finding.clause,
             measured_words(finding.value, finding.unit),
             limit.empty() ? finding.says : (finding.at_least ? "at least " : "at most ") + limit,
             finding.use ? fixed(100 * *finding.use, 0) + " %" : "",
             rules::verdict_word(finding.verdict), basis}};
}

Table rules_of(const SchemeAnswer& part) {
    Table table{{{"Rule", 4.6},
                 {"Clause", 3.4},
                 {"Value", 2.6, Side::right},
                 {"Limit, or what was found", 5},
                 {"Use", 1.6, Side::right},
                 {"Verdict", 2.2},
                 {"Basis", 3}},
                {},
                false,
                true};
    for (const answer::FindingAnswer& finding : part.findings) {
        table.rows.push_back(rule_row(finding));
    }
    return table;
}

Table pairs_of(const SchemeAnswer& part) {
    Table table{{{"Nearer the supply", 4}, {"Beyond it", 4}, {"Selective", 2}, {"Why", 6}},
                {},
                false,
                true};
    for (const answer::SelectivityAnswer& pair : part.selectivity) {
        table.rows.push_back({{pair.upstream, pair.downstream, pair.verdict, pair.says}});
    }
    return table;
}

}  // namespace

Blocks record_of_rules(const Subject& s) {
    Blocks blocks;
    for (const SchemeAnswer* part : runs_of(s)) {
        blocks.push_back(Heading{"Every rule, for run " + part->run.id});
        blocks.push_back(rules_of(*part));
        if (part->selectivity.empty()) continue;
        blocks.push_back(Heading{"Which device opens, along run " + part->run.id});
        blocks.push_back(pairs_of(*part));
    }
    return blocks;
}

}  // namespace toft::paper
