#include "digging/sheet.h"

#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::digging {
namespace {

TEST(Sheet, EndsWithWhoDecides) {
    parts::WordColumn column(0, 600, 0);
    sheet_head(column, "Route plan", "A job");
    say(column, "body");
    say_small(column, "second rank");
    sheet_foot(column);
    const double foot = column.y();
    const drawing::Items items = column.take();
    EXPECT_EQ(picture::clashes(items, {0, 0, 600, foot + 1}), "");
    std::string all;
    for (const drawing::Text& text : picture::texts_in(items)) all += picture::line_of(text) + " ";
    for (const char* who : {"local code", "network operator", "owners of the services",
                            "competent, licensed person", "by hand"}) {
        EXPECT_NE(all.find(who), std::string::npos) << who;
    }
}

}  // namespace
}  // namespace toft::digging
