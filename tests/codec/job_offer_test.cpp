#include "codec/reading.h"

namespace toft::codec {
namespace {

Tree with(const std::vector<std::pair<const char*, const char*>>& changes) {
    Tree job = small_job();
    for (const auto& [pointer, text] : changes) job[Pointer(pointer)] = Tree::parse(text);
    return job;
}

Gist said(const std::vector<std::pair<const char*, const char*>>& changes) {
    return gist(faults_of(with(changes)));
}

TEST(OfferOfAJob, ABreakerDoesNotStandOnTheTails) {
    EXPECT_EQ(
        said({{"/runs/0/fed_from", "\"tails\""},
              {"/runs/0/device", R"({"standard": "BS EN 60898", "curve": "B", "rating_a": 32})"}}),
        Gist{"/runs/0/device nothing-on-offer"});
    EXPECT_TRUE(
        said({{"/runs/0/fed_from", "\"new board\""},
              {"/runs/0/device", R"({"standard": "BS EN 60898", "curve": "B", "rating_a": 32})"}})
            .empty());
}

TEST(OfferOfAJob, AnOldFuseNeedsABoardThatTakesIt) {
    const char* old = R"({"standard": "BS 3036", "rating_a": 30})";
    EXPECT_EQ(said({{"/runs/0/fed_from", "\"spare way\""}, {"/runs/0/device", old}}),
              Gist{"/runs/0/device nothing-on-offer"});
    EXPECT_TRUE(said({{"/runs/0/fed_from", "\"spare way\""},
                      {"/runs/0/device", old},
                      {"/intake/board", R"({"takes": "BS 3036", "spare_ways": 1})"}})
                    .empty());
}

TEST(OfferOfAJob, FlatCableDoesNotCarryThreePhases) {
    EXPECT_EQ(said({{"/intake/phases", "3"},
                    {"/runs/0/phases", "3"},
                    {"/runs/0/legs/0/family", "\"flat twin and earth\""}}),
              Gist{"/runs/0/legs/0/family nothing-on-offer"});
}

TEST(OfferOfAJob, WishesThatExcludeEachOtherAreSaid) {
    EXPECT_EQ(said({{"/wishes", R"({"offer": ["flat twin and earth"], "smallest_core_mm2": 25})"}}),
              Gist{"/wishes/offer nothing-on-offer"});
    EXPECT_EQ(said({{"/wishes", R"({"devices": ["BS 1361"]})"}}),
              Gist{"/wishes/devices nothing-on-offer"});
}

TEST(OfferOfAJob, ASizeThatAFamilyLacksNamesThoseItHas) {
    const auto faults = faults_of(with(
        {{"/runs/0/legs/0/family", "\"flat twin and earth\""}, {"/runs/0/legs/0/live_mm2", "25"}}));
    ASSERT_EQ(gist(faults), Gist{"/runs/0/legs/0/live_mm2 unknown-size"});
    EXPECT_EQ(faults[0].nearest, "16");
    EXPECT_EQ(faults[0].allowed.size(), 7u);
}

TEST(OfferOfAJob, ARatingThatAStandardLacksNamesThoseItHas) {
    const auto faults =
        faults_of(with({{"/runs/0/device", R"({"standard": "BS 88-3", "rating_a": 40})"}}));
    ASSERT_EQ(gist(faults), Gist{"/runs/0/device/rating_a unknown-device"});
    EXPECT_NE(std::find(faults[0].allowed.begin(), faults[0].allowed.end(), "45"),
              faults[0].allowed.end());
}

TEST(OfferOfAJob, CoresMustSuitThePhases) {
    EXPECT_EQ(said({{"/intake/phases", "3"},
                    {"/runs/0/phases", "3"},
                    {"/runs/0/legs/0/family", "\"armoured XLPE copper\""},
                    {"/runs/0/legs/0/cores", "3"}}),
              Gist{"/runs/0/legs/0/cores phases"});
    EXPECT_EQ(said({{"/runs/0/legs/0/family", "\"armoured XLPE copper\""},
                    {"/runs/0/legs/0/cores", "4"}}),
              Gist{"/runs/0/legs/0/cores phases"});
    EXPECT_EQ(said({{"/runs/0/phases", "3"}}), Gist{"/runs/0/phases phases"});
}

}  // namespace
}  // namespace toft::codec
