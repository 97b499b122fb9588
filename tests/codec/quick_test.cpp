#include "codec/quick.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>

namespace toft::codec {
namespace {

Outcome<site::Job> quick(const QuickFacts& facts) { return quick_job(facts, support::catalogue()); }

std::vector<std::string> options_at_fault(const QuickFacts& facts) {
    std::vector<std::string> options;
    const auto job = quick(facts);
    if (!job) {
        for (const Fault& fault : job.error()) options.push_back(fault.pointer);
    }
    return options;
}

TEST(QuickJob, ThreeFactsMakeAJob) {
    const auto job = quick({"34", "5kW", "TN-C-S", ""});
    ASSERT_TRUE(job);
    EXPECT_EQ(job->intake.earthing, site::Earthing::tn_c_s);
    EXPECT_EQ(job->buildings.at(1).load_w.high, 5000);
    ASSERT_EQ(job->runs.at(0).legs.size(), 1u);
    EXPECT_EQ(job->runs[0].legs[0].length.high, metres(34));
    EXPECT_EQ(job->runs[0].legs[0].method, site::LegMethod::buried_direct);
}

TEST(QuickJob, LoadsAreWrittenAsTheTradeWritesThem) {
    EXPECT_EQ(quick({"20 m", "800 W", "TT", ""})->buildings.at(1).load_w.high, 800);
    EXPECT_EQ(quick({"20m", "7.2 kW", "TT", ""})->buildings.at(1).load_w.high, 7200);
    EXPECT_EQ(quick({"20", "20A", "TN-S", "buried in duct"})->buildings.at(1).load.high,
              amperes(20));
}

TEST(QuickJob, EveryFactAtFaultIsNamedByItsOption) {
    EXPECT_EQ(options_at_fault({"far", "much", "TN-C-S", ""}),
              (std::vector<std::string>{"--load", "--distance"}));
    EXPECT_EQ(options_at_fault({"30", "5 kVA", "TT", ""}), std::vector<std::string>{"--load"});
    EXPECT_EQ(options_at_fault({"30", "5kW", "TN-C", ""}), std::vector<std::string>{"--earthing"});
    EXPECT_EQ(options_at_fault({"-3", "5kW", "TT", ""}), std::vector<std::string>{"--distance"});
    EXPECT_EQ(options_at_fault({"30", "5kW", "TT", "underground"}),
              std::vector<std::string>{"--method"});
    EXPECT_EQ(options_at_fault({"30", "nan W", "TT", ""}), std::vector<std::string>{"--load"});
    EXPECT_EQ(options_at_fault({"", "", "\"}", ""}),
              (std::vector<std::string>{"--load", "--distance"}));
    EXPECT_EQ(options_at_fault({"30", "900kW", "TT", ""}), std::vector<std::string>{"--load"});
}

}  // namespace
}  // namespace toft::codec
