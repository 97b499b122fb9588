// toft design: what goes in, what comes out, and with which exit code.

#include "cli/program.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace toft::cli {
namespace {

using Tree = nlohmann::ordered_json;

class Design : public ::testing::Test {
protected:
    Ran design(const std::string& job) const { return program_.run({"design", "-"}, job); }
    Ran design_json(const std::string& job) const {
        return program_.run({"design", "-", "--json"}, job);
    }
    /// The code of the first fault said as JSON.
    std::string code_of(const Ran& ran) const {
        EXPECT_EQ(ran.code, 2);
        EXPECT_EQ(ran.error, "");
        const Tree json = Tree::parse(ran.out);
        EXPECT_EQ(json["format"], "toft-faults/1");
        return json["faults"].at(0)["code"];
    }

    Program program_;
    Tree demo_ = Tree::parse(text_of(example("demo")));
};

TEST_F(Design, ASoundJobLeavesWithZeroAndSaysWhatToDo) {
    const Ran ran = program_.run({"design", example("demo")});
    EXPECT_EQ(ran.code, 0);
    EXPECT_EQ(ran.error, "");
    for (const char* part :
         {"DO THIS", "HOW CLOSE TO THE LIMITS", "DEMAND, AND WHAT THE INTAKE HAS LEFT",
          "voltage-drop", "● meets", "WHAT FELL, AND WHY", "BEFORE ANYONE ACTS ON THIS"}) {
        EXPECT_NE(ran.out.find(part), std::string::npos) << part;
    }
    EXPECT_EQ(ran.out.find("■ fails"), std::string::npos) << "a scheme that fails was shown";
}

TEST_F(Design, WhichDeviceOpensIsToldPairByPair) {
    const Ran ran = program_.run({"design", example("demo")});
    EXPECT_NE(ran.out.find("WHICH DEVICE OPENS"), std::string::npos);
    EXPECT_NE(ran.out.find("BS 88-3 80 A over B 32 A breaker: selective up to 610 A of 1205 A"),
              std::string::npos);
    const Ran why = program_.run({"explain", example("demo"), "selectivity.1_a"});
    EXPECT_EQ(why.code, 0);
    EXPECT_NE(why.out.find("610"), std::string::npos);
}

TEST_F(Design, StandardInputIsReadForADash) {
    const Ran from_file = program_.run({"design", example("demo"), "--json"});
    const Ran from_input = design_json(demo_.dump());
    Tree a = Tree::parse(from_file.out);
    Tree b = Tree::parse(from_input.out);
    EXPECT_GE(a["search"]["milliseconds"].get<double>(), 0);
    a["search"].erase("milliseconds");
    b["search"].erase("milliseconds");
    EXPECT_EQ(a, b);
    EXPECT_EQ(from_input.code, 0);
}

TEST_F(Design, NothingSoundLeavesWithOneAndNamesTheNearestMiss) {
    demo_["runs"][0]["legs"][1]["length_m"] = 4000;
    const Ran ran = design(demo_.dump());
    EXPECT_EQ(ran.code, 1);
    EXPECT_NE(ran.out.find("NO SOUND SCHEME"), std::string::npos);
    EXPECT_NE(ran.out.find("voltage-drop"), std::string::npos);
    const Ran json = design_json(demo_.dump());
    EXPECT_EQ(json.code, 1);
    EXPECT_EQ(Tree::parse(json.out)["schemes"], Tree::array());
    EXPECT_EQ(Tree::parse(json.out)["sound"], false);
}

TEST_F(Design, SoundOnlyOnConditionsLeavesWithFive) {
    demo_["runs"][0]["legs"][1]["length_m"] = {{"low", 20}, {"high", 2000}};
    const Ran ran = design_json(demo_.dump());
    ASSERT_EQ(ran.code, 5);
    const Tree json = Tree::parse(ran.out);
    EXPECT_EQ(json["sound"], false);
    ASSERT_FALSE(json["schemes"].empty());
    for (const Tree& scheme : json["schemes"]) {
        EXPECT_EQ(scheme["conditional_on"], Tree::parse(R"(["/runs/0/legs/1/length_m"])"));
    }
    const Ran screen = design(demo_.dump());
    EXPECT_EQ(screen.code, 5);
    EXPECT_NE(screen.out.find("ONLY IF FACTS TURN OUT WELL"), std::string::npos);
    EXPECT_NE(screen.out.find("Find out first:"), std::string::npos);
}

TEST_F(Design, AllShowsNoFewerSchemesInTheSameOrder) {
    const Tree some = Tree::parse(program_.run({"design", example("demo"), "--json"}).out);
    const Tree all = Tree::parse(program_.run({"design", example("demo"), "--json", "--all"}).out);
    EXPECT_LE(some["schemes"].size(), 24u);
    ASSERT_GE(all["schemes"].size(), some["schemes"].size());
    for (std::size_t i = 0; i < some["schemes"].size(); ++i) {
        EXPECT_EQ(all["schemes"][i]["key"], some["schemes"][i]["key"]);
    }
}

TEST_F(Design, FaultsAreSaidOnStandardErrorWithWhatWasMeant) {
    demo_["intake"]["earthing"] = "TN-CS";
    demo_["runs"][0]["legs"][0]["length_m"] = -4;
    const Ran ran = design(demo_.dump());
    EXPECT_EQ(ran.code, 2);
    EXPECT_EQ(ran.out, "");
    for (const char* part :
         {"/intake/earthing", "did you mean: TN-C-S", "allowed: TN-S, TN-C-S, TT",
          "/runs/0/legs/0/length_m", "-4 is outside"}) {
        EXPECT_NE(ran.error.find(part), std::string::npos) << part << "\n" << ran.error;
    }
    const Tree json = Tree::parse(design_json(demo_.dump()).out);
    ASSERT_EQ(json["faults"].size(), 2u);
    EXPECT_EQ(json["faults"][0]["nearest"], "TN-C-S");
    EXPECT_EQ(json["faults"][1]["pointer"], "/runs/0/legs/0/length_m");
}

TEST_F(Design, FilesThatCannotBeReadAreSaidAsFaults) {
    EXPECT_EQ(code_of(program_.run({"design", "no-such-file.json", "--json"})), "file");
    EXPECT_EQ(code_of(program_.run({"design", program_.folder().string(), "--json"})), "file");
    EXPECT_EQ(program_.run({"design", "", "--json"}).code, 4) << "no job at all";
    EXPECT_EQ(code_of(program_.run({"design", "/dev/null", "--json"})), "not-json");
    EXPECT_EQ(code_of(program_.run({"design", "-", "--json"})), "not-json");
    const Ran screen = program_.run({"design", "no-such-file.json"});
    EXPECT_EQ(screen.code, 2);
    EXPECT_NE(screen.error.find("no-such-file.json cannot be read"), std::string::npos);
}

TEST_F(Design, FilesThatAreTooLargeOrTooDeepAreRefusedByName) {
    const std::string large(2u << 20, ' ');
    EXPECT_EQ(code_of(program_.run({"design", program_.file("l.json", large), "--json"})),
              "too-large");
    EXPECT_EQ(code_of(design_json(large + "{}")), "too-large");
    EXPECT_EQ(code_of(design_json(std::string(100000, '['))), "too-deep");
    EXPECT_EQ(code_of(design_json("\xff\xfe{")), "not-json");
    EXPECT_EQ(code_of(design_json("")), "not-json");
}

TEST_F(Design, AnEndlessFileIsGivenUp) {
    EXPECT_EQ(code_of(program_.run({"design", "/dev/zero", "--json"})), "too-large");
}

}  // namespace
}  // namespace toft::cli
