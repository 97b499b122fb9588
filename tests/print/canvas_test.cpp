#include "print/canvas.h"

#include <gtest/gtest.h>

namespace toft::print {
namespace {

TEST(Canvas, BytesAreGatheredInOrder) {
    std::string text = "a";
    const unsigned char more[] = {'b', 0, 0xFF};
    EXPECT_EQ(append_bytes(&text, more, 3), CAIRO_STATUS_SUCCESS);
    EXPECT_EQ(text, std::string("ab\0\xFF", 4));
}

TEST(Canvas, CairosOwnWordsAreKept) {
    const Fault fault = cairo_fault(CAIRO_STATUS_INVALID_MATRIX);
    EXPECT_EQ(fault.code, "print");
    EXPECT_NE(fault.says.find("matrix"), std::string::npos);
}

}  // namespace
}  // namespace toft::print
