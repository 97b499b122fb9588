// toft explain: every figure has a working, and what is no figure is met with the nearest name.

#include "cli/program.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace toft::cli {
namespace {

class Explain : public ::testing::Test {
protected:
    Ran explain(std::vector<std::string> more) const {
        std::vector<std::string> arguments{"explain", example("demo")};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return program_.run(arguments);
    }

    Program program_;
};

TEST_F(Explain, NamesAreListedAndEachHasAWorking) {
    const Ran listed = explain({});
    ASSERT_EQ(listed.code, 0);
    const Ran all = explain({"--all"});
    ASSERT_EQ(all.code, 0);
    ASSERT_EQ(all.out.rfind(listed.out + "\n", 0), 0u);
    std::istringstream names(listed.out);
    std::string name;
    std::size_t at = listed.out.size();
    int count = 0;
    while (std::getline(names, name)) {
        ++count;
        at = all.out.find("\n" + name + " = ", at);
        ASSERT_NE(at, std::string::npos) << name << " has no working, or not in its turn";
    }
    EXPECT_GT(count, 10);
    EXPECT_NE(("\n" + listed.out).find("\nvoltage-drop\n"), std::string::npos);
    EXPECT_NE(("\n" + listed.out).find("\nloop_impedance_far_ohm\n"), std::string::npos);
}

TEST_F(Explain, OneWorkingAskedForIsThatOfTheWholeList) {
    const std::string all = explain({"--all"}).out;
    for (const char* name : {"voltage-drop", "loop_impedance_far_ohm"}) {
        const Ran one = explain({name});
        EXPECT_EQ(one.code, 0) << name;
        EXPECT_EQ(one.out.rfind(std::string(name) + " = ", 0), 0u) << name;
        EXPECT_NE(one.out.find("\nscheme "), std::string::npos) << name;
        EXPECT_NE(all.find("\n" + one.out), std::string::npos) << name;
    }
    EXPECT_EQ(explain({"voltage-drop", "--all"}).code, 4);
    EXPECT_EQ(explain({"--json", "--all"}).code, 4);
}

TEST_F(Explain, AWorkingNamesItsSources) {
    const Ran ran = explain({"voltage-drop"});
    EXPECT_EQ(ran.code, 0);
    EXPECT_NE(ran.out.find("["), std::string::npos);
    const auto json = nlohmann::json::parse(explain({"voltage-drop", "--json"}).out);
    EXPECT_EQ(json.at("format"), "toft-working/1");
    EXPECT_EQ(json.at("name"), "voltage-drop");
    bool cited = false;
    for (const auto& line : json.at("lines")) {
        EXPECT_FALSE(line.at("symbol").get<std::string>().empty());
        cited = cited || line.contains("source");
    }
    EXPECT_TRUE(cited);
}

TEST_F(Explain, AMisspeltNameIsMetWithTheNearest) {
    const Ran ran = explain({"voltage-dorp"});
    EXPECT_EQ(ran.code, 2);
    EXPECT_EQ(ran.out, "");
    EXPECT_NE(ran.error.find("did you mean: voltage-drop\n"), std::string::npos) << ran.error;
    const auto json = nlohmann::json::parse(explain({"voltage-dorp", "--json"}).out);
    EXPECT_EQ(json.at("faults").at(0).at("code"), "unknown-figure");
    EXPECT_EQ(json.at("faults").at(0).at("nearest"), "voltage-drop");
}

TEST_F(Explain, ASchemeIsNamedByKeyOrRank) {
    const auto answer =
        nlohmann::json::parse(program_.run({"design", example("demo"), "--json", "--all"}).out);
    const auto key = answer.at("schemes").at(1).at("key").get<std::string>();
    const Ran by_key = explain({"voltage-drop", "--scheme", key});
    const Ran by_rank = explain({"voltage-drop", "--scheme", "2"});
    EXPECT_EQ(by_key.code, 0);
    EXPECT_EQ(by_key.out, by_rank.out);
    EXPECT_NE(by_key.out.find("scheme " + key), std::string::npos);
    const Ran none = explain({"voltage-drop", "--scheme", key + "x"});
    EXPECT_EQ(none.code, 2);
    EXPECT_NE(none.error.find("did you mean: " + key), std::string::npos) << none.error;
}

TEST_F(Explain, WhereNothingIsSoundThereIsNothingToExplain) {
    auto job = nlohmann::ordered_json::parse(text_of(example("demo")));
    job["runs"][0]["legs"][1]["length_m"] = 4000;
    const Ran ran = program_.run({"explain", "-", "voltage-drop"}, job.dump());
    EXPECT_EQ(ran.code, 1);
    EXPECT_NE(ran.error.find("no scheme is sound"), std::string::npos);
    EXPECT_EQ(program_.run({"explain", "none.json"}).code, 2);
}

}  // namespace
}  // namespace toft::cli
