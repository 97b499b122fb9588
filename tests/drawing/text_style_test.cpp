#include "drawing/text_style.h"

#include <gtest/gtest.h>

namespace toft::drawing {
namespace {

TEST(Spans, SymbolHasItsSubscriptBelow) {
    const Spans zs = symbol("Z", "s");
    ASSERT_EQ(zs.size(), 2u);
    EXPECT_EQ(zs[0], (Span{"Z", Script::level}));
    EXPECT_EQ(zs[1], (Span{"s", Script::below}));
}

TEST(Text, IsOneLevelRunWhereAsked) {
    const Text words = text({3, 4}, "rod", {.size = 9});
    EXPECT_EQ(words.at, (Point{3, 4}));
    EXPECT_EQ(words.spans, plain("rod"));
    EXPECT_EQ(words.style.size, 9);
    EXPECT_EQ(words.style.colour, palette::ink);
}

}  // namespace
}  // namespace toft::drawing
