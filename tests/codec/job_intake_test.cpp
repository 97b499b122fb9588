#include "codec/reading.h"

namespace toft::codec {
namespace {

Tree job_with_part(const char* part, const char* text) {
    Tree job = small_job();
    if (!job.contains(part)) job[part] = Tree::object();
    job[part].update(Tree::parse(text));
    return job;
}

Gist said_of_part(const char* part, const char* text) {
    return gist(faults_of(job_with_part(part, text)));
}

TEST(IntakeOfAJob, FactsArriveInTheirUnits) {
    const site::Intake in = loaded(job_with_part("intake", R"({"phases": 1, "u0_v": 240,
        "earthing": "TN-C-S", "ze_ohm": {"value": 0.24, "basis": "declared"},
        "ze_declared_ohm": 0.35, "line_neutral_loop_ohm": null, "pscc_ka": 1.2, "pefc_ka": 0.9,
        "service_fuse": {"standard": "BS 88-3", "rating_a": 80}, "looped": false,
        "supply_neutral_mm2": 25, "tails_mm2": 16, "tails_m": 2, "earthing_conductor_mm2": 16,
        "main_bonding_mm2": 10, "electrode_ohm": {"low": 20, "high": 90},
        "board": {"spare_ways": 1, "max_device_a": 50, "behind_rcd_ma": 100},
        "demand_a": 38})"))
                                .intake;
    EXPECT_EQ(in.phases, 1);
    EXPECT_EQ(in.u0, volts(240));
    EXPECT_EQ(in.earthing, site::Earthing::tn_c_s);
    EXPECT_EQ(in.ze.low, ohms(0.24));
    EXPECT_EQ(in.ze.standing, site::Standing::declared);
    EXPECT_EQ(in.ze_declared.low, ohms(0.35));
    EXPECT_FALSE(in.line_neutral_loop.known);
    EXPECT_EQ(in.pscc.low, amperes(1200));
    EXPECT_EQ(in.pefc.low, amperes(900));
    ASSERT_TRUE(in.service_fuse);
    EXPECT_EQ(in.service_fuse->standard, "BS 88-3");
    EXPECT_EQ(in.service_fuse->rating, amperes(80));
    EXPECT_EQ(in.looped, site::Answer::no);
    EXPECT_EQ(in.supply_neutral.low, square_millimetres(25));
    EXPECT_EQ(in.tails.low, square_millimetres(16));
    EXPECT_EQ(in.tails_length.low, metres(2));
    EXPECT_EQ(in.earthing_conductor.low, square_millimetres(16));
    EXPECT_EQ(in.main_bonding.low, square_millimetres(10));
    EXPECT_EQ(in.electrode.high, ohms(90));
    EXPECT_EQ(in.board.spare_ways.low, 1);
    EXPECT_EQ(in.board.max_device.low, amperes(50));
    EXPECT_EQ(in.board.behind_rcd.low, amperes(0.1));
    EXPECT_EQ(in.demand.low, amperes(38));
}

TEST(IntakeOfAJob, ZeroIsAFactAndNullIsNone) {
    const site::Intake in = loaded(job_with_part("intake", R"({"main_bonding_mm2": 0,
        "earthing_conductor_mm2": null,
        "board": {"behind_rcd_ma": 0, "spare_ways": null}})"))
                                .intake;
    EXPECT_TRUE(in.main_bonding.known);
    EXPECT_EQ(in.main_bonding.low, square_millimetres(0));
    EXPECT_FALSE(in.earthing_conductor.known);
    EXPECT_TRUE(in.board.behind_rcd.known);
    EXPECT_FALSE(in.board.spare_ways.known);
}

TEST(IntakeOfAJob, EarthingIsTheOneFactThatMustBeStated) {
    EXPECT_EQ(said_of_part("intake", R"({"earthing": null})"), Gist{"/intake/earthing missing"});
    const Faults faults = faults_of(small_with("/intake/earthing", "PME"));
    ASSERT_EQ(gist(faults), Gist{"/intake/earthing unknown-word"});
    EXPECT_EQ(faults[0].allowed, (std::vector<std::string>{"TN-S", "TN-C-S", "TT"}));
    EXPECT_EQ(gist(faults_of(small_with("/intake", nullptr))), Gist{"/intake missing"});
}

TEST(IntakeOfAJob, NoFigureIsNegativeOrAbsurd) {
    for (const char* key :
         {"ze_ohm", "ze_declared_ohm", "line_neutral_loop_ohm", "pscc_ka", "pefc_ka",
          "supply_neutral_mm2", "tails_mm2", "tails_m", "earthing_conductor_mm2",
          "main_bonding_mm2", "electrode_ohm", "demand_a"}) {
        for (double figure : {-1.0, 1e9}) {
            EXPECT_EQ(gist(faults_of(small_with(std::string("/intake/") + key, figure))),
                      Gist{std::string("/intake/") + key + " out-of-range"});
        }
    }
}

TEST(IntakeOfAJob, ASupplyHasOnePhaseOrThree) {
    EXPECT_EQ(said_of_part("intake", R"({"phases": 3})"), Gist{});
    EXPECT_EQ(said_of_part("intake", R"({"phases": 2})"), Gist{"/intake/phases out-of-range"});
    EXPECT_EQ(said_of_part("intake", R"({"phases": 0})"), Gist{"/intake/phases out-of-range"});
}

TEST(IntakeOfAJob, ADeviceIsAStandardAndARating) {
    EXPECT_EQ(said_of_part("intake", R"({"service_fuse": {"rating_a": 80}})"),
              Gist{"/intake/service_fuse/standard missing"});
    EXPECT_EQ(said_of_part("intake", R"({"service_fuse": {"standard": "BS 88-3", "rating_a": 0}})"),
              Gist{"/intake/service_fuse/rating_a out-of-range"});
    const Faults faults = faults_of(
        job_with_part("intake", R"({"service_fuse": {"standard": "BS 1362", "rating_a": 80}})"));
    ASSERT_EQ(gist(faults), Gist{"/intake/service_fuse/standard unknown-word"});
    EXPECT_EQ(faults[0].nearest, "BS 1361");
    EXPECT_EQ(said_of_part("intake", R"({"service_fuse": 80})"),
              Gist{"/intake/service_fuse wrong-kind"});
}

}  // namespace
}  // namespace toft::codec
