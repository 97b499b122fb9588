#include "walk/apart.h"
#include "walk/later.h"
#include "walk/metalwork.h"
#include "walk/step.h"
#include "walk/supply.h"
#include "walk/use.h"

namespace toft::walk {

const std::array<Question, 16>& questions() {
    static const std::array<Question, 16> all{{
        {"supply", "What earth does the supply offer?", "", supply_system, supply_found,
         supply_changes},
        {"stays-separate", "Does the separate earth stay separate all the way?", "", stays_separate,
         supply_found, separate_changes},
        {"movable", "Is it, or does it feed, a caravan or a boat?", "earthing-choice", movable,
         movable_found, movable_changes},
        {"pool", "Is there a pool or a tub?", "earthing-choice", pool_or_tub, pool_found,
         pool_changes},
        {"animals", "Are animals kept there?", "earthing-choice", animals, animals_found,
         animals_changes},
        {"wet-ground", "Do people stand there on wet ground or barefoot?", "earthing-choice",
         wet_ground, wet_ground_found, wet_ground_changes},
        {"charging", "Is a vehicle charged in the open?", "earthing-choice", charging,
         charging_found, charging_changes},
        {"brings-in", "Does any metal bring in a potential from outside?", "", brings_in,
         brings_in_found, brings_in_changes},
        {"metal-building", "Is the building itself of metal and in touch with the ground?",
         "earthing-choice", metal_building, metal_building_found, metal_building_changes},
        {"bonds", "What bond does that ask of the run?", "bonding-size", bonds, bonds_found,
         bonds_changes},
        {"house-bonds", "Is what the house would extend good enough?", "house-earthing",
         house_bonds, house_bonds_found, house_bonds_changes},
        {"reach", "Is anything on the house's earth, or a neighbour's, within arm's reach?",
         "separation", within_reach, within_reach_found, within_reach_changes},
        {"ground", "Does the ground give an electrode low enough to last?", "electrode", ground,
         ground_found, ground_changes},
        {"house-electrode", "Is the house's electrode low enough to last?", "electrode",
         house_electrode, house_electrode_found, house_electrode_changes},
        {"added-electrode", "What would an electrode joined to the supply's earth do?", "",
         added_electrode, added_electrode_found, added_electrode_changes},
        {"later", "What may come later?", "", later, later_found, later_changes},
    }};
    return all;
}

}  // namespace toft::walk
