#pragma once
// What was taken for granted of a building's demand, in sentences.

#include "demand/scenario.h"

#include <string>
#include <vector>

namespace toft::demand {

/// "today: …", "likely: …": how a load made of circuits is reckoned.
std::string scenario_words(site::Scenario scenario);

/// Which allowances were made and which circuits count whole, which circuits have the usual rating
/// of their kind, which power factors and charging loads nobody stated. Empty for a building whose
/// load is one figure, but for its power factor.
std::vector<std::string> demand_sentences(const tables::Demand& tables,
                                          const site::Building& building, site::Scenario scenario);

}  // namespace toft::demand
