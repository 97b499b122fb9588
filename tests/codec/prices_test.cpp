#include "codec/prices.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace toft::codec {
namespace {

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
