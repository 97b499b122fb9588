// toft tolerance and toft later: screens, JSON, exit codes, options.

#include "cli/program.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <sstream>

namespace toft::cli {
namespace {

class Sureness : public ::testing::Test {
protected:
    nlohmann::json said(std::vector<std::string> arguments) const {
        arguments.emplace_back("--json");
        return nlohmann::json::parse(program_.run(arguments).out);
    }

    Program program_;
};

TEST_F(Sureness, TheScreenSaysWhatVariesOnWhoseWordAndHowFarItHolds) {
    const Ran ran = program_.run({"tolerance", example("tt-shed"), "--length", "60%"});
    EXPECT_EQ(ran.code, 0);
    for (const char* part :
         {"HOW SURE", "(as asked)", "(usual tolerance, memory)", "voltage-drop",
          "length of the whole run, 32 m now", "quasi-random", "competent, licensed person"}) {
        EXPECT_NE(ran.out.find(part), std::string::npos) << part;
    }
}

TEST_F(Sureness, WiderRangesMakeASchemeLessSure) {
    const std::string job = example("tt-shed");
    const double narrow = said({"tolerance", job, "--length", "5"})["robust"]["holds"];
    const double wide = said({"tolerance", job, "--length", "60%"})["robust"]["holds"];
    EXPECT_EQ(narrow, 1);
    EXPECT_LT(wide, 0.99);
    const auto none = said({"tolerance", job, "--as-stated"});
    for (const auto& v : none["varies"]) EXPECT_EQ(v["from"], "survey");
}

TEST_F(Sureness, ASchemeIsPickedByRankOrKeyAndARunById) {
    const std::string job = example("demo");
    const auto second = said({"tolerance", job, "--scheme", "2"});
    const auto first = said({"tolerance", job});
    EXPECT_NE(first["key"], second["key"]);
    const auto by_key = said({"tolerance", job, "--scheme", second["key"].get<std::string>()});
    EXPECT_EQ(by_key, second);
    EXPECT_EQ(program_.run({"tolerance", job, "--scheme", "nonsense"}).code, 2);
    EXPECT_EQ(program_.run({"tolerance", example("caravan-no-scheme")}).code, 1);
    EXPECT_EQ(program_.run({"tolerance", job, "--length", "far"}).code, 4);
    const auto gym = said({"tolerance", example("garage-gym-stable"), "--run", "gym-feed"});
    EXPECT_EQ(gym["run"], "gym-feed");
    bool told = false;
    for (const auto& note : gym["notes"]) {
        told = told || note.get<std::string>().find("fed behind others") != std::string::npos;
    }
    EXPECT_TRUE(told);
}

TEST_F(Sureness, LaterSaysWhatFitsAndWhatItWouldTake) {
    const Ran ran = program_.run({"later", example("demo")});
    EXPECT_EQ(ran.code, 0);
    for (const char* part : {"WHAT IT CAN STILL FEED", "until overload", "a hot tub", "fits",
                             "planned now", "left until later"}) {
        EXPECT_NE(ran.out.find(part), std::string::npos) << part;
    }
    EXPECT_EQ(said({"later", example("demo")})["format"], "toft-later/1");
    EXPECT_EQ(program_.run({"later", example("caravan-no-scheme")}).code, 1);
    EXPECT_EQ(program_.run({"later", example("garage-gym-stable")}).code, 2);
}

TEST_F(Sureness, NoLineIsWiderThanAScreen) {
    for (const char* name : {"demo", "three-facts", "tt-shed"}) {
        for (const char* command : {"tolerance", "later"}) {
            std::istringstream lines(program_.run({command, example(name)}).out);
            std::string line;
            while (std::getline(lines, line)) EXPECT_LE(characters(line), 88u) << line;
        }
    }
}

TEST_F(Sureness, ThePictureIsDrawn) {
    const Ran ran = program_.run({"draw", example("tt-shed"), "--picture", "tolerance"});
    EXPECT_EQ(ran.code, 0);
    EXPECT_NE(ran.out.find("the figure at its high end"), std::string::npos);
}

}  // namespace
}  // namespace toft::cli
