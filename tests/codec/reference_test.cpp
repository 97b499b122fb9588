#include "codec/reference.h"

#include "codec/document.h"
#include "rules/rulebook.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::codec {
namespace {

TEST(RulesText, NamesEveryRuleOnceAndSaysWhatItReads) {
    const Json json = Json::parse(write_rules());
    EXPECT_EQ(json["format"], "toft-rules/1");
    EXPECT_EQ(json["edition"], rules::edition());
    ASSERT_EQ(json["rules"].size(), rules::rulebook().size());
    std::set<std::string> names;
    for (std::size_t i = 0; i < json["rules"].size(); ++i) {
        const Json& rule = json["rules"][i];
        const rules::RuleInfo& info = *rules::rulebook()[i].info;
        EXPECT_EQ(rule["name"], info.name);
        EXPECT_EQ(rule["counts_as_headroom"], info.graded);
        EXPECT_EQ(rule["longer"], rules::trend_word(info.longer));
        EXPECT_EQ(rule["larger_device"], rules::trend_word(info.larger));
        for (const char* key : {"title", "clause", "reads"}) {
            EXPECT_FALSE(rule[key].get<std::string>().empty()) << info.name << " " << key;
        }
        EXPECT_TRUE(names.insert(rule["name"].get<std::string>()).second) << info.name;
    }
    EXPECT_EQ(names.count("voltage-drop"), 1u);
}

TEST(PricesJson, GivesWhatThePriceIsAndNullWhereThereIsNone) {
    const std::string text =
        write_prices("my.csv", {{"duct", "m", true, 3.24, 3.6, 4.32, "around cable"},
                                {"fuse 32", "each", false, 0, 0, 0, "at the head"}});
    const auto json = nlohmann::json::parse(text);
    EXPECT_EQ(json["format"], "toft-prices/1");
    EXPECT_EQ(json["book"], "my.csv");
    EXPECT_EQ(json["items"][0]["low"], 3.24);
    EXPECT_EQ(json["items"][0]["unit"], "m");
    EXPECT_TRUE(json["items"][1]["net"].is_null());
    EXPECT_EQ(text.back(), '\n');
}

}  // namespace
}  // namespace toft::codec
