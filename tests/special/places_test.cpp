#include "special/advising.h"

namespace toft::special {
namespace {

using site::CircuitKind;
using site::Use;

site::Job used_as(Use use) {
    site::Job job = support::plain_job();
    job.buildings[1].use = use;
    return job;
}

TEST(Places, EachHasItsSectionAndNeedsAPerson) {
    struct Row {
        Use use;
        const char* what;
        const char* clause;
    };
    for (const Row& row :
         {Row{Use::stable, "animals", "705"}, Row{Use::animal_house, "animals", "705"},
          Row{Use::pool_house, "pool or tub", "702"}, Row{Use::hot_tub, "pool or tub", "702"},
          Row{Use::caravan_pitch, "caravan", "708"}, Row{Use::boat_mooring, "boat", "709"}}) {
        const Advice advice = about(used_as(row.use), row.what);
        EXPECT_TRUE(advice.needs_a_person) << row.what;
        EXPECT_TRUE(holds(advice.footing->clause, row.clause)) << row.what;
        EXPECT_FALSE(advises(used_as(Use::office), row.what)) << row.what;
    }
}

TEST(Places, ATubOrASaunaIsOneWhereverItStands) {
    EXPECT_TRUE(advises(with_circuit(CircuitKind::hot_tub), "pool or tub"));
    EXPECT_TRUE(holds(about(with_circuit(CircuitKind::sauna), "sauna").footing->clause, "703"));
}

TEST(Places, AnimalsKeptInAShedCountAsInAStable) {
    site::Job job = used_as(Use::shed);
    EXPECT_FALSE(advises(job, "animals"));
    job.buildings[1].livestock = site::Answer::yes;
    EXPECT_TRUE(advises(job, "animals"));
}

TEST(Places, AContainerMayOneDayBeMoved) {
    site::Job job = used_as(Use::store);
    job.buildings[1].construction = site::Construction::steel_container;
    EXPECT_TRUE(about(job, "container").needs_a_person);
    job.buildings[1].construction = site::Construction::steel_frame;
    EXPECT_FALSE(advises(job, "container"));
}

}  // namespace
}  // namespace toft::special
