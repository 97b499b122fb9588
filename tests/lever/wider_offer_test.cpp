#include "lever/asking.h"

#include <gtest/gtest.h>

namespace toft::lever {
namespace {

TEST(WiderOffer, WishesThatNarrowNothingGiveNothing) {
    site::Job job = support::plain_job();
    job.wishes = {};
    job.runs[0].fed_from.reset();
    job.runs[0].device.reset();
    EXPECT_TRUE(changes_of(wider_offer, job).empty());
}

TEST(WiderOffer, EveryOtherFamilyIsOfferedByItself) {
    site::Job job = support::plain_job();
    job.wishes = {};
    job.wishes.offer = {"armoured XLPE copper"};
    const Changes all = changes_of(wider_offer, job);
    ASSERT_EQ(all.size(), tables::families - 1);
    bool aluminium = false;
    for (const Change& change : all) {
        EXPECT_EQ(change.job.wishes.offer.size(), 2u);
        aluminium = aluminium || change.where == "armoured XLPE aluminium";
    }
    EXPECT_TRUE(aluminium);
}

TEST(WiderOffer, WhatTheRunNamesIsLeftOpen) {
    site::Job job = support::plain_job();
    job.wishes = {};
    job.runs[0].fed_from = site::FedFrom::tails;
    job.runs[0].device = site::NamedDevice{"BS 88-3", "", amperes(32)};
    const Changes all = changes_of(wider_offer, job);
    ASSERT_EQ(all.size(), 2u);
    EXPECT_FALSE(all[0].job.runs[0].fed_from.has_value());
    EXPECT_FALSE(all[1].job.runs[0].device.has_value());
    EXPECT_EQ(all[1].where, "BS 88-3 32 A");
}

}  // namespace
}  // namespace toft::lever
