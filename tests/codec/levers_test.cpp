#include "codec/levers.h"

#include "codec/fits.h"
#include "codec/scheme.h"

#include <gtest/gtest.h>

namespace toft::codec {
namespace {

answer::LeversAnswer one_lever() {
    answer::LeversAnswer a;
    a.job = "Shed";
    a.sound = true;
    a.scheme_key = "key";
    a.scheme = "scheme";
    a.total = 1000;
    a.tried = 7;
    answer::LeverAnswer l;
    l.key = "free-way";
    l.change = "free a way";
    l.saves = 120;
    a.levers.push_back(l);
    return a;
}

TEST(LeversText, HoldsTheLeverAndWhatIsNotPricedAsNull) {
    const Json json = Json::parse(write_levers(one_lever()));
    EXPECT_EQ(json["format"], "toft-levers/1");
    EXPECT_EQ(json["tried"], 7);
    expect_fits("levers", write_levers(one_lever()));
    ASSERT_EQ(json["levers"].size(), 1u);
    EXPECT_EQ(json["levers"][0]["saves"], 120);
    EXPECT_TRUE(json["levers"][0]["cost"].is_null());
    EXPECT_TRUE(json["levers"][0]["net"].is_null());
}

TEST(LeversText, WhereNothingIsSoundNothingIsSaved) {
    answer::LeversAnswer a = one_lever();
    a.scheme_key.clear();
    a.levers[0].opens = true;
    const Json json = Json::parse(write_levers(a));
    EXPECT_TRUE(json["price"].is_null());
    EXPECT_TRUE(json["levers"][0]["saves"].is_null());
}

}  // namespace
}  // namespace toft::codec
