#include "rules/rulebook.h"

#include "existing/existing_cable.h"
#include "existing/existing_loop.h"
#include "existing/found_wrong.h"
#include "finals/circuits.h"
#include "rules/bonding_size.h"
#include "rules/breaking_capacity.h"
#include "rules/current_rating.h"
#include "rules/disconnection.h"
#include "rules/earthing_choice.h"
#include "rules/electrode.h"
#include "rules/fault_heat.h"
#include "rules/feed_point.h"
#include "rules/hidden_cable.h"
#include "rules/house_earthing.h"
#include "rules/intake_capacity.h"
#include "rules/overload.h"
#include "rules/residual_current.h"
#include "rules/selectivity.h"
#include "rules/separation.h"
#include "rules/suitability.h"
#include "rules/voltage_drop.h"

namespace toft::rules {

const std::array<Rule, rule_count>& rulebook() {
    static const std::array<Rule, rule_count> rules{{
        {&earthing_choice_rule, earthing_choice<Silent>, earthing_choice<Recording>},
        {&separation_rule, separation<Silent>, separation<Recording>},
        {&electrode_rule, electrode<Silent>, electrode<Recording>},
        {&suitability_rule, suitability<Silent>, suitability<Recording>},
        {&existing_cable_rule, existing_cable<Silent>, existing_cable<Recording>},
        {&existing_loop_rule, existing_loop<Silent>, existing_loop<Recording>},
        {&found_wrong_rule, found_wrong<Silent>, found_wrong<Recording>},
        {&bonding_size_rule, bonding_size<Silent>, bonding_size<Recording>},
        {&house_earthing_rule, house_earthing<Silent>, house_earthing<Recording>},
        {&voltage_drop_rule, voltage_drop<Silent>, voltage_drop<Recording>},
        {&circuit_rating_rule, circuit_rating<Silent>, circuit_rating<Recording>},
        {&circuit_breaking_rule, circuit_breaking<Silent>, circuit_breaking<Recording>},
        {&circuit_drop_rule, circuit_drop<Silent>, circuit_drop<Recording>},
        {&circuit_disconnection_rule, circuit_disconnection<Silent>,
         circuit_disconnection<Recording>},
        {&circuit_heat_rule, circuit_heat<Silent>, circuit_heat<Recording>},
        {&motor_start_rule, motor_start<Silent>, motor_start<Recording>},
        {&voltage_rise_rule, voltage_rise<Silent>, voltage_rise<Recording>},
        {&feed_point_rule, feed_point<Silent>, feed_point<Recording>},
        {&intake_capacity_rule, intake_capacity<Silent>, intake_capacity<Recording>},
        {&breaking_capacity_rule, breaking_capacity<Silent>, breaking_capacity<Recording>},
        {&residual_current_rule, residual_current<Silent>, residual_current<Recording>},
        {&overload_rule, overload<Silent>, overload<Recording>},
        {&hidden_cable_rule, hidden_cable<Silent>, hidden_cable<Recording>},
        {&current_rating_rule, current_rating<Silent>, current_rating<Recording>},
        {&disconnection_rule, disconnection<Silent>, disconnection<Recording>},
        {&fault_heat_rule, fault_heat<Silent>, fault_heat<Recording>},
        {&selectivity_rule, selectivity<Silent>, selectivity<Recording>},
    }};
    return rules;
}

const Rule* find_rule(const std::string& name) {
    for (const Rule& rule : rulebook()) {
        if (name == rule.info->name) return &rule;
    }
    return nullptr;
}

const char* edition() {
    return "BS 7671:2018 up to Amendment 3:2024. Amendment 4:2026 governs since 15 October 2026; "
           "its "
           "tables were not seen.";
}

}  // namespace toft::rules
