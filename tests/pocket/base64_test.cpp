#include "pocket/base64.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::pocket {
namespace {

TEST(Base64, IsWhatItsStandardGivesAsExamples) {  // RFC 4648, section 10
    EXPECT_EQ(base64(""), "");
    EXPECT_EQ(base64("f"), "Zg==");
    EXPECT_EQ(base64("fo"), "Zm8=");
    EXPECT_EQ(base64("foo"), "Zm9v");
    EXPECT_EQ(base64("foob"), "Zm9vYg==");
    EXPECT_EQ(base64("fooba"), "Zm9vYmE=");
    EXPECT_EQ(base64("foobar"), "Zm9vYmFy");
}

RC_GTEST_PROP(Base64, TakesFourSignsForThreeBytesBegun, (const std::string& bytes)) {
    RC_ASSERT(base64(bytes).size() == (bytes.size() + 2) / 3 * 4);
}

}  // namespace
}  // namespace toft::pocket
