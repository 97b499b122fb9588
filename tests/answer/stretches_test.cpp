#include "answer/outline.h"

#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::answer {
namespace {

using study::Protective;
using tables::Family;

site::Job flat_then_armoured() {
    site::Leg flat = support::plain_leg(site::LegMethod::clipped, 6);
    flat.family = "flat twin and earth";
    flat.indoors = site::Answer::yes;
    flat.concealed = site::Answer::no;
    return support::job_with_legs({flat, support::plain_leg(site::LegMethod::buried_direct, 20),
                                   support::plain_leg(site::LegMethod::clipped, 2)});
}

study::RunScheme two_cables(Protective outdoors) {
    auto scheme = support::scheme(support::cable(Family::flat_twin_and_earth, 2, 6),
                                  Protective::core, support::fuse(32));
    scheme.stretch[1] = {&support::cable(2, 10), outdoors, nullptr, 1};
    scheme.stretches = 2;
    return scheme;
}

TEST(Stretches, EachCoversItsLegsAndNamesItsCable) {
    const site::Job job = flat_then_armoured();
    const auto setting = support::prepared(job);
    const auto all = stretches_of(setting, two_cables(Protective::armour));
    ASSERT_EQ(all.size(), 2u);
    EXPECT_EQ(all[0].family, "flat twin and earth");
    EXPECT_EQ(all[0].first_leg, 1);
    EXPECT_EQ(all[0].last_leg, 1);
    EXPECT_DOUBLE_EQ(all[0].length_m, 6);
    EXPECT_EQ(all[0].cpc_mm2, 2.5);
    EXPECT_FALSE(all[0].armoured);
    EXPECT_EQ(all[1].family, "armoured XLPE copper");
    EXPECT_EQ(all[1].first_leg, 2);
    EXPECT_EQ(all[1].last_leg, 3);
    EXPECT_DOUBLE_EQ(all[1].length_m, 22);
    EXPECT_EQ(all[1].protective_conductor, "armour");
    EXPECT_EQ(all[1].standard, "BS 5467");
}

TEST(Stretches, AnArmourThatServesIsCarriedThroughEveryJointBox) {
    site::Job job = flat_then_armoured();
    std::swap(job.runs[0].legs[0], job.runs[0].legs[2]);
    const auto setting = support::prepared(job);
    auto scheme = two_cables(Protective::armour);
    std::swap(scheme.stretch[0], scheme.stretch[1]);
    const auto all = stretches_of(setting, scheme);
    EXPECT_TRUE(all[0].armour_near);
    EXPECT_TRUE(all[0].armour_far);
    scheme.stretch[0].cable = &support::cable(3, 10);
    scheme.stretch[0].protective = Protective::core;
    EXPECT_FALSE(stretches_of(setting, scheme)[0].armour_far);
}

TEST(Stretches, WithAnElectrodeOfItsOwnTheFarArmourIsIsolated) {
    const site::Job job = flat_then_armoured();
    const auto setting = support::prepared(job);
    auto scheme = two_cables(Protective::armour);
    EXPECT_TRUE(stretches_of(setting, scheme)[1].armour_far);
    scheme.earthing = study::BuildingEarthing::own_electrode;
    EXPECT_FALSE(stretches_of(setting, scheme)[1].armour_far);
}

TEST(Stretches, CoresAreNamedByTheColoursTheyComeIn) {
    const site::Job job = support::plain_job();
    const auto setting = support::prepared(job);
    const auto colours = [&](const tables::Cable& cable, int phases) {
        auto scheme = support::scheme(cable, Protective::core, support::fuse(32));
        scheme.phases = phases;
        std::string text;
        const auto stretches = stretches_of(setting, scheme);
        for (const CoreAnswer& c : stretches[0].core_list) {
            text += c.colour + (c.sleeve.empty() ? "" : "(" + c.sleeve + ")") + " " + c.use + "; ";
        }
        return text;
    };
    EXPECT_EQ(colours(support::cable(3, 10), 1),
              "brown line; grey(blue) neutral; black(green-yellow) protective; ");
    EXPECT_EQ(colours(support::cable(Family::unarmoured_xlpe_copper, 3, 10), 1),
              "brown line; blue neutral; green-yellow protective; ");
    EXPECT_EQ(colours(support::cable(Family::flat_twin_and_earth, 2, 6), 1),
              "brown line; blue neutral; bare(green-yellow) protective; ");
    EXPECT_EQ(colours(support::cable(Family::armoured_xlpe_copper, 5, 10), 3),
              "brown line 1; black line 2; grey line 3; blue neutral; green-yellow protective; ");
}

}  // namespace
}  // namespace toft::answer
