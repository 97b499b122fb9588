#include "paper/terminations.h"

#include "base/text.h"
#include "paper/sheets.h"
#include "parts/core_section.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::paper {
namespace {

TEST(Terminations, EveryCoreAndTheArmourAreThereAsTheAnswerJoinsThem) {
    for_each_sheet([](const std::string& name, const RunSheet& sheet) {
        SCOPED_TRACE(name);
        const auto all = terminations_of(sheet);
        const auto& stretches = sheet.run().stretches;
        ASSERT_GE(all.size(), stretches.size());
        for (std::size_t i = 0; i < stretches.size(); ++i) {
            std::size_t rows = stretches[i].core_list.size();
            for (std::size_t k = 0; k < stretches[i].core_list.size(); ++k) {
                EXPECT_NE(
                    all[i].list[k].conductor.find(parts::core_words(stretches[i].core_list[k])),
                    std::string::npos);
            }
            if (stretches[i].armoured) {
                const Termination& armour = all[i].list[rows++];
                EXPECT_EQ(armour.near_joined, stretches[i].armour_near);
                EXPECT_EQ(armour.far_joined, stretches[i].armour_far);
                EXPECT_EQ(armour.far.rfind("isolated", 0) == 0, !stretches[i].armour_far);
            }
            EXPECT_EQ(all[i].list.size(), rows + stretches[i].separate_mm2.has_value());
        }
    });
}

TEST(Terminations, BondsAndRodHaveBothTheirEnds) {
    int bonds = 0;
    for_each_sheet([&](const std::string& name, const RunSheet& sheet) {
        const auto all = terminations_of(sheet);
        const std::size_t wanted =
            sheet.building().bonding.size() + sheet.building().electrode.has_value();
        EXPECT_EQ(all.size(), sheet.run().stretches.size() + (wanted > 0)) << name;
        if (wanted > 0) {
            EXPECT_EQ(all.back().list.size(), wanted) << name;
        }
        for (const answer::BondAnswer& bond : sheet.building().bonding) {
            EXPECT_TRUE(std::any_of(all.back().list.begin(), all.back().list.end(),
                                    [&](const Termination& t) {
                                        return t.conductor.find(part_name(bond) + ": " +
                                                                significant(bond.size_mm2, 6) +
                                                                " mm²") != std::string::npos;
                                    }))
                << name;
            ++bonds;
        }
    });
    EXPECT_GT(bonds, 3);
}

TEST(Terminations, DeviceAndCableBearTheAnswersFigures) {
    for_each_sheet([](const std::string& name, const RunSheet& sheet) {
        SCOPED_TRACE(name);
        const std::string words = lines_of(run_lines(sheet));
        const answer::RunAnswer& run = sheet.run();
        EXPECT_NE(words.find(significant(run.device.rating_a, 6) + " A"), std::string::npos);
        EXPECT_NE(words.find(run.device.standard), std::string::npos);
        EXPECT_NE(words.find(significant(run.figures.fault_current_near_ka, 3) + " kA"),
                  std::string::npos);
        for (const answer::StretchAnswer& s : run.stretches) {
            EXPECT_NE(words.find(significant(s.length_m, 4) + " m in all"), std::string::npos);
            EXPECT_NE(words.find(s.standard), std::string::npos);
            if (s.armoured) {
                EXPECT_NE(words.find(significant(s.overall_mm, 3) + " mm overall"),
                          std::string::npos);
            }
        }
        const bool isolated = std::any_of(
            run.stretches.begin(), run.stretches.end(),
            [](const auto& s) { return s.armoured && (!s.armour_near || !s.armour_far); });
        EXPECT_EQ(words.find("INSULATED kit") != std::string::npos, isolated);
    });
}

TEST(Terminations, TheHeadsResidualDeviceIsToldInFull) {
    const Example& mill = example("aluminium-pair-mill");
    const Subject subject = sheet_subject(mill);
    const std::string words = lines_of(run_lines(run_sheet(subject, *runs_of(subject).front())));
    EXPECT_NE(words.find("100 mA RCD type B, delayed"), std::string::npos);
    EXPECT_NE(words.find("Delayed: a fixed delay, or its setting"), std::string::npos);
    EXPECT_NE(words.find("Glands, each end"), std::string::npos);
}

TEST(Terminations, WhatIsJoinedToNothingHasNoTorque) {
    const Example& house = example("own-rod-greenhouse");
    const Subject subject = sheet_subject(house);
    const auto tables = terminations_tables(run_sheet(subject, *runs_of(subject).front()));
    const std::vector<std::string>& armour = tables.at(0).rows.back().cells;
    EXPECT_EQ(armour.at(4), "none");
    EXPECT_NE(armour.at(2), "none");
    EXPECT_FALSE(run_table(run_sheet(subject, *runs_of(subject).front())).rows.empty());
}

}  // namespace
}  // namespace toft::paper
