#include "tables/sheet.h"

#include <fmt/format.h>

#include <map>

namespace toft::tables {

namespace {

using LimitMap = std::map<std::string, Cited<double>>;

LimitMap read_limits(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    Sheet sheet(files, "rules/limit.csv", catalogue.citations, faults);
    LimitMap limits;
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        limits[sheet.word(i, "key")] = sheet.figure(i, "value");
    }
    return limits;
}

class LimitPicker {
public:
    LimitPicker(const LimitMap& map, Faults& faults) : map_(map), faults_(faults) {}

    template <class Quantity>
    void pick(Cited<Quantity>& into, const char* key, double scale = 1) {
        const auto found = map_.find(key);
        if (found == map_.end()) {
            faults_.push_back(
                {"data", "rules/limit.csv", fmt::format("there is no limit {}", key), "", {}});
            return;
        }
        into = {Quantity(found->second.value * scale), found->second.citation};
    }

private:
    const LimitMap& map_;
    Faults& faults_;
};

void fill_limits(Limits& l, LimitPicker pick) {
    constexpr double kilo = 1000;
    constexpr double milli = 1e-3;
    pick.pick(l.u0, "u0");
    pick.pick(l.c_min, "c.min");
    pick.pick(l.c_max, "c.max");
    pick.pick(l.disconnection_tn, "disconnection.tn.run");
    pick.pick(l.disconnection_tt, "disconnection.tt.run");
    pick.pick(l.drop_run, "drop.run");
    pick.pick(l.drop_lighting, "drop.lighting");
    pick.pick(l.drop_other, "drop.other");
    pick.pick(l.touch_voltage, "touch.voltage");
    pick.pick(l.electrode_stable, "electrode.stable");
    pick.pick(l.residual_socket, "residual.socket", milli);
    pick.pick(l.residual_ratio, "residual.ratio");
    pick.pick(l.socket_most, "socket.most");
    pick.pick(l.residual_leakage, "residual.leakage");
    pick.pick(l.surge_reach, "surge.reach");
    pick.pick(l.charging_low, "charging.low");
    pick.pick(l.charging_high, "charging.high");
    pick.pick(l.overload_i2, "overload.i2");
    pick.pick(l.buried_cc, "buried.cc");
    pick.pick(l.test_factor, "test.factor");
    pick.pick(l.loss_share, "loss.share");
    pick.pick(l.reach, "reach");
    pick.pick(l.extraneous, "extraneous", kilo);
    pick.pick(l.declared_ze_tncs, "declared.ze.tn-c-s");
    pick.pick(l.declared_ze_tns, "declared.ze.tn-s");
    pick.pick(l.declared_tt_source, "declared.tt.source");
    pick.pick(l.declared_pscc, "declared.pscc", kilo);
    pick.pick(l.assembly_conditional, "assembly.conditional", kilo);
    pick.pick(l.assembly_fuse, "assembly.fuse");
    pick.pick(l.bond_half, "bond.half");
    pick.pick(l.bond_min, "bond.min");
    pick.pick(l.bond_max, "bond.max");
    pick.pick(l.separate_min_protected, "separate.min.protected");
    pick.pick(l.separate_min, "separate.min");
    pick.pick(l.separate_buried, "separate.buried");
    pick.pick(l.fault_longest, "fault.longest");
    pick.pick(l.rod_length, "rod.length");
    pick.pick(l.rod_diameter, "rod.diameter", milli);
    pick.pick(l.rod_section, "rod.section");
    pick.pick(l.rod_deepest, "rod.deepest");
    pick.pick(l.rod_most, "rod.most");
    pick.pick(l.parallel_least, "parallel.least");
    pick.pick(l.insulation_least, "insulation.least", kilo * kilo);
    pick.pick(l.ring_equal, "ring.equal");
    pick.pick(l.insulation_look, "insulation.look", kilo * kilo);
    pick.pick(l.reading_most, "reading.most");
    pick.pick(l.unequal_most, "unequal.most");
    pick.pick(l.line_share, "line.share");
    pick.pick(l.tails_longest, "tails.longest");
    pick.pick(l.bond_run, "bond.run");
    pick.pick(l.bond_least, "bond.least");
    pick.pick(l.body_current, "body.current", milli);
    pick.pick(l.body_resistance, "body.resistance", kilo);
    pick.pick(l.insert_length, "insert.length");
}

void fill_circuit_limits(Limits& l, LimitPicker pick) {
    pick.pick(l.ring_cable, "ring.cable");
    pick.pick(l.ring_section, "ring.section");
    pick.pick(l.ring_point, "ring.point");
    pick.pick(l.disconnection_final, "disconnection.final");
    pick.pick(l.final_sockets, "disconnection.final.sockets");
    pick.pick(l.final_others, "disconnection.final.others");
    pick.pick(l.start_dip, "start.dip");
    pick.pick(l.start_moment, "start.moment");
    pick.pick(l.source_rise, "source.rise");
    pick.pick(l.notice_demand, "notice.demand");
    pick.pick(l.notice_generation, "notice.generation");
    pick.pick(l.notice_days, "notice.days");
}

/// Facts that are read at the worse end of their range wherever nobody states them.
constexpr const char* always_ranged[] = {"air_temperature", "ground_temperature",
                                         "thermal_resistivity", "depth", "house.demand"};

void read_rule_tables(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet separate(files, "cable/separate.csv", c.citations, faults);
    for (std::size_t i = 0; i < separate.rows(); ++i) {
        const auto section = square_millimetres(separate.number(i, "section_mm2"));
        if (const Conductor* conductor = find_conductor(c, section)) {
            c.separates.push_back(*conductor);
        } else {
            separate.fault(i, "no resistance is tabulated for that section");
        }
    }
    Sheet bonding(files, "rules/main_bonding.csv", c.citations, faults);
    for (std::size_t i = 0; i < bonding.rows(); ++i) {
        c.main_bonding.push_back(
            {square_millimetres(bonding.number(i, "neutral_over_mm2")),
             square_millimetres(bonding.number(i, "neutral_to_mm2")),
             bonding.cited(i, square_millimetres(bonding.number(i, "bond_mm2")))});
    }
    Sheet usual(files, "rules/circuit_kind.csv", c.citations, faults);
    for (std::size_t i = 0; i < usual.rows(); ++i) {
        const auto least = usual.cited(i, square_millimetres(usual.number(i, "least_mm2")));
        c.circuit_kinds.push_back({usual.word(i, "kind"), amperes(usual.number(i, "least_a")),
                                   least.value, usual.number(i, "start"), least.citation});
    }
    Sheet depth(files, "rules/depth_advice.csv", c.citations, faults);
    for (std::size_t i = 0; i < depth.rows(); ++i) {
        c.depth_advice.push_back(
            {depth.word(i, "surface"), depth.cited(i, metres(depth.number(i, "depth_m")))});
    }
    Sheet height(files, "rules/overhead_height.csv", c.citations, faults);
    for (std::size_t i = 0; i < height.rows(); ++i) {
        c.height_advice.push_back(
            {height.word(i, "surface"), height.cited(i, metres(height.number(i, "height_m")))});
    }
    Sheet trust(files, "rules/dependability.csv", c.citations, faults);
    for (std::size_t i = 0; i < trust.rows(); ++i) {
        c.dependability.push_back(
            {trust.word(i, "earthing"), trust.word(i, "protective"), trust.figure(i, "ordinal")});
    }
    Sheet open(files, "rules/unknown.csv", c.citations, faults);
    for (std::size_t i = 0; i < open.rows(); ++i) {
        c.open_ranges.push_back({open.word(i, "fact"), open.figure(i, "low"),
                                 open.figure(i, "high"), open.word(i, "unit")});
    }
    for (const char* fact : always_ranged) {
        if (find_open_range(c, fact)) continue;
        faults.push_back(
            {"data", "rules/unknown.csv", fmt::format("there is no range for {}", fact), "", {}});
    }
}

constexpr Authority authorities[] = {Authority::law, Authority::standard,
                                     Authority::operators_condition, Authority::guidance,
                                     Authority::habit};

void read_earthing_basis(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet basis(files, "rules/earthing_basis.csv", c.citations, faults);
    for (std::size_t i = 0; i < basis.rows(); ++i) {
        c.earthing_basis.push_back(
            {basis.word(i, "key"), authority_in(basis, i), basis.word(i, "clause"), basis.cite(i)});
    }
}

}  // namespace

Authority authority_in(Sheet& sheet, std::size_t row) {
    const std::string kind = sheet.word(row, "kind");
    for (const Authority a : authorities) {
        if (kind == authority_word(a)) return a;
    }
    sheet.fault(row, "no such kind of authority: " + kind);
    return Authority::habit;
}

const char* authority_word(Authority authority) {
    switch (authority) {
        case Authority::law:
            return "law";
        case Authority::standard:
            return "standard";
        case Authority::operators_condition:
            return "operator's condition";
        case Authority::guidance:
            return "guidance";
        case Authority::habit:
            return "habit";
    }
    return "";
}

void read_rulebook(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    const LimitMap limits = read_limits(files, catalogue, faults);
    fill_limits(catalogue.limits, LimitPicker(limits, faults));
    fill_circuit_limits(catalogue.limits, LimitPicker(limits, faults));
    read_rule_tables(files, catalogue, faults);
    read_earthing_basis(files, catalogue, faults);
}

}  // namespace toft::tables
