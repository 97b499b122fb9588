#include "worked/worked.h"

#include "loss/energy.h"
#include "search/evaluate.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::worked {

namespace {

template <class L>
std::vector<price::Item> remedies_of(const std::vector<rules::Finding<L>>& findings,
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

study::Setting<Silent> silently(const Subject& s) {
    Silent silent;
    return study::prepare(silent, s.catalogue, s.job, s.at, study::Corner{});
}

Subject with_phases_of(Subject subject, const study::RunScheme& scheme) {
    subject.at.phases = scheme.phases;
    return subject;
}

}  // namespace

template <class L>
Worked<L>::Worked(Subject subject, const study::Setting<Silent>& setting,
                  const study::RunScheme& scheme)
    : subject_(with_phases_of(std::move(subject), scheme)), setting_(setting), scheme_(scheme) {
    work_out();
}

template <class L>
Worked<L>::Worked(Subject subject, const study::RunScheme& scheme)
    : subject_(with_phases_of(std::move(subject), scheme)),
      own_(silently(subject_)),
      setting_(*own_),
      scheme_(scheme) {
    work_out();
}

template <class L>
void Worked<L>::work_out() {
    if constexpr (L::records) {
        recorded_ =
            study::prepare(ledger_, subject_.catalogue, subject_.job, subject_.at, study::Corner{});
    }
    study::work_out(ledger_, setting(), scheme_, study::Stage::heat, figures_);
    study::work_out(ledger_, setting(), scheme_, study::Stage::circuits, figures_);
    findings_.reserve(rules::rule_count);
    for (const rules::RuleAt<L>& rule : rules::rulebook_at<L>()) {
        findings_.push_back(rule.judge(ledger_, rules::Case<L>{setting(), scheme_, figures_}));
    }
    figures_of_run();
    figures_of_faults();
    figures_of_demand();
    figures_of_touch();
    figures_of_circuits();
    figures_of_pairs();
    figures_of_loops();
    figures_of_loss();
    extras_ = {remedies_of(findings_, subject_.bought_before), price::wired(figures_)};
    figures_of_price();
}

template <class L>
template <class T>
void Worked<L>::figure(std::string name, const char* title, const T& value, double scale,
                       const char* unit) {
    Figure<L> out{std::move(name), title, number_of(plain(value)) * scale, unit, {}};
    if constexpr (L::records) out.expression = value.expression;
    named_.push_back(std::move(out));
}

template <class L>
void Worked<L>::figures_of_run() {
    const auto& f = figures_;
    figure("length_m", "length of the run", setting().length_most, 1, "m");
    figure("design_current_a", "design current Ib", setting().ib, 1, "A");
    figure("rating_a", "rating of the cable Iz", f.iz, 1, "A");
    figure("voltage_drop_percent", "voltage drop of the run", f.drop_percent, 1, "%");
    figure("voltage_drop_total_percent", "voltage drop from the origin to the building's board",
           f.drop_path, 1, "%");
    figure("loop_impedance_far_ohm", "earth fault loop Zs at the far end, hot", f.zs_far, 1, "Ω");
    figure("fault_current_near_ka", "largest fault current at the near end", setting().supply.pscc,
           1e-3, "kA");
    figure("fault_current_far_ka", "largest fault current at the far end",
           setting().phases == 3 ? f.lll_far : f.ln_far, 1e-3, "kA");
    figure("earth_fault_current_far_a", "smallest earth fault current at the far end", f.le_least,
           1, "A");
}

template <class L>
void Worked<L>::figures_of_faults() {
    const auto& f = figures_;
    const auto range = [&](const char* name, const char* title, const auto& smallest,
                              const auto& largest) {
        const std::string base = std::string("fault_currents_a.") + name;
        this->figure(base + ".smallest", title, smallest, 1, "A");
        this->figure(base + ".largest", title, largest, 1, "A");
    };
    range("near.line_neutral", "line-neutral fault, near end", f.ln_near_least, f.ln_near);
    range("near.line_earth", "earth fault, near end", f.le_near_least, f.le_near);
    range("far.line_neutral", "line-neutral fault, far end", f.ln_least, f.ln_far);
    range("far.line_earth", "earth fault, far end", f.le_least, f.le_far);
    if (setting().phases == 3) {
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

template <class L>
void Worked<L>::figures_of_demand() {
    const auto& s = setting();
    const auto of_building = [&](site::Scenario scenario, const char* name, const char* title) {
        const demand::Place<L> place{&s.catalogue->demand, s.supply.u0, s.phases,
                                     site::word(scenario).c_str()};
        const auto load = demand::building_demand(ledger_, place, *s.building_facts, scenario);
        figure(name, title, load.total, 1, "A");
        if (scenario != study::wanted_scenario(*s.job)) return;
        figure("demand.neutral_a", "current of the neutral", load.neutral, 1, "A");
    };
    of_building(site::Scenario::today, "demand.today_a", "demand of the building today");
    of_building(site::Scenario::likely, "demand.likely_a", "demand of the building, likely");
    of_building(site::Scenario::everything, "demand.everything_a",
                "demand of the building, everything at once");
    const auto& house = s.house;
    const auto limit =
        demand::least_limit(ledger_, house.limits, scheme_.fed_from == site::FedFrom::spare_way);
    figure("intake.carries_a", "what the intake carries", limit, 1, "A");
    for (const demand::Way way : demand::all_ways) {
        if (!house.demand.is_known(way)) continue;
        const std::string word = demand::way_word(way);
        figure("intake.house." + word + "_a", "largest demand of the house", house.demand.at(way),
               1, "A");
        figure("intake.left." + word + "_a", "left of the intake before the run",
               demand::left_by(ledger_, limit, house.demand, way), 1, "A");
    }
}

template <class L>
void Worked<L>::figures_of_touch() {
    touch_ = study::touch_figures(ledger_, setting(), scheme_, figures_);
    figure("touch.outbuilding_v", "touch voltage at the outbuilding while a fault is cleared",
           touch_.outbuilding, 1, "V");
    figure("touch.house_v", "rise of the house's earth while a fault is cleared", touch_.house, 1,
           "V");
    figure("touch.lasts_s", "time that fault may last", touch_.lasts, 1, "s");
    figure("touch.longest_dry_s", "longest such touch in dry conditions", touch_.dry.time, 1, "s");
    figure("touch.longest_wet_s", "longest such touch in wet conditions", touch_.wet.time, 1, "s");
}

/// "circuits.2.drop": the matters of each circuit, by its number in the job's list.
template <class L>
void Worked<L>::figures_of_circuits() {
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
            figure(base + word, "share of the limit that the circuit uses", judged.use, 1,
                   "of the limit");
        }
        figure(base + "r1_plus_r2_20c_ohm", "line and protective conductor of the circuit at 20 °C",
               design.conductors.r1_r2_cold, 1, "Ω");
    }
}

template <class L>
void Worked<L>::figures_of_pairs() {
    pairs_.push_back(study::cut_out_pair(ledger_, setting(), scheme_));
    far_ = study::far_devices(setting(), figures_);
    for (const study::FarDevice& far : far_) {
        pairs_.push_back(study::far_pair(ledger_, setting(), scheme_, figures_, far));
    }
    for (std::size_t i = 0; i < pairs_.size(); ++i) {
        const char* title = i == 0 ? "selective up to, operator's fuse over the head of the run"
                                   : "selective up to, head of the run over a circuit's device";
        figure("selectivity." + std::to_string(i + 1) + "_a", title, pairs_[i].result.to, 1, "A");
    }
}

template <class L>
void Worked<L>::figures_of_loops() {
    const tables::Limits& limits = subject_.catalogue.limits;
    const bool island = setting().supply.system == site::Earthing::tt;
    const auto limit = study::largest_loop_for(
        ledger_, setting(), scheme_,
        island ? limits.disconnection_tt.value : limits.disconnection_tn.value);
    figure("loop_impedance_limit_ohm", "largest loop for the overcurrent device", limit, 1, "Ω");
    const auto factor =
        ledger_.table({"test", "share of the limit a cold reading may reach"}, limits.test_factor);
    figure("loop_impedance_test_limit_ohm", "largest loop a cold reading may show",
           ledger_.let({"Zs.test", "largest loop a cold reading may show", 0, "", "Appendix 3"},
                       limit * factor),
           1, "Ω");
}

template <class L>
void Worked<L>::figures_of_loss() {
    const loss::Year<L> year = loss::year_of(ledger_, setting());
    const loss::Lost<L> lost = loss::lost_by(ledger_, setting(), figures_, year);
    figure("energy.used_kwh_year", "energy through the run in a year", year.used_kwh, 1, "kWh");
    figure("energy.lost_kw", "lost as heat at the design current", lost.full_kw, 1, "kW");
    figure("energy.lost_kwh_year", "energy lost in a year", lost.kwh_year, 1, "kWh");
    figure("energy.cost_over_years", "energy lost over the years counted",
           loss::cost_over_years(ledger_, book(), lost.kwh_year), 1, "£");
}

template <class L>
void Worked<L>::figures_of_price() {
    const price::Price<L> p = price::price_of(ledger_, book(), setting_, scheme_, extras_);
    figure("price.house_end", "house end", p.house_end, 1, "£");
    figure("price.run", "cable and its ends", p.run, 1, "£");
    figure("price.ground", "ground and fixings", p.ground, 1, "£");
    figure("price.far_end", "far end", p.far_end, 1, "£");
    figure("price.test_and_paper", "test and paper", p.test_and_paper, 1, "£");
    figure("price.put_right_first", "put right at the house first", p.remedies, 1, "£");
    figure("price.net", "price without tax", p.net, 1, "£");
    figure("price", "price with tax", p.total, 1, "£");
}

template <class L>
double Worked<L>::value_of(std::string_view name) const {
    return std::find_if(named_.begin(), named_.end(),
                        [&](const Figure<L>& f) { return f.name == name; })
        ->value;
}

template class Worked<Silent>;
template class Worked<Recording>;

}  // namespace toft::worked
