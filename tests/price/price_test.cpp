#include "price/price.h"

#include "support/catalogue.h"
#include "support/draws.h"
#include "support/examples.h"
#include "support/existing.h"
#include "support/jobs.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::price {
namespace {

using study::BuildingEarthing;
using study::Protective;
using support::measured;

const Book& book() {
    static const Book loaded = support::demo_book(support::catalogue());
    return loaded;
}

Price<Silent> priced(const site::Job& job, const study::RunScheme& scheme,
                     const std::vector<Item>& remedies = {}) {
    Silent silent;
    return price_of(silent, book(), support::prepared(job), scheme, {remedies, {}});
}

study::RunScheme plain() {
    return support::scheme(support::cable(2, 10), Protective::armour, support::fuse(32));
}

/// A pipe that brings in a potential.
site::Metalwork pipe() {
    site::Metalwork m;
    m.what = site::Metal::water_pipe;
    m.insulating_section = site::Answer::no;
    m.bonded_at_house = site::Answer::no;
    return m;
}

TEST(Price, APlainRunByHand) {
    site::Job job = support::plain_job();  // 30 m buried direct: 5.60 × (30 + 2 × 1.50) × 1.04
    job.runs[0].legs[0].surface = site::Surface::lawn;
    const auto p = priced(job, plain());
    EXPECT_NEAR(p.house_end.number(), 3.90 + 58 + 42 + 34 + 2.0 * 46, 1e-9);
    EXPECT_NEAR(p.run.number(), 192.19 + 13.50 + 1.60 * 46, 1e-9);
    EXPECT_NEAR(p.ground.number(), 30 * (19 + 4.20 + 0.07 * 46), 1e-9);
    EXPECT_NEAR(p.far_end.number(), 74 + 2 * 27 + 2.5 * 46, 1e-9);  // two ways where none is stated
    EXPECT_NEAR(p.test_and_paper.number(), 165, 1e-9);
    EXPECT_NEAR(p.remedies.number(), 0, 1e-9);
    const double net = p.house_end.number() + p.run.number() + p.ground.number() +
                       p.far_end.number() + p.test_and_paper.number();
    EXPECT_NEAR(p.net.number(), net, 1e-9);
    EXPECT_NEAR(net, 1709.79, 1e-9);
    EXPECT_NEAR(p.vat.number(), 341.96, 1e-9);  // 341.958 to the penny
    EXPECT_NEAR(p.total.number(), 1709.79 + 341.96, 1e-9);
}

TEST(Price, ACableThatStaysCostsATestAndNoTrench) {
    site::Job job =
        support::with_cable_there(support::plain_job(), support::cable(2, 10));  // 30 m, buried
    job.runs[0].legs[0].surface = site::Surface::lawn;
    study::RunScheme s = plain();
    const auto anew = priced(job, s);
    const double off = 1.00 * 46;
    EXPECT_NEAR(anew.run.number(), 192.19 + 13.50 + 1.60 * 46 + off, 1e-9);
    s.first().laid = study::Laid::kept;
    const auto kept = priced(job, s);
    EXPECT_EQ(kept.run.number(), 0);
    EXPECT_EQ(kept.ground.number(), 0);
    EXPECT_NEAR(kept.test_and_paper.number(), 165 + 48, 1e-9);
    EXPECT_EQ(kept.house_end, anew.house_end);
    s.first().laid = study::Laid::doubled;
    s.first().parallel = 2;
    const auto both = priced(job, s);  // one more cable, in a trench of its own
    EXPECT_NEAR(both.run.number(), anew.run.number() - off, 1e-9);
    EXPECT_EQ(both.ground, anew.ground);
}

TEST(Price, ABondBesideACableThatStaysIsDugFor) {
    site::Job job = support::with_cable_there(support::plain_job(), support::cable(2, 10));
    job.runs[0].legs[0].surface = site::Surface::lawn;
    study::RunScheme s = plain();
    s.first().laid = study::Laid::kept;
    s.first().protective = Protective::armour_and_separate;
    s.first().separate = support::catalogue().separates.data() + 3;  // 16 mm²
    ASSERT_EQ(s.first().separate->section, square_millimetres(16));
    const auto p = priced(job, s);
    EXPECT_NEAR(p.run.number(), 116.69 + 30 * 0.07 * 46, 1e-9);
    EXPECT_NEAR(p.ground.number(), 30 * (19 + 4.20), 1e-9);
}

TEST(Price, AHeadThatStaysCostsNothingButAResidualDeviceBeforeIt) {
    const site::Job job = support::plain_job();
    study::RunScheme s = plain();
    s.head_stays = true;
    EXPECT_EQ(priced(job, s).house_end.number(), 0);
    s.rcd = &support::catalogue().run_rcds.front();
    EXPECT_NEAR(priced(job, s).house_end.number(), 88 + 2.0 * 46, 1e-9);
}

TEST(Price, AnIsolatorThatIsThereIsNotBought) {
    site::Job job = support::plain_job();
    const double without = priced(job, plain()).house_end.number();
    job.intake.isolator = site::Answer::no;
    EXPECT_EQ(priced(job, plain()).house_end.number(), without);
    job.intake.isolator = site::Answer::yes;
    EXPECT_NEAR(priced(job, plain()).house_end.number(), without - book().amount(Item::isolator),
                1e-9);
}

TEST(Price, WhereItIsFedFrom) {
    study::RunScheme s = plain();
    s.device = &support::breaker("B", 32);
    s.fed_from = site::FedFrom::spare_way;
    const double way = priced(support::plain_job(), s).house_end.number();
    EXPECT_NEAR(way, 6.80 + 2.0 * 46, 1e-9);
    s.fed_from = site::FedFrom::new_board;
    EXPECT_NEAR(priced(support::plain_job(), s).house_end.number(), way + 135 + 42 + 34, 1e-9);
    s.rcd = &support::catalogue().run_rcds.front();
    EXPECT_NEAR(priced(support::plain_job(), s).house_end.number(), way + 135 + 42 + 34 + 88, 1e-9);
}

TEST(Price, GlandsComeInThreeSizes) {
    const auto glands = [](double section) {
        study::RunScheme s = plain();
        s.first().cable = &support::cable(2, section);
        const auto index =
            static_cast<std::size_t>(s.first().cable - support::catalogue().cables.data());
        return priced(support::plain_job(), s).run.number() -
               penny(pounds(book().cables[index].number() * 33 * 1.04)).number();
    };
    for (double section : {1.5, 2.5, 4.0, 6.0}) EXPECT_NEAR(glands(section), 9 + 1.2 * 46, 1e-9);
    for (double section : {10.0, 16.0}) EXPECT_NEAR(glands(section), 13.5 + 1.6 * 46, 1e-9);
    for (double section : {25.0, 50.0, 95.0}) EXPECT_NEAR(glands(section), 22 + 2.2 * 46, 1e-9);
}

TEST(Price, ASeparateConductorIsBoughtAndLaid) {
    const double without = priced(support::plain_job(), plain()).run.number();
    study::RunScheme s = plain();
    s.first().protective = Protective::separate;
    const std::pair<double, double> rows[] = {
        {4, 0.95}, {6, 1.35}, {10, 2.2}, {16, 3.4}, {25, 5.2}};
    for (const auto& [section, price] : rows) {
        s.first().separate = &support::conductor(section);
        EXPECT_NEAR(priced(support::plain_job(), s).run.number() - without,
                    penny(pounds(price * 33 * 1.04)).number() + 30 * 0.07 * 46, 1e-9)
            << section;
    }
}

TEST(Price, AnOwnElectrodeIsPricedByThePieceWithItsInsulatedGland) {
    site::Job job = support::plain_job();  // one rod of 2.4 m: two pieces
    study::RunScheme own = plain();
    own.earthing = BuildingEarthing::own_electrode;
    const auto shared = priced(job, plain());
    EXPECT_NEAR(priced(job, own).run.number() - shared.run.number(), 16.5, 1e-9);
    const auto extra = [&] { return priced(job, own).far_end.number() - shared.far_end.number(); };
    EXPECT_NEAR(extra(), 2 * (14.5 + 0.75 * 46) + 19, 1e-9);
    job.buildings[1].electrode.rods = measured(3.0);
    EXPECT_NEAR(extra(), 6 * (14.5 + 0.75 * 46) + 19, 1e-9);
    job.buildings[1].electrode.length = measured(metres(1.2));
    EXPECT_NEAR(extra(), 3 * (14.5 + 0.75 * 46) + 19, 1e-9);
    job.buildings[1].electrode.length = measured(metres(1.5));
    EXPECT_NEAR(extra(), 6 * (14.5 + 0.75 * 46) + 19, 1e-9);
    job.buildings[1].electrode = {};  // the usual rod
    EXPECT_NEAR(extra(), 2 * (14.5 + 0.75 * 46) + 19, 1e-9);
}

TEST(Price, EachMetalPartThatBringsInAPotentialIsBonded) {
    site::Job job = support::plain_job();
    const double bare = priced(job, plain()).far_end.number();
    job.buildings[1].metalwork = {pipe()};
    EXPECT_NEAR(priced(job, plain()).far_end.number() - bare, 8.5 + 3 * 2.2 + 0.75 * 46, 1e-9);
    job.buildings[1].metalwork = {pipe(), pipe()};
    EXPECT_NEAR(priced(job, plain()).far_end.number() - bare, 2 * (8.5 + 3 * 2.2 + 0.75 * 46),
                1e-9);
    job.buildings[1].metalwork[0].insulating_section = site::Answer::yes;
    EXPECT_NEAR(priced(job, plain()).far_end.number() - bare, 8.5 + 3 * 2.2 + 0.75 * 46, 1e-9);
}

TEST(Price, OneRcboACircuit) {
    site::Job job = support::plain_job();
    job.buildings[1].circuits.resize(5);
    for (auto& circuit : job.buildings[1].circuits) circuit.load_w = measured(100.0);
    EXPECT_NEAR(priced(job, plain()).far_end.number(), 74 + 5 * 27 + 2.5 * 46, 1e-9);
}

TEST(Price, EverySurfaceHasItsTrenchAndDuctsCostMore) {
    const std::pair<site::Surface, double> rows[] = {
        {site::Surface::lawn, 19},        {site::Surface::bed, 17},   {site::Surface::path, 42},
        {site::Surface::drive, 58},       {site::Surface::patio, 46}, {site::Surface::field, 15},
        {site::Surface::shared_path, 64}, {site::Surface::road, 120}};
    for (const auto& [surface, trench] : rows) {
        site::Job job = support::plain_job();
        job.runs[0].legs[0].surface = surface;
        const double direct = priced(job, plain()).ground.number();
        EXPECT_NEAR(direct, 30 * (trench + 4.2 + 0.07 * 46), 1e-9) << site::word(surface);
        job.runs[0].legs[0].method = site::LegMethod::buried_in_duct;
        EXPECT_NEAR(priced(job, plain()).ground.number() - direct, 30 * 3.6, 1e-9);
    }
}

TEST(Price, ClipsAndTrays) {
    const auto ground = [](site::LegMethod method) {
        return priced(support::job_with_legs({support::plain_leg(method, 10)}), plain())
            .ground.number();
    };
    EXPECT_NEAR(ground(site::LegMethod::clipped), 10 * (1.1 + 0.17 * 46), 1e-9);
    EXPECT_NEAR(ground(site::LegMethod::tray), 10 * (11.5 + 0.17 * 46), 1e-9);
}

TEST(Price, RemediesAreInThePrice) {
    const auto without = priced(support::plain_job(), plain());
    const auto with = priced(support::plain_job(), plain(),
                             {Item::house_bonding_upgrade, Item::earthing_conductor_upgrade});
    EXPECT_NEAR(with.remedies.number(), 145 + 85, 1e-9);
    EXPECT_NEAR(with.total.number() - without.total.number(), 1.2 * 230, 1e-9);
}

TEST(Price, AnOpenLengthIsBoughtInFull) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].length = support::between(metres(20), metres(30));
    EXPECT_DOUBLE_EQ(priced(job, plain()).total.number(),
                     priced(support::plain_job(), plain()).total.number());
}

RC_GTEST_PROP(Price, WhatIsRecordedIsWhatIsPricedAndItsWorkingIsRight, ()) {
    const support::Drawn drawn = *support::any_drawn();
    const site::Job job = support::job_of(drawn);
    study::RunScheme scheme = support::scheme_of(drawn);
    const auto setting = support::prepared(job);
    if (scheme.first().separate) scheme.first().separate = &support::conductor(10);
    Recording ledger;
    const auto recorded =
        price_of(ledger, book(), setting, scheme, {{Item::house_bonding_upgrade}, {}});
    const auto silent = priced(job, scheme, {Item::house_bonding_upgrade});
    RC_ASSERT(recorded.total.value == silent.total);
    RC_ASSERT(recorded.house_end.value == silent.house_end);
    RC_ASSERT(recorded.run.value == silent.run);
    RC_ASSERT(recorded.ground.value == silent.ground);
    RC_ASSERT(recorded.far_end.value == silent.far_end);
    RC_ASSERT(support::wrong_lines(ledger.lines()) == std::vector<std::string>{});
}

RC_GTEST_PROP(Price, LongerAndThickerIsNeverCheaper, ()) {
    const support::Drawn drawn = *support::any_drawn();
    support::Drawn longer = drawn;
    longer.legs.front().length_m += support::number_between(0, 30);
    support::Drawn thicker = drawn;
    if (thicker.size + 1 < support::sizes_of(drawn)) ++thicker.size;
    const auto total = [](const support::Drawn& d) {
        study::RunScheme s = support::scheme_of(d);
        if (s.first().separate) s.first().separate = &support::conductor(10);
        return priced(support::job_of(d), s).total;
    };
    RC_ASSERT(total(longer) >= total(drawn));
    RC_ASSERT(total(thicker) >= total(drawn));
}

double item(Item key) { return book().amount(key); }

double metre_of(const tables::Cable& cable) {
    return book()
        .cables[static_cast<std::size_t>(&cable - support::catalogue().cables.data())]
        .number();
}

TEST(Price, ThreePhasesCostThreePolesALargerBoardAndAFourPoleRcd) {
    const site::Job one = support::plain_job();
    const site::Job three = support::on_three_phases(one);
    study::RunScheme s = plain();
    s.device = &support::breaker("B", 32);
    s.fed_from = site::FedFrom::spare_way;
    const double hours = item(Item::hours_house_end) * item(Item::labour_hour);
    const double single = priced(one, s).house_end.number() - hours;
    const double far = priced(one, s).far_end.number();
    s.phases = 3;
    const double poles = single * item(Item::poles_factor);
    EXPECT_GT(item(Item::poles_factor), 1);
    EXPECT_NEAR(priced(three, s).house_end.number() - hours, poles, 1e-9);
    EXPECT_NEAR(priced(three, s).far_end.number() - far, item(Item::three_phase_board_extra), 1e-9);
    s.rcd = &support::catalogue().run_rcds.front();
    EXPECT_NEAR(priced(three, s).house_end.number() - hours,
                poles + item(Item::delayed_rcd) + item(Item::four_pole_rcd_extra), 1e-9);
    s.rcd = nullptr;
    s.fed_from = site::FedFrom::tails;
    EXPECT_NEAR(priced(three, s).house_end.number() - hours,
                poles + item(Item::three_pole_switch_fuse) +
                    item(Item::connector_blocks_and_tails) + item(Item::isolator),
                1e-9);
}

TEST(Price, AChangeOfCableCostsAJointBoxAndTheTailsAndGlandsOfBoth) {
    const auto& first = support::cable(3, 10);
    const auto& second = support::cable(2, 6);
    site::Leg a = support::plain_leg(site::LegMethod::clipped, 12);
    site::Leg b = support::plain_leg(site::LegMethod::clipped, 20);
    support::name_cable(a, first);
    support::name_cable(b, second);
    const auto s = support::scheme(
        {support::stretch(first, Protective::core), support::stretch(second, Protective::armour)},
        support::breaker("B", 32));
    const double waste = 1 + item(Item::allowance_percent) / 100;
    const double tails = 2 * item(Item::tail_m);
    const double hour = item(Item::labour_hour);
    const double expected =
        penny(pounds(metre_of(first) * (12 + tails) * waste)).number() +
        penny(pounds(metre_of(second) * (20 + tails) * waste)).number() +
        item(Item::gland_pair_medium) + item(Item::gland_pair_small) +
        hour * (item(Item::hours_gland_pair_medium) + item(Item::hours_gland_pair_small)) +
        item(Item::joint_box) + hour * item(Item::hours_joint_box);
    EXPECT_NEAR(priced(support::job_with_legs({a, b}), s).run.number(), expected, 1e-9);
}

TEST(Price, CableWithoutArmourNeedsNoGlands) {
    const auto& flat = support::cable(tables::Family::flat_twin_and_earth, 2, 6);
    const auto s = support::scheme(flat, Protective::core, support::breaker("B", 32));
    const double bought = (30 + 2 * item(Item::tail_m)) * (1 + item(Item::allowance_percent) / 100);
    EXPECT_NEAR(priced(support::plain_job(), s).run.number(),
                penny(pounds(metre_of(flat) * bought)).number(), 1e-9);
}

TEST(Price, APairIsBoughtGlandedTwice) {
    study::RunScheme s =
        support::scheme(support::cable(2, 25), Protective::armour, support::breaker("B", 63));
    const double one = priced(support::plain_job(), s).run.number();
    s.first().parallel = 2;
    EXPECT_NEAR(priced(support::plain_job(), s).run.number(), 2 * one, 0.01);  // as one line
}

TEST(Price, TheBondInTheBuildingIsOfTheSizeThatIsFitted) {
    site::Job job = support::plain_job();
    job.buildings[1].metalwork = {pipe()};
    const double ten = priced(job, plain()).far_end.number();
    job.intake.supply_neutral = measured(square_millimetres(50));  // sixteen asked for
    EXPECT_NEAR(priced(job, plain()).far_end.number() - ten, 3 * (3.40 - 2.20), 1e-9);
}

TEST(Price, AddingUpAgainChangesNothing) {
    auto p = priced(support::plain_job(), plain(), {{Item::house_bonding_upgrade}, {}});
    const auto before = p;
    add_up(p, book());
    EXPECT_EQ(p.net, before.net);
    EXPECT_EQ(p.vat, before.vat);
    EXPECT_EQ(p.total, before.total);
}

}  // namespace
}  // namespace toft::price
