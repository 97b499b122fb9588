// Words that papers share.

#include "paper/subject.h"

#include "paper/subjects.h"

#include <gtest/gtest.h>

namespace toft::paper {
namespace {

TEST(PaperSubject, PoundsHaveCommasAndPenniesTwoPlaces) {
    EXPECT_EQ(pounds_words(1234.4), "£1,234");
    EXPECT_EQ(pounds_words(999.6), "£1,000");
    EXPECT_EQ(pence_words(1234567.5), "£1,234,567.50");
    EXPECT_EQ(pence_words(0), "£0.00");
    EXPECT_EQ(pence_words(-12.345), "−£12.35");
}

TEST(PaperSubject, AFigureThatIsNotKnownIsNeverShownAsOne) {
    EXPECT_EQ(figure(std::optional<double>{}, "Ω"), "not known");
    EXPECT_EQ(figure(0.21, "Ω"), "0.21 Ω");
}

TEST(PaperSubject, TheRunsOfAWayStandFromTheHouseOutwards) {
    const Made& tree = made("garage-gym-stable");
    const Subject subject = tree.subject();
    const auto runs = runs_of(subject);
    ASSERT_EQ(runs.size(), 3u);
    EXPECT_EQ(runs[0]->run.feeder, "");
    EXPECT_EQ(runs[1]->run.feeder, runs[0]->building.name);
    for (const auto* run : runs) EXPECT_EQ(run_of(subject, *run).id, run->run.id);
}

TEST(PaperSubject, EveryPaperBearsDateDataAndWhoDecides) {
    const page::Paper paper = blank(made("demo").subject(), "Any");
    EXPECT_EQ(paper.date, "2026-11-29");
    EXPECT_NE(paper.edition.find(support::catalogue().version), std::string::npos);
    for (const char* who : {"local code", "network operator", "competent, licensed person"}) {
        EXPECT_NE(paper.caution.find(who), std::string::npos) << who;
    }
}

TEST(PaperSubject, CautionsOfTheAnswerAreAllSaid) {
    const Made& demo = made("demo");
    page::Paper paper = blank(demo.subject(), "Any");
    paper.blocks = standing_cautions(demo.subject());
    ASSERT_FALSE(demo.answer.cautions.empty());
    for (const std::string& caution : demo.answer.cautions) {
        EXPECT_TRUE(says(paper, caution)) << caution;
    }
}

TEST(PaperSubject, ACableInWords) {
    answer::CableAnswer cable;
    cable.family = "armoured XLPE copper";
    cable.standard = "BS 5467";
    cable.cores = 3;
    cable.live_mm2 = 10;
    EXPECT_EQ(cable_words(cable), "3-core 10 mm² armoured XLPE copper to BS 5467");
    cable.separate_mm2 = 16;
    cable.parallel = 2;
    EXPECT_EQ(cable_words(cable),
              "2 × 3-core 10 mm² armoured XLPE copper to BS 5467, with a separate 16 mm² "
              "conductor");
}

}  // namespace
}  // namespace toft::paper
