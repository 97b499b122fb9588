#include "ware/fixing.h"

#include "base/limit.h"
#include "base/text.h"
#include "ware/cable_of.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::ware {

namespace {

bool armoured(const tables::Catalogue& catalogue, const tables::Cable& cable) {
    return tables::make_of(catalogue, cable).armoured;
}

}  // namespace

Metres spacing_of(const tables::Catalogue& catalogue, const tables::Cable& cable) {
    const Metres overall = cable.overall.value;
    Metres closest;
    for (const tables::SupportRow& row : catalogue.ware.supports) {
        if (row.armoured != armoured(catalogue, cable)) continue;
        if (row.over < overall && overall <= row.to) return row.level;
        if (closest == metres(0) || row.level < closest) closest = row.level;
    }
    return closest;
}

int fixings_on(Metres length, Metres spacing) {
    if (!(length > metres(0)) || !(spacing > metres(0))) return 0;
    return static_cast<int>(std::ceil(length / spacing * (1 - limit_tolerance))) + 1;
}

double bend_times(const tables::Catalogue& catalogue, const tables::Cable& cable) {
    for (const tables::BendRow& row : catalogue.ware.bends) {
        const bool fits = row.armoured == armoured(catalogue, cable);
        if (fits && row.over < cable.section && cable.section <= row.to) return row.times;
    }
    return 0;
}

std::string bend_words(const tables::Catalogue& catalogue, const tables::Cable& cable) {
    const double times = bend_times(catalogue, cable);
    if (!(times > 0)) return "not in the tables: ask the maker";
    const Metres overall = cable.overall.value;
    if (!(overall > metres(0))) return significant(times, 2) + " × its diameter";
    return fmt::format("{} ({} × {})", mm_words(overall * times), significant(times, 2),
                       mm_words(overall));
}

}  // namespace toft::ware
