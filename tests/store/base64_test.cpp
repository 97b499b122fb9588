#include "store/base64.h"

#include <rapidcheck/gtest.h>

namespace toft::store {
namespace {

/// RFC 4648, section 10: test vectors.
TEST(Base64, WritesAndReadsTheExamplesOfItsStandard) {
    const std::pair<const char*, const char*> vectors[] = {{"", ""},
                                                           {"f", "Zg=="},
                                                           {"fo", "Zm8="},
                                                           {"foo", "Zm9v"},
                                                           {"foob", "Zm9vYg=="},
                                                           {"fooba", "Zm9vYmE="},
                                                           {"foobar", "Zm9vYmFy"}};
    for (const auto& [bytes, text] : vectors) {
        EXPECT_EQ(to_base64(bytes), text);
        EXPECT_EQ(from_base64(text).value_or("none"), bytes);
    }
}

TEST(Base64, ReadsNothingThatItWouldNotHaveWritten) {
    for (const char* text : {"Z", "Zg", "Zg=", "Zg==Zg==", "Zh==", "Zm9=", "====", "Z===", "Zm 9v",
                             "Zm9v\n", "Zm-v", "=m9v", "Zg=a"}) {
        EXPECT_FALSE(from_base64(text)) << text;
    }
}

RC_GTEST_PROP(Base64, AnyBytesComeBack, (const std::string& bytes)) {
    RC_ASSERT(from_base64(to_base64(bytes)) == std::optional(bytes));
}

RC_GTEST_PROP(Base64, WhatIsReadIsWrittenTheSame, ()) {
    const auto text = *rc::gen::container<std::string>(rc::gen::element('A', 'b', '/', '+', '='));
    const auto bytes = from_base64(text);
    if (bytes) RC_ASSERT(to_base64(*bytes) == text);
}

}  // namespace
}  // namespace toft::store
