#include "joins/conductor.h"

#include "joins/looking.h"
#include "parts/core_section.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::joins {
namespace {

const Conductor* find(const std::vector<Conductor>& all, Kind kind) {
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const Conductor& c) { return c.kind == kind; });
    return found == all.end() ? nullptr : &*found;
}

bool joined(Ending ending) { return ending == Ending::joined; }

TEST(Conductors, ArmourIsJoinedWhereTheAnswerJoinsIt) {
    int isolated = 0;
    int joined_far = 0;
    for_each_run([&](const std::string& name, const site::Job&, const answer::SchemeAnswer& s) {
        SCOPED_TRACE(name);
        for (std::size_t i = 0; i < s.run.stretches.size(); ++i) {
            const auto all = conductors_of(s, i);
            const Conductor* armour = find(all, Kind::armour);
            ASSERT_EQ(armour != nullptr, s.run.stretches[i].armoured);
            if (!armour) continue;
            EXPECT_EQ(joined(armour->near), s.run.stretches[i].armour_near);
            EXPECT_EQ(joined(armour->far), s.run.stretches[i].armour_far);
            (joined(armour->far) ? joined_far : isolated)++;
        }
    });
    EXPECT_GT(isolated, 10);
    EXPECT_GT(joined_far, 10);
}

TEST(Conductors, EveryCoreHasItsLetterColourAndSleeve) {
    for_each_run([&](const std::string& name, const site::Job&, const answer::SchemeAnswer& s) {
        SCOPED_TRACE(name);
        for (std::size_t i = 0; i < s.run.stretches.size(); ++i) {
            const auto all = conductors_of(s, i);
            const auto& cores = s.run.stretches[i].core_list;
            for (std::size_t k = 0; k < cores.size(); ++k) {
                EXPECT_EQ(all[k].core.colour, cores[k].colour);
                EXPECT_EQ(all[k].core.sleeve, cores[k].sleeve);
                EXPECT_EQ(all[k].words.rfind(parts::core_words(cores[k]), 0), 0U);
                const std::string tag = cores[k].use == "neutral"      ? "N"
                                        : cores[k].use == "protective" ? "PE"
                                        : cores[k].use == "line"       ? "L"
                                                                 : "L" + cores[k].use.substr(5);
                EXPECT_EQ(all[k].tag, tag);
            }
        }
    });
}

TEST(Conductors, BesideItsOwnElectrodeNothingOfTheRunIsOnTheFarTerminal) {
    int seen = 0;
    for_each_run([&](const std::string& name, const site::Job&, const answer::SchemeAnswer& s) {
        if (s.building.earthing != "own electrode") return;
        for (const Conductor& c : conductors_of(s, s.run.stretches.size() - 1)) {
            EXPECT_EQ(joined(c.far), !c.earth()) << name << " " << c.words;
        }
        ++seen;
    });
    EXPECT_GT(seen, 10);
    const Example flat_cable = made_up({flat()}, "own electrode");
    const auto all = conductors_of(flat_cable.answer.schemes[0], 0);
    EXPECT_TRUE(joined(find(all, Kind::core)->near));
    EXPECT_FALSE(joined(find(all, Kind::core)->far));
}

TEST(Conductors, ElsewhereSomethingOfTheRunIs) {
    int seen = 0;
    for_each_run([&](const std::string& name, const site::Job&, const answer::SchemeAnswer& s) {
        if (s.building.earthing == "own electrode") return;
        const auto all = conductors_of(s, s.run.stretches.size() - 1);
        EXPECT_TRUE(std::any_of(all.begin(), all.end(), [](const Conductor& c) {
            return c.earth() && c.far == Ending::joined;
        })) << name;
        ++seen;
    });
    EXPECT_GT(seen, 10);
}

TEST(Conductors, ACoreThatTheRunDoesNotCountOnIsNamedSo) {
    answer::StretchAnswer cable = flat();
    cable.protective_conductor = "separate conductor";
    cable.cpc_mm2.reset();
    cable.separate_mm2 = 10;
    const Example one = made_up({cable}, "supply earth");
    const auto all = conductors_of(one.answer.schemes[0], 0);
    EXPECT_NE(find(all, Kind::core)->words.find("not counted on"), std::string::npos);
    ASSERT_NE(find(all, Kind::separate), nullptr);
    EXPECT_NE(find(all, Kind::separate)->words.find("10 mm²"), std::string::npos);
}

TEST(Conductors, OfPairsThereIsOneInEachCable) {
    const Example& mill = example("aluminium-pair-mill");
    const answer::SchemeAnswer& scheme = mill.answer.schemes.at(0);
    for (const Conductor& c : conductors_of(scheme, 0)) {
        EXPECT_EQ(c.alike, scheme.run.stretches[0].parallel);
    }
}

}  // namespace
}  // namespace toft::joins
