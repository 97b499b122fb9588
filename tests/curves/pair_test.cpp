#include "curves/pair.h"

#include "curves/curves.h"
#include "curves/looking.h"

#include <gtest/gtest.h>

namespace toft::curves {
namespace {

struct PairNames {
    const char* upstream;
    const char* downstream;
};

drawing::Scene pair_drawn(const picture::Example& one, std::size_t index, double width,
                          const PairNames& named = {"", ""}) {
    return pair_picture(
        {support::catalogue(), one.job, one.answer, index, named.upstream, named.downstream},
        width);
}

TEST(Pair, IsTheOperatorsFuseOverTheHeadUnlessNamed) {
    const picture::Example& one = picture::example("demo");
    const drawing::Scene scene = pair_drawn(one, 0, paper_wide);
    EXPECT_TRUE(picture::says(scene.items, "BS 88-3 80 A"));
    EXPECT_TRUE(picture::says(scene.items, "B 32 A breaker"));
    EXPECT_NE(scene.description.find("Selective up to 610 A of 1.2 kA"), std::string::npos);
    const drawing::Scene other = pair_drawn(one, 0, paper_wide, {"BS 88-3 100 A", "b16 rcbo"});
    EXPECT_TRUE(picture::says(other.items, "BS 88-3 100 A"));
    EXPECT_TRUE(picture::says(other.items, "B 16 A RCBO"));
}

TEST(Pair, SaysWhatItDoesNotKnow) {
    const picture::Example& one = picture::example("demo");
    const drawing::Scene scene = pair_drawn(one, 0, paper_wide, {"BS 1361 100 A", "B 16 A RCBO"});
    EXPECT_NE(scene.description.find("Not known"), std::string::npos);
    const drawing::Scene nothing = pair_drawn(one, 0, paper_wide, {"no such fuse", ""});
    EXPECT_NE(nothing.description.find("Not known"), std::string::npos);
    EXPECT_EQ(picture::count_kind(nothing.items, "sure"), 0);
}

TEST(Pair, SaysWhereAnOverloadIsNotCovered) {
    const picture::Example& one = picture::example("demo");
    const drawing::Scene scene = pair_drawn(one, 0, paper_wide, {"BS 88-3 80 A", "B 40 A RCBO"});
    EXPECT_NE(scene.description.find("overloads of 100 to 200 A"), std::string::npos);
}

TEST(Pair, NoWordsCoverOthersOnAnyExample) {
    const PairNames pairs[] = {{"", ""},
                               {"BS 88-3 100 A", "BS 88-2 63 A"},
                               {"BS 88-2 200 A", "63 A moulded-case breaker"},
                               {"B 6 A breaker", "BS 88-2 6 A"}};
    for (const std::string& name : support::example_names()) {
        const picture::Example& one = picture::example(name);
        const std::size_t last = std::min<std::size_t>(one.answer.schemes.size(), 2);
        for (std::size_t i = 0; i <= last; ++i) {
            for (const PairNames& named : pairs) {
                for (const double width : {320.0, 360.0, 794.0, 1100.0, paper_wide}) {
                    const drawing::Scene scene = pair_drawn(one, i, width, named);
                    EXPECT_EQ(
                        picture::clashes(level(scene.items), {0, 0, scene.width, scene.height}), "")
                        << name << " " << i << " " << width << " " << named.upstream;
                    EXPECT_EQ(drawing::to_svg(scene).find("is missing"), std::string::npos);
                }
            }
        }
    }
}

TEST(Pair, WithoutASchemeTheReasonsStand) {
    const picture::Example& one = picture::example("caravan-no-scheme");
    const drawing::Scene scene = pair_drawn(one, 0, 360);
    EXPECT_EQ(picture::count_kind(scene.items, "reason"),
              static_cast<int>(one.answer.dropped.size()));
    EXPECT_EQ(picture::count_kind(scene.items, "band"), 0);
}

}  // namespace
}  // namespace toft::curves
