#include "answer/recorded.h"

#include "loss/energy.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::answer {

namespace {

using rules::Verdict;

std::vector<price::Item> remedies_of(const std::vector<rules::Finding<Recording>>& findings,
                                     const std::vector<price::Item>& bought_before) {
    std::vector<price::Item> items;
    for (const auto& finding : findings) search::add_remedy(finding, items);
    items.erase(std::remove_if(items.begin(), items.end(),
                               [&](price::Item item) {
                                   return std::find(bought_before.begin(), bought_before.end(),
                                                    item) != bought_before.end();
                               }),
                items.end());
    return items;
}

}  // namespace

Recorded::Recorded(const Question& q, const study::RunScheme& scheme) {
    setting_ =
        study::prepare(ledger_, q.catalogue, q.job, run_at(q, scheme.phases), study::Corner{});
    study::work_out(ledger_, setting_, scheme, study::Stage::heat, figures_);
    study::work_out(ledger_, setting_, scheme, study::Stage::circuits, figures_);
    for (const rules::Rule& rule : rules::rulebook()) {
        findings_.push_back(
            rule.record(ledger_, rules::Case<Recording>{setting_, scheme, figures_}));
    }
    figures_of_run();
    figures_of_demand(scheme);
    figures_of_touch(scheme);
    figures_of_circuits();
    figures_of_pairs(scheme);
    const auto limit = study::largest_loop_for(ledger_, setting_, scheme,
                                               setting_.supply.system == site::Earthing::tt
                                                   ? q.catalogue.limits.disconnection_tt.value
                                                   : q.catalogue.limits.disconnection_tn.value);
    figure("loop_impedance_limit_ohm", "largest loop for the overcurrent device", limit, 1, "Ω");
    const auto factor = ledger_.table({"test", "share of the limit a cold reading may reach"},
                                      q.catalogue.limits.test_factor);
    figure("loop_impedance_test_limit_ohm", "largest loop a cold reading may show",
           ledger_.let({"Zs.test", "largest loop a cold reading may show", 0, "", "Appendix 3"},
                       limit * factor),
           1, "Ω");
    figures_of_loss(q.book);
    price(q, scheme);
}

void Recorded::price(const Question& q, const study::RunScheme& scheme) {
    Silent silent;
    const auto setting =
        study::prepare(silent, q.catalogue, q.job, run_at(q, scheme.phases), study::Corner{});
    const price::Extras extras{remedies_of(findings_, q.bought_before), price::wired(figures_)};
    figures_of_price(price::price_of(ledger_, q.book, setting, scheme, extras));
    bill_ = price::bill_of(q.book, setting, scheme, extras);
    price_low_ = price::price_of(silent, price::at_low(q.book), setting, scheme, extras);
    price_high_ = price::price_of(silent, price::at_high(q.book), setting, scheme, extras);
}

template <class T>
void Recorded::figure(const char* name, const char* title, const Traced<T>& traced, double scale,
                      const char* unit) {
    named_.push_back({name, title, number_of(traced.value) * scale, unit, traced.expression});
}

void Recorded::figures_of_run() {
    const auto& f = figures_;
    const bool three = setting_.phases == 3;
    figure("length_m", "length of the run", setting_.length_most, 1, "m");
    figure("design_current_a", "design current Ib", setting_.ib, 1, "A");
    figure("rating_a", "rating of the cable Iz", f.iz, 1, "A");
    figure("voltage_drop_percent", "voltage drop of the run", f.drop_percent, 1, "%");
    figure("voltage_drop_total_percent", "voltage drop from the origin to the building's board",
           f.drop_path, 1, "%");
    figure("loop_impedance_far_ohm", "earth fault loop Zs at the far end, hot", f.zs_far, 1, "Ω");
    figure("fault_current_near_ka", "largest fault current at the near end", setting_.supply.pscc,
           1e-3, "kA");
    figure("fault_current_far_ka", "largest fault current at the far end",
           three ? f.lll_far : f.ln_far, 1e-3, "kA");
    figure("earth_fault_current_far_a", "smallest earth fault current at the far end", f.le_least,
           1, "A");
    const auto range = [this](const char* name, const char* title, const auto& smallest,
                              const auto& largest) {
        const std::string base = std::string("fault_currents_a.") + name;
        figure((base + ".smallest").c_str(), title, smallest, 1, "A");
        figure((base + ".largest").c_str(), title, largest, 1, "A");
    };
    range("near.line_neutral", "line-neutral fault, near end", f.ln_near_least, f.ln_near);
    range("near.line_earth", "earth fault, near end", f.le_near_least, f.le_near);
    range("far.line_neutral", "line-neutral fault, far end", f.ln_least, f.ln_far);
    range("far.line_earth", "earth fault, far end", f.le_least, f.le_far);
    if (three) {
        range("near.line_line", "line-line fault, near end", f.ll_near_least, f.ll_near);
        range("far.line_line", "line-line fault, far end", f.ll_least, f.ll_far);
        figure("fault_currents_a.near.three_lines.largest", "three lines together, near end",
               f.lll_near, 1, "A");
        figure("fault_currents_a.far.three_lines.largest", "three lines together, far end",
               f.lll_far, 1, "A");
    }
    figure("disconnection_s", "time the overcurrent device may take", f.disconnection, 1, "s");
    figure("r1_plus_r2_20c_ohm", "line and protective path at 20 °C", f.r1_r2_cold, 1, "Ω");
}

void Recorded::figures_of_demand(const study::RunScheme& scheme) {
    const auto of_building = [&](site::Scenario scenario, const char* name, const char* title) {
        const demand::Place<Recording> place{&setting_.catalogue->demand, setting_.supply.u0,
                                             setting_.phases, site::word(scenario).c_str()};
        const auto load =
            demand::building_demand(ledger_, place, *setting_.building_facts, scenario);
        figure(name, title, load.total, 1, "A");
        if (scenario != study::wanted_scenario(*setting_.job)) return;
        figure("demand.neutral_a", "current of the neutral", load.neutral, 1, "A");
    };
    of_building(site::Scenario::today, "demand.today_a", "demand of the building today");
    of_building(site::Scenario::likely, "demand.likely_a", "demand of the building, likely");
    of_building(site::Scenario::everything, "demand.everything_a",
                "demand of the building, everything at once");
    const auto& house = setting_.house;
    const auto limit =
        demand::least_limit(ledger_, house.limits, scheme.fed_from == site::FedFrom::spare_way);
    figure("intake.carries_a", "what the intake carries", limit, 1, "A");
    for (const demand::Way way : demand::all_ways) {
        if (!house.demand.is_known(way)) continue;
        const std::string word = demand::way_word(way);
        figure(("intake.house." + word + "_a").c_str(), "largest demand of the house",
               house.demand.at(way), 1, "A");
        figure(("intake.left." + word + "_a").c_str(), "left of the intake before the run",
               demand::left_by(ledger_, limit, house.demand, way), 1, "A");
    }
}

void Recorded::figures_of_touch(const study::RunScheme& scheme) {
    touch_ = study::touch_figures(ledger_, setting_, scheme, figures_);
    figure("touch.outbuilding_v", "touch voltage at the outbuilding while a fault is cleared",
           touch_.outbuilding, 1, "V");
    figure("touch.house_v", "rise of the house's earth while a fault is cleared", touch_.house, 1,
           "V");
    figure("touch.lasts_s", "time that fault may last", touch_.lasts, 1, "s");
    figure("touch.longest_dry_s", "longest such touch in dry conditions", touch_.dry.time, 1, "s");
    figure("touch.longest_wet_s", "longest such touch in wet conditions", touch_.wet.time, 1, "s");
}

/// "circuits.2.drop": the matters of each circuit, by its number in the job's list.
void Recorded::figures_of_circuits() {
    static constexpr std::pair<circuit::Matter, const char*> shown[] = {
        {circuit::Matter::carries, "load"},  {circuit::Matter::rating, "rating"},
        {circuit::Matter::drop, "drop"},     {circuit::Matter::disconnect, "loop"},
        {circuit::Matter::heat, "heat"},     {circuit::Matter::start_trip, "start"},
        {circuit::Matter::start_dip, "dip"}, {circuit::Matter::rise, "rise"}};
    for (const auto& design : figures_.circuits) {
        const std::string base = fmt::format("circuits.{}.", design.place + 1);
        for (const auto& [matter, word] : shown) {
            const auto& judged = design.at(matter);
            if (!judged.applies) continue;
            figure((base + word).c_str(), "share of the limit that the circuit uses", judged.use, 1,
                   "of the limit");
        }
        figure((base + "r1_plus_r2_20c_ohm").c_str(),
               "line and protective conductor of the circuit at 20 °C",
               design.conductors.r1_r2_cold, 1, "Ω");
    }
}

void Recorded::figures_of_pairs(const study::RunScheme& scheme) {
    pairs_.push_back(study::cut_out_pair(ledger_, setting_, scheme));
    far_ = study::far_devices(setting_, figures_);
    for (std::size_t i = 0; i < far_.size(); ++i) {
        pairs_.push_back(study::far_pair(ledger_, setting_, scheme, figures_, far_[i]));
    }
    for (std::size_t i = 0; i < pairs_.size(); ++i) {
        const std::string name = "selectivity." + std::to_string(i + 1) + "_a";
        const char* title = i == 0 ? "selective up to, operator's fuse over the head of the run"
                                   : "selective up to, head of the run over a circuit's device";
        figure(name.c_str(), title, pairs_[i].result.to, 1, "A");
    }
}

void Recorded::figures_of_loss(const price::Book& book) {
    const loss::Year<Recording> year = loss::year_of(ledger_, setting_);
    const loss::Lost<Recording> lost = loss::lost_by(ledger_, setting_, figures_, year);
    figure("energy.used_kwh_year", "energy through the run in a year", year.used_kwh, 1, "kWh");
    figure("energy.lost_kw", "lost as heat at the design current", lost.full_kw, 1, "kW");
    figure("energy.lost_kwh_year", "energy lost in a year", lost.kwh_year, 1, "kWh");
    figure("energy.cost_over_years", "energy lost over the years counted",
           loss::cost_over_years(ledger_, book, lost.kwh_year), 1, "£");
}

void Recorded::figures_of_price(const price::Price<Recording>& p) {
    figure("price.house_end", "house end", p.house_end, 1, "£");
    figure("price.run", "cable and its ends", p.run, 1, "£");
    figure("price.ground", "ground and fixings", p.ground, 1, "£");
    figure("price.far_end", "far end", p.far_end, 1, "£");
    figure("price.test_and_paper", "test and paper", p.test_and_paper, 1, "£");
    figure("price.put_right_first", "put right at the house first", p.remedies, 1, "£");
    figure("price.net", "price without tax", p.net, 1, "£");
    figure("price", "price with tax", p.total, 1, "£");
}

std::vector<Line> Recorded::lines_of(const rules::Finding<Recording>& finding) const {
    return ledger_.working(finding.use.expression);
}

std::vector<std::string> Recorded::names() const {
    std::vector<std::string> names;
    for (const auto& finding : findings_) {
        if (finding.limited) names.push_back(finding.rule->name);
    }
    for (const Figure& figure : named_) names.push_back(figure.name);
    return names;
}

std::optional<Working> Recorded::working(const std::string& asked) const {
    // What the run provides as bonding is a line of the rule that asks for it.
    const std::string name = asked == "bond_equivalent_mm2" ? "bonding-size" : asked;
    for (const auto& finding : findings_) {
        if (name != finding.rule->name || !finding.limited) continue;
        return Working{name, finding.rule->title, finding.use.value, "of the limit",
                       lines_of(finding)};
    }
    for (const Figure& figure : named_) {
        if (name != figure.name) continue;
        return Working{name, figure.title, figure.value, figure.unit,
                       ledger_.working(figure.expression)};
    }
    return std::nullopt;
}

std::vector<const Citation*> Recorded::citations() const {
    std::vector<const Citation*> all;
    for (const Line& line : ledger_.lines()) {
        if (line.citation && std::find(all.begin(), all.end(), line.citation) == all.end()) {
            all.push_back(line.citation);
        }
    }
    return all;
}

}  // namespace toft::answer
