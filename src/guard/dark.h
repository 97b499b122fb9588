#pragma once
// What goes dark: for each fault which devices open and which circuits of outbuilding and house
// lose their supply, surely or possibly. A device that nothing promises to stay closed possibly
// opens. Page: docs/methods/dark.md.

#include "guard/chain.h"
#include "study/figures.h"

#include <string>
#include <vector>

namespace toft::guard {

enum class Certainty : unsigned char { no, possibly, surely };

const char* certainty_word(Certainty certainty);

/// Where a device that may open stands, from the intake out.
enum class Station { service, house_rcd, head, head_rcd, circuit };

struct Opener {
    Station station = Station::service;
    std::size_t circuit = 0;  ///< of the building; for `circuit` only
    std::string name;
};

/// What may go dark: a circuit of the building, or a part of the house.
struct Part {
    bool house = false;
    bool behind_rcd = false;  ///< of the house: behind the RCD that the run hangs on too
    std::size_t circuit = 0;  ///< of the building
    std::string name;
};

/// A weak earth fault, through damp or a person, draws less than any overcurrent device needs.
/// The first four are on a circuit of the building.
enum class Trouble {
    weak_earth,
    solid_earth,
    overload,
    short_circuit,
    run_weak,
    run_earth,
    run_short,
    house_weak,
    loss
};

inline bool on_circuit(Trouble trouble) { return trouble <= Trouble::short_circuit; }

const char* trouble_word(Trouble trouble);

/// One fault and what follows; by the places of openers and parts.
struct Event {
    Trouble trouble = Trouble::loss;
    std::size_t circuit = 0;  ///< it is on; where it is on one
    std::string name;         ///< "weak earth fault on sockets"
    std::vector<Certainty> opens;
    std::vector<Certainty> dark;
};

struct Darkness {
    std::vector<Opener> openers;
    std::vector<Part> parts;
    std::vector<Event> events;
};

/// Largest currents that a fault may draw, at the building's board and at the head of the run.
struct FaultSizes {
    Amperes far_short{};
    Amperes far_earth{};
    Amperes near_short{};
    Amperes near_earth{};
};

/// Of figures worked out up to `current`.
FaultSizes fault_sizes(const study::Figures<Silent>& figures);

/// What a table of darkness is worked out from.
struct DarkCase {
    const View& view;
    const study::RunScheme& scheme;
    const Chain& chain;
    FaultSizes sizes;
    Amperes load{};  ///< design current of the run
    /// Overcurrent device of each circuit of the building; one that is null or missing is as the
    /// survey states it.
    std::vector<const tables::Device*> devices;
};

Darkness darkness_of(const DarkCase& c);

/// Circuits of the building that may go dark by a weak earth fault on another circuit of it.
std::vector<std::size_t> lost_with_others(const Darkness& darkness);

}  // namespace toft::guard
