// The written walk and the rules that judge schemes are one logic, and what nobody knows never
// reads as safe.

#include "base/limit.h"
#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"
#include "support/random_jobs.h"
#include "walk/walk.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <functional>
#include <vector>

namespace toft::walk {
namespace {

using rules::Verdict;
using study::BuildingEarthing;

Walk walked(const site::Job& job) { return walk(support::prepared(job)); }

const Way* find_way(const Walk& w, Choice choice) {
    for (const Way& way : w.ways) {
        if (way.choice == choice) return &way;
    }
    return nullptr;
}

Verdict judged(const char* rule, const site::Job& job, BuildingEarthing earthing) {
    auto s = support::scheme(support::cable(3, 10), study::Protective::core, support::fuse(32));
    s.earthing = earthing;
    return support::finding_of(rule, job, s).verdict;
}

RC_GTEST_PROP(EarthingLaws, AWayIsRuledOutOrNotKnownJustWhereARuleRefusesIt, ()) {
    const site::Job job = support::random_job(*rc::gen::arbitrary<unsigned>());
    struct Row {
        Choice choice;
        BuildingEarthing earthing;
    };
    for (const Row& row : {Row{Choice::supply_earth, BuildingEarthing::supply_earth},
                           Row{Choice::own_electrode, BuildingEarthing::own_electrode},
                           Row{Choice::shared_electrode, BuildingEarthing::shared_electrode}}) {
        const Walk w = walked(job);
        const Way* way = find_way(w, row.choice);
        if (!way) continue;
        bool refused = false;
        bool cautioned = false;
        for (const char* rule : {"earthing-choice", "separation", "electrode", "house-earthing"}) {
            const Verdict verdict = judged(rule, job, row.earthing);
            refused = refused || verdict == Verdict::fails;
            cautioned = cautioned || verdict == Verdict::caution;
        }
        RC_ASSERT((way->standing >= Standing::not_known) == refused);
        if (cautioned && way->standing != Standing::required) {
            RC_ASSERT(way->standing >= Standing::judgement);
        }
    }
}

/// Makes something of the outbuilding or its ground unknown.
using Blank = std::function<void(site::Job&)>;

template <class T>
Blank forget(T site::Building::*fact) {
    return [fact](site::Job& job) { job.buildings[1].*fact = T{}; };
}

template <class T>
Blank forget_of_metal(T site::Metalwork::*fact) {
    return [fact](site::Job& job) {
        for (site::Metalwork& m : job.buildings[1].metalwork) m.*fact = T{};
    };
}

/// Facts whose loss leaves every way at least as doubtful as it was.
std::vector<Blank> what_may_be_forgotten() {
    return {forget(&site::Building::livestock),
            forget(&site::Building::wet_floor),
            forget(&site::Building::barefoot),
            forget(&site::Building::vehicle_outdoors),
            forget(&site::Building::construction),
            forget(&site::Building::stands_in_ground),
            forget(&site::Building::reach_of_house_earth),
            forget_of_metal(&site::Metalwork::insulating_section),
            forget_of_metal(&site::Metalwork::bonded_at_house),
            forget_of_metal(&site::Metalwork::resistance_to_met),
            [](site::Job& job) {
                job.buildings[1].metalwork.clear();
                job.buildings[1].metalwork_surveyed = false;
            },
            [](site::Job& job) { job.intake.main_bonding = {}; },
            [](site::Job& job) {
                // One thicker than houses have asks for more bond than their range stands for.
                const auto& range =
                    *tables::find_open_range(support::catalogue(), "earthing_conductor");
                if (job.intake.earthing_conductor.high.number() > range.high.value) return;
                job.intake.earthing_conductor = {};
            }};
}

/// "Not known" is as good as "ruled out" to whoever would build it; a required way without
/// objection is as good as an open one.
int doubt(Standing standing) {
    if (standing >= Standing::not_known) return 2;
    return standing == Standing::judgement ? 1 : 0;
}

void expect_no_less_doubt(const site::Job& before, const site::Job& after, int most) {
    const Walk had = walked(before);
    const Walk has = walked(after);
    for (const Way& way : had.ways) {
        const Way* now = find_way(has, way.choice);
        RC_ASSERT(now != nullptr);
        RC_ASSERT(doubt(now->standing) >= std::min(doubt(way.standing), most));
    }
}

RC_GTEST_PROP(EarthingLaws, WhatIsNotKnownNeverReadsAsSafe, ()) {
    const site::Job before = support::random_job(*rc::gen::arbitrary<unsigned>());
    for (const Blank& blank : what_may_be_forgotten()) {
        site::Job after = before;
        blank(after);
        expect_no_less_doubt(before, after, 2);
    }
}

/// Without them something else speaks: the soil where there is no test of the electrode, an
/// ordinary building where no use is stated. A way that was ruled out may then be a matter of
/// judgement, never open.
RC_GTEST_PROP(EarthingLaws, WithoutUseOrTestADoubtStays, ()) {
    const site::Job before = support::random_job(*rc::gen::arbitrary<unsigned>());
    const std::vector<Blank> blanks{forget(&site::Building::use),
                                    [](site::Job& job) { job.buildings[1].electrode = {}; },
                                    [](site::Job& job) { job.ground.soil = ""; },
                                    [](site::Job& job) { job.ground.resistivity = {}; },
                                    [](site::Job& job) { job.intake.electrode = {}; }};
    for (const Blank& blank : blanks) {
        site::Job after = before;
        blank(after);
        expect_no_less_doubt(before, after, 1);
    }
}

RC_GTEST_PROP(EarthingLaws, ForgettingNeverLiftsACautionOfTheRule, ()) {
    const site::Job before = support::random_job(*rc::gen::arbitrary<unsigned>());
    const Verdict had = judged("earthing-choice", before, BuildingEarthing::supply_earth);
    for (const Blank& blank : what_may_be_forgotten()) {
        site::Job after = before;
        blank(after);
        RC_ASSERT(judged("earthing-choice", after, BuildingEarthing::supply_earth) >= had);
    }
}

}  // namespace
}  // namespace toft::walk
