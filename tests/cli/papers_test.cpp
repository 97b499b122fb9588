// toft papers: what is handed over, as files in a folder.

#include "cli/program.h"

#include <gtest/gtest.h>

namespace toft::cli {
namespace {

class PapersCommand : public ::testing::Test {
protected:
    bool there(const std::string& name) const {
        return std::filesystem::exists(program_.folder() / name);
    }

    Program program_;
};

TEST_F(PapersCommand, WritesThosePapersThatAreAskedForTheSameEachTime) {
    for (const char* folder : {"one", "two"}) {
        const Ran ran = program_.run({"papers", example("demo"), "-o", folder, "--only",
                                      "test-sheet,materials", "--date", "2026-11-29"});
        EXPECT_EQ(ran.code, 0) << ran.error;
        EXPECT_EQ(ran.out, "");
    }
    for (const char* file :
         {"test-sheet.pdf", "materials.pdf", "pack.pdf", "materials.csv", "materials.xlsx"}) {
        ASSERT_TRUE(there(std::string("one/") + file)) << file;
        EXPECT_EQ(text_of(program_.folder() / "one" / file),
                  text_of(program_.folder() / "two" / file))
            << file;
    }
    EXPECT_FALSE(there("one/labels.pdf"));
}

TEST_F(PapersCommand, WhereNothingIsSoundOnlyTheClientIsWrittenTo) {
    const Ran ran = program_.run({"papers", example("caravan-no-scheme"), "-o", "p"});
    EXPECT_EQ(ran.code, 1);
    EXPECT_NE(ran.error.find("no scheme is sound"), std::string::npos);
    EXPECT_TRUE(there("p/clients-choice.pdf"));
    EXPECT_FALSE(there("p/installers-sheet.pdf"));
}

TEST_F(PapersCommand, ADayThatIsNoneAndASchemeThatIsNotThereAreRefusedBeforeAnythingIsWritten) {
    for (const char* day : {"2026-02-31", "0000-00-00", "29.11.2026"}) {
        EXPECT_EQ(program_.run({"papers", example("demo"), "-o", "p", "--date", day}).code, 2)
            << day;
    }
    EXPECT_EQ(program_.run({"papers", example("demo"), "-o", "p", "--rank", "900"}).code, 2);
    EXPECT_EQ(program_.run({"papers", example("demo"), "-o", ""}).code, 4);
    EXPECT_EQ(program_.run({"papers", example("demo")}).code, 4);
    EXPECT_FALSE(there("p"));
}

TEST_F(PapersCommand, APocketPageHoldsTheJobAndAsksForNothingElse) {
    const Ran ran = program_.run({"pocket", example("demo"), "-o", "demo.html"});
    ASSERT_EQ(ran.code, 0) << ran.error;
    const std::string page = text_of(program_.folder() / "demo.html");
    EXPECT_NE(page.find("Potter's studio, Wrensnest, Ashlow Green"), std::string::npos);
    EXPECT_NE(page.find("id=\"toft.wasm.gz\">H4sI"), std::string::npos);  // RFC 1952: 1f 8b 08 00
    EXPECT_EQ(page.find("<link rel=\"stylesheet\""), std::string::npos);
    EXPECT_EQ(page.find("<script src"), std::string::npos);
}

TEST_F(PapersCommand, APocketPageIsNotMadeOfWhatIsNoJob) {
    EXPECT_EQ(program_.run({"pocket", "no-such-job.json", "-o", "p.html"}).code, 2);
    EXPECT_EQ(program_.run({"pocket", example("demo")}).code, 4);
    EXPECT_FALSE(there("p.html"));
}

}  // namespace
}  // namespace toft::cli
