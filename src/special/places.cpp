// Places with rules of their own: animals, pools and tubs, saunas, caravans, boats, containers.
// Which earth they may have is the walk's business; what is said here comes on top.

#include "special/parts.h"

namespace toft::special {

using site::CircuitKind;
using site::Use;

void animals(const Case& c, std::vector<Advice>& all) {
    const bool use = c.view.used_as(Use::stable) || c.view.used_as(Use::animal_house);
    if (!use && c.view.building->livestock != site::Answer::yes) return;
    all.push_back({"animals",
                   "30 mA for sockets, 300 mA at most for all else against fire; all metal within "
                   "an animal's reach bonded, with a mesh in the floor where there is one",
                   "the circuits have 30 mA here; whether it is a farm or a household's pets, and "
                   "how the floor is bonded, is for a person to settle; how its earth is argued "
                   "is told step by step elsewhere",
                   footing(c, "livestock"), true});
}

void pool_or_tub(const Case& c, std::vector<Advice>& all) {
    const bool tub = guard::has_kind(c.view, CircuitKind::hot_tub);
    if (!tub && !c.view.used_as(Use::pool_house) && !c.view.used_as(Use::hot_tub)) return;
    all.push_back({"pool or tub",
                   "zones around the water: sockets, switches and isolators outside them, 30 mA "
                   "for what is inside, metal within reach bonded",
                   "the zones are not drawn here: a person measures them; the maker's "
                   "instructions count too; how its earth is argued is told step by step "
                   "elsewhere",
                   footing(c, "hot-tub"), true});
}

void sauna(const Case& c, std::vector<Advice>& all) {
    if (!guard::has_kind(c.view, CircuitKind::sauna)) return;
    all.push_back({"sauna",
                   "zones by heat: nothing but the heater's own things beside it, cable that bears "
                   "the heat, no sockets inside; 30 mA for all but the heater",
                   "the heater too has 30 mA here: damp elements may open it until they are dry; "
                   "ask its maker before that is changed",
                   footing(c, "sauna"), true});
}

void movable(const Case& c, std::vector<Advice>& all) {
    if (c.view.used_as(Use::caravan_pitch)) {
        all.push_back({"caravan",
                       "every outlet with an overcurrent device and 30 mA of its own that break "
                       "all live conductors; no combined earth",
                       "one RCBO for each outlet, two-pole; the law forbids the combined earth",
                       footing(c, "caravan"), true});
    }
    if (c.view.used_as(Use::boat_mooring)) {
        all.push_back({"boat",
                       "every outlet with an overcurrent device and 30 mA of its own that break "
                       "all live conductors; no combined earth; nothing below the reach of waves",
                       "one RCBO for each outlet, two-pole; the law forbids the combined earth",
                       footing(c, "boat"), true});
    }
}

void container(const Case& c, std::vector<Advice>& all) {
    if (c.view.building->construction != site::Construction::steel_container) return;
    all.push_back({"container",
                   "a unit that is moved and plugged in has rules of its own, no combined earth "
                   "among them",
                   "taken as standing for good: a building of metal, and argued so; if it "
                   "is ever moved, a person must look again",
                   footing(c, "container"), true});
}

}  // namespace toft::special
