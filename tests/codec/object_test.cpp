#include "codec/object.h"

#include <gtest/gtest.h>

namespace toft::codec {
namespace {

TEST(Object, HoldsWhatTheLibrarysOwnListHolds) {
    const std::string text = "a name";
    const std::vector<std::string> texts{"one", "two"};
    const Json kept = Json::array({1, 2});
    const Json ours = object({{"number", 0.1},
                              {"whole", 3},
                              {"large", std::size_t{7}},
                              {"truth", true},
                              {"word", "word"},
                              {"text", text},
                              {"texts", texts},
                              {"nothing", nullptr},
                              {"none", Json()},
                              {"kept", kept},
                              {"inner", object({{"deep", false}})}});
    const Json theirs{{"number", 0.1},
                      {"whole", 3},
                      {"large", std::size_t{7}},
                      {"truth", true},
                      {"word", "word"},
                      {"text", text},
                      {"texts", texts},
                      {"nothing", nullptr},
                      {"none", nullptr},
                      {"kept", kept},
                      {"inner", {{"deep", false}}}};
    EXPECT_EQ(ours.dump(), theirs.dump());
    EXPECT_EQ(kept.size(), 2u) << "what is named is copied, not taken";
    EXPECT_EQ(object({}), Json::object());
}

}  // namespace
}  // namespace toft::codec
