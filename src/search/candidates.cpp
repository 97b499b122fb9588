#include "search/candidates.h"

#include <algorithm>

namespace toft::search {

namespace {

using site::FedFrom;
using study::BuildingEarthing;
using study::Protective;
using study::Stretch;
using study::StretchSetting;
using tables::Kind;

bool big_enough(const site::Wishes& wishes, const tables::Cable& cable) {
    return !wishes.smallest_core.known || cable.section >= wishes.smallest_core.low;
}

/// Insulated cores that may be used: lines and neutral, and one to protect where there is one more.
bool cores_fit(const tables::Make& make, const tables::Cable& cable, int phases) {
    const int live = phases == 3 ? 4 : 2;
    if (make.family == tables::Family::flat_twin_and_earth) return phases == 1;
    // Without armour or a bare conductor only a core is left to protect.
    return cable.cores == live + 1 || (make.armoured && cable.cores == live);
}

bool tabulated(const tables::Cable& cable, int phases) {
    return cable.duty(phases).drop_r.citation != nullptr;
}

bool wished(const site::Wishes& wishes, const tables::Device& device) {
    return wishes.devices.empty() || std::find(wishes.devices.begin(), wishes.devices.end(),
                                               device.standard) != wishes.devices.end();
}

bool named(const site::Run& run, const tables::Device& device) {
    if (!run.device) return true;
    const site::NamedDevice& n = *run.device;
    return n.standard == device.standard && n.rating == device.rating &&
           (n.curve.empty() || n.curve == device.curve);
}

bool breaker(const tables::Device& device) {
    return device.kind == Kind::breaker || device.kind == Kind::rcbo;
}

/// Withdrawn or carrier fuses: none is fitted anew, but a board may have ways for them.
bool only_where_taken(const tables::Device& device) {
    return device.kind == Kind::rewirable || device.standard == "BS 1361";
}

bool stands_in(const tables::Device& device, FedFrom feed, const std::string& board_takes,
               bool by_name) {
    switch (feed) {
        case FedFrom::spare_way:
            return board_takes.empty() ? breaker(device) : device.standard == board_takes;
        case FedFrom::new_board:
            return breaker(device);
        case FedFrom::tails:
            return !breaker(device) && (by_name || !only_where_taken(device));
    }
    return false;
}

/// Builds the list of picks for one stretch.
class Picks {
public:
    Picks(const Shop& shop, const study::Setting<Silent>& setting, BuildingEarthing earthing)
        : shop_(shop), setting_(setting), earthing_(earthing) {}

    std::vector<Stretch> of(const StretchSetting<Silent>& at) {
        picks_.clear();
        for (const tables::Cable* cable : shop_.cables) {
            if (!at.families[static_cast<std::size_t>(cable->family)]) continue;
            if (at.cores && *at.cores != cable->cores) continue;
            if (at.live && *at.live != cable->section) continue;
            add(*cable);
        }
        if (at.existing) keep(*at.existing);
        return std::move(picks_);
    }

private:
    /// The cable that is there with whatever may protect along it, alone and with a second.
    void keep(const tables::Cable& cable) {
        const std::size_t before = picks_.size();
        add(cable);
        std::vector<Stretch> kept;
        for (std::size_t i = before; i < picks_.size(); ++i) {
            Stretch pick = picks_[i];
            if (pick.parallel > 1) continue;
            pick.laid = study::Laid::kept;
            kept.push_back(pick);
            if (!cable.offered) continue;
            pick.laid = study::Laid::doubled;
            pick.parallel = 2;
            kept.push_back(pick);
        }
        picks_.resize(before);
        picks_.insert(picks_.end(), kept.begin(), kept.end());
    }

    void add(const tables::Cable& cable) {
        const bool armoured = tables::make_of(*setting_.catalogue, cable).armoured;
        const int live = shop_.phases == 3 ? 4 : 2;
        const bool core = cable.cpc > square_millimetres(0) && (cable.cores > live || !armoured);
        if (!armoured) return unarmoured(cable);
        const bool own = earthing_ == BuildingEarthing::own_electrode;
        if (core) {
            if (own) return;
            each(cable, Protective::core, nullptr);
            each(cable, Protective::core_and_armour, nullptr);
            return;
        }
        each(cable, Protective::armour, nullptr);
        if (own) return;
        for (const tables::Conductor* separate : shop_.separates) {
            each(cable, Protective::separate, separate);
            each(cable, Protective::armour_and_separate, separate);
        }
    }

    /// A separate conductor beside a cable that has a core to protect is only there to bond.
    void unarmoured(const tables::Cable& cable) {
        picks_.push_back({&cable, Protective::core, nullptr, 1});
        if (!setting_.building.extraneous || earthing_ == BuildingEarthing::own_electrode) return;
        for (const tables::Conductor* separate : shop_.separates) {
            picks_.push_back({&cable, Protective::separate, separate, 1});
        }
    }

    void each(const tables::Cable& cable, Protective protective,
              const tables::Conductor* separate) {
        picks_.push_back({&cable, protective, separate, 1});
        if (cable.section >= setting_.catalogue->limits.parallel_least.value) {
            picks_.push_back({&cable, protective, separate, 2});
        }
    }

    const Shop& shop_;
    const study::Setting<Silent>& setting_;
    BuildingEarthing earthing_;
    std::vector<Stretch> picks_;
};

/// The device that feeds the existing cable, where it may stay; of those that its name fits the one
/// that breaks least. Null where there is none, or the job asks for another.
const tables::Device* device_there(const Shop& shop, const study::Setting<Silent>& setting) {
    const auto& existing = setting.run->existing;
    if (!existing || !existing->device || !existing->fed_from) return nullptr;
    if (std::find(shop.feeds.begin(), shop.feeds.end(), *existing->fed_from) == shop.feeds.end()) {
        return nullptr;
    }
    const site::NamedDevice& n = *existing->device;
    const tables::Device* least = nullptr;
    for (const tables::Device& device : setting.catalogue->devices) {
        if (device.standard != n.standard || device.rating != n.rating) continue;
        if (device.curve != n.curve || !named(*setting.run, device)) continue;
        if (!least || device.breaking.value < least->breaking.value) least = &device;
    }
    return least;
}

bool same_choice(const StretchSetting<Silent>& a, const StretchSetting<Silent>& b) {
    return a.families == b.families && a.cores == b.cores && a.live == b.live;
}

/// Index of the earlier stretch whose cable this one shares, or its own.
std::size_t shares_with(const std::vector<StretchSetting<Silent>>& stretches, std::size_t i) {
    for (std::size_t k = 0; k < i; ++k) {
        if (same_choice(stretches[k], stretches[i])) return k;
    }
    return i;
}

/// All ways to lay stretches `i` and on, the earlier ones being laid.
void lay(const study::Setting<Silent>& setting, Picks& picks, std::size_t i, Route& route,
         std::vector<Route>& routes) {
    if (i == setting.stretches.size()) {
        routes.push_back(route);
        return;
    }
    const std::size_t shared = shares_with(setting.stretches, i);
    if (shared != i) {
        route.stretch[i] = route.stretch[shared];
        return lay(setting, picks, i + 1, route, routes);
    }
    for (const Stretch& pick : picks.of(setting.stretches[i])) {
        route.stretch[i] = pick;
        lay(setting, picks, i + 1, route, routes);
    }
}

}  // namespace

Shop shop_for(const study::Setting<Silent>& setting) {
    const tables::Catalogue& catalogue = *setting.catalogue;
    Shop shop;
    shop.phases = setting.phases;
    const bool tt = setting.supply.system == site::Earthing::tt;
    shop.earthings = {tt ? BuildingEarthing::shared_electrode : BuildingEarthing::supply_earth,
                      BuildingEarthing::own_electrode};
    for (const tables::Cable& cable : catalogue.cables) {
        const tables::Make& make = tables::make_of(catalogue, cable);
        if (cable.offered && big_enough(setting.job->wishes, cable) &&
            cores_fit(make, cable, setting.phases) && tabulated(cable, setting.phases)) {
            shop.cables.push_back(&cable);
        }
    }
    for (const tables::Conductor& c : catalogue.separates) {
        if (c.offered) shop.separates.push_back(&c);
    }
    for (const tables::Device& device : catalogue.devices) {
        if (device.offered && wished(setting.job->wishes, device) && named(*setting.run, device)) {
            shop.devices.push_back(&device);
        }
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

std::vector<Route> routes_of(const Shop& shop, const study::Setting<Silent>& setting) {
    std::vector<Route> routes;
    for (const BuildingEarthing earthing : shop.earthings) {
        Picks picks(shop, setting, earthing);
        Route route;
        route.earthing = earthing;
        route.phases = shop.phases;
        route.stretches = setting.stretches.size();
        lay(setting, picks, 0, route, routes);
    }
    return routes;
}

std::vector<Head> heads_of(const Shop& shop, const study::Setting<Silent>& setting) {
    std::vector<Head> heads;
    const bool by_name = setting.run->device.has_value();
    for (const tables::Device* device : shop.devices) {
        for (const FedFrom feed : shop.feeds) {
            if (!stands_in(*device, feed, setting.house.takes, by_name)) continue;
            for (const tables::RunRcd* rcd : shop.rcds) {
                if (!rcd || !device->residual) heads.push_back({device, feed, rcd, false});
            }
        }
    }
    if (const tables::Device* there = device_there(shop, setting)) {
        for (const tables::RunRcd* rcd : shop.rcds) {
            if (rcd && there->residual) continue;
            heads.push_back({there, *setting.run->existing->fed_from, rcd, true});
        }
    }
    return heads;
}

study::RunScheme scheme_of(const Route& route, const Head& head) {
    study::RunScheme scheme;
    scheme.earthing = route.earthing;
    scheme.phases = route.phases;
    scheme.stretch = route.stretch;
    scheme.stretches = route.stretches;
    scheme.device = head.device;
    scheme.fed_from = head.fed_from;
    scheme.rcd = head.rcd;
    scheme.head_stays = head.stays;
    return scheme;
}

}  // namespace toft::search
