#include "print/pdf.h"

#include "print/looking.h"

#include <gtest/gtest.h>

namespace toft::print {
namespace {

drawing::Scene scene(const std::string& words) {
    drawing::Scene one{.width = 400, .height = 300, .title = "A (title) \xCE\xA9"};
    one.items = {drawing::text({20, 40}, words),
                 drawing::Rect{{20, 60, 90, 90}, drawing::filled(drawing::palette::ink)}};
    return one;
}

TEST(Pdf, TheSameInputGivesTheSameBytesAndTheDateCounts) {
    const auto first = to_pdf(scene("Ze 0.35 Ω"), fonts(), "2026-11-25").value();
    EXPECT_EQ(first.bytes.substr(0, 5), "%PDF-");
    EXPECT_EQ(first.missing, U"");
    EXPECT_EQ(first.bytes, to_pdf(scene("Ze 0.35 Ω"), fonts(), "2026-11-25")->bytes);
    EXPECT_NE(first.bytes, to_pdf(scene("Ze 0.35 Ω"), fonts(), "2026-11-26")->bytes);
    EXPECT_NE(first.bytes, to_pdf(scene("Ze 0.36 Ω"), fonts(), "2026-11-25")->bytes);
    EXPECT_NE(first.bytes.find("/CreationDate (20261125000000Z)"), std::string::npos);
}

TEST(Pdf, TheSheetIsA4) {
    drawing::Scene high = scene("x");
    high.height = 1000;
    EXPECT_NE(to_pdf(high, fonts(), "2026-11-25")->bytes.find("595.275591 841.889764"),
              std::string::npos);
    EXPECT_NE(to_pdf(scene("x"), fonts(), "2026-11-25")->bytes.find("841.889764 595.275591"),
              std::string::npos);
}

TEST(Pdf, BrokenDatesAndSizesAreRefused) {
    for (const char* date : {"", "today", "2026-11-2", "2026-11-255", "2026/11/25", "20261125"}) {
        const auto pdf = to_pdf(scene("x"), fonts(), date);
        ASSERT_FALSE(pdf) << date;
        EXPECT_EQ(pdf.error().front().code, "date");
    }
    drawing::Scene flat = scene("x");
    flat.height = 0;
    EXPECT_EQ(to_pdf(flat, fonts(), "2026-11-25").error().front().code, "no-size");
}

TEST(Pdf, SheetsBecomePagesOfTheirOwnSize) {
    drawing::Scene first = scene("one");
    first.width = drawing::units_of_mm(210);
    first.height = drawing::units_of_mm(297);
    drawing::Scene second = scene("two \xF0\x9F\x94\x8C");
    second.width = drawing::units_of_mm(105);
    second.height = drawing::units_of_mm(148);
    const auto pdf = to_pdf({first, second}, fonts(), "2026-11-25").value();
    EXPECT_NE(pdf.bytes.find("/Count 2"), std::string::npos);
    EXPECT_NE(pdf.bytes.find("595.275591 841.889764"), std::string::npos);
    EXPECT_NE(pdf.bytes.find("297.637795 419.527559"), std::string::npos);
    EXPECT_EQ(pdf.missing, U"\U0001F50C");
    EXPECT_EQ(pdf.bytes, to_pdf({first, second}, fonts(), "2026-11-25")->bytes);
}

TEST(Pdf, NoPagesAreAFault) {
    const auto pdf = to_pdf(std::vector<drawing::Scene>{}, fonts(), "2026-11-25");
    ASSERT_FALSE(pdf);
    EXPECT_EQ(pdf.error().front().code, "no-pages");
}

TEST(Pdf, WhatTheFontLacksIsTold) {
    EXPECT_EQ(to_pdf(scene("\xF0\x9F\x94\x8C"), fonts(), "2026-11-25")->missing, U"\U0001F50C");
}

}  // namespace
}  // namespace toft::print
