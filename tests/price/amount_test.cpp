#include "price/amount.h"

#include <gtest/gtest.h>

namespace toft::price {
namespace {

TEST(Amount, APlainNumberIsTakenWithBlanksAroundIt) {
    EXPECT_EQ(amount_of("12.50").value, 12.5);
    EXPECT_EQ(amount_of(" 0 ").value, 0);
    EXPECT_FALSE(amount_of(".5").wrong);
    EXPECT_EQ(amount_of(".5").value, 0.5);
}

TEST(Amount, WhatIsNotSaysHowToWriteIt) {
    for (const char* wrong :
         {"", "£3", "1,200", "-3", "nan", "0x10", "1e3", "3 m", "..", "9999999"}) {
        EXPECT_TRUE(amount_of(wrong).wrong) << wrong;
    }
}

TEST(Trimmed, TakesBlanksOffBothEnds) {
    EXPECT_EQ(trimmed(" \ta b\r\n"), "a b");
    EXPECT_EQ(trimmed("  "), "");
}

}  // namespace
}  // namespace toft::price
