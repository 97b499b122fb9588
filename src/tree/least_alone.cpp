#include "tree/least_alone.h"

#include "search/candidates.h"
#include "site/built.h"
#include "tree/choice.h"

#include <algorithm>

namespace toft::tree {

namespace {

/// Only to be reckoned with at all: prices do not hang on what arrives.
study::Incoming any_board(const Workplace& at, const study::Setting<Silent>& house, bool island) {
    study::Incoming in;
    in.island = island;
    in.phases = at.job.intake.phases;
    in.ze_working = in.ze_hot = in.ze_least = ohms(1);
    in.zn_working = in.zn_hot = in.zn_least = ohms(1);
    in.zl_hot = in.zl_least = ohms(1);
    in.system = island ? site::Earthing::tt : house.supply.system;
    in.ra_most = house.supply.ra_most;
    in.ra_least = house.supply.ra_least;
    in.device = &at.catalogue.devices.front();
    return in;
}

std::vector<int> phases_of(const site::Job& job, const site::Run& run) {
    if (job.intake.phases == 1) return {1};
    if (run.phases) return {*run.phases};
    for (const site::Circuit& circuit : site::find_building(job, run.to)->circuits) {
        if (circuit.phases == 3) return {3};
    }
    return {1, 3};
}

/// The least of what routes cost and the least of what heads cost, with tax.
double least_price(const Workplace& at, const RunJudge& judge, bool behind) {
    search::Shop shop = search::shop_for(judge.setting());
    if (behind) shop.feeds = {site::FedFrom::spare_way};
    const auto routes = search::routes_of(shop, judge.setting());
    const auto heads = search::heads_of(shop, judge.setting());
    if (routes.empty() || heads.empty()) return no_limit;
    double way = no_limit;
    for (const search::Route& route : routes) {
        const auto scheme = search::scheme_of(route, heads.front());
        if (!judge.fits_trenches(scheme)) continue;
        const auto p = judge.priced(scheme, {}, {}).price;
        way = std::min(way, (p.run + p.ground + p.far_end + p.test_and_paper).number());
    }
    double end = no_limit;
    for (const search::Head& head : heads) {
        const auto scheme = search::scheme_of(routes.front(), head);
        end = std::min(end, judge.priced(scheme, {}, {}).price.house_end.number());
    }
    constexpr double half_penny = 0.005;  // by which tax may be rounded down
    return (way + end) * (1 + at.book.amount(price::Item::vat_percent) / 100) - half_penny;
}

/// Of any scheme: digging is the same for all.
double ground_price(const RunJudge& judge) {
    const search::Shop shop = search::shop_for(judge.setting());
    const auto routes = search::routes_of(shop, judge.setting());
    const auto heads = search::heads_of(shop, judge.setting());
    if (routes.empty() || heads.empty()) return 0;
    return judge.priced(search::scheme_of(routes.front(), heads.front()), {}, {})
        .price.ground.number();
}

}  // namespace

LeastAlone least_alone(const Workplace& at, std::size_t run) {
    const site::Job with_digging = site::as_built(at.job, {run});
    site::Job job = with_digging;
    for (std::size_t i = 0; i < job.runs[0].legs.size(); ++i) {
        if (!at.job.runs[run].legs[i].trench.empty()) job.runs[0].legs[i].dug_for = "another";
    }
    const Workplace here{at.catalogue, at.book, job, at.corner, at.memo};
    LeastAlone least{no_limit, {}};
    const RunJudge house(here, 0, 0, nullptr);
    const bool behind = !site::find_building(job, job.runs[0].from)->origin;
    for (const int phases : phases_of(job, job.runs[0])) {
        for (const bool island : {false, true}) {
            if (island && !behind) continue;
            const study::Incoming in = any_board(here, house.setting(), island);
            const RunJudge judge(here, 0, phases, behind ? &in : nullptr);
            least.price = std::min(least.price, least_price(here, judge, behind));
        }
    }
    const double without = ground_price(house);
    const double tax = 1 + at.book.amount(price::Item::vat_percent) / 100;
    for (std::size_t i = 0; i < job.runs[0].legs.size(); ++i) {
        const site::Leg& leg = at.job.runs[run].legs[i];
        if (leg.trench.empty()) continue;
        site::Job dug = job;
        dug.runs[0].legs[i].dug_for.clear();
        const Workplace there{at.catalogue, at.book, dug, at.corner, at.memo};
        const double price = ground_price(RunJudge(there, 0, 0, nullptr)) - without;
        least.digs.push_back({leg.trench, leg.length.high, price * tax});
    }
    return least;
}

}  // namespace toft::tree
