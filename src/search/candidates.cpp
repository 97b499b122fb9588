#include "search/candidates.h"

#include <algorithm>

namespace toft::search {

namespace {

using site::FedFrom;
using study::BuildingEarthing;
using study::Protective;

bool offered(const site::Wishes& wishes, const tables::Cable& cable) {
    if (wishes.smallest_core.known && cable.section < wishes.smallest_core.low) return false;
    return wishes.offer.empty() ||
           std::find(wishes.offer.begin(), wishes.offer.end(), tables::family_word(cable.family)) !=
               wishes.offer.end();
}

/// The devices that a run is offered for now: household cartridge fuses, and breakers of types B
/// and C of the sizes that fit a house's board.
bool stocked(const tables::Device& device) {
    if (device.kind == tables::Kind::fuse) return device.standard == "BS 88-3";
    return device.kind == tables::Kind::breaker && device.curve != "D" &&
           device.rating <= amperes(63);
}

constexpr double separate_sections[] = {4, 6, 10, 16, 25};

}  // namespace

Shop shop_for(const study::Setting<Silent>& setting) {
    const tables::Catalogue& catalogue = *setting.catalogue;
    Shop shop;
    const bool tt = setting.supply.system == site::Earthing::tt;
    shop.earthings = {tt ? BuildingEarthing::shared_electrode : BuildingEarthing::supply_earth,
                      BuildingEarthing::own_electrode};
    for (const tables::Cable& cable : catalogue.cables) {
        if (offered(setting.job->wishes, cable)) shop.cables.push_back(&cable);
    }
    for (double section : separate_sections) {
        if (const auto* c = tables::find_conductor(catalogue, square_millimetres(section))) {
            shop.separates.push_back(c);
        }
    }
    for (const tables::Device& device : catalogue.devices) {
        if (stocked(device)) shop.devices.push_back(&device);
    }
    if (setting.run->fed_from) {
        shop.feeds = {*setting.run->fed_from};
    } else {
        shop.feeds = {FedFrom::spare_way, FedFrom::tails, FedFrom::new_board};
    }
    shop.rcds.push_back(nullptr);
    for (const tables::RunRcd& rcd : catalogue.run_rcds) shop.rcds.push_back(&rcd);
    return shop;
}

std::vector<Core> cores_of(const Shop& shop) {
    std::vector<Core> cores;
    for (const BuildingEarthing earthing : shop.earthings) {
        for (const tables::Cable* cable : shop.cables) {
            if (cable->cores == 3 && earthing != BuildingEarthing::own_electrode) {
                cores.push_back({earthing, cable, Protective::core, nullptr});
                cores.push_back({earthing, cable, Protective::core_and_armour, nullptr});
            }
            if (cable->cores != 2) continue;
            cores.push_back({earthing, cable, Protective::armour, nullptr});
            if (earthing == BuildingEarthing::own_electrode) continue;
            for (const tables::Conductor* separate : shop.separates) {
                cores.push_back({earthing, cable, Protective::separate, separate});
                cores.push_back({earthing, cable, Protective::armour_and_separate, separate});
            }
        }
    }
    return cores;
}

std::vector<Head> heads_of(const Shop& shop) {
    std::vector<Head> heads;
    for (const tables::Device* device : shop.devices) {
        for (const FedFrom feed : shop.feeds) {
            if (device->fuse() != (feed == FedFrom::tails)) continue;
            for (const tables::RunRcd* rcd : shop.rcds) heads.push_back({device, feed, rcd});
        }
    }
    return heads;
}

study::RunScheme scheme_of(const Core& core, const Head& head) {
    return {core.earthing, core.cable,    core.protective, core.separate,
            head.device,   head.fed_from, head.rcd};
}

}  // namespace toft::search
