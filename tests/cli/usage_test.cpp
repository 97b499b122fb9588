// Help, wrong usage, and the commands that read no job.

#include "cli/program.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace toft::cli {
namespace {

class Usage : public ::testing::Test {
protected:
    Program program_;
};

TEST_F(Usage, HelpNamesEveryCommandAndEveryExitCode) {
    const Ran ran = program_.run({"--help"});
    EXPECT_EQ(ran.code, 0);
    for (const char* part :
         {"design", "batch", "why", "explain", "draw", "rules", "sources", "schema", "serve",
          "toft-job/1", "Exit codes: 0 done", "competent, licensed person"}) {
        EXPECT_NE(ran.out.find(part), std::string::npos) << part;
    }
}

TEST_F(Usage, EveryCommandHasItsHelp) {
    for (const char* command :
         {"design", "batch", "why", "explain", "draw", "rules", "sources", "schema"}) {
        const Ran ran = program_.run({command, "--help"});
        EXPECT_EQ(ran.code, 0) << command;
        EXPECT_NE(ran.out.find(command), std::string::npos);
        EXPECT_GT(ran.out.size(), 60u) << command;
        EXPECT_EQ(ran.error, "") << command;
    }
}

TEST_F(Usage, CommandsThatJudgeNoSchemeNameOnlyTheExitCodesTheyHave) {
    for (const char* command : {"serve", "pocket"}) {
        const std::string help = program_.run({command, "--help"}).out;
        EXPECT_NE(help.find("Exit codes: 0 done, 2"), std::string::npos) << command;
        EXPECT_EQ(help.find("sound"), std::string::npos) << command;
    }
}

TEST_F(Usage, WrongUsageLeavesWithFourAndSaysWhatIsWrong) {
    const std::vector<std::vector<std::string>> wrong{{"desing"},
                                                      {"design"},
                                                      {"design", "a", "b"},
                                                      {"--nosuch"},
                                                      {"explain"},
                                                      {"draw"},
                                                      {"schema"},
                                                      {"schema", "jobs"},
                                                      {"schema", "../data/VERSION"},
                                                      {"rules", "x"},
                                                      {"draw", example("demo"), "--rank", "0"},
                                                      {"draw", example("demo"), "--rank", "one"},
                                                      {"design", "--colour", example("demo")}};
    for (const auto& arguments : wrong) {
        const Ran ran = program_.run(arguments);
        EXPECT_EQ(ran.code, 4) << arguments[0] << " " << arguments.size();
        EXPECT_FALSE(ran.error.empty());
        EXPECT_EQ(ran.out, "");
    }
}

TEST_F(Usage, WithoutACommandTheDemoIsDesignedAndDrawn) {
    const Ran ran = program_.run({});
    EXPECT_EQ(ran.code, 0);
    EXPECT_EQ(ran.out.rfind("This is the demo job", 0), 0u);
    EXPECT_NE(ran.out.find("picture: out/demo.svg"), std::string::npos);
    EXPECT_NE(ran.out.find("./run serve"), std::string::npos) << "what to do next";
    EXPECT_EQ(text_of(program_.folder() / "out/demo.svg").rfind("<svg", 0), 0u);
}

TEST_F(Usage, TheVersionIsSaid) {
    const Ran ran = program_.run({"--version"});
    EXPECT_EQ(ran.code, 0);
    EXPECT_EQ(ran.out.rfind("toft ", 0), 0u);
}

TEST_F(Usage, SchemasAreThoseOfTheProject) {
    for (const std::string name : {"job", "answer", "faults", "api"}) {
        const Ran ran = program_.run({"schema", name});
        EXPECT_EQ(ran.code, 0);
        EXPECT_EQ(ran.out, text_of(std::string(TOFT_SOURCE_DIR) + "/schema/" + name + ".json"));
        const auto schema = nlohmann::json::parse(ran.out);
        if (name == "api") {
            EXPECT_EQ(schema.at("openapi"), "3.1.0");
        } else {
            EXPECT_EQ(schema.at("$id"), "urn:toft:" + name + "/1");
        }
    }
}

TEST_F(Usage, RulesAndSourcesAreListed) {
    const Ran screen = program_.run({"rules"});
    const Ran json = program_.run({"rules", "--json"});
    EXPECT_EQ(screen.code, 0);
    EXPECT_EQ(json.code, 0);
    const auto tree = nlohmann::json::parse(json.out);
    for (const auto& rule : tree.at("rules")) {
        const auto name = "\n" + rule.at("name").get<std::string>() + "  [";
        EXPECT_NE(screen.out.find(name), std::string::npos) << name;
    }
    const Ran sources = program_.run({"sources"});
    EXPECT_EQ(sources.code, 0);
    EXPECT_NE(sources.out.find("common practice"), std::string::npos);
}

}  // namespace
}  // namespace toft::cli
