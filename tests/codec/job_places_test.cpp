#include "codec/reading.h"

namespace toft::codec {
namespace {

constexpr const char* leg_places = "/runs/0/legs/0/through_m";
constexpr const char* pipe_places = "/buildings/1/metalwork/0/through_m";

/// The small job with a pipe at the shed and a rod.
Tree surveyed_job() {
    Tree job = small_job();
    job["buildings"][1]["metalwork"] = Tree::parse(R"([{"what": "water pipe"}])");
    job["buildings"][1]["electrode"] = Tree::parse(R"({"rods": 1})");
    return job;
}

Tree surveyed_with(const std::string& pointer, Tree value) {
    Tree job = surveyed_job();
    job[Pointer(pointer)] = std::move(value);
    return job;
}

TEST(PlacesOfAJob, ALegAPipeAndARodMayBeDrawnWhereTheyAre) {
    Tree job = surveyed_with(leg_places, Tree::parse("[[3, 0], [8.5, -2.25], [20, 6]]"));
    job[Pointer(pipe_places)] = Tree::parse("[[40, 6], [21, 6]]");
    job[Pointer("/buildings/1/electrode/at_m")] = Tree::parse("[22, 9]");
    EXPECT_EQ(gist(faults_of(job)), Gist{});
}

TEST(PlacesOfAJob, ADrawingIsNotToldAsUnused) {
    const site::Job bare = loaded(surveyed_job());
    const site::Job drawn = loaded(surveyed_with(leg_places, Tree::parse("[[20, 0]]")));
    EXPECT_EQ(drawn.unused, bare.unused);
}

TEST(PlacesOfAJob, TheLengthStatedCountsAndNotTheOneDrawn) {
    const site::Job job = loaded(surveyed_with(leg_places, Tree::parse("[[500, 0]]")));
    EXPECT_EQ(job.runs.at(0).legs.at(0).length.low, metres(20));
    EXPECT_EQ(job.runs.at(0).legs.at(0).length.high, metres(20));
}

TEST(PlacesOfAJob, EachPlaceThatIsNoneIsNamed) {
    const Tree places = Tree::parse(R"([[1, 2], [1], 3, ["a", 1], [1, 2, 3], [2001, 0], [null, 0],
        {"x": 1}, [0, -2000.5]])");
    Gist expected;
    for (int i = 1; i < 9; ++i) {
        expected.push_back(std::string(leg_places) + "/" + std::to_string(i) + " wrong-kind");
    }
    EXPECT_EQ(gist(faults_of(surveyed_with(leg_places, places))), expected);
    EXPECT_EQ(gist(faults_of(surveyed_with(pipe_places, Tree::parse("[[1, 2], []]")))),
              Gist{std::string(pipe_places) + "/1 wrong-kind"});
}

TEST(PlacesOfAJob, AListIsNeitherEmptyNorEndless) {
    const std::string where = leg_places;
    for (const Tree& list : {Tree::array(), Tree(101, Tree::parse("[0, 1]"))}) {
        EXPECT_EQ(gist(faults_of(surveyed_with(where, list))), Gist{where + " too-many"});
    }
    EXPECT_EQ(gist(faults_of(surveyed_with(where, Tree(100, Tree::parse("[0, 1]"))))), Gist{});
    for (const Tree& list : {Tree(3), Tree("here"), Tree(true), Tree::object()}) {
        EXPECT_EQ(gist(faults_of(surveyed_with(where, list))), Gist{where + " wrong-kind"});
    }
}

TEST(PlacesOfAJob, ARodStandsAtOnePlace) {
    const std::string where = "/buildings/1/electrode/at_m";
    for (const char* place : {"3", "[1]", "[1, 2, 3]", "[[1, 2]]", "[0, 2001]"}) {
        EXPECT_EQ(gist(faults_of(surveyed_with(where, Tree::parse(place)))),
                  Gist{where + " wrong-kind"})
            << place;
    }
    EXPECT_EQ(gist(faults_of(surveyed_with(where, nullptr))), Gist{});
}

}  // namespace
}  // namespace toft::codec
