#include "site/words.h"

#include "site/fact.h"

namespace toft::site {

using Words = std::vector<std::string>;

template <>
const Words& words<Earthing>() {
    static const Words list{"TN-S", "TN-C-S", "TT"};
    return list;
}

template <>
const Words& words<Use>() {
    static const Words list{"shed",          "garage",       "store",      "office",
                            "studio",        "workshop",     "gym",        "greenhouse",
                            "stable",        "animal house", "pool house", "hot tub",
                            "caravan pitch", "boat mooring", "other"};
    return list;
}

template <>
const Words& words<Construction>() {
    static const Words list{"timber",      "brick",           "stone",           "insulated panel",
                            "steel frame", "aluminium frame", "steel container", "canvas"};
    return list;
}

template <>
const Words& words<Metal>() {
    static const Words list{
        "water pipe", "gas pipe", "oil pipe",      "heating pipe", "structural steel",
        "frame",      "drain",    "lightning rod", "fence",        "cable screen",
        "other"};
    return list;
}

template <>
const Words& words<ComesFrom>() {
    static const Words list{"ground", "house", "other building"};
    return list;
}

template <>
const Words& words<LegMethod>() {
    static const Words list{"clipped",        "tray",          "free air",      "in conduit",
                            "in trunking",    "in insulation", "above ceiling", "buried direct",
                            "buried in duct", "overhead"};
    return list;
}

template <>
const Words& words<Surface>() {
    static const Words list{"lawn",  "bed",   "path",        "drive",
                            "patio", "field", "shared path", "road"};
    return list;
}

template <>
const Words& words<CircuitKind>() {
    static const Words list{"socket ring", "socket radial", "lighting",         "fixed load",
                            "motor",       "welder",        "vehicle charging", "hot tub",
                            "sauna",       "kiln",          "heat pump",        "pump",
                            "freezer",     "solar",         "battery",          "sub-board",
                            "cooker",      "shower",        "water heater",     "storage heater"};
    return list;
}

template <>
const Words& words<KeepsSupply>() {
    static const Words list{"nothing", "building", "house"};
    return list;
}

template <>
const Words& words<AlsoCarried>() {
    static const Words list{"two-way lighting", "switching", "alarm", "telephone", "data"};
    return list;
}

template <>
const Words& words<PinArray>() {
    static const Words list{"Wenner", "Schlumberger"};
    return list;
}

template <>
const Words& words<Season>() {
    static const Words list{"wet season", "dry season"};
    return list;
}

template <>
const Words& words<ElectrodeKind>() {
    static const Words list{"rods", "buried wire", "ring", "plate", "mesh", "foundation"};
    return list;
}

template <>
const Words& words<Arrangement>() {
    static const Words list{"line", "triangle", "square"};
    return list;
}

template <>
const Words& words<Scenario>() {
    static const Words list{"today", "likely", "everything"};
    return list;
}

template <>
const Words& words<RcdType>() {
    static const Words list{"AC", "A", "F", "B"};
    return list;
}

template <>
const Words& words<Prefer>() {
    static const Words list{"price", "headroom", "dependability"};
    return list;
}

template <>
const Words& words<FedFrom>() {
    static const Words list{"spare way", "tails", "new board"};
    return list;
}

template <>
const Words& words<Condition>() {
    static const Words list{"sound", "damaged", "not seen"};
    return list;
}

template <>
const Words& words<ReadThrough>() {
    static const Words list{"armour", "core", "core and armour"};
    return list;
}

template <>
const Words& words<Standing>() {
    static const Words list{"measured", "declared", "assumed"};
    return list;
}

template <>
const Words& words<Spread>() {
    static const Words list{"even", "bell"};
    return list;
}

const char* standing_word(Standing standing) { return word(standing).c_str(); }

bool metallic(Construction construction) {
    return construction == Construction::steel_frame ||
           construction == Construction::aluminium_frame ||
           construction == Construction::steel_container;
}

bool buried(LegMethod method) {
    return method == LegMethod::buried_direct || method == LegMethod::buried_in_duct;
}

}  // namespace toft::site
