#include "codec/job.h"

#include "codec/limits.h"
#include "codec/reading.h"
#include "tables/embedded.h"

#include <rapidcheck/gtest.h>

namespace toft::codec {
namespace {

TEST(JobFile, TheDemoLoads) {
    const auto job = read_job(tables::embedded_text("examples/demo.json"), support::catalogue());
    ASSERT_TRUE(job);
    EXPECT_EQ(job->title, "Potter's studio, Wrensnest, Ashlow Green");
    EXPECT_EQ(job->buildings.size(), 2u);
    EXPECT_EQ(job->runs.at(0).legs.size(), 3u);
    EXPECT_EQ(job->wishes.prefer, site::Prefer::price);
}

TEST(JobFile, ThreeFactsAreEnough) {
    const site::Job job = loaded(small_job());
    EXPECT_EQ(job.title.rfind("Supply to ", 0), 0u) << job.title;
    EXPECT_EQ(job.rulebook, "uk");
    EXPECT_EQ(job.intake.earthing, site::Earthing::tn_s);
    EXPECT_FALSE(job.intake.ze.known);
    EXPECT_FALSE(job.ground.resistivity.known);
    EXPECT_TRUE(job.ground.soil.empty());
    EXPECT_TRUE(job.unused.empty());
}

TEST(JobFile, NullAndMissingReadTheSame) {
    Tree job = small_job();
    for (const char* key : {"title", "rulebook", "ground", "wishes", "readings"}) {
        job[key] = nullptr;
    }
    for (const char* key : {"ze_ohm", "pscc_ka", "service_fuse", "looped", "board", "demand_a"}) {
        job["intake"][key] = nullptr;
    }
    const site::Job read = loaded(job);
    EXPECT_FALSE(read.intake.ze.known);
    EXPECT_FALSE(read.intake.service_fuse);
    EXPECT_EQ(read.intake.looped, site::Answer::unknown);
    EXPECT_EQ(read.title.rfind("Supply to ", 0), 0u) << read.title;
}

TEST(JobFile, OnlyAnObjectIsAJob) {
    for (const char* text : {"[]", "1", "null", "\"job\"", "true"}) {
        EXPECT_EQ(gist(faults_in(text)), Gist{" wrong-kind"}) << text;
    }
    EXPECT_EQ(gist(faults_in("")), Gist{" not-json"});
}

TEST(JobFile, AnEmptyJobNamesAllThatItLacks) {
    EXPECT_EQ(gist(faults_in("{}")),
              (Gist{"/format missing", "/intake missing", "/buildings origin", "/runs no-run"}));
}

TEST(JobFile, AllFaultsAreSaidAtOnce) {
    Tree job = small_job();
    job["tittle"] = "x";
    job["intake"]["earthing"] = "TN-CS";
    job["intake"]["ze_ohm"] = -0.2;
    job["intake"]["tails_mm2"] = {{"value", 25}, {"low", 16}};
    job["buildings"][1]["use"] = "shet";
    job["buildings"][1]["load_a"] = 0;
    job["runs"][0]["legs"][0]["length_m"] = 0;
    job["runs"][0]["legs"].push_back({{"method", "burried direct"}, {"depth", 1}});
    job["wishes"] = {{"prefer", "cheap"}};
    const Faults faults = faults_of(job);
    EXPECT_EQ(gist(faults),
              (Gist{"/intake/earthing unknown-word", "/intake/ze_ohm out-of-range",
                    "/intake/tails_mm2 wrong-kind", "/buildings/1/use unknown-word",
                    "/buildings/1/load_a out-of-range", "/runs/0/legs/0/length_m out-of-range",
                    "/runs/0/legs/1/method unknown-word", "/runs/0/legs/1/length_m missing",
                    "/runs/0/legs/1/depth unknown-key", "/wishes/prefer unknown-word",
                    "/tittle unknown-key"}));
    EXPECT_EQ(faults[0].nearest, "TN-C-S");
    EXPECT_EQ(faults[3].nearest, "shed");
    EXPECT_EQ(faults[6].nearest, "buried direct");
    EXPECT_EQ(faults[8].nearest, "depth_m");
    EXPECT_EQ(faults[10].nearest, "title");
}

TEST(JobFile, WhatDoesNotFitTogetherIsSaidBesides) {
    Tree job = small_job();
    job["intake"]["ze_ohm"] = "low";
    job["runs"][0]["to"] = "shedd";
    const Faults faults = faults_of(job);
    EXPECT_EQ(gist(faults), (Gist{"/intake/ze_ohm wrong-kind", "/runs/0/to unknown-building"}));
    EXPECT_EQ(faults[1].nearest, "shed");
}

TEST(JobFile, WhatFollowsFromAFaultIsNotSaidAgain) {
    EXPECT_EQ(gist(faults_of(small_with("/buildings/1/id", 7))),
              Gist{"/buildings/1/id wrong-kind"});
    EXPECT_EQ(gist(faults_of(small_with("/buildings", 7))), Gist{"/buildings wrong-kind"});
    EXPECT_EQ(gist(faults_of(small_with("/buildings/0/at", "orgin"))),
              Gist{"/buildings/0/at unknown-word"});
    EXPECT_EQ(gist(faults_of(small_with("/runs/0/legs", 7))), Gist{"/runs/0/legs wrong-kind"});
    EXPECT_EQ(gist(faults_of(small_with("/buildings/1/load_a", -1))),
              Gist{"/buildings/1/load_a out-of-range"});
}

TEST(JobFile, RunsFormATreeFromTheOrigin) {
    const auto said = [](const char* pointer, const char* value) {
        return gist(faults_of(small_with(pointer, value)));
    };
    EXPECT_EQ(said("/buildings/1/id", "house"),
              (Gist{"/buildings/1/id duplicate-id", "/runs/0/to unknown-building"}));
    EXPECT_EQ(said("/runs/0/to", "house"), Gist{"/runs/0/to cycle"});
    EXPECT_EQ(said("/runs/0/from", "barn"), Gist{"/runs/0/from unknown-building"});
    EXPECT_EQ(gist(faults_of(small_with("/runs", Tree::array()))), Gist{"/runs no-run"});
    EXPECT_EQ(gist(faults_of(small_with("/runs/0/legs", Tree::array()))),
              Gist{"/runs/0/legs no-leg"});
    Tree job = small_job();
    job["buildings"].push_back({{"id", "barn"}, {"load_w", 2000}});
    EXPECT_EQ(gist(faults_of(job)), Gist{"/buildings/2 orphan"});
    job["runs"][0]["from"] = "barn";
    EXPECT_EQ(gist(faults_of(job)), (Gist{"/runs/0/from orphan", "/buildings/2 orphan"}));
}

TEST(JobFile, TheFormatIsVersioned) {
    const Faults faults = faults_of(small_with("/format", "toft-job/2"));
    EXPECT_EQ(gist(faults), Gist{"/format unknown-word"});
    EXPECT_EQ(faults[0].nearest, "toft-job/1");
    EXPECT_EQ(gist(faults_of(small_with("/rulebook", "us"))), Gist{"/rulebook unknown-word"});
}

TEST(JobFile, WhatIsStatedButNotJudgedIsSaid) {
    Tree job = small_job();
    job["readings"] = Tree::parse(R"([{"anything": 1}])");
    EXPECT_EQ(loaded(job).unused,
              std::vector<std::string>{"test readings are kept in the job but not judged here"});
}

TEST(JobFile, ReadingsOfTheSoilAreUsed) {
    Tree job = small_job();
    job["ground"] = Tree::parse(R"({"wenner": [{"spacing_m": 1, "resistance_ohm": 9.2}],
        "driven_rod": [{"length_m": 1.2, "diameter_mm": 14.2, "resistance_ohm": 60}]})");
    EXPECT_EQ(loaded(job).unused, std::vector<std::string>{});
    EXPECT_EQ(loaded(job).ground.pins.size(), 1u);
    EXPECT_EQ(loaded(job).ground.rods.size(), 1u);
}

TEST(JobFile, AMillionFaultsAreNotSaid) {
    std::string text = R"({"readings": [)";
    while (text.size() < 500000) text += "0, ";
    EXPECT_EQ(gist(faults_in(text + "0]}"))[2], "/readings too-many");
    text = R"({"buildings": [)";
    for (int b = 0; b < 199; ++b) {
        text += R"({"a":0,"b":0,"c":0,"d":0,"e":0,"f":0,"g":0,"h":0,"i":0,"j":0},)";
    }
    EXPECT_EQ(faults_in(text + "{}]}").size(), most_faults);
}

RC_GTEST_PROP(JobFile, AnyValueAtAnyKeyLoadsOrIsPointedAt, ()) {
    const std::vector<SchemaKey>& keys = job_keys();
    static const std::vector<Tree> values{
        nullptr,        true,           -1, 0, 1e300, 0.3, "", "x", "\n", Tree::array(),
        Tree::object(), {{"value", -5}}};
    const SchemaKey& key = keys[*rc::gen::inRange<std::size_t>(0, keys.size())];
    const Tree& value = values[*rc::gen::inRange<std::size_t>(0, values.size())];
    Tree job = whole_job_for(key.pointer);
    job[Pointer(key.pointer)] = value;
    for (const Fault& fault : faults_of(job)) {
        RC_ASSERT(!fault.code.empty());
        RC_ASSERT(!fault.says.empty());
        const std::string top = key.pointer.substr(0, key.pointer.find('/', 1));
        RC_ASSERT(fault.pointer.rfind(top, 0) == 0 || fault.pointer.rfind("/runs", 0) == 0);
    }
}

}  // namespace
}  // namespace toft::codec
