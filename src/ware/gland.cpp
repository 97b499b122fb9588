#include "ware/gland.h"

#include "base/limit.h"
#include "base/text.h"
#include "ware/cable_of.h"

#include <fmt/format.h>

namespace toft::ware {

namespace {

bool takes(const tables::GlandRow& gland, Metres overall, Metres under, double spread) {
    const double most = overall.number() * (1 + spread);
    const double least = overall.number() * (1 - spread);
    return within(most, gland.over_to.number()) && within(gland.over_from.number(), least) &&
           within(under.number() * (1 + spread), gland.under_most.number());
}

std::string range_words(const tables::GlandRow& gland) {
    return fmt::format("a {} gland takes {} to {}", gland.size,
                       significant(gland.over_from.number() * 1000, 3), mm_words(gland.over_to));
}

}  // namespace

GlandChoice gland_for(const tables::Catalogue& catalogue, const tables::Cable& cable,
                      tables::GlandPlace place) {
    GlandChoice choice;
    choice.type = &catalogue.ware.gland_types[static_cast<std::size_t>(place)];
    const Metres overall = cable.overall.value;
    if (!(overall > metres(0))) {
        choice.why = "diameter not in the tables: choose by the cable in hand";
        return choice;
    }
    const tables::BuildRow* build = build_of(catalogue, cable);
    const Metres under = build ? build->under_armour : metres(0);
    for (const tables::GlandRow& gland : catalogue.ware.glands) {
        if (!takes(gland, overall, under, catalogue.ware.diameter_spread.value)) continue;
        choice.row = &gland;
        choice.why = fmt::format("{} over the sheath: {}", mm_words(overall), range_words(gland));
        choice.why += build ? fmt::format("; {} under the armour, it takes up to {}",
                                          mm_words(under), mm_words(gland.under_most))
                            : "; the diameter under the armour is not in the tables";
        return choice;
    }
    choice.why =
        fmt::format("no size is sure to take {} over the sheath: choose by the cable in hand",
                    mm_words(overall));
    return choice;
}

}  // namespace toft::ware
