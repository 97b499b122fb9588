// Facts, reasons and sources of a design record.

#include "record/parts.h"

#include "paper/subjects.h"

#include <gtest/gtest.h>

namespace toft::paper {
namespace {

TEST(RecordFacts, NameWhatIsTakenForGrantedAndWhatIsOpen) {
    const Made& three = made("three-facts");
    const page::Paper paper = paper_with(three.subject(), record_of_facts(three.subject()));
    ASSERT_FALSE(three.answer.assumed.empty());
    ASSERT_FALSE(three.answer.unknowns.empty());
    for (const std::string& line : three.answer.assumed) EXPECT_TRUE(says(paper, line)) << line;
    for (const auto& unknown : three.answer.unknowns) {
        EXPECT_TRUE(says(paper, unknown.says)) << unknown.says;
    }
}

TEST(RecordFacts, ArgueEachBuildingsEarthStepByStepWithWhoseWordItIs) {
    const Made& tree = made("garage-gym-stable");
    ASSERT_EQ(tree.answer.walks.size(), 3u);
    const page::Paper paper = paper_with(tree.subject(), record_of_earthing(tree.subject()));
    for (const walk::Walk& walk : tree.answer.walks) {
        EXPECT_TRUE(says(paper, walk.conclusion));
        for (const walk::Step& step : walk.steps) {
            EXPECT_TRUE(says(paper, step.asks)) << step.asks;
            if (!step.basis) continue;
            EXPECT_TRUE(says(paper, step.basis->clause)) << step.basis->clause;
        }
        for (const walk::Way& way : walk.ways) EXPECT_TRUE(says(paper, way.residual_risk));
    }
}

TEST(RecordFacts, EverySourceStandsWithItsBasis) {
    const Made& demo = made("demo");
    const page::Paper paper = paper_with(demo.subject(), record_of_sources(demo.subject()));
    for (const auto& source : demo.answer.sources) {
        EXPECT_TRUE(says(paper, source.title)) << source.title;
    }
    EXPECT_TRUE(says(paper, demo.answer.data_version));
}

TEST(RecordFacts, ALineOfNothingHasNoHeading) {
    EXPECT_TRUE(listed("Nothing here", {}).empty());
    EXPECT_EQ(listed("Two lines", {"a", "b"}).size(), 3u);
}

}  // namespace
}  // namespace toft::paper
