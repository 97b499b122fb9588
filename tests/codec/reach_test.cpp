#include "codec/reach.h"

#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace toft::codec {
namespace {

TEST(ReachDocument, SaysTheSameAsTheTables) {
    const site::Job job = support::plain_job();
    const answer::ReachAnswer reach = answer::reach(support::question_of(job), {});
    const auto json = nlohmann::json::parse(write_reach(reach));
    EXPECT_EQ(json.at("format"), "toft-reach/1");
    EXPECT_EQ(json.at("loads_a").size(), reach.loads_a.size());
    ASSERT_EQ(json.at("tables").size(), reach.tables.size());
    for (std::size_t t = 0; t < reach.tables.size(); ++t) {
        const auto& rows = json["tables"][t].at("rows");
        ASSERT_EQ(rows.size(), reach.tables[t].rows.size());
        for (std::size_t r = 0; r < rows.size(); ++r) {
            ASSERT_EQ(rows[r].at("by_load").size(), reach.loads_a.size());
            for (std::size_t c = 0; c < reach.loads_a.size(); ++c) {
                const auto& cell = reach.tables[t].rows[r].cells[c];
                const auto& printed = rows[r]["by_load"][c];
                EXPECT_NEAR(printed.at("longest_m").get<double>(), cell.metres, 1e-6);
                EXPECT_EQ(printed.at("ended_by").is_null(), cell.ended_by.empty());
            }
        }
    }
}

}  // namespace
}  // namespace toft::codec
