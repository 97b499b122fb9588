#include "guard/sort.h"

#include "guard/row_of.h"

#include <algorithm>

namespace toft::guard {

using site::Answer;
using site::CircuitKind;
using site::RcdType;

namespace {

RcdType type_of(const std::string& word) {
    for (const RcdType type : {RcdType::a, RcdType::f}) {
        if (word == site::word(type)) return type;
    }
    return RcdType::b;
}

bool vehicle(const site::Circuit& c) { return c.kind == CircuitKind::vehicle_charging; }

bool source(const site::Circuit& c) {
    return c.kind == CircuitKind::solar || c.kind == CircuitKind::battery;
}

const char* why_driven(const site::Circuit& c) {
    if (c.drive == Answer::yes) {
        return c.phases == 3 ? "a drive that rectifies three phases can feed smooth d.c. into a "
                               "fault"
                             : "a drive on one phase feeds mixed frequencies into a fault";
    }
    return "nobody said whether a drive or inverter feeds it: taken as if one did";
}

/// The type alone, without words.
RcdType plain_type(const tables::LoadType& row, const site::Circuit& c) {
    const bool driven = c.drive == Answer::yes || (c.drive == Answer::unknown && row.drive_unsaid);
    if (!driven) return type_of(row.plain);
    return type_of(c.phases == 3 ? row.drive_three : row.drive_one);
}

RcdType needed(const View& view, const site::Circuit& circuit, bool detection) {
    if (detection && vehicle(circuit)) return RcdType::a;
    const tables::LoadType* row = row_of(view.tables().types, circuit.kind);
    return row ? plain_type(*row, circuit) : RcdType::b;
}

RcdType highest(const View& view, bool detection) {
    RcdType type = RcdType::a;
    for (std::size_t i = 0; i < circuit_count(view); ++i) {
        type = std::max(type, needed(view, circuit_at(view, i), detection));
    }
    return type;
}

}  // namespace

Sort sort_of(const View& view, const site::Circuit& circuit) {
    Sort sort;
    sort.type = needed(view, circuit, false);
    const char* key = "type-plain";
    sort.why = "electronics feed pulses into a fault: type AC may not see them";
    if (vehicle(circuit)) {
        key = "type-vehicle";
        sort.detection_instead = true;
        sort.why =
            "a vehicle's charger can feed smooth d.c. into a fault: type B sees it; type A does "
            "where the charging point itself detects 6 mA and opens";
    } else if (source(circuit)) {
        key = "type-source";
        sort.sure = false;
        sort.why =
            "its converter can feed smooth d.c. into a fault unless its maker declares that "
            "it cannot";
    } else if (sort.type != RcdType::a) {
        key = "type-drive";
        sort.sure = circuit.drive == Answer::yes;
        sort.why = why_driven(circuit);
    }
    sort.footing = tables::find_footing(view.tables(), key);
    return sort;
}

RcdType upstream_type(const View& view) { return highest(view, false); }

RcdType upstream_type_with_detection(const View& view) { return highest(view, true); }

Sight sight_of(const View& view, std::optional<RcdType> upstream) {
    if (!upstream) return Sight::not_known;
    if (*upstream >= upstream_type(view)) return Sight::sees;
    return *upstream >= upstream_type_with_detection(view) ? Sight::only_with_detection
                                                           : Sight::blinded;
}

}  // namespace toft::guard
