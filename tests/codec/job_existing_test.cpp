#include "codec/reading.h"

#include <gtest/gtest.h>

namespace toft::codec {
namespace {

Tree lying_there(const char* text) { return small_with("/runs/0/existing", Tree::parse(text)); }

Gist said_there(const char* text) { return gist(faults_of(lying_there(text))); }

TEST(JobExisting, SaysWhatIsThereHowItWasFoundAndWhatItReads) {
    const site::Run run = loaded(lying_there(R"({"family": "armoured PVC copper", "cores": 2,
        "live_mm2": 6, "condition": "not seen", "colours": "red and black", "laid_in": 1988,
        "device": {"standard": "BS EN 60898", "curve": "B", "rating_a": 32},
        "fed_from": "spare way", "insulation_megohm": 12, "r1_r2_ohm": 0.2,
        "read_through": "armour", "r1_rn_ohm": 0.19, "zs_ohm": 0.5, "armour_ohm": 0.11})"))
                              .runs.at(0);
    ASSERT_TRUE(run.existing);
    const site::Existing& e = *run.existing;
    EXPECT_EQ(e.family, "armoured PVC copper");
    EXPECT_EQ(e.cores, 2);
    EXPECT_EQ(e.live, square_millimetres(6));
    EXPECT_EQ(e.condition, site::Condition::not_seen);
    EXPECT_EQ(e.colours, "red and black");
    EXPECT_EQ(e.laid_in, 1988);
    EXPECT_EQ(e.device->rating, amperes(32));
    EXPECT_EQ(e.fed_from, site::FedFrom::spare_way);
    EXPECT_EQ(e.insulation.low, ohms(12e6));
    EXPECT_EQ(e.r1_r2.low, ohms(0.2));
    EXPECT_EQ(e.through, site::ReadThrough::armour);
    EXPECT_EQ(e.r1_rn.low, ohms(0.19));
    EXPECT_EQ(e.zs.low, ohms(0.5));
    EXPECT_EQ(e.armour.low, ohms(0.11));
    EXPECT_EQ(site::ways_in_use(run), 1);
}

TEST(JobExisting, MustBeACableOfTheTables) {
    EXPECT_EQ(said_there(R"({"family": "armoured XLPE copper", "cores": 5, "live_mm2": 70})"),
              Gist{"/runs/0/existing/live_mm2 unknown-size"});
    EXPECT_EQ(said_there(R"({"family": "flat twin and earth", "cores": 4, "live_mm2": 6})"),
              Gist{"/runs/0/existing/cores unknown-size"});
    EXPECT_EQ(said_there(R"({"family": "flat twin and earth", "cores": 2})"),
              Gist{"/runs/0/existing/live_mm2 missing"});
}

TEST(JobExisting, AProtectiveCoreOfAnotherSizeIsRefused) {
    EXPECT_EQ(said_there(R"({"family": "flat twin and earth", "cores": 2, "live_mm2": 2.5,
                       "cpc_mm2": 1})"),
              Gist{"/runs/0/existing/cpc_mm2 unknown-size"});
    loaded(lying_there(R"({"family": "flat twin and earth", "cores": 2, "live_mm2": 2.5,
                        "cpc_mm2": 1.5})"));
    EXPECT_EQ(said_there(R"({"family": "armoured XLPE copper", "cores": 2, "live_mm2": 10,
                       "cpc_mm2": 10})"),
              Gist{"/runs/0/existing/cpc_mm2 unknown-size"});
}

TEST(JobExisting, ADeviceStaysOnlyWhereItsPlaceAndCurveAreSaid) {
    const auto unused = [](const char* head) {
        return loaded(lying_there((std::string(R"({"family": "armoured XLPE copper", "cores": 2,
            "live_mm2": 10, )") + head +
                                   "}")
                                      .c_str()))
            .unused;
    };
    const char* breaker = R"("device": {"standard": "BS EN 60898", "rating_a": 32})";
    EXPECT_EQ(unused(breaker).size(), 1u);
    EXPECT_EQ(unused((std::string(breaker) + R"(, "fed_from": "spare way")").c_str()).size(), 1u);
    EXPECT_TRUE(unused(R"("fed_from": "tails", "device": {"standard": "BS 88-3",
        "rating_a": 32})")
                    .empty());
    EXPECT_EQ(unused(R"("laid_in": 1988)").size(), 1u);
}

TEST(JobExisting, LiesTheWholeWay) {
    Tree job = lying_there(R"({"family": "armoured XLPE copper", "cores": 2, "live_mm2": 10})");
    Tree leg = job["runs"][0]["legs"][0];
    leg["family"] = "armoured PVC copper";
    job["runs"][0]["legs"].push_back(leg);
    EXPECT_EQ(gist(faults_of(job)), Gist{"/runs/0/existing existing-part"});
}

}  // namespace
}  // namespace toft::codec
