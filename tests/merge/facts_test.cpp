#include "merge/facts.h"

#include <gtest/gtest.h>

namespace toft::merge {
namespace {

struct Result {
    std::string value;
    std::vector<std::string> clashes;  ///< pointers
};

Result put(const std::string& base, const std::string& mine, const std::string& theirs) {
    const Json a = Json::parse(base), b = Json::parse(mine), c = Json::parse(theirs);
    Facts facts;
    const auto merged = facts.merged({&a, &b, &c}, {});
    Result result{merged ? merged->dump() : "", {}};
    for (const Clash& clash : facts.clashes) result.clashes.push_back(clash.pointer);
    return result;
}

using Pointers = std::vector<std::string>;

TEST(Facts, AFigureAndHowWellItIsKnownAreOneFact) {
    const auto result = put(R"({"ze":{"value":0.35,"basis":"declared"}})",
                            R"({"ze":{"value":0.20,"basis":"declared"}})",
                            R"({"ze":{"value":0.35,"basis":"measured"}})");
    EXPECT_EQ(result.clashes, Pointers{"/ze"}) << "0.20 measured is what nobody said";
    EXPECT_EQ(result.value, R"({"ze":{"value":0.35,"basis":"measured"}})");
}

TEST(Facts, APointOfTheDrawingIsOneFact) {
    EXPECT_EQ(put(R"({"at_m":[1,2]})", R"({"at_m":[5,2]})", R"({"at_m":[1,7]})").clashes,
              Pointers{"/at_m"});
}

TEST(Facts, NullSaysNoMoreThanNothing) {
    EXPECT_EQ(put("{}", R"({"a":null})", R"({"a":5})").value, R"({"a":5})");
    EXPECT_EQ(put(R"({"a":3})", R"({"a":null})", "{}").value, "{}");
    EXPECT_EQ(put(R"({"a":3})", R"({"a":null})", R"({"a":4})").clashes, Pointers{"/a"});
}

TEST(Facts, TakenOutHereAndChangedThereIsAClash) {
    const std::string base = R"({"b":[{"id":"x","w":1},{"id":"y","w":1}]})";
    const std::string without = R"({"b":[{"id":"y","w":1}]})";
    const std::string changed = R"({"b":[{"id":"x","w":2},{"id":"y","w":1}]})";
    const auto mine_gone = put(base, without, changed);
    EXPECT_EQ(mine_gone.clashes, Pointers{"/b/0"});
    EXPECT_EQ(mine_gone.value, changed);
    const auto theirs_gone = put(base, changed, without);
    EXPECT_EQ(theirs_gone.clashes, Pointers{"/b/-"});
    EXPECT_EQ(theirs_gone.value, without);
    EXPECT_EQ(put(base, without, base).value, without);
}

TEST(Facts, TheSameThingPutInByBothIsOneThing) {
    const auto result =
        put(R"({"b":[]})", R"({"b":[{"id":"x","w":1}]})", R"({"b":[{"id":"x","use":"gym"}]})");
    EXPECT_TRUE(result.clashes.empty());
    EXPECT_EQ(result.value, R"({"b":[{"id":"x","use":"gym","w":1}]})");
}

TEST(Facts, ThePipeThatWasTakenOutDoesNotLendItsFactsToTheOther) {
    const auto result = put(R"({"m":[{"what":"water pipe","d":1},{"what":"water pipe","d":2}]})",
                            R"({"m":[{"what":"water pipe","d":2}]})",
                            R"({"m":[{"what":"water pipe","d":1,"bonded_at_house":true},
                                     {"what":"water pipe","d":2}]})");
    EXPECT_EQ(result.clashes, Pointers{"/m/0"});
    EXPECT_NE(result.value.find(R"({"what":"water pipe","d":2})"), std::string::npos);
}

TEST(Facts, LegsOfARunAreMergedOneByOneOnlyWhileTheirNumberStays) {
    const std::string base = R"({"legs":[{"n":1,"d":1},{"n":2,"d":1}]})";
    const auto both = put(base, R"({"legs":[{"n":9,"d":1},{"n":2,"d":1}]})",
                          R"({"legs":[{"n":1,"d":1},{"n":2,"d":9}]})");
    EXPECT_TRUE(both.clashes.empty());
    EXPECT_EQ(both.value, R"({"legs":[{"n":9,"d":1},{"n":2,"d":9}]})");
    EXPECT_EQ(put(base, R"({"legs":[{"n":2,"d":1}]})", R"({"legs":[{"n":1,"d":1},{"n":2,"d":9}]})")
                  .clashes,
              Pointers{"/legs"});
}

TEST(Facts, WordsInAListAreOneFact) {
    EXPECT_EQ(put(R"({"offer":["a"]})", R"({"offer":["a","b"]})", R"({"offer":["c"]})").clashes,
              Pointers{"/offer"});
}

}  // namespace
}  // namespace toft::merge
