#pragma once
// Every buildable scheme of a run: earthing × phases × cable on each stretch × what serves there as
// protective conductor × device × place it is fed from × residual current device at the head.
// Nothing is left out for being unlikely; what a job names or its wishes exclude is.

#include "study/scheme.h"
#include "study/setting.h"

#include <vector>

namespace toft::search {

/// What may be chosen for a run, list by list. A scheme is one pick from each list that fits the
/// others.
struct Shop {
    int phases = 1;
    std::vector<study::BuildingEarthing> earthings;
    std::vector<const tables::Cable*> cables;
    std::vector<const tables::Conductor*> separates;
    std::vector<const tables::Device*> devices;
    std::vector<site::FedFrom> feeds;
    std::vector<const tables::RunRcd*> rcds;  ///< null first: none
};

/// What the catalogue offers for that run under the job's wishes.
Shop shop_for(const study::Setting<Silent>& setting);

/// What lies between the buildings, and how the far one is then earthed.
struct Route {
    study::BuildingEarthing earthing = study::BuildingEarthing::supply_earth;
    int phases = 1;
    std::array<study::Stretch, study::most_stretches> stretch;
    std::size_t stretches = 1;
};

/// All sensible combinations of earthing, cable and protective conductor. A building with its own
/// electrode takes a cable whose armour or core is earthed at the house only. Stretches for which
/// the survey says the same take the same cable. A cable that is there may stay, alone or with a
/// second like it beside it (433.4.1: of one type, section and length).
std::vector<Route> routes_of(const Shop& shop, const study::Setting<Silent>& setting);

/// A device with where it may stand: cartridge fuses and moulded-case breakers in a box of their
/// own on the tails; breakers with or without residual current protection in a board; other fuses
/// only in a board that takes them.
struct Head {
    const tables::Device* device = nullptr;
    site::FedFrom fed_from = site::FedFrom::tails;
    const tables::RunRcd* rcd = nullptr;
    bool stays = false;  ///< it feeds the cable that is there today
};

std::vector<Head> heads_of(const Shop& shop, const study::Setting<Silent>& setting);

study::RunScheme scheme_of(const Route& route, const Head& head);

}  // namespace toft::search
