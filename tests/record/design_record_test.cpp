// The design record: everything the answer says, and who signs.

#include "record/design_record.h"
#include "base/text.h"

#include "paper/subjects.h"

#include <gtest/gtest.h>

namespace toft::paper {
namespace {

TEST(DesignRecord, OpensWithTheDecisionAndARoomForWhoeverSigns) {
    const Made& demo = made("demo");
    const page::Paper paper = design_record(demo.subject());
    EXPECT_TRUE(says(paper, demo.answer.schemes.front().sentence));
    EXPECT_TRUE(says(paper, pence_words(demo.answer.schemes.front().price.total) + " with tax"));
    for (const char* field : {"Designer's name", "Date and signature"}) {
        EXPECT_TRUE(says(paper, field)) << field;
    }
}

TEST(DesignRecord, DrawsEveryRunAsFarAsAPictureKnowsIt) {
    const auto drawings = [](const char* name) {
        std::size_t count = 0;
        for (const page::Block& block : design_record(made(name).subject()).blocks) {
            count += std::holds_alternative<page::WholePage>(block);
        }
        return count;
    };
    EXPECT_EQ(drawings("demo"), 3u);
    EXPECT_EQ(drawings("garage-gym-stable"), 5u);  // single lines of the two runs behind
}

TEST(DesignRecord, OpenConditionsStandFramedInFront) {
    Made conditional = made("demo");
    conditional.answer.schemes.front().conditional_on = {"the pipe is plastic where it enters"};
    const page::Paper paper = design_record(conditional.subject());
    bool framed = false;
    for (const page::Block& block : paper.blocks) {
        const auto* caution = std::get_if<page::Caution>(&block);
        framed = framed || (caution && caution->words.find("the pipe is plastic where it enters") !=
                                           std::string::npos);
    }
    EXPECT_TRUE(framed);
}

TEST(DesignRecord, NoPageNamesAFactByItsPlaceInAFile) {
    Made one = made("three-facts");
    ASSERT_FALSE(one.answer.unknowns.empty());
    one.answer.schemes.front().conditional_on = {one.answer.unknowns.front().fact};
    const page::Paper paper = design_record(one.subject());
    const std::string words = page::run_on(page::read(page::pages(paper)));
    EXPECT_EQ(words.find(one.answer.unknowns.front().fact), std::string::npos);
}

TEST(DesignRecord, SaysWhatMustBeDoneToldAndWatched) {
    const Made& tree = made("garage-gym-stable");
    const Subject subject = tree.subject();
    const page::Paper paper = design_record(subject);
    for (const auto* part : runs_of(subject)) {
        for (const std::string& one : part->cautions) EXPECT_TRUE(says(paper, one)) << one;
        for (const std::string& one : part->needs_a_person) EXPECT_TRUE(says(paper, one)) << one;
        for (const auto& one : part->tell) EXPECT_TRUE(says(paper, one.why)) << one.why;
        for (const std::string& one : part->house_work) EXPECT_TRUE(says(paper, one)) << one;
    }
}

}  // namespace
}  // namespace toft::paper
