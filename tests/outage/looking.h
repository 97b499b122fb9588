#pragma once
// Pictures of what goes dark, of examples and of circuits made up for looking.

#include "outage/dark.h"
#include "picture/looking.h"
#include "terrain/looking.h"

namespace toft::outage {

using terrain::clashes_of;
using terrain::tells;

/// A darkness of that many circuits and two parts of the house; every fault takes its own circuit
/// surely and the rest possibly.
inline guard::Darkness made_up(std::size_t circuits, const std::string& name = "sockets") {
    using guard::Certainty;
    guard::Darkness dark;
    dark.openers = {{guard::Station::service, 0, "the service fuse"},
                    {guard::Station::house_rcd, 0, "the RCD of the house's board"},
                    {guard::Station::head, 0, "the fuse at the head of the run"},
                    {guard::Station::head_rcd, 0, "the RCD at the head of the run"}};
    for (std::size_t i = 0; i < circuits; ++i) {
        dark.openers.push_back({guard::Station::circuit, i, "its breaker"});
        dark.parts.push_back({false, false, i, name + " " + std::to_string(i + 1)});
    }
    dark.parts.push_back({true, true, 0, "house: circuits behind the same RCD"});
    dark.parts.push_back({true, false, 0, "house: the rest"});
    for (std::size_t i = 0; i < circuits; ++i) {
        for (const auto trouble : {guard::Trouble::weak_earth, guard::Trouble::solid_earth,
                                   guard::Trouble::overload, guard::Trouble::short_circuit}) {
            guard::Event event{trouble, i, "fault on " + dark.parts[i].name, {}, {}};
            event.opens.assign(dark.openers.size(), Certainty::possibly);
            event.dark.assign(dark.parts.size(), Certainty::possibly);
            event.dark[i] = Certainty::surely;
            dark.events.push_back(event);
        }
    }
    dark.events.push_back({guard::Trouble::loss, 0, "loss of the supply",
                           std::vector<Certainty>(dark.openers.size(), Certainty::no),
                           std::vector<Certainty>(dark.parts.size(), Certainty::surely)});
    return dark;
}

/// A job and an answer whose one scheme has that darkness.
struct MadeUp {
    site::Job job;
    answer::Answer answer;
};

inline MadeUp scheme_of(guard::Darkness dark) {
    MadeUp one{terrain::looked_at_job(), {}};
    answer::SchemeAnswer scheme;
    scheme.building.name = "Potter's studio";
    for (const guard::Part& part : dark.parts) {
        if (part.house) continue;
        answer::CircuitGuard circuit;
        circuit.name = part.name;
        circuit.fitted_ma = 30;
        scheme.guard.circuits.push_back(circuit);
    }
    scheme.guard.dark = std::move(dark);
    one.answer.schemes.push_back(scheme);
    return one;
}

}  // namespace toft::outage
