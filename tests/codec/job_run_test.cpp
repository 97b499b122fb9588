#include "codec/reading.h"

namespace toft::codec {
namespace {

Tree job_pointed(const char* pointer, const char* text) {
    return small_with(pointer, Tree::parse(text));
}

Gist said_at(const char* pointer, const char* text) {
    return gist(faults_of(job_pointed(pointer, text)));
}

TEST(RunOfAJob, LegsArriveInTheirUnitsAndOrder) {
    const site::Run run = loaded(job_pointed("/runs/0/legs", R"([
        {"method": "in insulation", "length_m": 8, "ambient_c": -5, "other_loaded_circuits": 1,
         "insulation_length_m": 0.5},
        {"method": "buried in duct", "length_m": {"low": 20, "high": 24}, "depth_m": 0.6,
         "trench": "drive",
         "surface": "shared path", "family": "armoured XLPE copper"}])"))
                              .runs.at(0);
    ASSERT_EQ(run.legs.size(), 2u);
    EXPECT_EQ(run.legs[0].method, site::LegMethod::in_insulation);
    EXPECT_EQ(run.legs[0].length.low, metres(8));
    EXPECT_EQ(run.legs[0].ambient.low, celsius(-5));
    EXPECT_EQ(run.legs[0].other_loaded_circuits.low, 1);
    EXPECT_EQ(run.legs[0].insulation_length.low, metres(0.5));
    EXPECT_FALSE(run.legs[0].depth.known);
    EXPECT_FALSE(run.legs[0].surface);
    EXPECT_EQ(run.legs[1].method, site::LegMethod::buried_in_duct);
    EXPECT_EQ(run.legs[1].trench, "drive");
    EXPECT_EQ(run.legs[0].trench, "");
    EXPECT_EQ(run.legs[1].length.high, metres(24));
    EXPECT_EQ(run.legs[1].depth.low, metres(0.6));
    EXPECT_EQ(run.legs[1].surface, site::Surface::shared_path);
}

TEST(RunOfAJob, ItsFeedMayBeNamedOrLeftOpen) {
    EXPECT_FALSE(loaded(small_job()).runs.at(0).fed_from);
    EXPECT_EQ(loaded(job_pointed("/runs/0/fed_from", "\"new board\"")).runs.at(0).fed_from,
              site::FedFrom::new_board);
    EXPECT_EQ(said_at("/runs/0/fed_from", "\"tail\""), Gist{"/runs/0/fed_from unknown-word"});
}

TEST(RunOfAJob, MoreThanTheSupplyMayGoItsWay) {
    const char* key = "/runs/0/also_carries";
    EXPECT_TRUE(loaded(small_job()).runs.at(0).also_carries.empty());
    EXPECT_EQ(loaded(job_pointed(key, R"(["data", "two-way lighting"])")).runs.at(0).also_carries,
              (std::vector{site::AlsoCarried::data, site::AlsoCarried::two_way_lighting}));
    EXPECT_EQ(said_at(key, R"(["date"])"), Gist{"/runs/0/also_carries/0 unknown-word"});
    EXPECT_EQ(said_at(key, R"("data")"), Gist{"/runs/0/also_carries wrong-kind"});
}

TEST(RunOfAJob, ALegHasAMethodAndAPositiveLength) {
    for (const char* length :
         {"0", "-3", "0.01", "1e6", "{\"value\": -1}", "{\"low\": 0, \"high\": 2}"}) {
        const Gist faults = said_at("/runs/0/legs/0/length_m", length);
        ASSERT_EQ(faults.size(), 1u) << length;
        EXPECT_EQ(faults[0].rfind("/runs/0/legs/0/length_m", 0), 0u) << faults[0];
    }
    EXPECT_EQ(said_at("/runs/0/legs/0", "{}"),
              (Gist{"/runs/0/legs/0/method missing", "/runs/0/legs/0/length_m missing"}));
    EXPECT_EQ(said_at("/runs/0/legs/0/length_m", "null"), Gist{"/runs/0/legs/0/length_m missing"});
    EXPECT_EQ(said_at("/runs/0/legs/0/length_m", "\"9\""),
              Gist{"/runs/0/legs/0/length_m wrong-kind"});
}

TEST(RunOfAJob, ACableThatIsThereMayBeLeftOut) {
    EXPECT_EQ(said_at("/runs/0/existing", "null"), Gist{});
}

TEST(RunOfAJob, OtherCircuitsAreCounted) {
    EXPECT_EQ(said_at("/runs/0/legs/0/other_loaded_circuits", "1.5"),
              Gist{"/runs/0/legs/0/other_loaded_circuits out-of-range"});
    EXPECT_EQ(said_at("/runs/0/legs/0/other_loaded_circuits", "{\"low\": 0, \"high\": 2}"), Gist{});
}

TEST(RunOfAJob, RunsAreNamedAndKnowTheirEnds) {
    EXPECT_EQ(said_at("/runs/0", R"({"legs": [{"method": "tray", "length_m": 3}]})"),
              (Gist{"/runs/0/id missing", "/runs/0/from missing", "/runs/0/to missing"}));
    EXPECT_EQ(said_at("/runs/0", "[]"), Gist{"/runs/0 wrong-kind"});
}

TEST(WishesOfAJob, ArriveInTheirUnits) {
    const site::Wishes wishes = loaded(job_pointed("/wishes", R"({
        "max_voltage_drop_percent": {"run": 2.5, "lighting_total": 3, "other_total": 5},
        "offer": ["armoured XLPE copper"], "smallest_core_mm2": 2.5,
        "prefer": "dependability"})"))
                                    .wishes;
    EXPECT_EQ(wishes.drop_run.low, 2.5);
    EXPECT_EQ(wishes.drop_lighting.low, 3);
    EXPECT_EQ(wishes.drop_other.low, 5);
    EXPECT_EQ(wishes.offer, std::vector<std::string>{"armoured XLPE copper"});
    EXPECT_EQ(wishes.smallest_core.low, square_millimetres(2.5));
    EXPECT_EQ(wishes.prefer, site::Prefer::dependability);
}

TEST(WishesOfAJob, FaultsHaveTheirPointer) {
    EXPECT_EQ(
        said_at("/wishes", R"({"max_voltage_drop_percent": {"run": 0, "total": 5},
                                  "offer": ["armoured XLPE coper", 3], "prefer": "cheapness"})"),
        (Gist{"/wishes/max_voltage_drop_percent/run out-of-range",
              "/wishes/max_voltage_drop_percent/total unknown-key", "/wishes/offer/0 unknown-word",
              "/wishes/offer/1 wrong-kind", "/wishes/prefer unknown-word"}));
    EXPECT_EQ(said_at("/wishes", R"({"offer": "all"})"), Gist{"/wishes/offer wrong-kind"});
}

}  // namespace
}  // namespace toft::codec
