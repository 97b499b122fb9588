#pragma once
// The list of all rules. Private to rules: whoever names it takes in every rule at that depth.

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
#include "rules/rulebook.h"
#include "rules/selectivity.h"
#include "rules/separation.h"
#include "rules/suitability.h"
#include "rules/voltage_drop.h"

namespace toft::rules {

template <class L>
constexpr std::array<RuleAt<L>, rule_count> all_rules{{
    {&earthing_choice_rule, earthing_choice<L>},
    {&separation_rule, separation<L>},
    {&electrode_rule, electrode<L>},
    {&suitability_rule, suitability<L>},
    {&existing_cable_rule, existing_cable<L>},
    {&existing_loop_rule, existing_loop<L>},
    {&found_wrong_rule, found_wrong<L>},
    {&bonding_size_rule, bonding_size<L>},
    {&house_earthing_rule, house_earthing<L>},
    {&voltage_drop_rule, voltage_drop<L>},
    {&circuit_rating_rule, circuit_rating<L>},
    {&circuit_breaking_rule, circuit_breaking<L>},
    {&circuit_drop_rule, circuit_drop<L>},
    {&circuit_disconnection_rule, circuit_disconnection<L>},
    {&circuit_heat_rule, circuit_heat<L>},
    {&motor_start_rule, motor_start<L>},
    {&voltage_rise_rule, voltage_rise<L>},
    {&feed_point_rule, feed_point<L>},
    {&intake_capacity_rule, intake_capacity<L>},
    {&breaking_capacity_rule, breaking_capacity<L>},
    {&residual_current_rule, residual_current<L>},
    {&overload_rule, overload<L>},
    {&hidden_cable_rule, hidden_cable<L>},
    {&current_rating_rule, current_rating<L>},
    {&disconnection_rule, disconnection<L>},
    {&fault_heat_rule, fault_heat<L>},
    {&selectivity_rule, selectivity<L>},
}};

}  // namespace toft::rules
