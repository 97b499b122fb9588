// "Two-core armoured cable with its armour as protective conductor passes at practically every
// domestic size": where that holds, and exactly where it does not.

#include "trade/armour_sweep.h"

#include "support/examples.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <map>

namespace toft::trade {
namespace {

constexpr const char* page_path = "docs/armour-table.md";

/// A device and a section that give out before 50 m.
struct Break {
    const char* device;
    double section;
    int metres;
    const char* rule;
    const char* why;
};

constexpr const char* five_seconds = "a fuse this large needs much current to act within 5 s";
constexpr const char* five_times = "five times a large rating through thin armour";
constexpr const char* ten_times = "a C breaker needs ten times its rating to act at once";
constexpr const char* no_class =
    "no energy class in the tables: all of 0.1 s counts near the house";
constexpr const char* not_even_ze = "0.347 ohm allowed in all, 0.35 declared outside";

/// Every pair that gives out although the cable may stand behind the device.
const std::vector<Break>& breaks() {
    static const std::vector<Break> list{
        {"fuse 32", 2.5, 38, "fault-heat", five_seconds},
        {"fuse 32", 4, 49, "fault-heat", five_seconds},
        {"fuse 45", 4, 26, "fault-heat", five_seconds},
        {"fuse 45", 6, 32, "fault-heat", five_seconds},
        {"fuse 45", 10, 41, "fault-heat", five_seconds},
        {"fuse 63", 10, 21, "fault-heat", five_seconds},
        {"fuse 63", 16, 34, "fault-heat", five_seconds},
        {"fuse 63", 25, 37, "fault-heat", five_seconds},
        {"B32", 2.5, 44, "fault-heat", five_times},
        {"B40", 4, 42, "fault-heat", five_times},
        {"B50", 6, 0, "fault-heat", no_class},
        {"B50", 10, 0, "fault-heat", no_class},
        {"B63", 10, 0, "fault-heat", no_class},
        {"B63", 16, 49, "fault-heat", five_times},
        {"C16", 2.5, 44, "fault-heat", ten_times},
        {"C20", 2.5, 32, "fault-heat", ten_times},
        {"C20", 4, 42, "fault-heat", ten_times},
        {"C25", 2.5, 23, "fault-heat", ten_times},
        {"C25", 4, 29, "fault-heat", ten_times},
        {"C25", 6, 36, "fault-heat", ten_times},
        {"C25", 10, 46, "fault-heat", ten_times},
        {"C32", 2.5, 10, "fault-heat", ten_times},
        {"C32", 4, 18, "fault-heat", ten_times},
        {"C32", 6, 23, "fault-heat", ten_times},
        {"C32", 10, 29, "fault-heat", ten_times},
        {"C32", 16, 47, "fault-heat", ten_times},
        {"C40", 4, 11, "disconnection", ten_times},
        {"C40", 6, 13, "fault-heat", ten_times},
        {"C40", 10, 17, "fault-heat", ten_times},
        {"C40", 16, 28, "fault-heat", ten_times},
        {"C40", 25, 30, "fault-heat", ten_times},
        {"C50", 6, 0, "fault-heat", no_class},
        {"C50", 10, 0, "fault-heat", no_class},
        {"C50", 16, 12, "fault-heat", ten_times},
        {"C50", 25, 13, "fault-heat", ten_times},
        {"C63", 10, 0, "disconnection", not_even_ze},
        {"C63", 16, 0, "disconnection", not_even_ze},
        {"C63", 25, 0, "disconnection", not_even_ze},
    };
    return list;
}

TEST(ArmourTable, HoldsEverywhereButWhereItIsKnownToGiveOut) {
    std::map<std::pair<std::string, double>, const Break*> expected;
    for (const Break& b : breaks()) expected[{b.device, b.section}] = &b;
    std::size_t met = 0;
    for (const tables::Device* device : devices()) {
        for (double section : sections()) {
            const Reach reach = reach_of(*device, section);
            if (!reach.carries) continue;
            const auto known = expected.find({device_word(*device), section});
            if (known == expected.end()) {
                EXPECT_EQ(reach.metres, longest_m) << device_word(*device) << " on " << section;
                continue;
            }
            ++met;
            EXPECT_EQ(reach.metres, known->second->metres)
                << device_word(*device) << " on " << section << ": " << known->second->why;
            EXPECT_EQ(reach.stopped_by, known->second->rule) << device_word(*device) << section;
        }
    }
    EXPECT_EQ(met, breaks().size());
}

TEST(ArmourTable, FusesAndBBreakersToFortyAmperesHoldForTwentyMetresAtEverySize) {
    std::size_t tried = 0;
    for (const tables::Device* device : devices()) {
        if (device->curve == "C" || (device->curve == "B" && device->rating > amperes(40)))
            continue;
        for (double section : sections()) {
            const Reach reach = reach_of(*device, section);
            if (!reach.carries) continue;
            ++tried;
            EXPECT_GE(reach.metres, 20) << device_word(*device) << " on " << section;
        }
    }
    EXPECT_GT(tried, 40u);
}

TEST(ArmourTable, AThickerCableNeverReachesLessFar) {
    for (const tables::Device* device : devices()) {
        int last = 0;
        for (double section : sections()) {
            const int metres = reach_of(*device, section).metres;
            EXPECT_GE(metres, last) << device_word(*device) << " on " << section;
            last = metres;
        }
    }
}

TEST(ArmourTable, ThePageIsCurrent) {
    const std::string page = armour_page();
    if (std::getenv("TOFT_WRITE_PAGES")) {
        std::ofstream(std::string(TOFT_SOURCE_DIR) + "/" + page_path, std::ios::binary) << page;
    }
    EXPECT_EQ(support::project_text(page_path), page);
}

}  // namespace
}  // namespace toft::trade
