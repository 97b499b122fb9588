#include "paper/outgoing.h"

#include "paper/sheets.h"

#include <gtest/gtest.h>

namespace toft::paper {
namespace {

TEST(Outgoing, RunsAreFoundByTheBoardTheyStartAt) {
    const Example& one = example("garage-gym-stable");
    const Subject subject = sheet_subject(one);
    std::size_t found = 0;
    for (const site::Building& building : one.job.buildings) {
        for (const answer::SchemeAnswer* fed : outgoing(subject, building.id)) {
            EXPECT_EQ(run_of(subject, *fed).from, building.id);
            ++found;
        }
    }
    EXPECT_EQ(found, runs_of(subject).size());  // each starts somewhere
    EXPECT_TRUE(outgoing(subject, "nowhere").empty());
}

TEST(Outgoing, WaysAreCircuitsAndFeedsAndWhatIsAskedForBeyond) {
    Example one = example("garage-gym-stable");
    const Subject subject = sheet_subject(one);
    for (const answer::SchemeAnswer* part : runs_of(subject)) {
        if (outgoing(subject, part->building.id).size() != 1) continue;
        for (site::Building& building : one.job.buildings) {
            if (building.id != part->building.id) continue;
            building.circuits.resize(3);
            building.spare_ways = {true, 2, 2};
            const auto fed = outgoing(subject, building.id).front();
            EXPECT_EQ(board_ways_words(subject, *part),
                      "at least 6: 3 for circuits, 1 to feed " + fed->building.name + ", 2 spare");
            building.circuits.clear();
            building.spare_ways = {};
            EXPECT_EQ(board_ways_words(subject, *part),
                      "at least 3: 2 for circuits, 1 to feed " + fed->building.name);
            return;
        }
    }
    FAIL() << "no board feeds one other";
}

}  // namespace
}  // namespace toft::paper
