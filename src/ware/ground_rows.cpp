#include "ware/ground_rows.h"

#include "base/pi.h"
#include "trench/duct.h"
#include "ware/cable_of.h"
#include "ware/fixing.h"

#include <fmt/format.h>

namespace toft::ware {

Draft duct_row(Draft plain, const tables::Catalogue& catalogue, const std::vector<Metres>& cables) {
    plain.bought = Bought::coupled;
    plain.row.what = "duct for cable, twin-wall, smooth inside";
    plain.row.size = "by the cable in hand";
    const trench::DuctChoice choice = trench::duct_for(catalogue, cables);
    plain.row.note = choice.why;
    if (choice.row) {
        plain.row.size =
            fmt::format("{}, bore {}", mm_words(choice.row->outside), mm_words(choice.row->bore));
    }
    return plain;
}

Draft cord_row(Draft plain) {
    plain.row.what = "draw cord";
    plain.row.each = plain.row.amount = std::nullopt;
    plain.row.lines = 0;
    plain.row.note = "stays in the duct; a new one goes in with each cable; not in the price";
    return plain;
}

Draft clip_row(Draft plain, const tables::Catalogue& catalogue, const tables::Cable* cable) {
    plain.bought = Bought::fixed;
    const bool armoured = cable && tables::make_of(catalogue, *cable).armoured;
    plain.row.what = armoured ? "cable cleats with fixings" : "cable clips with fixings";
    if (!cable) {
        plain.row.size = "by the cable in hand";
        return plain;
    }
    const Metres spacing = spacing_of(catalogue, *cable);
    plain.count = fixings_on(metres(plain.row.quantity), spacing);
    plain.row.note = fmt::format("every {} where it lies level", mm_words(spacing));
    return plain;
}

Draft sand_row(Draft named, const tables::Catalogue& catalogue, Metres across) {
    named.bought = Bought::sand;
    if (!(across > metres(0))) return named;
    const tables::TrenchSizes& sizes = catalogue.trench.sizes;
    const Metres high = sizes.bedding_below.value + across + sizes.bedding_above.value;
    const auto area = sizes.width.value * high - squared(across) * (pi / 4);
    named.tonnes = area.number() * named.row.quantity * sizes.sand_kg_m3.value *
                   (1 + sizes.sand_waste.value) / 1000;
    named.row.note =
        "sand below, beside and above in a trench of the usual width; the ground sheet "
        "reckons each";
    return named;
}

Metres across_at(const tables::Catalogue& catalogue, const AtRun& run, int leg) {
    const std::vector<Metres> cables = run.pulled_in(leg);
    if (cables.empty()) return metres(0);
    // Beside a cable that stays only the conductor is bedded.
    if (cables.size() > 1 && bought_of(*run.at_leg(leg)) == 0) return cables.back();
    if (!run.in_duct(leg)) return cables.front();
    const trench::DuctChoice choice = trench::duct_for(catalogue, cables);
    return choice.row ? choice.row->outside : metres(0);
}

}  // namespace toft::ware
