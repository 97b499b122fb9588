#pragma once
// Everything the tables hold, typed, checked and immutable. Parsed once from memory; rows are then
// read by reference for as long as the catalogue lives.

#include "base/outcome.h"
#include "tables/addition.h"
#include "tables/cable.h"
#include "tables/demand.h"
#include "tables/device.h"
#include "tables/electrode.h"
#include "tables/embedded.h"
#include "tables/find_out.h"
#include "tables/found.h"
#include "tables/guard.h"
#include "tables/handover.h"
#include "tables/lever.h"
#include "tables/rulebook.h"
#include "tables/shock.h"
#include "tables/tolerance.h"
#include "tables/trench.h"
#include "tables/ware.h"

#include <deque>
#include <string>
#include <string_view>
#include <vector>

namespace toft::tables {

/// One entry of the bibliography.
struct Source {
    std::string key;
    std::string title;
    std::string edition;
    std::string where;
    std::string seen;  ///< "in print", "in reprint", "not seen"
    std::string note;
};

struct Catalogue {
    std::string version;
    std::vector<Source> sources;
    std::deque<Citation> citations;  ///< one per cited row; never moves

    std::vector<Conductor> conductors;  ///< by metal, section: copper first
    std::vector<Conductor> separates;   ///< single cores sold as protective conductors, copper
    std::vector<Cable> cables;          ///< by family, cores, section
    std::array<Make, families> makes;   ///< by family
    CableConstants cable_constants;

    std::vector<Device> devices;  ///< by standard, curve, breaking capacity, rating
    RcdTimes rcd_general;
    RcdTimes rcd_delayed;
    std::vector<RunRcd> run_rcds;

    Limits limits;
    std::vector<BondingStep> main_bonding;
    std::vector<DepthAdvice> depth_advice;
    std::vector<HeightAdvice> height_advice;
    std::vector<Dependability> dependability;
    std::vector<CircuitKindRow> circuit_kinds;
    std::vector<OpenRange> open_ranges;
    std::vector<EarthingBasis> earthing_basis;  ///< by step
    Demand demand;
    std::vector<Soil> soils;
    std::vector<TablePoint> rod_parallel;  ///< factor over number of rods
    ElectrodeConstants electrode;
    Shock shock;
    Guard guard;
    std::vector<FindOut> find_out;
    std::vector<FoundRow> found;
    Levers levers;
    std::vector<ToleranceRow> tolerances;
    std::vector<AdditionRow> additions;
    std::vector<TestStep> tests;  ///< in the order they are made
    Trench trench;
    Ware ware;
    Handover handover;

    Catalogue() = default;
    Catalogue(Catalogue&&) = default;
    Catalogue& operator=(Catalogue&&) = default;
    Catalogue(const Catalogue&) = delete;
    Catalogue& operator=(const Catalogue&) = delete;
};

/// Builds the catalogue from files by name; all faults of all files at once.
Outcome<Catalogue> load_catalogue(EmbeddedFiles files);

/// … of what schemes are found, judged and told with alone: no titles of sources, no questions,
/// levers, tolerances, additions, words of papers, trench or ware.
Outcome<Catalogue> load_for_answers(EmbeddedFiles files);

/// What all sizes of the cable's family share.
inline const Make& make_of(const Catalogue& catalogue, const Cable& cable) {
    return catalogue.makes[static_cast<std::size_t>(cable.family)];
}

/// The copper conductor of that section, or null.
const Conductor* find_conductor(const Catalogue& catalogue, SquareMillimetres section);

/// What is usual of that kind of circuit, or null.
const CircuitKindRow* find_circuit_kind(const Catalogue& catalogue, std::string_view kind);

/// The range for an open fact, or null.
const OpenRange* find_open_range(const Catalogue& catalogue, std::string_view fact);

}  // namespace toft::tables
