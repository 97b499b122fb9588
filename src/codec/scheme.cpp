#include "codec/scheme.h"

#include "codec/guard_tree.h"
#include "codec/object.h"

#include <fmt/format.h>

#include <cmath>
#include <cstdlib>

namespace toft::codec {

namespace {

using namespace answer;

Json optional_number(const std::optional<double>& x) { return x ? finite(*x) : Json(); }
Json word_or_null(const std::string& word) { return word.empty() ? Json() : Json(word); }

Json years_json(const YearsAnswer& y) {
    Json json;
    json["years"] = rounded(y.years);
    json["energy_lost_kwh_a_year"] = rounded(y.lost_kwh_year);
    json["energy_lost"] = rounded(y.lost);
    json["total"] = rounded(y.total);
    json["least"] = y.least;
    return json;
}

Json price_json(const PriceAnswer& p) {
    return object(
        {{"net", rounded(p.net)},
         {"vat", rounded(p.vat)},
         {"total", rounded(p.total)},
         {"low", object({{"net", rounded(p.net_low)}, {"total", rounded(p.total_low)}})},
         {"high", object({{"net", rounded(p.net_high)}, {"total", rounded(p.total_high)}})},
         {"currency", p.currency},
         {"basis", p.basis},
         {"parts", object({{"house_end", rounded(p.house_end)},
                           {"run", rounded(p.run)},
                           {"ground", rounded(p.ground)},
                           {"far_end", rounded(p.far_end)},
                           {"test_and_paper", rounded(p.test_and_paper)},
                           {"put_right_first", rounded(p.put_right_first)}})}});
}

Json rcd_json(const RcdAnswer& r) {
    return object({{"covers", r.covers},
                   {"sensitivity_ma", rounded(r.sensitivity_ma)},
                   {"type", r.type},
                   {"instead", word_or_null(r.instead)},
                   {"delayed", r.delayed}});
}

Json device_json(const DeviceAnswer& d) {
    return object({{"standard", d.standard},
                   {"curve", word_or_null(d.curve)},
                   {"kind", d.kind},
                   {"rating_a", rounded(d.rating_a)},
                   {"breaking_capacity_ka", rounded(d.breaking_capacity_ka)}});
}

Json matter_json(const std::optional<CircuitMatter>& m) {
    if (!m) return {};
    return object(
        {{"value", finite(m->value)}, {"limit", finite(m->limit)}, {"use", finite(m->use)}});
}

Json circuit_json(const CircuitAnswer& c) {
    return object({{"number", c.number},
                   {"name", c.name},
                   {"kind", c.kind},
                   {"phases", c.phases},
                   {"cable", object({{"family", c.family},
                                     {"live_mm2", rounded(c.live_mm2)},
                                     {"cpc_mm2", rounded(c.cpc_mm2)},
                                     {"length_m", rounded(c.length_m)}})},
                   {"device", device_json(c.device)},
                   {"rcd", object({{"sensitivity_ma", rounded(c.rcd_ma)}, {"type", c.rcd_type}})},
                   {"design_current_a", rounded(c.design_current_a)},
                   {"rating_a", rounded(c.rating_a)},
                   {"drop_own_percent", rounded(c.drop_own_percent)},
                   {"r1_plus_r2_20c_ohm", rounded(c.r1_plus_r2_20c_ohm)},
                   {"drop_percent", matter_json(c.drop_percent)},
                   {"loop_ohm", matter_json(c.loop_ohm)},
                   {"loop_test_limit_ohm",
                    c.loop_test_limit_ohm ? Json(rounded(*c.loop_test_limit_ohm)) : Json()},
                   {"heat", matter_json(c.heat)},
                   {"starting_dip_percent", matter_json(c.dip_percent)},
                   {"starting_current_a", matter_json(c.start_a)},
                   {"voltage_rise_percent", matter_json(c.rise_percent)},
                   {"residual_clears", c.residual_clears}});
}

Json building_json(const BuildingAnswer& b) {
    Json bonding = Json::array();
    for (const BondAnswer& bond : b.bonding) {
        bonding.push_back(object({{"part", bond.part},
                                  {"required_mm2", rounded(bond.required_mm2)},
                                  {"size_mm2", rounded(bond.size_mm2)},
                                  {"material", "copper"}}));
    }
    Json electrode;
    if (b.electrode) {
        electrode = object({{"rods", b.electrode->rods},
                            {"length_m", rounded(b.electrode->length_m)},
                            {"largest_ohm", rounded(b.electrode->largest_ohm)},
                            {"measured", b.electrode->measured}});
    }
    Json rcds = Json::array();
    for (const RcdAnswer& rcd : b.rcds) rcds.push_back(rcd_json(rcd));
    Json circuits = Json::array();
    for (const CircuitAnswer& circuit : b.circuits) circuits.push_back(circuit_json(circuit));
    return object({{"earthing", b.earthing},
                   {"bonding", bonding},
                   {"electrode", electrode},
                   {"board", object({{"main_switch", b.main_switch}, {"rcds", rcds}})},
                   {"circuits", circuits}});
}

Json range_json(const FaultRange& r) {
    return object({{"smallest", rounded(r.smallest)}, {"largest", rounded(r.largest)}});
}

Json fault_currents_json(const FigureAnswers& f) {
    Json near = object({{"line_neutral", range_json(f.near_line_neutral_a)},
                        {"line_earth", range_json(f.near_line_earth_a)}});
    Json far = object({{"line_neutral", range_json(f.far_line_neutral_a)},
                       {"line_earth", range_json(f.far_line_earth_a)}});
    if (f.near_line_line_a) {
        near["line_line"] = range_json(*f.near_line_line_a);
        far["line_line"] = range_json(*f.far_line_line_a);
        near["three_lines_largest"] = optional_number(f.near_three_lines_a);
        far["three_lines_largest"] = optional_number(f.far_three_lines_a);
    }
    return object({{"near", near}, {"far", far}});
}

Json figures_json(const FigureAnswers& f) {
    Json factors = Json::array();
    for (const FactorsAnswer& x : f.factors) {
        factors.push_back(object({{"ca", rounded(x.ca)},
                                  {"cg", rounded(x.cg)},
                                  {"ci", rounded(x.ci)},
                                  {"cs", rounded(x.cs)},
                                  {"cd", rounded(x.cd)},
                                  {"cc", rounded(x.cc)}}));
    }
    Json longest = Json::object();
    for (const auto& [rule, length] : f.longest_m) longest[rule] = rounded(length);
    return object({{"length_m", rounded(f.length_m)},
                   {"design_current_a", rounded(f.design_current_a)},
                   {"neutral_share", rounded(f.neutral_share)},
                   {"rating_a", rounded(f.rating_a)},
                   {"governing_leg", f.governing_leg},
                   {"factors", factors},
                   {"voltage_drop_percent", rounded(f.voltage_drop_percent)},
                   {"voltage_drop_total_percent", rounded(f.voltage_drop_total_percent)},
                   {"loop_impedance_far_ohm", rounded(f.loop_impedance_far_ohm)},
                   {"loop_impedance_limit_ohm", rounded(f.loop_impedance_limit_ohm)},
                   {"loop_impedance_test_limit_ohm", rounded(f.loop_impedance_test_limit_ohm)},
                   {"fault_current_near_ka", rounded(f.fault_current_near_ka)},
                   {"fault_current_far_ka", rounded(f.fault_current_far_ka)},
                   {"earth_fault_current_far_a", rounded(f.earth_fault_current_far_a)},
                   {"fault_currents_a", fault_currents_json(f)},
                   {"disconnection_s", optional_number(f.disconnection_s)},
                   {"r1_plus_r2_20c_ohm", rounded(f.r1_plus_r2_20c_ohm)},
                   {"touch", object({{"against", f.touch.against},
                                     {"outbuilding_v", rounded(f.touch.outbuilding_v)},
                                     {"house_v", rounded(f.touch.house_v)},
                                     {"lasts_s", optional_number(f.touch.lasts_s)},
                                     {"longest_dry_s", optional_number(f.touch.longest_dry_s)},
                                     {"longest_wet_s", optional_number(f.touch.longest_wet_s)},
                                     {"past_curve", f.touch.past_curve}})},
                   {"longest_m", longest}});
}

Json cores_json(const CableAnswer& c) {
    Json cores = Json::array();
    for (const CoreAnswer& core : c.core_list) {
        cores.push_back(object(
            {{"colour", core.colour}, {"sleeve", word_or_null(core.sleeve)}, {"use", core.use}}));
    }
    return cores;
}

/// What a run and each stretch of it say of their cable.
Json cable_json(const CableAnswer& c) {
    return object({{"cable", object({{"family", c.family},
                                     {"standard", c.standard},
                                     {"cores", c.cores},
                                     {"live_mm2", rounded(c.live_mm2)},
                                     {"cpc_mm2", optional_number(c.cpc_mm2)},
                                     {"overall_mm", rounded(c.overall_mm)},
                                     {"side_by_side", c.parallel}})},
                   {"cores", cores_json(c)},
                   {"protective_conductor", c.protective_conductor},
                   {"armour_earthed_at",
                    c.armoured ? object({{"near", c.armour_near}, {"far", c.armour_far}}) : Json()},
                   {"separate_conductor_mm2", optional_number(c.separate_mm2)}});
}

Json stretch_json(const StretchAnswer& s) {
    Json json = cable_json(s);
    json["legs"] = {s.first_leg, s.last_leg};
    json["length_m"] = rounded(s.length_m);
    return json;
}

Json run_json(const RunAnswer& r) {
    Json stretches = Json::array();
    for (const StretchAnswer& s : r.stretches) stretches.push_back(stretch_json(s));
    Json json = cable_json(r);
    if (!r.laid.empty())
        json["existing"] = object({{"cable", r.laid}, {"device_stays", r.device_stays}});
    json["phases"] = r.phases;
    json["line"] = r.line > 0 ? Json("L" + std::to_string(r.line)) : Json();
    json["stretches"] = stretches;
    json["bond_equivalent_mm2"] = optional_number(r.bond_equivalent_mm2);
    json["fed_from"] = r.fed_from;
    json["feeder"] = word_or_null(r.feeder);
    json["device"] = device_json(r.device);
    json["rcd"] = r.rcd ? rcd_json(*r.rcd) : Json();
    json["figures"] = figures_json(r.figures);
    return json;
}

Json finding_json(const FindingAnswer& f) {
    return object({{"rule", f.rule},
                   {"clause", f.clause},
                   {"subject", f.subject},
                   {"value", optional_number(f.value)},
                   {"limit", optional_number(f.limit)},
                   {"unit", f.unit},
                   {"at_least", f.at_least},
                   {"use", optional_number(f.use)},
                   {"verdict", rules::verdict_word(f.verdict)},
                   {"says", f.says},
                   {"basis", f.basis}});
}

Json selectivity_json(const answer::SelectivityAnswer& p) {
    return object({{"upstream", p.upstream},
                   {"downstream", p.downstream},
                   {"protects", p.protects},
                   {"verdict", p.verdict},
                   {"to_a", finite(p.to_a)},
                   {"prospective_a", finite(p.prospective_a)},
                   {"gap_from_a", optional_number(p.gap_from_a)},
                   {"gap_to_a", optional_number(p.gap_to_a)},
                   {"says", p.says}});
}

}  // namespace

double rounded(double x) {
    if (!std::isfinite(x) || x == 0) return x;
    // Nine digits and a power of ten up to the 22nd are both exact, so one operation rounds them as
    // strtod does.
    constexpr double powers[] = {1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                 1e8,  1e9,  1e10, 1e11, 1e12, 1e13, 1e14, 1e15,
                                 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};
    const std::string text = fmt::format("{:.8e}", std::fabs(x));  // d.dddddddde±dd
    const std::size_t exponent = text.find('e');
    const int power = std::atoi(text.c_str() + exponent + 1) - 8;
    double digits = text[0] - '0';
    for (std::size_t i = 2; i < exponent; ++i) digits = digits * 10 + (text[i] - '0');
    if (power < -22 || power > 22) return std::copysign(std::strtod(text.c_str(), nullptr), x);
    const double size = power < 0 ? digits / powers[-power] : digits * powers[power];
    return std::copysign(size, x);
}

Json finite(double x) { return std::isfinite(x) ? Json(rounded(x)) : Json(); }

namespace {

/// What one run brings to the document of its scheme.
void add_part(const SchemeAnswer& part, bool of_tree, Json& json) {
    json["buildings"][part.building.id] = building_json(part.building);
    Json& run = json["runs"][part.run.id] = run_json(part.run);
    for (const FindingAnswer& f : part.findings) json["findings"].push_back(finding_json(f));
    for (const auto& pair : part.selectivity) {
        json["selectivity"].push_back(selectivity_json(pair));
    }
    if (!of_tree) return;
    run["price_total"] = rounded(part.run_total);
    run["key"] = study::scheme_key(part.scheme);
    json["buildings"][part.building.id]["residual"] = residual_json(part.guard);
}

}  // namespace

Json brief_json(const SchemeAnswer& s) {
    const PriceAnswer& p = s.price;
    Json json = object({{"rank", s.rank},
                        {"key", s.key},
                        {"words", s.words},
                        {"sentence", s.sentence},
                        {"conditional_on", s.conditional_on},
                        {"price", object({{"net", rounded(p.net)},
                                          {"vat", rounded(p.vat)},
                                          {"total", rounded(p.total)},
                                          {"low", rounded(p.total_low)},
                                          {"high", rounded(p.total_high)},
                                          {"currency", p.currency},
                                          {"basis", p.basis}})},
                        {"headroom", finite(s.headroom)},
                        {"governed_by", s.governed_by},
                        {"dependability", s.dependability},
                        {"earthing", s.building.earthing}});
    if (!s.feeds.empty()) json["feeds"] = s.feeds;
    return json;
}

Json scheme_json(const SchemeAnswer& s) {
    Json tell = Json::array();
    for (const TellAnswer& t : s.tell) {
        tell.push_back(object({{"who", t.who}, {"when", t.when}, {"why", t.why}}));
    }
    Json json;
    json["rank"] = s.rank;
    json["key"] = s.key;
    json["sentence"] = s.sentence;
    json["words"] = s.words;
    json["conditional_on"] = s.conditional_on;
    json["price"] = price_json(s.price);
    json["over_years"] = years_json(s.over_years);
    json["headroom"] = finite(s.headroom);
    json["governed_by"] = s.governed_by;
    json["dependability"] = s.dependability;
    json["buildings"] = Json::object();
    json["runs"] = Json::object();
    json["findings"] = Json::array();
    json["selectivity"] = Json::array();
    const bool of_tree = !s.further.empty();
    add_part(s, of_tree, json);
    for (const SchemeAnswer& part : s.further) add_part(part, of_tree, json);
    if (!s.feeds.empty()) {
        json["feeds"] = s.feeds;
        json["not_built"] = s.not_built;
    }
    for (const TrenchAnswer& t : s.trenches) {
        json["trenches"].push_back(object(
            {{"name", t.name}, {"dug_for", t.dug_for}, {"beside", t.beside}, {"says", t.says}}));
    }
    json["house_work"] = s.house_work;
    json["tell"] = tell;
    json["needs_a_person"] = s.needs_a_person;
    json["cautions"] = s.cautions;
    json["residual"] = residual_json(s.guard);
    json["dark"] = dark_json(s.guard);
    return json;
}

}  // namespace toft::codec
