#include "codec/job_parts.h"

#include "search/candidates.h"
#include "site/built.h"

namespace toft::codec {

namespace {

/// The key that says most about what may be used, for the fault to point at.
std::string cable_pointer(const site::Job& job) {
    const auto& legs = job.runs[0].legs;
    for (std::size_t i = 0; i < legs.size(); ++i) {
        if (!legs[i].family.empty()) return "/runs/0/legs/" + std::to_string(i) + "/family";
    }
    return job.wishes.offer.empty() ? "/runs/0" : "/wishes/offer";
}

std::string device_pointer(const site::Job& job) {
    if (job.runs[0].device) return "/runs/0/device";
    if (!job.wishes.devices.empty()) return "/wishes/devices";
    return job.intake.board.takes.empty() ? "/runs/0/fed_from" : "/intake/board/takes";
}

/// The job without what takes long to work out and decides nothing that is on offer.
site::Job without_ground(site::Job job) {
    job.ground = {};
    for (site::Building& building : job.buildings) building.electrode = {};
    return job;
}

}  // namespace

Faults nothing_on_offer(const site::Job& whole, const tables::Catalogue& catalogue) {
    const site::Job job =
        without_ground(site::has_choice(whole) ? site::as_built(whole, {0}) : whole);
    bool routes = false;
    bool heads = false;
    for (const int phases : study::phase_choices(job, 0)) {
        Silent silent;
        const auto setting =
            study::prepare(silent, catalogue, job, study::RunAt{0, phases}, study::Corner{});
        const search::Shop shop = search::shop_for(setting);
        routes = routes || !search::routes_of(shop, setting).empty();
        heads = heads || !search::heads_of(shop, setting).empty();
    }
    Faults faults;
    if (!routes) {
        faults.push_back(
            {"nothing-on-offer",
             cable_pointer(job),
             "no cable that is tabulated fits what the job names: family, cores, section, "
             "phases and smallest core together leave nothing",
             "",
             {}});
    }
    if (!heads) {
        faults.push_back(
            {"nothing-on-offer",
             device_pointer(job),
             "no device fits what the job names: breakers and RCBOs stand in a board, "
             "cartridge fuses and moulded-case breakers on the tails, other fuses only "
             "in a board that takes them",
             "",
             {}});
    }
    return faults;
}

}  // namespace toft::codec
