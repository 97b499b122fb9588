#include "ware/csv.h"

#include "base/csv.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::ware {
namespace {

List one_row(const std::string& what) {
    List list;
    Row row;
    row.group = Group::run;
    row.what = what;
    row.size = "3-core 10 mm²";
    row.quantity = 36.920000000000002;
    row.unit = "m";
    row.each = pounds(7.1);
    row.amount = pounds(262.13);
    list.rows = {row};
    return list;
}

TEST(Csv, FiguresArePlainAndMoneyHasPence) {
    EXPECT_EQ(csv_of(one_row("cable"), Prices::with),
              "group,what,size,quantity,unit,order,note,\"price each, GBP without tax\","
              "\"amount, GBP without tax\"\r\nrun,cable,3-core 10 mm²,36.92,m,,,7.10,262.13\r\n");
    EXPECT_EQ(csv_of(one_row("cable"), Prices::without),
              "group,what,size,quantity,unit,order,note\r\nrun,cable,3-core 10 mm²,36.92,m,,\r\n");
}

TEST(Csv, TextThatLooksLikeAFormulaIsNone) {
    for (const char* text : {"=1+1", "+44 20", "-2", "@SUM(A1)", "\tx", "\rx"}) {
        EXPECT_EQ(guarded(text), std::string("'") + text);
    }
    EXPECT_EQ(guarded("a=b"), "a=b");
    EXPECT_EQ(guarded(""), "");
    EXPECT_NE(csv_of(one_row("=HYPERLINK(\"http://x\")"), Prices::with)
                  .find("\"'=HYPERLINK(\"\"http://x\"\")\""),
              std::string::npos);
}

RC_GTEST_PROP(Csv, AnyTextComesBackAsItWas, (const std::string& drawn)) {
    std::string text;
    for (const char c : drawn) {
        if (c != '\0') text += c;
    }
    const auto table = parse_csv("materials.csv", csv_of(one_row(text), Prices::with));
    RC_ASSERT(table.has_value());
    RC_ASSERT(table->rows.size() == 1u);
    RC_ASSERT(table->rows[0].cells[1] == guarded(text));
}

}  // namespace
}  // namespace toft::ware
