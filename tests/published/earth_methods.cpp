#include "published/earth_methods.h"

#include "earth/buried_mesh.h"
#include "earth/rod.h"
#include "earth/rod_group.h"
#include "earth/rod_pair.h"
#include "field/electrode_shape.h"
#include "field/field.h"
#include "support/catalogue.h"

#include <stdexcept>

namespace toft::published {

namespace {

using support::PublishedCase;

Ohms one_rod(const PublishedCase& c) {
    Silent ledger;
    const earth::Rods<Silent> given{ohm_metres(c.number("rho", 100)), metres(c.number("L")),
                                    metres(c.number("d")), 1};
    return earth::rod_resistance(ledger, unnamed, support::catalogue().rod_parallel, given);
}

/// Rods evenly round a rectangle, the first at a corner.
std::vector<field::Wire> round_rectangle(const PublishedCase& c, double length, double width) {
    const auto count = static_cast<int>(c.number("n"));
    const double rim = 2 * (length + width);
    std::vector<field::Wire> wires;
    for (int i = 0; i < count; ++i) {
        double way = rim * i / count;
        double x = 0;
        double y = 0;
        if (way < length) {
            x = way;
        } else if (way < length + width) {
            x = length;
            y = way - length;
        } else if (way < 2 * length + width) {
            x = 2 * length + width - way;
            y = width;
        } else {
            y = rim - way;
        }
        wires.push_back(field::rod_wire({metres(x), metres(y), metres(0)}, metres(c.number("L")),
                                        metres(c.number("d") / 2)));
    }
    return wires;
}

}  // namespace

Results step_beside_rod(const PublishedCase& c) {
    Silent ledger;
    const earth::RodPair<Silent> place{ohm_metres(c.number("rho", 100)), metres(c.number("L")),
                                       metres(c.number("x"))};
    const Ohms rod = one_rod(c);
    const Ohms step = rod - earth::surface_resistance(ledger, unnamed, place);
    return {{"share", step / rod},
            {"U", (step * amperes(c.number("I", 1))).number()},
            {"I", (volts(c.number("U.step", 1)) / step).number()}};
}

Results rods_round_rectangle(const PublishedCase& c) {
    const double side = (c.number("n") / 4) * c.number("s", 1);
    const auto wires = round_rectangle(c, c.number("length", side), c.number("width", side));
    const auto field = field::solve_field(field::uniform_soil(ohm_metres(c.number("rho", 100))),
                                          wires, {metres(0.5), 6});
    if (!field) throw std::runtime_error(field.error().front().says);
    const Ohms r = field->joined();
    Silent ledger;
    const earth::RodGroup<Silent> group{ohm_metres(c.number("rho", 100)), metres(c.number("L")),
                                        metres(c.number("d")), metres(c.number("s")),
                                        c.number("n") / 4 + 1};
    const Ohms by_lambda =
        earth::rods_in_square(ledger, unnamed, support::catalogue().electrode.rods_in_square, group)
            .resistance;
    return {{"R", r.number()},
            {"factor", c.number("n") * (r / one_rod(c))},
            {"factor.lambda", c.number("n") * (by_lambda / one_rod(c))}};
}

Results mesh(const PublishedCase& c) {
    Silent ledger;
    const earth::BuriedMesh<Silent> given{ohm_metres(c.number("rho")), metres(c.number("length")),
                                          metres(c.number("width")), metres(c.number("wire")),
                                          metres(c.number("depth"))};
    return {{"R", earth::buried_mesh(ledger, unnamed, given).resistance.number()}};
}

}  // namespace toft::published
