// What is handed over with the work, as read from the tables.

#include "support/catalogue.h"
#include "support/spoilt_tables.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::tables {
namespace {

using support::SpoiltTables;

TEST(LoadHandover, DeadTestsComeBeforeLiveOnes) {
    bool live = false;
    for (const TestStep& step : support::catalogue().tests) {
        EXPECT_FALSE(live && step.dead) << step.key;
        live = live || !step.dead;
    }
    EXPECT_TRUE(live);
}

TEST(LoadHandover, EveryLabelHasWordsAPlaceAndItsSource) {
    std::set<std::string> keys;
    for (const LabelRow& row : support::catalogue().handover.labels) {
        EXPECT_TRUE(keys.insert(row.key).second) << row.key;
        EXPECT_NE(row.big, "") << row.key;
        EXPECT_NE(row.at, "") << row.key;
        EXPECT_GT(row.width_mm, 0) << row.key;
        EXPECT_NE(row.citation, nullptr) << row.key;
    }
    EXPECT_EQ(keys.count("chart"), 1u);
}

TEST(LoadHandover, FieldsArePartedAndADashIsNone) {
    for (const LabelRow& row : support::catalogue().handover.labels) {
        if (row.key == "inspection") {
            EXPECT_EQ(row.fields, (std::vector<std::string>{"Last inspected", "Next due"}));
        }
        if (row.key == "bond") {
            EXPECT_TRUE(row.fields.empty());
        }
    }
}

TEST(LoadHandover, EveryWayOfEarthingHasALabelAndASentence) {
    for (const char* when :
         {"own electrode", "shared electrode", "combined earth", "separate earth"}) {
        int labels = 0;
        int sentences = 0;
        for (const LabelRow& row : support::catalogue().handover.labels) labels += row.when == when;
        for (const Notice& row : support::catalogue().handover.notices) {
            sentences += row.list == "earth" && row.when == when;
        }
        EXPECT_GE(labels, 1) << when;
        EXPECT_GE(sentences, 1) << when;
    }
}

TEST(LoadHandover, ASituationThatNobodyKnowsIsRefused) {
    EXPECT_TRUE(SpoiltTables()
                    .change("label/label.csv", ",own electrode,", ",own elecrode,")
                    .refused("label/label.csv", "situation"));
    EXPECT_TRUE(SpoiltTables()
                    .change("client/notice.csv", ",buried,", ",burried,")
                    .refused("client/notice.csv", "situation"));
}

TEST(LoadHandover, NoTermMayBeMissing) {
    EXPECT_TRUE(SpoiltTables()
                    .change("client/term.csv", "offer.days", "offer.day")
                    .refused("client/term.csv", "offer.days"));
    for (const char* file : {"label/label.csv", "client/notice.csv", "client/word.csv",
                             "client/term.csv", "test/step.csv"}) {
        EXPECT_FALSE(SpoiltTables().remove(file).faults().empty()) << file;
    }
}

TEST(LoadHandover, ADeadTestAfterALiveOneIsRefused) {
    EXPECT_TRUE(SpoiltTables()
                    .change("test/step.csv", "sequence,live,", "sequence,dead,")
                    .refused("test/step.csv", "dead test after a live one"));
    EXPECT_TRUE(SpoiltTables()
                    .change("test/step.csv", "sequence,live,", "sequence,asleep,")
                    .refused("test/step.csv", "neither dead nor live"));
}

}  // namespace
}  // namespace toft::tables
