#include "guard/need.h"

namespace toft::guard {

using site::Answer;
using site::CircuitKind;
using site::Use;

namespace {

class Asking {
public:
    Asking(const View& view, const site::Circuit& circuit) : v_(view), c_(circuit) {}

    Need all() {
        sockets();
        luminaires();
        hidden();
        water_and_heat();
        vehicle();
        farm();
        movable();
        fire();
        electrode();
        if (need_.reasons.empty()) {
            add("choice",
                "no clause asks for one by itself; it has one so that a fault takes this circuit "
                "and no other");
            need_.asked = amperes(0);
        }
        return std::move(need_);
    }

private:
    void add(const char* key, const char* why, bool sure = true) {
        const tables::GuardNeed* row = tables::find_need(v_.tables(), key);
        if (!row) return;
        need_.reasons.push_back({row, why, sure});
        if (!need_.asked_for() || row->sensitivity < need_.asked) need_.asked = row->sensitivity;
    }

    /// Its device is said to be larger than the clauses about sockets reach.
    bool large() const { return c_.device && c_.device->rating > v_.limits().socket_most.value; }

    void sockets() {
        if (!feeds_sockets(c_) || large()) return;
        if (c_.kind == CircuitKind::sub_board) {
            add("sockets", "nobody said what hangs behind it: sockets are taken to be there",
                false);
            return;
        }
        add("sockets", "it feeds socket-outlets up to 32 A");
        add("outdoors", "what is plugged in here may be carried outdoors");
    }

    void luminaires() {
        if (c_.kind != CircuitKind::lighting) return;
        add("luminaires",
            "it feeds luminaires; an outbuilding of a dwelling is read as part of the dwelling",
            false);
    }

    void hidden() {
        if (!c_.method) {
            add("hidden-cable",
                "nobody said how its cable lies: in a wall less than 50 mm deep it would ask for "
                "one",
                false);
            return;
        }
        if (*c_.method == site::LegMethod::in_insulation ||
            *c_.method == site::LegMethod::in_conduit) {
            add("hidden-cable", "its cable may be hidden in a wall less than 50 mm deep", false);
        }
    }

    void water_and_heat() {
        const bool tub = c_.kind == CircuitKind::hot_tub;
        if (tub || v_.used_as(Use::pool_house) || v_.used_as(Use::hot_tub)) {
            add("pool",
                tub ? "it feeds a tub: wet, bare skin"
                    : "it serves a place with a pool or tub, where people are wet and bare",
                tub);
        }
        if (c_.kind != CircuitKind::sauna && has_kind(v_, CircuitKind::sauna)) {
            add("sauna", "if it serves the sauna's room it needs one; only the heater is exempt",
                false);
        }
    }

    void vehicle() {
        if (c_.kind == CircuitKind::vehicle_charging) {
            add("vehicle", "every charging point needs one of its own");
        }
    }

    void farm() {
        const bool use = v_.used_as(Use::stable) || v_.used_as(Use::animal_house);
        const bool animals = v_.building->livestock == Answer::yes;
        if (!use && !animals && !v_.used_as(Use::greenhouse)) return;
        const bool sure = use || animals;
        if (!feeds_sockets(c_)) {
            add("farm-rest",
                sure ? "every other circuit of a farm or stable, against fire"
                     : "a nursery counts as a farm does; a greenhouse of a household does not",
                sure);
        } else if (large()) {
            add("farm-large-sockets", "sockets over 32 A of a farm or stable", sure);
        } else {
            add("farm-sockets",
                sure ? "sockets of a farm or stable"
                     : "a nursery counts as a farm does; a greenhouse of a household does not",
                sure);
        }
    }

    void movable() {
        if (!feeds_sockets(c_)) return;
        if (v_.used_as(Use::caravan_pitch)) {
            add("caravan", "every outlet of a pitch needs one of its own");
        }
        if (v_.used_as(Use::boat_mooring)) add("boat", "every outlet of a berth needs one");
    }

    void fire() {
        const Answer risk = v_.building->spread_of_fire_risk;
        if (risk == Answer::yes) {
            add("fire", "a fire would spread or find dust to burn here");
        } else if (risk == Answer::unknown && v_.used_as(Use::workshop)) {
            add("fire", "nobody said whether dust of a workshop may burn here", false);
        }
    }

    void electrode() {
        if (!v_.through_ground()) return;
        add("electrode", "an earth fault returns through the ground: nothing else would clear it");
    }

    const View& v_;
    const site::Circuit& c_;
    Need need_;
};

}  // namespace

Need need_of(const View& view, const site::Circuit& circuit) { return Asking(view, circuit).all(); }

}  // namespace toft::guard
