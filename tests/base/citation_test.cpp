#include "base/citation.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace toft {
namespace {

TEST(Citation, EachBasisHasAWordOfItsOwn) {
    std::set<std::string> words;
    for (Basis b : {Basis::published, Basis::derived, Basis::common_practice, Basis::memory}) {
        EXPECT_TRUE(words.insert(basis_word(b)).second) << basis_word(b);
    }
    EXPECT_EQ(words.count("common practice"), 1u);
}

TEST(Citation, WhatNobodyVouchesForIsMemory) {
    EXPECT_EQ(Citation{}.basis, Basis::memory);
    EXPECT_EQ(Cited<double>{}.citation, nullptr);
}

}  // namespace
}  // namespace toft
