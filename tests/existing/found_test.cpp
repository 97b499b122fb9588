#include "existing/found.h"

#include "support/catalogue.h"
#include "support/existing.h"

#include <gtest/gtest.h>

namespace toft::existing {
namespace {

study::RunScheme way_with(study::BuildingEarthing earthing, study::Laid laid) {
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    s.earthing = earthing;
    s.first().laid = laid;
    return s;
}

constexpr auto shared = study::BuildingEarthing::supply_earth;
constexpr auto own = study::BuildingEarthing::own_electrode;

std::vector<FoundWrong> found_in(const site::Job& job, study::BuildingEarthing earthing,
                                 study::Laid laid = study::Laid::anew) {
    return found_for(support::prepared(job), way_with(earthing, laid));
}

TEST(FoundFor, OfTheHouseTheRunAndItsBuilding) {
    site::Job job = support::plain_job();
    EXPECT_TRUE(found_in(job, shared).empty());
    job.buildings[0].found = {"main bonding too small"};
    job.buildings[1].found = {"borrowed neutral"};
    job.buildings[1].name = "Garage";
    job.runs[0].found = {"joint in the ground"};
    std::vector<std::string> words;
    for (const FoundWrong& f : found_in(job, shared))
        words.push_back(f.where + ": " + f.row->found);
    EXPECT_EQ(words, (std::vector<std::string>{"the house: main bonding too small",
                                               "run run: joint in the ground",
                                               "Garage: borrowed neutral"}));
}

TEST(FoundFor, WhatIsPutRightHangsOnTheWayToBuild) {
    site::Job job = support::plain_job();
    job.buildings[1].found = {"rod joined to supply earth", "armour earthed at both ends"};
    EXPECT_TRUE(put_right(found_in(job, shared)).empty());
    const auto items = put_right(found_in(job, own));  // both ask for it: it is bought once
    ASSERT_EQ(items.size(), 1u);
    EXPECT_STREQ(items[0], "parting two earths");
}

TEST(FoundFor, EveryRowSpeaksOfItsWaysAlone) {
    for (const tables::FoundRow& row : support::catalogue().found) {
        site::Job job = support::plain_job();
        if (row.at == "house") job.buildings[0].found = {row.found};
        if (row.at == "building") job.buildings[1].found = {row.found};
        if (row.at == "run") job.runs[0].found = {row.found};
        int ways = 0;
        for (const auto earthing : {shared, own}) {
            for (const study::Laid laid : {study::Laid::anew, study::Laid::kept}) {
                for (const FoundWrong& f : found_in(job, earthing, laid)) ways += f.row == &row;
            }
        }
        EXPECT_EQ(ways, (row.earthing == "any" ? 2 : 1) * (row.cable == "any" ? 2 : 1))
            << row.found;
    }
}

}  // namespace
}  // namespace toft::existing
