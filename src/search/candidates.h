#pragma once
// Every buildable scheme of a run: earthing × cable × what serves as protective conductor ×
// separate conductor × device × place it is fed from × residual current device at the head. Nothing
// is left out for being unlikely; what a job's wishes exclude is.

#include "study/scheme.h"
#include "study/setting.h"

#include <vector>

namespace toft::search {

/// What may be chosen for a run, list by list. A scheme is one pick from each list that fits the
/// others.
struct Shop {
    std::vector<study::BuildingEarthing> earthings;
    std::vector<const tables::Cable*> cables;
    std::vector<const tables::Conductor*> separates;
    std::vector<const tables::Device*> devices;
    std::vector<site::FedFrom> feeds;
    std::vector<const tables::RunRcd*> rcds;  ///< null first: none
};

/// What the catalogue offers for that run under the job's wishes.
Shop shop_for(const study::Setting<Silent>& setting);

/// A cable with what serves as its protective conductor and how the building is then earthed.
struct Core {
    study::BuildingEarthing earthing;
    const tables::Cable* cable;
    study::Protective protective;
    const tables::Conductor* separate;
};

/// All sensible combinations of earthing, cable and protective conductor. A building with its own
/// electrode takes two-core cable, its armour earthed at the house only.
std::vector<Core> cores_of(const Shop& shop);

/// A device with where it may stand: fuses in a switch-fuse on the tails, breakers in a board.
struct Head {
    const tables::Device* device;
    site::FedFrom fed_from;
    const tables::RunRcd* rcd;
};

std::vector<Head> heads_of(const Shop& shop);

study::RunScheme scheme_of(const Core& core, const Head& head);

}  // namespace toft::search
