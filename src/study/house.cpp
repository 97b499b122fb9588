#include "study/setting_parts.h"

namespace toft::study {

namespace {

void board(Settler& settler, const site::Job& job, double& spare, Amperes& largest, Amperes& rcd) {
    const site::HouseBoard& board = job.intake.board;
    if (board.spare_ways.known) {
        spare = board.spare_ways.low;
    } else {
        spare = settler.settle(site::Answer::unknown,
                               {"/intake/board/spare_ways", "a spare way in the house's board", ""},
                               false)
                    ? 1
                    : 0;
    }
    const auto allowed =
        settler.settle(board.max_device, {"/intake/board/max_device_a",
                                          "largest device the house's board takes: read its label",
                                          "board.max_device"});
    largest = allowed.bounds.least;
    const auto before =
        settler.settle(board.behind_rcd,
                       {"/intake/board/behind_rcd_ma",
                        "RCD in front of the ways of the house's board: look", "board.behind_rcd"},
                       1e-3);
    rcd = before.bounds.most;
}

/// What the house draws, where nobody said: unknown, or a figure that somebody tries.
template <class L>
void demand_unsaid(L& ledger, Settler& settler, Setting<L>& s) {
    const std::string pointer = "/intake/demand_a";
    const auto drawn = settler.settle(
        site::Fact<Amperes>{}, {pointer, "what the house draws at most by itself", "house.demand"});
    if (settler.leaves_open(pointer)) {
        s.unsaid.push_back({Unsaid::house_demand, pointer});
        return;
    }
    const auto estimated = static_cast<std::size_t>(demand::Way::estimated);
    s.house.demand.known[estimated] = true;
    s.house.demand.by[estimated] =
        ledger.stated({"I.house", "largest demand of the house"}, drawn.bounds.most, drawn.from);
}

/// What the house draws and what its intake carries.
template <class L>
void intake(L& ledger, Settler& settler, const Incoming* incoming, Setting<L>& s) {
    const tables::Demand& tables = s.catalogue->demand;
    const demand::Place<L> place{&tables, s.supply.u0, s.job->intake.phases, "house"};
    s.house.demand = demand::house_demand(ledger, place, *s.job, wanted_scenario(*s.job));
    if (!incoming && !s.house.demand.best()) demand_unsaid(ledger, settler, s);
    const auto fuse = ledger.stated(
        {"In.fuse", "rating of the operator's fuse, the smallest it may be"},
        s.house.service_fuse_least, s.job->intake.service_fuse ? "survey" : "not stated");
    s.house.limits = demand::intake_limits(ledger, tables, s.job->intake, fuse);
}

/// A board of an outbuilding: everything behind it stays within the device at the head of its run.
template <class L>
void outbuilding_board(const Incoming& in, Setting<L>& s) {
    HouseSetting<L>& out = s.house;
    out.at_house = false;
    out.service_fuse = in.device;
    out.service_fuse_least = in.device->rating;
    out.service_fuse_most = in.device->rating;
    out.max_device_least = in.device->rating;
    out.spare_ways = site::most_spare_ways;  // its board is bought to fit
    out.residual_before = in.residual;
    out.behind_rcd = in.residual ? in.residual->sensitivity : amperes(0);
    out.isolator = true;
    out.takes.clear();
    out.breaking_known = false;
    out.tails_known = true;
    out.tails_most = metres(0);
    out.assembly_backed = false;
}

}  // namespace

template <class L>
void prepare_house(L& ledger, Settler& settler, Setting<L>& s, const Incoming* incoming) {
    const site::Intake& in = s.job->intake;
    HouseSetting<L>& out = s.house;
    const auto neutral = settler.settle(
        in.supply_neutral,
        {"/intake/supply_neutral_mm2", "the operator's neutral conductor", "supply_neutral"});
    out.neutral_most = ledger.stated({"Sn", "the operator's neutral, the largest it may be"},
                                     neutral.bounds.most, neutral.from);
    const auto earthing = settler.settle(
        in.earthing_conductor,
        {"/intake/earthing_conductor_mm2", "the house's earthing conductor", "earthing_conductor"});
    out.earthing_most = ledger.stated({"Se", "earthing conductor of the house"},
                                      earthing.bounds.most, earthing.from);
    out.earthing_least =
        ledger.stated({"Se.least", "earthing conductor of the house, the smallest"},
                      earthing.bounds.least, earthing.from);
    const auto bonding = settler.settle(
        in.main_bonding, {"/intake/main_bonding_mm2", "main bonding at the house", "main_bonding"});
    out.bonding_least = ledger.stated({"Sb", "main bonding at the house, the smallest it may be"},
                                      bonding.bounds.least, bonding.from);
    board(settler, *s.job, out.spare_ways, out.max_device_least, out.behind_rcd);
    out.takes = in.board.takes;
    out.isolator = in.isolator == site::Answer::yes;
    out.breaking_known = in.board.breaking.known;
    out.breaking_least = in.board.breaking.low;
    out.tails_known = in.tails_length.known;
    if (!in.tails_length.known) {
        s.assumed.push_back(
            "the tails are taken as no longer than the operator allows without a switch-fuse: "
            "measure them");
    }
    out.tails_most = in.tails_length.high;
    site::Fact<Amperes> fuse;
    if (in.service_fuse) fuse = {true, in.service_fuse->rating, in.service_fuse->rating};
    const auto rating =
        settler.settle(fuse, {"/intake/service_fuse", "the operator's fuse", "service_fuse"});
    out.service_fuse_least = rating.bounds.least;  // the smaller fuse admits less
    out.service_fuse_most = rating.bounds.most;
    for (const tables::Device& d : s.catalogue->devices) {
        const auto& stated = in.service_fuse;
        if (stated && d.standard == stated->standard && d.curve == stated->curve &&
            d.rating == stated->rating && !out.service_fuse) {
            out.service_fuse = &d;
        }
    }
    const bool backing_kind = in.service_fuse && (in.service_fuse->standard == "BS 88-3" ||
                                                  in.service_fuse->standard == "BS 1361");
    out.assembly_backed = s.phases == 1 && backing_kind &&
                          in.service_fuse->rating <= s.catalogue->limits.assembly_fuse.value;
    intake(ledger, settler, incoming, s);
    if (incoming) outbuilding_board(*incoming, s);
    out.spare_ways += site::ways_in_use(*s.run);
}

template void prepare_house(Silent&, Settler&, Setting<Silent>&, const Incoming*);
template void prepare_house(Recording&, Settler&, Setting<Recording>&, const Incoming*);

}  // namespace toft::study
