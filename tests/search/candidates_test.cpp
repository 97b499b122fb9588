#include "search/candidates.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace toft::search {
namespace {

using site::FedFrom;
using study::BuildingEarthing;
using study::Protective;
using tables::Family;

struct Lists {
    std::vector<Route> routes;
    std::vector<Head> heads;
};

Lists lists_of(const site::Job& job) {
    const auto setting = support::prepared(job);
    const Shop shop = shop_for(setting);
    return {routes_of(shop, setting), heads_of(shop, setting)};
}

/// One family and the household fuse alone.
site::Job narrow(site::Job job) {
    job.wishes.offer = {"armoured XLPE copper"};
    job.wishes.devices = {"BS 88-3"};
    return job;
}

/// Sizes of that family with so many cores that have a rating and a drop for such a run.
std::size_t sizes(Family family, int cores, int phases) {
    const auto& cables = support::catalogue().cables;
    return static_cast<std::size_t>(
        std::count_if(cables.begin(), cables.end(), [&](const tables::Cable& c) {
            return c.family == family && c.cores == cores &&
                   c.duty(phases).drop_r.citation != nullptr;
        }));
}

/// Of them those that may be laid in pairs.
std::size_t paired_sizes(Family family, int cores, int phases) {
    const auto& all = support::catalogue();
    return static_cast<std::size_t>(
        std::count_if(all.cables.begin(), all.cables.end(), [&](const tables::Cable& c) {
            return c.family == family && c.cores == cores &&
                   c.duty(phases).drop_r.citation != nullptr &&
                   c.section >= all.limits.parallel_least.value;
        }));
}

TEST(Candidates, TheWholeListOfOneFamily) {
    const Lists lists = lists_of(narrow(support::plain_job()));
    constexpr Family usual = Family::armoured_xlpe_copper;
    const std::size_t three = sizes(usual, 3, 1) + paired_sizes(usual, 3, 1);
    const std::size_t two = sizes(usual, 2, 1) + paired_sizes(usual, 2, 1);
    const std::size_t separates = support::catalogue().separates.size();
    // A core with or without the armour; the armour with or without each separate conductor, or
    // that alone; on an own rod the armour.
    EXPECT_EQ(lists.routes.size(), 2 * three + two * (1 + 2 * separates) + two);
    // 8 fuses on the tails, each without and with each residual current device.
    EXPECT_EQ(lists.heads.size(), 8 * (1 + support::catalogue().run_rcds.size()));
}

TEST(Candidates, ThreePhasesTakeFourOrFiveCores) {
    site::Job job = support::on_three_phases(support::plain_job());
    const auto setting = support::prepared(job);
    const Shop shop = shop_for(setting);
    EXPECT_EQ(shop.phases, 3);
    ASSERT_FALSE(shop.cables.empty());
    for (const Route& route : routes_of(shop, setting)) {
        EXPECT_EQ(route.phases, 3);
        const study::Stretch& laid = route.stretch[0];
        const bool armoured = tables::make_of(support::catalogue(), *laid.cable).armoured;
        const bool core = study::core_serves(laid.protective);
        EXPECT_NE(laid.cable->family, Family::flat_twin_and_earth);
        EXPECT_EQ(laid.cable->cores, core || !armoured ? 5 : 4);
    }
}

TEST(Candidates, NoSchemeTwice) {
    for (unsigned seed = 0; seed < 10; ++seed) {
        const Lists lists = lists_of(support::random_job(seed));
        std::set<std::string> keys;
        for (const Route& route : lists.routes) {
            for (const Head& head : lists.heads) {
                EXPECT_TRUE(keys.insert(study::scheme_key(scheme_of(route, head))).second)
                    << study::scheme_key(scheme_of(route, head));
            }
        }
    }
}

TEST(Candidates, EveryRouteCanBeBuilt) {
    const Lists lists = lists_of(support::plain_job());
    std::set<Family> seen;
    for (const Route& route : lists.routes) {
        const study::Stretch& laid = route.stretch[0];
        const bool armoured = tables::make_of(support::catalogue(), *laid.cable).armoured;
        const bool own = route.earthing == BuildingEarthing::own_electrode;
        seen.insert(laid.cable->family);
        EXPECT_EQ(route.stretches, 1u);
        EXPECT_EQ(laid.separate != nullptr, study::separate_serves(laid.protective));
        if (study::armour_serves(laid.protective)) {
            EXPECT_TRUE(armoured);
        }
        if (own && armoured) {
            EXPECT_EQ(laid.protective, Protective::armour);
        }
        if (own && armoured) {
            EXPECT_EQ(laid.cable->cores, 2);
        }
        if (laid.parallel == 2) {
            EXPECT_GE(laid.cable->section, support::catalogue().limits.parallel_least.value);
        }
    }
    EXPECT_EQ(seen.size(), tables::families);
}

TEST(Candidates, StretchesOfOneDescriptionTakeOneCableAndOthersTheirOwn) {
    using site::LegMethod;
    site::Job job = narrow(support::job_with_legs({support::plain_leg(LegMethod::clipped, 5),
                                                   support::plain_leg(LegMethod::buried_direct),
                                                   support::plain_leg(LegMethod::clipped, 5)}));
    support::name_cable(job.runs[0].legs[1], support::cable(3, 10));
    std::size_t middle = 0;
    const Lists lists = lists_of(job);
    ASSERT_FALSE(lists.routes.empty());
    for (const Route& route : lists.routes) {
        ASSERT_EQ(route.stretches, 3u);
        EXPECT_EQ(route.stretch[1].cable->cores, 3);
        EXPECT_EQ(route.stretch[0].cable, route.stretch[2].cable);
        EXPECT_EQ(route.stretch[0].protective, route.stretch[2].protective);
        middle += route.stretch[0].cable != route.stretch[1].cable;
    }
    EXPECT_GT(middle, 0u);
}

TEST(Candidates, FusesStandOnTheTailsBreakersInBoardsAndOldFusesNowhereNew) {
    std::set<FedFrom> of_moulded;
    for (const Head& head : lists_of(support::plain_job()).heads) {
        EXPECT_NE(head.device->kind, tables::Kind::rewirable);
        EXPECT_NE(head.device->standard, "BS 1361");
        if (head.device->fuse()) {
            EXPECT_EQ(head.fed_from, FedFrom::tails);
        }
        if (head.device->kind == tables::Kind::moulded) of_moulded.insert(head.fed_from);
        if (head.device->residual) {
            EXPECT_EQ(head.rcd, nullptr);
        }
    }
    EXPECT_EQ(of_moulded, std::set<FedFrom>{FedFrom::tails});
}

TEST(Candidates, AnOldBoardTakesItsOwnFusesInItsSpareWays) {
    site::Job job = support::plain_job();
    job.intake.board.takes = "BS 3036";
    std::set<std::string> in_ways;
    for (const Head& head : lists_of(job).heads) {
        if (head.fed_from == FedFrom::spare_way) in_ways.insert(head.device->standard);
    }
    EXPECT_EQ(in_ways, std::set<std::string>{"BS 3036"});
}

TEST(Candidates, ATtHouseSharesItsElectrodeAndHasNoSuppliesEarth) {
    site::Job job = support::plain_job();
    job.intake.earthing = site::Earthing::tt;
    job.intake.electrode = support::measured(ohms(50));
    std::set<BuildingEarthing> seen;
    for (const Route& route : lists_of(job).routes) seen.insert(route.earthing);
    EXPECT_EQ(seen, (std::set<BuildingEarthing>{BuildingEarthing::shared_electrode,
                                                BuildingEarthing::own_electrode}));
}

TEST(Candidates, WishesExclude) {
    site::Job job = support::plain_job();
    job.wishes.smallest_core = support::measured(square_millimetres(16));
    for (const Route& route : lists_of(job).routes) {
        EXPECT_GE(route.stretch[0].cable->section, square_millimetres(16));
    }
    job.wishes.offer = {"flat twin and earth"};
    job.wishes.devices = {"BS EN 61009"};
    const Lists lists = lists_of(job);
    ASSERT_FALSE(lists.routes.empty());
    for (const Route& route : lists.routes) {
        EXPECT_EQ(route.stretch[0].cable->family, Family::flat_twin_and_earth);
    }
    ASSERT_FALSE(lists.heads.empty());
    for (const Head& head : lists.heads) EXPECT_EQ(head.device->standard, "BS EN 61009");
}

TEST(Candidates, ANamedDeviceIsTheOnlyOne) {
    site::Job job = support::plain_job();
    job.runs[0].device = site::NamedDevice{"BS 1361", "", amperes(45)};
    const Lists lists = lists_of(job);
    ASSERT_FALSE(lists.heads.empty());
    for (const Head& head : lists.heads) {
        EXPECT_EQ(head.device->standard, "BS 1361");
        EXPECT_EQ(head.device->rating, amperes(45));
    }
}

TEST(Candidates, AStatedFeedIsTheOnlyOne) {
    site::Job job = support::plain_job();
    for (FedFrom place : {FedFrom::spare_way, FedFrom::tails, FedFrom::new_board}) {
        job.runs[0].fed_from = place;
        const Lists lists = lists_of(job);
        EXPECT_FALSE(lists.heads.empty());
        for (const Head& head : lists.heads) EXPECT_EQ(head.fed_from, place);
    }
}

}  // namespace
}  // namespace toft::search
