#pragma once
// The parts of the advice, each adding what comes up. Private to special.

#include "special/advice.h"

namespace toft::special {

void surge(const Case& c, std::vector<Advice>& all);
void arc_faults(const Case& c, std::vector<Advice>& all);
void vehicle_charging(const Case& c, std::vector<Advice>& all);
void animals(const Case& c, std::vector<Advice>& all);
void pool_or_tub(const Case& c, std::vector<Advice>& all);
void sauna(const Case& c, std::vector<Advice>& all);
void movable(const Case& c, std::vector<Advice>& all);
void container(const Case& c, std::vector<Advice>& all);
void feeding_back(const Case& c, std::vector<Advice>& all);
void kept_supply(const Case& c, std::vector<Advice>& all);
void also_carried(const Case& c, std::vector<Advice>& all);

inline const tables::Footing* footing(const Case& c, const char* key) {
    return tables::find_footing(c.view.tables(), key);
}

}  // namespace toft::special
